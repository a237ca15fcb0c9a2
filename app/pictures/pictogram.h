// SPDX-License-Identifier: GPL-3.0-or-later
// Small signs: shapes that tell a state without colour. Their drawings are those of resources/drawings/signs.
#pragma once

#include "clock/batch_clock.h"
#include "repair/repair.h"
#include "theme/theme.h"

#include <QPainter>
#include <QRectF>

#include <vector>

namespace strandbench {

enum class Pictogram {
    None,
    TakeIn,   ///< an arrow into a tray
    StopHand, ///< red octagon with a flat hand
    Caution,  ///< yellow triangle
    Tick,     ///< green disc with a tick
    Spreader,
    Knead,
    Mix,
    ClearEdges,
    HandsOff,
    SandingBlock,
    Harder,
    Turn,
    Finish,
    Inspect,
    HandOver,
    Assess,
    Prepare,
    Decide,
    Question,

    Minus,
    Plus,
    Wait,
    Parked,
};

/// Every sign but None, in the order of the enumeration.
[[nodiscard]] std::vector<Pictogram> allPictograms();
/// The drawing of a sign other than None, as paintDrawing names it.
[[nodiscard]] QString drawingOf(Pictogram sign);

/// Draws the sign centred in the rectangle, as large as fits, with the theme's colours. `ink` is used for
/// the signs that have no colour of their own.
void paintPictogram(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ink);

/// The sign of a phase of a batch.
[[nodiscard]] Pictogram signOf(Phase phase);
/// The sign of a station of the walk.
[[nodiscard]] Pictogram signOf(Station station);

} // namespace strandbench
