// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/yuyv.h"

#include <algorithm>

namespace strandbench {
namespace {

// ITU-R BT.601-7, 2.5.1: E'Y = 0.299 E'R + 0.587 E'G + 0.114 E'B. The differences are brought to -0.5 ... 0.5 (2.5.2):
// E'CB = (E'B - E'Y) / 1.772 and E'CR = (E'R - E'Y) / 1.402; here solved for E'R, E'G and E'B.
constexpr double redWeight = 0.299;
constexpr double greenWeight = 0.587;
constexpr double blueWeight = 0.114;
constexpr double redSpan = 2 * (1 - redWeight);
constexpr double blueSpan = 2 * (1 - blueWeight);

// In 1/65536, so that a frame is turned over in whole numbers; the sum of what rounding loses is below 0.01 of a step.
constexpr int one = 1 << 16;
/// To the nearest; value: not below 0.
constexpr int fixedPoint(double value)
{
    const int down = static_cast<int>(value * one);
    return value * one - down < 0.5 ? down : down + 1;
}

struct Factors {
    int black; ///< the luma of black
    int luma;
    int redOfRed;
    int greenOfRed;
    int greenOfBlue;
    int blueOfBlue;
};

/// Spans in steps of a sample: from black to white, and of a colour difference from end to end.
constexpr Factors factorsOf(int black, double lumaSteps, double differenceSteps)
{
    const double difference = 255 / differenceSteps;
    return {black,
            fixedPoint(255 / lumaSteps),
            fixedPoint(difference * redSpan),
            fixedPoint(difference * redSpan * redWeight / greenWeight),
            fixedPoint(difference * blueSpan * blueWeight / greenWeight),
            fixedPoint(difference * blueSpan)};
}

// ITU-R BT.601-7, 2.5.3: 220 levels of luma from 16 on, 225 of the differences around 128.
constexpr Factors limited = factorsOf(16, 219, 224);
constexpr Factors full = factorsOf(0, 255, 255);
constexpr int noDifference = 128;

int toByte(int value) { return std::clamp((value + one / 2) >> 16, 0, 255); }

QRgb rgbWith(const Factors& by, int luma, int blueDifference, int redDifference)
{
    const int grey = by.luma * (luma - by.black);
    const int blue = blueDifference - noDifference;
    const int red = redDifference - noDifference;
    return qRgb(toByte(grey + by.redOfRed * red), toByte(grey - by.greenOfRed * red - by.greenOfBlue * blue),
                toByte(grey + by.blueOfBlue * blue));
}

} // namespace

QRgb rgbOf(int luma, int blueDifference, int redDifference, SampleRange range)
{
    return rgbWith(range == SampleRange::Full ? full : limited, luma, blueDifference, redDifference);
}

QImage imageOfYuyv(const QByteArray& bytes, const QSize& size, int lineBytes, SampleRange range)
{
    const qsizetype used = qsizetype{2} * size.width();
    if (size.isEmpty() || size.width() % 2 != 0 || lineBytes < used ||
        bytes.size() < qsizetype{lineBytes} * (size.height() - 1) + used)
        return {};
    const Factors& by = range == SampleRange::Full ? full : limited;
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y) {
        const auto* from = reinterpret_cast<const uchar*>(bytes.constData()) + qsizetype{lineBytes} * y;
        auto* to = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < size.width(); x += 2, from += 4) {
            to[x] = rgbWith(by, from[0], from[1], from[3]);
            to[x + 1] = rgbWith(by, from[2], from[1], from[3]);
        }
    }
    return image;
}

} // namespace strandbench
