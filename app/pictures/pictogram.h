// SPDX-License-Identifier: GPL-3.0-or-later
// Small signs drawn by us: shapes that tell a state without colour.
#pragma once

#include "clock/batch_clock.h"
#include "repair/repair.h"
#include "theme/theme.h"

#include <QPainter>
#include <QRectF>

namespace strandbench {

enum class Pictogram {
    None,
    TakeIn,      ///< an arrow into a tray
    StopHand,    ///< red octagon with a flat hand
    Caution,     ///< yellow triangle
    Tick,        ///< green disc with a tick
    Spreader, Knead, Mix, ClearEdges, HandsOff, SandingBlock, Harder, Turn, Finish, Inspect, HandOver, Assess,
    Prepare, Decide, Question, Thermometer, SetUp, Lamp, Scale, Card, Back, Minus, Plus, Wait, Parked, Board, Panel,
};

/// Draws the sign centred in the rectangle, as large as fits, with the theme's colours. `ink` is used for
/// the signs that have no colour of their own.
void paintPictogram(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ink);

/// The sign of a phase of a batch.
[[nodiscard]] Pictogram signOf(Phase phase);
/// The sign of a station of the walk.
[[nodiscard]] Pictogram signOf(Station station);
/// The sign of a prep, finish or hand-over step's code; Prepare for a code without a sign of its own.
[[nodiscard]] Pictogram signOfStep(const QString& code);

} // namespace strandbench
