// SPDX-License-Identifier: GPL-3.0-or-later
// Which coding and size a camera is set to.
#include "camera/camera.h"
#include "fake_camera.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

using Coding = FrameFormat::Coding;

tl::expected<FrameFormat, CameraFault> setBy(const FakeSpec& spec)
{
    FakeCamera device(spec);
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    const Camera::Opened camera = Camera::open(calls, spec.path);
    if (!camera)
        return tl::unexpected(camera.error());
    return (*camera)->format();
}

FakeSpec with(const std::vector<FakeSpec::Coding>& codings)
{
    FakeSpec spec;
    spec.codings = codings;
    return spec;
}

TEST(CameraSize, IsTheLargestUpToFullHd)
{
    EXPECT_EQ(chosenSize({{640, 480}, {1920, 1080}, {1280, 720}, {3840, 2160}}), QSize(1920, 1080));
    EXPECT_EQ(chosenSize({{640, 480}, {1600, 1200}, {1024, 768}}), QSize(1024, 768)) << "too high is too large";
    EXPECT_EQ(chosenSize({{3840, 2160}, {2592, 1944}}), QSize(2592, 1944)) << "the smallest when all are too large";
    EXPECT_EQ(chosenSize({}), QSize(1920, 1080)) << "a device that lists none is asked for it";
}

TEST(CameraFormat, IsMotionJpegBeforeAllElse)
{
    const auto set = setBy(with({{V4L2_PIX_FMT_YUYV, {{1920, 1080}}}, {V4L2_PIX_FMT_MJPEG, {{640, 480}, {800, 600}}}}));
    ASSERT_TRUE(set.has_value());
    EXPECT_EQ(set->coding, Coding::Jpeg);
    EXPECT_EQ(set->size, QSize(800, 600));
}

TEST(CameraFormat, IsYuyvWhereThereIsNoJpeg)
{
    FakeSpec spec = with({{V4L2_PIX_FMT_NV12, {{640, 480}}}, {V4L2_PIX_FMT_YUYV, {{640, 480}}}});
    auto set = setBy(spec);
    ASSERT_TRUE(set.has_value());
    EXPECT_EQ(*set, (FrameFormat{Coding::Yuyv, {640, 480}, 1280, SampleRange::Limited}));
    spec.quantization = V4L2_QUANTIZATION_FULL_RANGE;
    set = setBy(spec);
    ASSERT_TRUE(set.has_value());
    EXPECT_EQ(set->range, SampleRange::Full);
}

TEST(CameraFormat, ADeviceThatListsNoSizesIsAskedForTheLargest)
{
    const auto set = setBy(with({{V4L2_PIX_FMT_MJPEG, {}}}));
    ASSERT_TRUE(set.has_value());
    EXPECT_EQ(set->size, QSize(1920, 1080));
}

TEST(CameraFormat, NeitherIsRefusedByName)
{
    const CameraFault none{CameraFault::Why::NoFormat, u"Bench camera"_s, {}, 0, {}};
    EXPECT_EQ(setBy(with({{V4L2_PIX_FMT_NV12, {{640, 480}}}})).error(), none);
    EXPECT_EQ(setBy(with({})).error(), none);
    FakeSpec spec;
    spec.picksOther = true; // it lists JPEG and then sets another coding
    EXPECT_EQ(setBy(spec).error(), none);
}

} // namespace
} // namespace strandbench::test
