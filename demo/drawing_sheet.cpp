// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawing_sheet.h"

#include "pictures/drawing.h"

#include <QImage>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int width = 2000;
constexpr int cellHeight = 150;
constexpr int caption = 26;
constexpr int gap = 8;

QStringList everyDrawing()
{
    QStringList names;
    for (const QString& folder : {u"substrates"_s, u"damages"_s, u"steps"_s, u"acts"_s, u"tools"_s, u"cautions"_s,
                                  u"iso"_s, u"ghs"_s, u"signs"_s})
        names += drawingsIn(folder);
    return names;
}

/// Where each stands: side by side as long as there is room.
std::vector<QRectF> laidOut(const QStringList& names)
{
    std::vector<QRectF> boxes;
    double x = gap;
    double y = gap;
    for (const QString& name : names) {
        const QSizeF size = drawingSize(name);
        const double across = size.width() / size.height() * (cellHeight - caption) * framesOf(name);
        if (x + across > width - gap) {
            x = gap;
            y += cellHeight + gap;
        }
        boxes.emplace_back(x, y, across, cellHeight);
        x += across + gap;
    }
    return boxes;
}

void paintOne(QPainter& painter, const QRectF& box, const QString& name, const Theme& theme)
{
    const int frames = framesOf(name);
    const double across = box.width() / frames;
    for (int frame = 1; frame <= frames; ++frame)
        paintDrawing(painter, QRectF(box.left() + (frame - 1) * across, box.top(), across, cellHeight - caption), name,
                     theme, {std::nullopt, frame});
    painter.setPen(theme.color(Role::Ink));
    painter.drawText(QRectF(box.left(), box.bottom() - caption, box.width(), caption), Qt::AlignCenter,
                     name.section(u'/', 1));
}

} // namespace

bool writeDrawingSheet(const QString& file, const Theme& theme)
{
    const QStringList names = everyDrawing();
    const std::vector<QRectF> boxes = laidOut(names);
    QImage page(width, qRound(boxes.back().bottom()) + gap, QImage::Format_RGB32);
    page.fill(theme.color(Role::Card));
    QPainter painter(&page);
    painter.setFont(theme.font(2.2));
    for (qsizetype i = 0; i < names.size(); ++i)
        paintOne(painter, boxes[static_cast<std::size_t>(i)], names[i], theme);
    painter.end();
    return page.save(file);
}

} // namespace strandbench
