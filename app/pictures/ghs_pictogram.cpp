// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/ghs_pictogram.h"

#include "pictures/drawing.h"
#include "theme/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

void paintGhsPictogram(QPainter& painter, const QRectF& rect, GhsPictogram pictogram)
{
    // Whichever theme: its colours are the regulation's.
    static const Theme any(Metrics(1.0), DayNight::Day, Hand::Right);
    paintDrawing(painter, rect, u"ghs/"_s + codeOf(pictogram).toLower(), any);
}

void paintGhsPictograms(QPainter& painter, const QRectF& rect, const std::vector<GhsPictogram>& pictograms)
{
    if (pictograms.empty())
        return;
    const auto sizeIn = [&](std::size_t rows) {
        const std::size_t columns = (pictograms.size() + rows - 1) / rows;
        return std::min(rect.width() / static_cast<double>(columns), rect.height() / static_cast<double>(rows));
    };
    const std::size_t rows = sizeIn(2) > sizeIn(1) ? 2 : 1;
    const std::size_t columns = (pictograms.size() + rows - 1) / rows;
    const double size = sizeIn(rows);
    const QPointF corner =
        rect.center() - QPointF(size * static_cast<double>(columns), size * static_cast<double>(rows)) / 2;
    for (std::size_t i = 0; i < pictograms.size(); ++i) {
        const QPointF at(static_cast<double>(i % columns) * size, static_cast<double>(i / columns) * size);
        paintGhsPictogram(painter, {corner + at, QSizeF(size, size)}, pictograms[i]);
    }
}

} // namespace strandbench
