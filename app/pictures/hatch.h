// SPDX-License-Identifier: GPL-3.0-or-later
// What a material looks like in a picture, as on an engineering drawing: never by colour alone.
#pragma once

#include "substrate/assessment.h"
#include "theme/theme.h"

#include <QPainter>
#include <QPainterPath>

namespace strandbench {

enum class Material {
    Laminate,    ///< cross hatch
    Smc,         ///< scattered short flecks
    Steel,       ///< close hatch at 45 degrees
    Galvanised,  ///< as steel, with a skin of zinc drawn by whoever knows the surfaces
    Aluminium,   ///< light, rows of dashes
    Carbon,      ///< dark, with a light grid
    Plastic,     ///< rows of dots
    Filler,      ///< short strokes
    FillerLater, ///< the same, paler: the next face or lift
    Finish,      ///< plain pale sand
    Hardener,
    Adhesive, ///< upright strokes
    Weld,     ///< solid
    Paint,    ///< solid
    Tape,     ///< solid
};

[[nodiscard]] Material materialOf(Substrate substrate);

/// Fills an area with its material, without an outline. scale 1 is for a large picture; smaller is closer.
void paintMaterial(QPainter& painter, const QPainterPath& area, Material material, const Theme& theme,
                   double scale = 1.0);
/// The same with an outline of `widthMm`.
void paintPiece(QPainter& painter, const QPainterPath& area, Material material, const Theme& theme, double scale = 1.0,
                double widthMm = 0.35);
/// The skin of zinc along the edge of a piece that paintPiece() drew.
void paintZincSkin(QPainter& painter, const QPainterPath& area, const Theme& theme);
[[nodiscard]] QColor groundOf(Material material, const Theme& theme);
[[nodiscard]] QPen outlinePen(const Theme& theme, double widthMm = 0.35);

} // namespace strandbench
