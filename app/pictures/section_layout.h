// SPDX-License-Identifier: GPL-3.0-or-later
// Where everything of a section stands in pixels: the scale, the depth exaggeration computed from the room,
// and the texts, so that painting and reporting speak of the same thing.
#pragma once

#include "pictures/picture_text.h"
#include "pictures/section_shape.h"

#include <QTransform>

namespace strandbench {

/// A label beside the drawing, with its leader to a point in its slab.
struct SectionCallout {
    PictureText text;
    QPointF from; ///< beside the text
    QPointF elbow;
    QPointF to; ///< in the slab
};

struct SectionInside {
    PictureText text;
    int slab = 0; ///< index into shape.slabs
};

struct SectionLayout {
    SectionShape shape;
    double exaggeration = 1;
    QTransform toPixels;
    bool turned = false;
    std::vector<SectionInside> inside;
    std::vector<SectionCallout> callouts;
    PictureText opening;
    QLineF openingLine;            ///< the dimension line, null without one
    double extensionFrom = 0;      ///< pixel y that the extension lines start at
    std::vector<PictureText> note; ///< one line or two
    [[nodiscard]] TextReport report() const;
};

/// Without labels: the drawing alone fills the room.
[[nodiscard]] SectionLayout layOutSection(const QRectF& room, const SectionDrawing& drawing, const Theme& theme);
[[nodiscard]] SectionLayout layOutSection(const QRectF& room, const SectionDrawing& drawing,
                                          const SectionLabels& labels, const Theme& theme);
void paintLayout(QPainter& painter, const SectionLayout& layout, const SectionDrawing& drawing, const Theme& theme);

/// Depth is never drawn more than this many times as large as width.
inline constexpr double greatestExaggeration = 20;

} // namespace strandbench
