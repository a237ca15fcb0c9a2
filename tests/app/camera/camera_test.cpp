// SPDX-License-Identifier: GPL-3.0-or-later
// A camera is opened, set and read by the rules of the Linux kernel's "Video for Linux API", and every way in which a
// device can fail is told by name. The device is a test's own: no real camera has been tried.
#include "camera/camera.h"
#include "fake_camera.h"

#include <gtest/gtest.h>

#include <cerrno>
#include <cstring>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

using Why = CameraFault::Why;

constexpr int waitMs = 1000;
const QColor teal(10, 140, 150);

/// Opens the device and tells what it answers; everything must be given back after it.
CameraFault faultOf(FakeCamera& device)
{
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    CameraFault fault;
    {
        const Camera::Opened opened = Camera::open(calls, u"/dev/video0"_s);
        EXPECT_FALSE(opened.has_value());
        if (!opened)
            fault = opened.error();
    }
    EXPECT_TRUE(device.givenBack());
    return fault;
}

CameraFault faultOf(const FakeSpec& spec)
{
    FakeCamera device(spec);
    return faultOf(device);
}

TEST(Camera, GivesTheDevicesJpegByteForByte)
{
    FakeCamera device;
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    {
        const Camera::Opened camera = Camera::open(calls, u"/dev/video0"_s);
        ASSERT_TRUE(camera.has_value());
        EXPECT_EQ((*camera)->name(), u"Bench camera"_s);
        EXPECT_EQ((*camera)->format().size, QSize(1280, 720));
        EXPECT_EQ(device.setTo(), QSize(1280, 720));
        for (int i = 0; i < 9; ++i) { // more than there are buffers: each goes back
            const QByteArray jpeg = jpegOf(QColor::fromHsv(i * 30, 200, 200));
            device.see(jpeg);
            const auto frame = (*camera)->next(waitMs);
            ASSERT_TRUE(frame.has_value());
            EXPECT_EQ(frame->bytes, jpeg);
            EXPECT_EQ(frame->jpeg(), jpeg);
            EXPECT_EQ(frame->picture({64, 64}).size(), QSize(64, 48));
        }
    }
    EXPECT_TRUE(device.givenBack());
}

TEST(Camera, GoesOnWhenSignalsComeBetween)
{
    FakeSpec spec;
    spec.interrupts = 3;
    FakeCamera device(spec);
    device.see(jpegOf(teal));
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    EXPECT_EQ(camerasOf(calls).size(), 1U);
    {
        const Camera::Opened camera = Camera::open(calls, u"/dev/video0"_s);
        ASSERT_TRUE(camera.has_value());
        EXPECT_TRUE((*camera)->next(waitMs).has_value());
        EXPECT_TRUE((*camera)->next(waitMs).has_value());
    }
    EXPECT_TRUE(device.givenBack());
}

TEST(Camera, OneThatSendsNothingOrOnlyBrokenPicturesIsWaitedForByWhoeverHasPatience)
{
    FakeCamera device;
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    const Camera::Opened camera = Camera::open(calls, u"/dev/video0"_s);
    ASSERT_TRUE(camera.has_value());
    const auto why = [&] {
        const auto frame = (*camera)->next(waitMs);
        return frame ? Why::Refused : frame.error().why;
    };
    EXPECT_EQ(why(), Why::NoPicture) << "nothing came";
    const QByteArray jpeg = jpegOf(teal);
    device.see(jpeg.left(jpeg.size() / 2));
    EXPECT_EQ(why(), Why::NoPicture) << "cut short";
    device.see(jpeg, true);
    EXPECT_EQ(why(), Why::NoPicture) << "marked as broken by the driver";
    device.see("no picture at all");
    EXPECT_EQ(why(), Why::NoPicture);
    device.see(jpeg);
    EXPECT_TRUE((*camera)->next(waitMs).has_value()) << "and comes back";
}

TEST(Camera, PulledOutWhileItRunsIsToldAndGivenBack)
{
    FakeCamera device;
    device.see(jpegOf(teal));
    const DeviceCalls calls = FakeCamera::machineWith({&device});
    {
        const Camera::Opened camera = Camera::open(calls, u"/dev/video0"_s);
        ASSERT_TRUE(camera.has_value());
        ASSERT_TRUE((*camera)->next(waitMs).has_value());
        device.pullOut();
        const auto frame = (*camera)->next(waitMs);
        ASSERT_FALSE(frame.has_value());
        EXPECT_EQ(frame.error(), (CameraFault{Why::Gone, u"Bench camera"_s, u"VIDIOC_DQBUF"_s, ENODEV,
                                              QString::fromUtf8(std::strerror(ENODEV))}));
        EXPECT_EQ((*camera)->next(waitMs).error().why, Why::Gone) << "and again, without harm";
    }
    EXPECT_TRUE(device.givenBack());
    EXPECT_EQ(faultOf(device).why, Why::Gone) << "and when it is opened again";
}

TEST(Camera, WhatIsNoCameraIsNotOneAndIsNotListed)
{
    FakeSpec beside; // the node of a camera for what is told beside the pictures
    beside.path = u"/dev/video1"_s;
    beside.able = V4L2_CAP_META_CAPTURE | V4L2_CAP_STREAMING;
    FakeSpec output;
    output.path = u"/dev/video2"_s;
    output.able = V4L2_CAP_VIDEO_OUTPUT | V4L2_CAP_STREAMING;
    FakeSpec other; // of another kind: it does not know the question
    other.path = u"/dev/video3"_s;
    other.refuses[VIDIOC_QUERYCAP] = ENOTTY;
    FakeSpec locked;
    locked.path = u"/dev/video4"_s;
    locked.openError = EACCES;
    FakeSpec second;
    second.path = u"/dev/video5"_s;
    second.card = "Lamp\tarm"
                  " camera whose name fills the field";
    FakeCamera one;
    FakeCamera two(beside);
    FakeCamera three(output);
    FakeCamera four(other);
    FakeCamera five(locked);
    FakeCamera six(second);
    const DeviceCalls calls = FakeCamera::machineWith({&one, &two, &three, &four, &five, &six});
    const std::vector<CameraDevice> expected{{u"/dev/video0"_s, u"Bench camera"_s},
                                             {u"/dev/video5"_s, u"Lamp arm camera whose name fills"_s}};
    EXPECT_EQ(camerasOf(calls), expected);
    for (const FakeCamera* each : {&one, &two, &three, &four, &five, &six})
        EXPECT_TRUE(each->givenBack());
    EXPECT_TRUE(camerasOf(FakeCamera::machineWith({})).empty());

    FakeSpec spec;
    spec.able = V4L2_CAP_VIDEO_CAPTURE; // gives single pictures only
    EXPECT_EQ(faultOf(spec), (CameraFault{Why::NoCapture, u"Bench camera"_s, {}, 0, {}}));
    spec = {};
    spec.refuses[VIDIOC_QUERYCAP] = ENOTTY;
    EXPECT_EQ(faultOf(spec).why, Why::NoCapture);
}

TEST(Camera, EveryRefusalNamesTheCallAndWhatTheSystemSays)
{
    const auto expect = [](const FakeSpec& spec, Why why, const QString& call, int error, const char* device) {
        const CameraFault fault = faultOf(spec);
        EXPECT_EQ(fault,
                  (CameraFault{why, QString::fromLatin1(device), call, error, QString::fromUtf8(std::strerror(error))}))
            << call.toStdString() << ' ' << fault.call.toStdString() << ' ' << fault.error;
    };
    const auto opens = [](int error) {
        FakeSpec spec;
        spec.openError = error;
        return spec;
    };
    expect(opens(EBUSY), Why::InUse, u"open"_s, EBUSY, "/dev/video0");
    expect(opens(EACCES), Why::NotAllowed, u"open"_s, EACCES, "/dev/video0");
    expect(opens(ENOENT), Why::Gone, u"open"_s, ENOENT, "/dev/video0");
    expect(opens(EMFILE), Why::Refused, u"open"_s, EMFILE, "/dev/video0");
    const auto refuses = [](unsigned long request, int error) {
        FakeSpec spec;
        spec.refuses[request] = error;
        return spec;
    };
    expect(refuses(VIDIOC_ENUM_FMT, ENODEV), Why::Gone, u"VIDIOC_ENUM_FMT"_s, ENODEV, "Bench camera");
    expect(refuses(VIDIOC_S_FMT, EBUSY), Why::InUse, u"VIDIOC_S_FMT"_s, EBUSY, "Bench camera");
    expect(refuses(VIDIOC_REQBUFS, EINVAL), Why::Refused, u"VIDIOC_REQBUFS"_s, EINVAL, "Bench camera");
    expect(refuses(VIDIOC_QUERYBUF, EINVAL), Why::Refused, u"VIDIOC_QUERYBUF"_s, EINVAL, "Bench camera");
    expect(refuses(VIDIOC_QBUF, EIO), Why::Refused, u"VIDIOC_QBUF"_s, EIO, "Bench camera");
    expect(refuses(VIDIOC_STREAMON, ENOSPC), Why::Refused, u"VIDIOC_STREAMON"_s, ENOSPC, "Bench camera");
    FakeSpec spec;
    spec.mapFails = true;
    expect(spec, Why::Refused, u"mmap"_s, ENOMEM, "Bench camera");
}

TEST(ThisMachinesCameras, AreAskedForWithoutHarm)
{
    // Whatever this machine has: a device that is listed has a path and a name.
    for (const CameraDevice& each : camerasOf(systemCalls())) {
        EXPECT_TRUE(each.path.startsWith(u"/dev/video"_s));
        EXPECT_FALSE(each.name.isEmpty());
    }
}

} // namespace
} // namespace strandbench::test
