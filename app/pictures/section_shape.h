// SPDX-License-Identifier: GPL-3.0-or-later
// The outlines of a section in millimetres: x from the middle of the repair, y downwards from the surface.
// What is drawn is these, scaled; nothing of a section is invented in pixels but its lines' widths.
#pragma once

#include "pictures/hatch.h"
#include "pictures/section_picture.h"

#include <QPainterPath>
#include <QPointF>

#include <vector>

namespace strandbench {

/// One piece with its material.
struct SectionPiece {
    QPainterPath area;
    Material material = Material::Smc;
};

/// What one lift takes of the cavity. `lift` is its index in the drawing; -1 is the finish.
struct SectionSlab {
    QPainterPath area;
    int lift = 0;
    bool laid = false;
};

struct SectionShape {
    double reach = 0;     ///< drawn to either side of the middle
    double top = 0;       ///< highest point, 0 or less
    double bottom = 0;    ///< lowest point
    double opening = 0;   ///< as the section shows it, after the bevel
    double leftEdge = 0;  ///< of the opening
    double openingAt = 0; ///< y that the opening is measured at
    std::vector<SectionPiece> pieces;
    QPainterPath cavity; ///< all faces
    std::vector<SectionSlab> slabs;
    QPainterPath feather;             ///< where the skim runs out to: four points along the surface, none without one
    std::vector<QPointF> drilled;     ///< ends of a crack
    std::vector<double> skins;        ///< zinc: y of plain surfaces that carry a skin
    std::vector<QPainterPath> cracks; ///< lines without width
};

[[nodiscard]] SectionShape shapeOf(const SectionDrawing& drawing);

} // namespace strandbench
