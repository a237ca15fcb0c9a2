// SPDX-License-Identifier: GPL-3.0-or-later
// Small signs drawn by us: shapes that tell a state without colour.
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
    Thermometer,
    SetUp,
    Lamp,

    Minus,
    Plus,
    Wait,
    Parked,

    // The steps of preparing, finishing and handing over.
    Gear,
    Wash,
    Cloth,
    StripPaint,
    CutToSound,
    Magnifier,
    Drill,
    Dry,

    Bevel,
    BevelBack,
    AbradeBack,
    Backing,
    Dam,
    CoarsePaper,
    Dust,
    Wipe,
    FlashOff,

    OwnTools,
    DewDrop,
    GuideCoat,
    Paper,
    FinePaper,
    AirGun,
    RakingLight,

    CureClock,
    Straightedge,
    PinholeNone,
    Nail,
    TapCoin,
    NoEdge,
    GuideCoatGone,
};

/// Every sign but None, in the order of the enumeration.
[[nodiscard]] std::vector<Pictogram> allPictograms();

/// Draws the sign centred in the rectangle, as large as fits, with the theme's colours. `ink` is used for
/// the signs that have no colour of their own.
void paintPictogram(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ink);

/// Draws the sign in `ink` upon a disc of `ground`, as on a job card; StopHand, Caution and Tick have a
/// ground of their own and are drawn without the disc.
void paintSignOnDisc(QPainter& painter, const QRectF& rect, Pictogram sign, const Theme& theme, const QColor& ground,
                     const QColor& ink);

/// The sign of a phase of a batch.
[[nodiscard]] Pictogram signOf(Phase phase);
/// The sign of a station of the walk.
[[nodiscard]] Pictogram signOf(Station station);
/// The sign of a prep, finish or hand-over step's code; Prepare for a code without a sign of its own.
[[nodiscard]] Pictogram signOfStep(const QString& code);

} // namespace strandbench
