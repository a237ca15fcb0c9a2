// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/section_layout.h"

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

constexpr double rowMm = 5.6;   // a row of text beside the drawing
constexpr double spineMm = 4.0; // between the leaders of two callouts

/// Scale by width; depth as many times as the room allows, in halves; less width when even once is too deep.
void setScale(SectionLayout& layout, const QRectF& room)
{
    const SectionShape& shape = layout.shape;
    const double width = 2 * shape.reach;
    const double depth = std::max(0.1, shape.bottom - shape.top);
    double across = room.width() / width;
    layout.exaggeration = std::floor(2 * room.height() / (depth * across)) / 2;
    layout.exaggeration = std::clamp(layout.exaggeration, 1.0, greatestExaggeration);
    across = std::min(across, room.height() / (depth * layout.exaggeration));
    const double down = across * layout.exaggeration;
    QTransform place;
    place.translate(room.center().x(), room.center().y());
    place.scale(across, layout.turned ? -down : down);
    place.translate(0, -(shape.top + shape.bottom) / 2);
    layout.toPixels = place;
}

/// The widest rectangle of a text's height in the middle of a slab.
QRectF roomIn(const QPainterPath& slab, double height)
{
    const QRectF box = slab.boundingRect();
    QPainterPath band;
    band.addRect(QRectF(box.left(), box.center().y() - height / 2, box.width(), height));
    const QPainterPath cut = slab.intersected(band);
    double left = box.left();
    double right = box.right();
    for (int i = 0; i < cut.elementCount(); ++i) {
        const QPainterPath::Element& at = cut.elementAt(i);
        if (at.x < box.center().x())
            left = std::max(left, at.x);
        else
            right = std::min(right, at.x);
    }
    return {QPointF(left, box.center().y() - height / 2), QPointF(right, box.center().y() + height / 2)};
}

QString labelOf(const SectionSlab& slab, const SectionLabels& labels)
{
    if (slab.lift < 0)
        return labels.finish;
    return slab.lift < labels.lifts.size() ? labels.lifts.at(slab.lift) : QString();
}

/// Labels that fit their slab go into it; returns the slabs whose labels must stand outside.
std::vector<int> placeInside(SectionLayout& layout, const SectionLabels& labels, const Theme& theme)
{
    std::vector<int> outside;
    layout.inside.clear();
    const double leastEm = Theme::size(TextRole::Body).leastMm;
    for (std::size_t i = 0; i < layout.shape.slabs.size(); ++i) {
        const SectionSlab& slab = layout.shape.slabs[i];
        const QString label = labelOf(slab, labels);
        if (label.isEmpty() || slab.area.isEmpty())
            continue;
        const QPainterPath drawn = layout.toPixels.map(slab.area);
        const QSizeF least = lineSize(theme, label, leastEm, true);
        const double height = std::min(drawn.boundingRect().height(), least.height() * 1.3);
        const QRectF room = roomIn(drawn, height).adjusted(theme.px(1.5), 0, -theme.px(1.5), 0);
        const PictureText text = fitLine(theme, label, room, TextRole::Body, true);
        if (text.fits && slab.lift >= 0)
            layout.inside.push_back({text, static_cast<int>(i)});
        else
            outside.push_back(static_cast<int>(i));
    }
    // A leader to a deep slab would run through the words in a shallower one: those go outside too.
    const auto depth = [&](int i) {
        return layout.toPixels.mapRect(layout.shape.slabs[static_cast<std::size_t>(i)].area.boundingRect())
            .center()
            .y();
    };
    double deepest = -1e9;
    for (const int each : outside)
        deepest = std::max(deepest, depth(each));
    for (const SectionInside& each : layout.inside)
        if (depth(each.slab) < deepest)
            outside.push_back(each.slab);
    std::erase_if(layout.inside, [&](const SectionInside& each) { return depth(each.slab) < deepest; });
    return outside;
}

/// Rows above the drawing, the top one's leader furthest left, so that no leader crosses another's text.
void placeCallouts(SectionLayout& layout, const std::vector<int>& slabs, const SectionLabels& labels,
                   const QRectF& room, const Theme& theme)
{
    layout.callouts.clear();
    const double row = theme.px(rowMm);
    const double spine = theme.px(spineMm);
    std::vector<int> order = slabs; // the finish first, then from the surface down: shallow slabs are wide
    std::sort(order.begin(), order.end(), [&](int a, int b) {
        const auto depth = [&](int i) {
            return layout.toPixels.mapRect(layout.shape.slabs[static_cast<std::size_t>(i)].area.boundingRect())
                .center()
                .y();
        };
        return depth(a) < depth(b);
    });
    double x = layout.toPixels.map(QPointF(0, 0)).x() + spine;
    double lowerText = room.right();               // where the words of the row below begin
    for (std::size_t k = order.size(); k-- > 0;) { // from the lowest row up, each leader left of the words below
        const SectionSlab& slab = layout.shape.slabs[static_cast<std::size_t>(order[k])];
        const QRectF box = layout.toPixels.mapRect(slab.area.boundingRect());
        const QString label = labelOf(slab, labels);
        const double width = lineSize(theme, label, Theme::size(TextRole::Body).leastMm).width();
        const double beside = theme.px(2);
        const double inset = 0.15 * box.width(); // a slanted slab is not full at its ends
        x = std::min({x - spine, lowerText - theme.px(1.5), room.right() - width - beside});
        x = std::clamp(x, box.left() + inset, box.right() - inset);
        // Words too long to stand right of their leader stand over it.
        const double left = std::max(room.left(), std::min(x + beside, room.right() - width));
        const QRectF place(left, room.top() + row * static_cast<double>(k), room.right() - left, row);
        SectionCallout callout;
        callout.text = fitLine(theme, label, place, TextRole::Body, false, Qt::AlignLeft | Qt::AlignVCenter);
        const bool over = left < x + beside / 2;
        callout.elbow = over ? QPointF(x, place.bottom() - theme.px(0.3)) : QPointF(x, place.center().y());
        callout.from = over ? callout.elbow : QPointF(left - theme.px(0.6), place.center().y());
        callout.to = QPointF(x, box.center().y());
        layout.callouts.push_back(callout);
        lowerText = left;
    }
}

void placeOpening(SectionLayout& layout, const SectionLabels& labels, const QRectF& row, const Theme& theme)
{
    const SectionShape& shape = layout.shape;
    const QPointF left = layout.toPixels.map(QPointF(-shape.opening / 2, shape.openingAt));
    const QPointF right = layout.toPixels.map(QPointF(shape.opening / 2, shape.openingAt));
    const double y = row.top() + theme.px(3);
    layout.openingLine = QLineF(left.x(), y, right.x(), y);
    layout.extensionFrom = left.y();
    layout.opening = fitLine(theme, labels.opening, QRectF(row.left(), y + theme.px(0.6), row.width(), theme.px(rowMm)),
                             TextRole::Body);
}

/// Rows that the note takes at its least size, whatever the exaggeration turns out to be.
int noteRows(const SectionLabels& labels, double width, const Theme& theme)
{
    if (!labels.exaggeration)
        return 0;
    const QString longest = labels.exaggeration(greatestExaggeration - 0.5);
    return lineSize(theme, longest, Theme::size(TextRole::Small).leastMm).width() <= width ? 1 : 2;
}

void placeNote(SectionLayout& layout, const QString& note, int rows, const QRectF& place, const Theme& theme)
{
    QStringList lines{note};
    if (rows == 2) { // broken at the space nearest to the middle
        const qsizetype half = note.size() / 2;
        const qsizetype after = note.indexOf(u' ', half);
        const qsizetype before = note.lastIndexOf(u' ', half);
        const qsizetype at = after < 0 || (before >= 0 && half - before < after - half) ? before : after;
        if (at > 0)
            lines = {note.left(at), note.mid(at + 1)};
    }
    const double row = place.height() / rows;
    for (qsizetype i = 0; i < lines.size(); ++i)
        layout.note.push_back(fitLine(
            theme, lines.at(i), QRectF(place.left(), place.top() + row * static_cast<double>(i), place.width(), row),
            TextRole::Small, false, Qt::AlignLeft | Qt::AlignVCenter));
}

} // namespace

TextReport SectionLayout::report() const
{
    TextReport report;
    for (const SectionInside& each : inside)
        report.add(each.text);
    for (const SectionCallout& each : callouts)
        report.add(each.text);
    report.add(opening);
    for (const PictureText& each : note)
        report.add(each);
    return report;
}

SectionLayout layOutSection(const QRectF& room, const SectionDrawing& drawing, const Theme& theme)
{
    SectionLayout layout;
    layout.shape = shapeOf(drawing);
    layout.turned = drawing.progress.turned;
    const double border = std::max(1.0, theme.metrics().pixelsPerMillimetre() * 0.4);
    setScale(layout, room.adjusted(border, border, -border, -border));
    return layout;
}

SectionLayout layOutSection(const QRectF& room, const SectionDrawing& drawing, const SectionLabels& labels,
                            const Theme& theme)
{
    SectionLayout layout;
    layout.shape = shapeOf(drawing);
    layout.turned = drawing.progress.turned;
    const double row = theme.px(rowMm);
    const bool dimensioned = drawing.measured && !drawing.panelOnly && !labels.opening.isEmpty();
    QRectF rest = room.adjusted(theme.px(3), theme.px(1.5), -theme.px(3), -theme.px(1.5));
    const int notes = noteRows(labels, rest.width(), theme);
    const double noteHeight = notes == 2 ? 1.7 * row : row;
    const QRectF noteRow(rest.left(), rest.bottom() - noteHeight, rest.width(), noteHeight);
    if (labels.exaggeration)
        rest.setBottom(noteRow.top() - theme.px(0.5));
    const double dimensionHeight = dimensioned ? row + theme.px(5) : 0;
    std::vector<int> outside;
    // Fewer rows outside give a deeper drawing, which may take more labels in; rows only ever grow, so it ends.
    for (std::size_t rows = 0; rows <= layout.shape.slabs.size(); ++rows) {
        const double above = rows > 0 ? row * static_cast<double>(rows) + theme.px(2) : 0;
        QRectF middle = rest.adjusted(0, above, 0, -dimensionHeight);
        const double air = 0.05 * middle.height();
        setScale(layout, middle.adjusted(0, air, 0, -air));
        outside = placeInside(layout, labels, theme);
        if (outside.size() <= rows)
            break;
    }
    placeCallouts(layout, outside, labels, rest, theme);
    if (dimensioned) {
        const double bottom =
            layout.toPixels.mapRect(QRectF(0, layout.shape.top, 1, layout.shape.bottom - layout.shape.top)).bottom();
        placeOpening(layout, labels, QRectF(rest.left(), bottom + theme.px(0.5), rest.width(), dimensionHeight), theme);
    }
    if (labels.exaggeration)
        placeNote(layout, labels.exaggeration(layout.exaggeration), notes, noteRow, theme);
    return layout;
}

} // namespace strandbench
