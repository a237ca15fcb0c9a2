// SPDX-License-Identifier: GPL-3.0-or-later
// The hazard pictograms of UN GHS: a black symbol on white in a red square set on a point (CLP Annex V). The colours
// are the regulation's, day and night alike; the drawings are ours, in resources/drawings/ghs.
#pragma once

#include "material/hazards.h"

#include <QPainter>
#include <QRectF>

namespace strandbench {

/// Draws the pictogram centred in the rectangle, as large as fits.
void paintGhsPictogram(QPainter& painter, const QRectF& rect, GhsPictogram pictogram);

/// Draws them side by side, as large as it allows; in two rows where they
/// then come out larger.
void paintGhsPictograms(QPainter& painter, const QRectF& rect, const std::vector<GhsPictogram>& pictograms);

} // namespace strandbench
