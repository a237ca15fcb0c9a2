// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/puddle_layout.h"

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

constexpr double beadHighMm = 5.0; // about what 23 mg/mm of paste is across
constexpr double rowMm = 5.6;
constexpr double borderMm = 1.5;

/// Edge to edge first, then what is left below, as the bead is laid on the board.
void layRuns(PuddleLayout& layout, double scale, double beadMm, const Theme& theme)
{
    const double across = layout.puddle.width();
    const double high = std::min(theme.metrics().pixelsPerMillimetre() * beadHighMm, 0.09 * across + 2);
    std::vector<double> lengths;
    for (double left = beadMm * scale; left > 0.5; left -= across)
        lengths.push_back(std::min(left, across));
    const double pitch = 1.7 * high;
    double y = layout.puddle.center().y(); // edge to edge is through the middle
    for (const double length : lengths) {
        layout.runs.emplace_back(std::round(layout.puddle.center().x() - length / 2), y - high / 2, length, high);
        y += pitch;
    }
}

double labelWidth(const Theme& theme, const PuddleLabels& labels)
{
    const double em = Theme::size(TextRole::Body).leastMm;
    const double sign = theme.px(rowMm + 1);
    return std::max(lineSize(theme, labels.trueSize, em, true).width(),
                    sign + lineSize(theme, labels.puddle, em).width());
}

void placeFigures(PuddleLayout& layout, const QRectF& column, const PuddleLabels& labels, const Theme& theme)
{
    const double row = theme.px(rowMm);
    layout.heading = fitLine(theme, labels.trueSize, QRectF(column.topLeft(), QSizeF(column.width(), row)),
                             TextRole::Body, true, Qt::AlignLeft | Qt::AlignVCenter);
    layout.puddleSign = QRectF(column.left(), column.top() + row * 1.3, row, row);
    const QRectF place(layout.puddleSign.right() + theme.px(1), layout.puddleSign.top(),
                       column.right() - layout.puddleSign.right() - theme.px(1), row);
    layout.puddleLabel = fitLine(theme, labels.puddle, place, TextRole::Body, false, Qt::AlignLeft | Qt::AlignVCenter);
}

/// The figure of the bead, under its last run.
void placeBeadLabel(PuddleLayout& layout, const QRectF& room, const PuddleLabels& labels, const Theme& theme)
{
    if (layout.runs.empty())
        return;
    const double y = layout.runs.back().bottom() + theme.px(3.4);
    const double width = lineSize(theme, labels.bead, Theme::size(TextRole::Body).preferredMm, true).width();
    QRectF place(0, y, width, theme.px(rowMm));
    place.moveCenter(QPointF(layout.runs.front().center().x(), place.center().y()));
    layout.beadLabel = fitLine(theme, labels.bead, place.intersected(room), TextRole::Body, true);
}

bool placeTrue(PuddleLayout& layout, const QRectF& room, const Mix& mix, const PuddleLabels& labels, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const double across = inMillimetres(mix.puddle) * ppmm;
    const double column = labelWidth(theme, labels) + theme.px(3);
    const bool beside = across <= room.height() && across + column <= room.width();
    const double above = 2.6 * theme.px(rowMm);
    if (!beside && (across > room.width() || across + above > room.height()))
        return false;
    layout.trueSize = true;
    const QRectF free = beside ? room.adjusted(column, 0, 0, 0) : room.adjusted(0, above, 0, 0);
    layout.puddle = QRectF(0, 0, across, across);
    // In the middle of the room when the words leave it free, else in what they leave.
    const bool middle = beside && room.center().x() - across / 2 >= room.left() + column;
    layout.puddle.moveCenter(middle ? room.center() : free.center());
    // On whole pixels, so that no edge is smeared over two.
    layout.puddle.moveTopLeft(QPointF(std::round(layout.puddle.left()), std::round(layout.puddle.top())));
    placeFigures(
        layout,
        beside ? QRectF(room.topLeft(), QSizeF(layout.puddle.left() - room.left() - theme.px(2), room.height())) : room,
        labels, theme);
    layRuns(layout, ppmm, inMillimetres(mix.bead), theme);
    placeBeadLabel(layout, room, labels, theme);
    layout.puddleMm = theme.metrics().mm(layout.puddle.width());
    return true;
}

/// How a ruler is divided: a mark each step, a longer one each few, the longest each whole, with its figure.
struct RulerScale {
    Length step;
    int half;      ///< steps
    int whole;     ///< steps
    int counts;    ///< what a whole counts
    int mostBelow; ///< wholes; from so many on every second figure is left out
};

RulerScale scaleOf(UnitSystem units)
{
    return units == UnitSystem::UsCustomary ? RulerScale{inches(0.125), 4, 8, 1, 6}
                                            : RulerScale{millimetres(1), 5, 10, 10, 6};
}

void placeRuler(PuddleLayout& layout, UnitSystem units, const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const double start = layout.arcCircle.left();
    layout.rulerY = layout.arcRoom.center().y();
    const RulerScale scale = scaleOf(units);
    const double step = inMillimetres(scale.step) * ppmm;
    const int steps = static_cast<int>(std::floor((layout.arcRoom.right() - start) / step));
    const double em = Theme::size(TextRole::Small).leastMm;
    const int labelled = scale.whole * (steps >= scale.mostBelow * scale.whole ? 2 : 1);
    for (int i = 0; i <= steps; ++i) {
        const bool whole = i % scale.whole == 0;
        RulerTick tick{start + i * step, ppmm * (whole ? 4.5 : i % scale.half == 0 ? 3.2 : 1.8), {}};
        const QString figure = QString::number(i / scale.whole * scale.counts);
        const double width = lineSize(theme, figure, em).width();
        const double left = std::max(tick.x - width / 2, layout.arcRoom.left());
        if (i % labelled == 0 && i > 0 && left + width <= layout.arcRoom.right())
            tick.figure =
                fitLine(theme, figure, QRectF(left, layout.rulerY + ppmm * 5, width, theme.px(rowMm)), TextRole::Small);
        layout.ticks.push_back(tick);
    }
}

/// The bead below the drawings: it at least can be copied from the glass.
void placeTrueBead(PuddleLayout& layout, const QRectF& room, double beadPixels, const PuddleLabels& labels,
                   const Theme& theme)
{
    const double row = theme.px(rowMm);
    const double high = theme.metrics().pixelsPerMillimetre() * beadHighMm;
    layout.trueBead = QRectF(std::round(room.left()), room.bottom() - high - theme.px(0.5), beadPixels, high);
    const QRectF onBead = layout.trueBead.adjusted(0, -theme.px(0.2), 0, theme.px(0.2));
    layout.beadLabel = fitLine(theme, labels.bead, onBead, TextRole::Body, true);
    if (layout.beadLabel.fits)
        return;
    const double left = layout.trueBead.right() + theme.px(2);
    layout.beadLabel =
        fitLine(theme, labels.bead, QRectF(left, layout.trueBead.center().y() - row / 2, room.right() - left, row),
                TextRole::Body, true, Qt::AlignLeft | Qt::AlignVCenter);
}

void placeReduced(PuddleLayout& layout, const QRectF& room, const Mix& mix, const PuddleLabels& labels,
                  const Theme& theme)
{
    const double ppmm = theme.metrics().pixelsPerMillimetre();
    const double row = theme.px(rowMm);
    const double beadPixels = inMillimetres(mix.bead) * ppmm;
    const QSizeF figureOnBead = lineSize(theme, labels.bead, Theme::size(TextRole::Body).leastMm, true);
    const bool beadFits = beadPixels > 0 && std::max(beadPixels, figureOnBead.width()) <= room.width();
    QRectF rest = room;
    if (beadFits) {
        placeTrueBead(layout, room, beadPixels, labels, theme);
        rest.setBottom(layout.trueBead.top() - theme.px(2.5));
    }
    const double reducedWidth = std::max({0.42 * rest.width(), lineSize(theme, labels.notTrueSize, 3.4).width() * 1.0});
    const QRectF right(rest.right() - reducedWidth, rest.top(), reducedWidth, rest.height());
    layout.heading =
        fitLine(theme, labels.trueSize, QRectF(rest.left(), rest.top(), right.left() - rest.left() - theme.px(3), row),
                TextRole::Body, true, Qt::AlignLeft | Qt::AlignVCenter);
    layout.arcRoom = QRectF(rest.left(), rest.top() + row + theme.px(1), right.left() - rest.left() - theme.px(4),
                            rest.height() - row - theme.px(1));
    const double across = inMillimetres(mix.puddle) * ppmm;
    layout.arcCircle =
        QRectF(layout.arcRoom.left() + theme.px(1), layout.arcRoom.center().y() - across / 2, across, across);
    placeRuler(layout, labels.ruler, theme);
    layout.reduced =
        fitLine(theme, labels.notTrueSize, QRectF(right.topLeft(), QSizeF(right.width(), row)), TextRole::Body);
    const double labelRows = beadFits ? row : 2 * row;
    const double small = std::max(1.0, std::min(right.width(), right.height() - row - labelRows - theme.px(2)));
    layout.puddle = QRectF(right.center().x() - small / 2, right.top() + row + theme.px(0.5), small, small);
    const double figure = lineSize(theme, labels.puddle, Theme::size(TextRole::Body).preferredMm).width();
    const double line = row + theme.px(1) + figure;
    layout.puddleSign = QRectF(right.center().x() - line / 2, layout.puddle.bottom() + theme.px(0.8), row, row);
    layout.puddleLabel = fitLine(theme, labels.puddle,
                                 QRectF(layout.puddleSign.right() + theme.px(1), layout.puddleSign.top(), figure, row),
                                 TextRole::Body, false, Qt::AlignLeft | Qt::AlignVCenter);
    layRuns(layout, small / inMillimetres(mix.puddle), inMillimetres(mix.bead), theme);
    if (!beadFits)
        layout.beadLabel =
            fitLine(theme, labels.bead, QRectF(right.left(), layout.puddleSign.bottom(), right.width(), row),
                    TextRole::Body, true);
    layout.puddleMm = theme.metrics().mm(small);
}

} // namespace

TextReport PuddleLayout::report() const
{
    TextReport report;
    for (const PictureText* each : {&heading, &reduced, &puddleLabel, &beadLabel})
        report.add(*each);
    for (const RulerTick& each : ticks)
        report.add(each.figure);
    return report;
}

PuddleLayout layOutPuddle(const QRectF& room, const Mix& mix, const PuddleLabels& labels, const Theme& theme)
{
    PuddleLayout layout;
    const double border = theme.px(borderMm);
    const QRectF inner = room.adjusted(border, border, -border, -border);
    if (inMillimetres(mix.puddle) <= 0 || inner.isEmpty())
        return layout;
    if (!placeTrue(layout, inner, mix, labels, theme))
        placeReduced(layout, inner, mix, labels, theme);
    double bead = 0;
    for (const QRectF& run : layout.runs)
        bead += run.width();
    layout.beadMm = theme.metrics().mm(layout.trueBead.isEmpty() ? bead : layout.trueBead.width());
    return layout;
}

} // namespace strandbench
