// SPDX-License-Identifier: GPL-3.0-or-later
// Where sign, picture and texts of a button go: side by side or above each other, whichever lets the text be
// larger.
#pragma once

#include "touch/fit_text.h"

#include <QRectF>

namespace strandbench {

struct TapContent {
    TextItem title;
    TextItem second;
    bool sign = false;
    bool picture = false;
    bool tick = false; ///< keep a corner free for the tick of a choice
};

struct TapLayout {
    QRectF tick;
    QRectF mark; ///< of the sign or the picture
    QRectF title;
    QRectF second;
    FittedStack stack; ///< title, then second line
    Qt::Alignment alignment = Qt::AlignHCenter;
};

/// `rect` is the whole button in pixels.
[[nodiscard]] TapLayout arrangeTap(const Theme& theme, const QRectF& rect, const TapContent& content);

} // namespace strandbench
