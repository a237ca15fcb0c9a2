// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures out of Y'CbCr 4:2:2 as cameras pack it: Y0 Cb Y1 Cr for two pixels beside each other (V4L2's YUYV).
#pragma once

#include <QImage>

namespace strandbench {

/// How the 8 bits of a sample are used (ITU-R BT.601-7, 2.5.3).
enum class SampleRange {
    Limited, ///< luma 16 to 235, colour differences 16 to 240 around 128: as the Recommendation has it
    Full,    ///< 0 to 255 for all three
};

/// One pixel's red, green and blue, 0 to 255, by the luma weights of ITU-R BT.601-7, 2.5.1.
[[nodiscard]] QRgb rgbOf(int luma, int blueDifference, int redDifference, SampleRange range);

/// The picture of a frame; null when the bytes are fewer than the size needs, or the width is odd. lineBytes: from the
/// start of one line to that of the next, at least 2 a pixel.
[[nodiscard]] QImage imageOfYuyv(const QByteArray& bytes, const QSize& size, int lineBytes, SampleRange range);

} // namespace strandbench
