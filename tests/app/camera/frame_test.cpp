// SPDX-License-Identifier: GPL-3.0-or-later
// What a camera's bytes become: colours by ITU-R BT.601-7, tables by ITU-T T.81.
#include "bench/photo_file.h"
#include "camera/frame.h"
#include "camera/motion_jpeg.h"
#include "fake_camera.h"

#include <QBuffer>

#include <gtest/gtest.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

struct Bar {
    const char* name;
    int luma, blueDifference, redDifference;
    int red, green, blue;
};

void expectClose(QRgb found, const Bar& bar, int within)
{
    EXPECT_NEAR(qRed(found), bar.red, within) << bar.name;
    EXPECT_NEAR(qGreen(found), bar.green, within) << bar.name;
    EXPECT_NEAR(qBlue(found), bar.blue, within) << bar.name;
}

// The colour bars of 75 % (100/0/75/0 in the words of ITU-R BT.471) in 8 bits by the coefficients of ITU-R BT.601,
// as published in the reference of a test picture generator. Three quarters of 255 are 191; the samples are rounded
// to whole steps, and a step of a difference is up to 2.02 steps of blue.
const Bar bars[] = {
    {"white", 180, 128, 128, 191, 191, 191}, {"yellow", 162, 44, 142, 191, 191, 0},
    {"cyan", 131, 156, 44, 0, 191, 191},     {"green", 112, 72, 58, 0, 191, 0},
    {"magenta", 84, 184, 198, 191, 0, 191},  {"red", 65, 100, 212, 191, 0, 0},
    {"blue", 35, 212, 114, 0, 0, 191},       {"black", 16, 128, 128, 0, 0, 0},
};

TEST(Yuyv, GivesTheColourBarsOfBt601)
{
    for (const Bar& bar : bars)
        expectClose(rgbOf(bar.luma, bar.blueDifference, bar.redDifference, SampleRange::Limited), bar, 2);
    expectClose(rgbOf(235, 128, 128, SampleRange::Limited), {"reference white", 235, 128, 128, 255, 255, 255}, 0);
    expectClose(rgbOf(254, 128, 128, SampleRange::Limited), {"above white", 254, 128, 128, 255, 255, 255}, 0);
    expectClose(rgbOf(1, 128, 128, SampleRange::Limited), {"below black", 1, 128, 128, 0, 0, 0}, 0);
}

TEST(Yuyv, TurnsEveryColourBackThatBt601Encodes)
{
    // ITU-R BT.601-7, 2.5.1 to 2.5.3, forwards, in the Recommendation's own factors.
    for (int red = 0; red <= 255; red += 15)
        for (int green = 0; green <= 255; green += 15)
            for (int blue = 0; blue <= 255; blue += 15) {
                const double y = (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
                const double cr = (0.701 * red - 0.587 * green - 0.114 * blue) / 255 / 1.402;
                const double cb = (-0.299 * red - 0.587 * green + 0.886 * blue) / 255 / 1.772;
                const auto step = [](double value) { return static_cast<int>(std::lround(value)); };
                const Bar bar{"encoded", 0, 0, 0, red, green, blue};
                expectClose(rgbOf(step(219 * y + 16), step(224 * cb + 128), step(224 * cr + 128), SampleRange::Limited),
                            bar, 2);
                expectClose(rgbOf(step(255 * y), step(255 * cb + 128), step(255 * cr + 128), SampleRange::Full), bar,
                            2);
            }
}

/// Two pixels beside each other with one pair of differences, over a whole picture.
QByteArray yuyv(const QSize& size, int lineBytes, const Bar& left, int rightLuma)
{
    QByteArray bytes(qsizetype{lineBytes} * size.height(), '\x55');
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); x += 2) {
            const qsizetype at = qsizetype{y} * lineBytes + 2 * x;
            bytes[at] = static_cast<char>(left.luma);
            bytes[at + 1] = static_cast<char>(left.blueDifference);
            bytes[at + 2] = static_cast<char>(rightLuma);
            bytes[at + 3] = static_cast<char>(left.redDifference);
        }
    return bytes;
}

TEST(Yuyv, PixelsLieWhereTheyBelongAlsoInPaddedLines)
{
    const QSize size(6, 4);
    const QByteArray bytes = yuyv(size, 20, bars[5], 16 + 219);
    const QImage image = imageOfYuyv(bytes, size, 20, SampleRange::Limited);
    ASSERT_EQ(image.size(), size);
    for (int y = 0; y < 4; ++y)
        for (int x = 0; x < 6; ++x)
            EXPECT_EQ(image.pixel(x, y), rgbOf(x % 2 == 0 ? 65 : 235, 100, 212, SampleRange::Limited)) << x << ' ' << y;
    EXPECT_FALSE(imageOfYuyv(bytes.left(20 * 3 + 12), size, 20, SampleRange::Limited).isNull()) << "no padding at last";
    EXPECT_TRUE(imageOfYuyv(bytes.left(20 * 3 + 11), size, 20, SampleRange::Limited).isNull());
    EXPECT_TRUE(imageOfYuyv(bytes, {5, 4}, 20, SampleRange::Limited).isNull()) << "pairs only";
    EXPECT_TRUE(imageOfYuyv(bytes, size, 11, SampleRange::Limited).isNull());
    EXPECT_TRUE(imageOfYuyv(bytes, {}, 20, SampleRange::Limited).isNull());
}

TEST(Frame, OfYuyvIsKeptAsAWholeJpegOfItsColours)
{
    const FrameFormat format{FrameFormat::Coding::Yuyv, {64, 48}, 128, SampleRange::Limited};
    const CameraFrame frame{yuyv(format.size, 128, bars[3], 112), format};
    EXPECT_EQ(frame.picture({32, 32}).size(), QSize(32, 24));
    EXPECT_EQ(frame.picture({100, 100}).size(), QSize(64, 48)) << "never larger than it is";
    const QByteArray jpeg = frame.jpeg();
    const auto kept = photoOf(jpeg, u"camera"_s);
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->mediaType, u"image/jpeg"_s);
    const QImage shown = QImage::fromData(jpeg);
    ASSERT_EQ(shown.size(), format.size);
    expectClose(shown.pixel(30, 20), bars[3], 4);
    const CameraFrame cut{frame.bytes.left(100), format};
    EXPECT_TRUE(cut.jpeg().isEmpty());
    EXPECT_TRUE(cut.picture({32, 32}).isNull());
}

QByteArray withoutHuffmanTables(QByteArray jpeg)
{
    for (qsizetype at = jpeg.indexOf("\xff\xc4"); at >= 0; at = jpeg.indexOf("\xff\xc4"))
        jpeg.remove(at, 2 + static_cast<uchar>(jpeg[at + 2]) * 256 + static_cast<uchar>(jpeg[at + 3]));
    return jpeg;
}

TEST(MotionJpeg, GetsTheTablesOfT81WhereItBringsNone)
{
    // The JPEG library writes the tables K.3 to K.6 of ITU-T T.81 itself, in the same order.
    QImage image(64, 64, QImage::Format_RGB32);
    for (int y = 0; y < 64; ++y)
        for (int x = 0; x < 64; ++x)
            image.setPixel(x, y, qRgb((x * 37) % 256, (y * 91) % 256, (x * y) % 256));
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    ASSERT_TRUE(image.save(&buffer, "JPEG", 90));
    const QByteArray whole = buffer.data();
    const QByteArray bare = withoutHuffmanTables(whole);
    ASSERT_LT(bare.size(), whole.size() - 400);
    EXPECT_EQ(withHuffmanTables(bare), whole);
    EXPECT_EQ(withHuffmanTables(whole), whole);
    const CameraFrame frame{bare, {FrameFormat::Coding::Jpeg, {64, 64}, 0, {}}};
    EXPECT_EQ(frame.picture({64, 64}), QImage::fromData(whole));
    EXPECT_TRUE(photoOf(frame.jpeg(), u"camera"_s).has_value());
}

TEST(MotionJpeg, WhatIsNoJpegStaysAsItIs)
{
    for (const QByteArray& odd : {QByteArray(), QByteArray("\xff"), QByteArray("\xff\xd8\xff"),
                                  QByteArray("no picture"), QByteArray("\xff\xd8\xff\xff\xff\xff\xff\xff")})
        EXPECT_EQ(withHuffmanTables(odd), odd);
}

} // namespace
} // namespace strandbench::test
