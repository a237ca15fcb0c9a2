// SPDX-License-Identifier: GPL-3.0-or-later
// Where puddle and bead stand: at true size where they fit, else reduced beside an edge arc at true size.
#pragma once

#include "pictures/picture_text.h"
#include "pictures/puddle_picture.h"

#include <vector>

namespace strandbench {

/// A tick of the ruler; the long ones carry their figure.
struct RulerTick {
    double x = 0;
    double length = 0;
    PictureText figure;
};

struct PuddleLayout {
    bool trueSize = false;    ///< the whole puddle is drawn at true size
    QRectF puddle;            ///< the whole puddle, true or reduced
    std::vector<QRectF> runs; ///< of the bead within the puddle: one across, and what is left below it
    QRectF trueBead;          ///< the bead at true size below the drawings, where the puddle is reduced
    QRectF arcRoom;           ///< the edge arc is clipped to it
    QRectF arcCircle;         ///< the true circle
    double rulerY = 0;
    std::vector<RulerTick> ticks;
    PictureText heading; ///< true size
    PictureText reduced; ///< not true size
    PictureText puddleLabel;
    PictureText beadLabel;
    QRectF puddleSign;   ///< ring with arrows beside the puddle's figure
    double puddleMm = 0; ///< across, as drawn
    double beadMm = 0;   ///< in all, as drawn
    [[nodiscard]] TextReport report() const;
};

[[nodiscard]] PuddleLayout layOutPuddle(const QRectF& room, const Mix& mix, const PuddleLabels& labels,
                                        const Theme& theme);

} // namespace strandbench
