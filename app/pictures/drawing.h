// SPDX-License-Identifier: GPL-3.0-or-later
// The fixed drawings: resources/drawings, compiled in, named by folder and file ("tools/grinder"). Drawn as vectors
// at every painting, so they are sharp at any size and any pixel ratio, in the colours of the theme.
#pragma once

#include "theme/theme.h"

#include <QPainter>
#include <QRectF>
#include <QStringList>

#include <optional>

namespace strandbench {

struct DrawingLook {
    std::optional<QColor> ink = std::nullopt; ///< instead of the theme's, as on a coloured key
    int frame = 1;                            ///< of a drawing that moves, 1 to framesOf()
};

/// Draws it centred in the rectangle, as large as fits without changing its shape; nothing in an empty rectangle.
/// Throws std::logic_error for a drawing that is not there, cannot be read, or lacks the frame.
void paintDrawing(QPainter& painter, const QRectF& rect, const QString& name, const Theme& theme,
                  const DrawingLook& look = {});

/// Its width and height in its own units. Throws as paintDrawing does.
[[nodiscard]] QSizeF drawingSize(const QString& name);
/// How many frames it has: 1 when it stands still. Throws as paintDrawing does.
[[nodiscard]] int framesOf(const QString& name);

[[nodiscard]] bool hasDrawing(const QString& name);
/// The names of a folder's drawings, sorted: "tools" gives "tools/block_180" and so on.
[[nodiscard]] QStringList drawingsIn(const QString& folder);

/// The text of a drawing with the drawings that it uses in their places. Throws as paintDrawing does.
[[nodiscard]] QString drawingText(const QString& name);

} // namespace strandbench
