// SPDX-License-Identifier: GPL-3.0-or-later
// One picture as a camera gave it: bytes, and what they mean.
#pragma once

#include "camera/yuyv.h"

#include <QByteArray>
#include <QImage>

namespace strandbench {

/// What a camera was set to.
struct FrameFormat {
    enum class Coding { Jpeg, Yuyv } coding = Coding::Jpeg;
    QSize size;        ///< pixels
    int lineBytes = 0; ///< of Yuyv
    SampleRange range = SampleRange::Limited;
    bool operator==(const FrameFormat&) const = default;
};

/// Decodes and encodes only when asked to: belongs away from the glass's own thread.
struct CameraFrame {
    QByteArray bytes;
    FrameFormat format;

    /// No larger than the box (pixels); null when the bytes are no picture.
    [[nodiscard]] QImage picture(const QSize& box) const;
    /// To be kept: a camera's own JPEG as it came, with its tables; another coding as JPEG of quality 92. Empty when
    /// the bytes are no picture.
    [[nodiscard]] QByteArray jpeg() const;
};

} // namespace strandbench
