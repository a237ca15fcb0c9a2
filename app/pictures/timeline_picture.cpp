// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/timeline_picture.h"

#include "pictures/picture_access.h"
#include "pictures/picture_text.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace strandbench {
namespace {

constexpr double rowMm = 5.0;  // of a line of text
constexpr double markMm = 1.6; // half of a mark's width
constexpr double swatchMm = 5.0;
constexpr double leastLaneMm = 3;
constexpr double mostLaneMm = 16; // a taller bar says no more

struct Legend {
    int look = 0;
    QRectF swatch;
    PictureText name;
};

struct Layout {
    QRectF planned; // lanes
    QRectF actual;
    QRectF marks;
    std::vector<PictureText> names;
    std::vector<std::pair<double, PictureText>> ticks;
    std::vector<Legend> legend;
    TextReport report;
    double from = 0;
    double to = 1;

    [[nodiscard]] double x(double minute) const
    {
        const double share = std::clamp((minute - from) / (to - from), 0.0, 1.0);
        return planned.left() + planned.width() * share;
    }
};

double widthOf(const Theme& theme, const QString& text)
{
    return lineSize(theme, text, Theme::size(TextRole::Small).leastMm).width();
}

/// The names of the parts that are shown, side by side in as many rows as they need; the height that it took.
double placeLegend(Layout& layout, const TimePicture& picture, const QRectF& inner, const Theme& theme)
{
    std::set<int> shown;
    for (const auto* bars : {&picture.planned, &picture.actual})
        for (const TimeBar& each : *bars)
            shown.insert(each.look);
    for (const TimeMark& each : picture.marks)
        shown.insert(TimelinePicture::looks + static_cast<int>(each.shape)); // behind the parts
    const double row = theme.px(rowMm);
    double left = inner.left();
    int rows = shown.empty() ? 0 : 1;
    for (const int look : shown) {
        const QString& name = look < TimelinePicture::looks
                                  ? picture.looks.at(static_cast<std::size_t>(look))
                                  : picture.markNames.at(static_cast<std::size_t>(look - TimelinePicture::looks));
        const double width = widthOf(theme, name) + theme.px(0.5);
        if (left > inner.left() && left + theme.px(swatchMm + 1) + width > inner.right()) {
            left = inner.left();
            ++rows;
        }
        const double top = inner.bottom() + row * (rows - 2);
        layout.legend.push_back({look, QRectF(left, top + row * 0.15, theme.px(swatchMm), row * 0.7),
                                 fitLine(theme, name, QRectF(left + theme.px(swatchMm + 1), top, width, row),
                                         TextRole::Small, false, Qt::AlignLeft | Qt::AlignVCenter)});
        left += theme.px(swatchMm + 1) + width + theme.px(3);
    }
    for (Legend& each : layout.legend) {
        each.swatch.translate(0, -row * (rows - 1));
        each.name.place.translate(0, -row * (rows - 1));
    }
    return row * rows;
}

void placeTicks(Layout& layout, const TimePicture& picture, double top, const Theme& theme)
{
    constexpr std::array<double, 15> steps{1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080};
    const double widest = widthOf(theme, picture.clock(picture.from)) + theme.px(4);
    const double pixels = layout.planned.width() / (layout.to - layout.from);
    const auto step = std::ranges::find_if(steps, [&](double each) { return each * pixels >= widest; });
    if (step == steps.end())
        return;
    const double row = theme.px(rowMm);
    for (double at = std::ceil(picture.from / *step) * *step; at <= picture.to; at += *step) {
        const QString text = picture.clock(at);
        const double width = widthOf(theme, text) + theme.px(0.5);
        const double left = std::clamp(layout.x(at) - width / 2, layout.planned.left(), layout.planned.right() - width);
        layout.ticks.emplace_back(at, fitLine(theme, text, QRectF(left, top, width, row), TextRole::Small));
    }
}

Layout layOut(const QRectF& room, const TimePicture& picture, const Theme& theme)
{
    Layout layout;
    layout.from = picture.from;
    layout.to = std::max(picture.to, picture.from + 1);
    const QRectF inner = room.adjusted(theme.px(1), theme.px(0.5), -theme.px(1), -theme.px(0.5));
    const double row = theme.px(rowMm);
    const double legend = placeLegend(layout, picture, inner, theme);
    double names = 0;
    for (const QString& each : {picture.plannedName, picture.actualName, picture.marksName})
        names = std::max(names, widthOf(theme, each));
    const double left = inner.left() + names + theme.px(2);
    const double bottom = inner.bottom() - legend - theme.px(1) - row;
    const double marks = std::max(row, theme.px(2 * markMm + 1) * 1.0);
    const double lane = std::clamp((bottom - inner.top() - marks - theme.px(3)) / 2, theme.px(leastLaneMm) * 1.0,
                                   theme.px(mostLaneMm) * 1.0);
    layout.planned = QRectF(left, inner.top(), inner.right() - left - theme.px(1), lane);
    layout.actual = layout.planned.translated(0, lane + theme.px(1.5));
    layout.marks = QRectF(left, layout.actual.bottom() + theme.px(1), layout.planned.width(), marks);
    const auto name = [&](const QString& text, const QRectF& lane_) {
        layout.names.push_back(fitLine(theme, text,
                                       QRectF(inner.left(), lane_.center().y() - row / 2, names + theme.px(0.5), row),
                                       TextRole::Small, true, Qt::AlignLeft | Qt::AlignVCenter));
    };
    name(picture.plannedName, layout.planned);
    name(picture.actualName, layout.actual);
    name(picture.marksName, layout.marks);
    if (picture.clock)
        placeTicks(layout, picture, layout.marks.bottom() + theme.px(0.5), theme);
    for (const PictureText& each : layout.names)
        layout.report.add(each);
    for (const auto& [at, text] : layout.ticks)
        layout.report.add(text);
    for (const Legend& each : layout.legend)
        layout.report.add(each.name);
    return layout;
}

/// A ground and a hatch, so that no two parts look alike in black and white.
struct Look {
    Role ground;
    Qt::BrushStyle hatch;
};

Look lookOf(int look)
{
    constexpr std::array<Look, TimelinePicture::looks> all{{
        {Role::Card, Qt::NoBrush},              // assess
        {Role::LaminateFill, Qt::BDiagPattern}, // prepare
        {Role::FillerFill, Qt::SolidPattern},   // lay
        {Role::Card, Qt::Dense6Pattern},        // wait
        {Role::SmcFill, Qt::CrossPattern},      // sand
        {Role::MetalFill, Qt::HorPattern},      // turn
        {Role::FinishFill, Qt::FDiagPattern},   // finish
    }};
    return all.at(static_cast<std::size_t>(std::clamp(look, 0, TimelinePicture::looks - 1)));
}

void paintPart(QPainter& painter, const QRectF& place, int look, const Theme& theme)
{
    const Look of = lookOf(look);
    painter.fillRect(place, theme.color(of.ground));
    const QColor ink = theme.color(Role::Ink);
    if (of.hatch != Qt::NoBrush && of.hatch != Qt::SolidPattern)
        painter.fillRect(place, QBrush(ink, of.hatch));
    painter.setPen(QPen(ink, of.hatch == Qt::SolidPattern ? theme.px(0.5) : std::max(1.0, theme.px(0.2) * 1.0)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place);
}

void paintLane(QPainter& painter, const Layout& layout, const QRectF& lane, const std::vector<TimeBar>& bars,
               const Theme& theme)
{
    painter.fillRect(lane, theme.color(Role::Ground));
    for (const TimeBar& each : bars) {
        if (each.to <= layout.from || each.from >= layout.to)
            continue;
        const double left = layout.x(each.from);
        paintPart(painter, QRectF(left, lane.top(), std::max(1.0, layout.x(each.to) - left), lane.height()), each.look,
                  theme);
    }
}

void paintMark(QPainter& painter, const QPointF& at, TimeMarkShape shape, const Theme& theme)
{
    const double half = theme.px(markMm);
    painter.setPen(QPen(theme.color(Role::Ink), std::max(1.0, theme.px(0.25) * 1.0)));
    QPolygonF outline;
    if (shape == TimeMarkShape::Diamond)
        outline << at + QPointF(0, -half) << at + QPointF(half, 0) << at + QPointF(0, half) << at + QPointF(-half, 0);
    else if (shape == TimeMarkShape::Square)
        outline << at + QPointF(-half, -half) << at + QPointF(half, -half) << at + QPointF(half, half)
                << at + QPointF(-half, half);
    else
        outline << at + QPointF(0, -half) << at + QPointF(half, half) << at + QPointF(-half, half);
    painter.setBrush(theme.color(shape == TimeMarkShape::Triangle ? Role::Caution : Role::Card));
    painter.drawPolygon(outline);
}

void paintMarks(QPainter& painter, const Layout& layout, const std::vector<TimeMark>& marks, const Theme& theme)
{
    for (const TimeMark& each : marks) {
        if (each.at < layout.from || each.at > layout.to)
            continue;
        const double x = layout.x(each.at);
        painter.setPen(QPen(theme.color(Role::SoftEdge), std::max(1.0, theme.px(0.2) * 1.0)));
        painter.drawLine(QPointF(x, layout.actual.bottom()), QPointF(x, layout.marks.top()));
        paintMark(painter, {x, layout.marks.center().y()}, each.shape, theme);
    }
}

void paintAxis(QPainter& painter, const Layout& layout, const Theme& theme)
{
    painter.setPen(QPen(theme.color(Role::Edge), std::max(1.0, theme.px(0.2) * 1.0)));
    for (const auto& [at, text] : layout.ticks)
        painter.drawLine(QPointF(layout.x(at), layout.planned.top()), QPointF(layout.x(at), layout.marks.bottom()));
}

} // namespace

TimelinePicture::TimelinePicture(const Theme& theme, const QString& name, QWidget* parent)
    : QWidget(parent), m_theme(theme)
{
    sayIsPicture(*this);
    setObjectName(name);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void TimelinePicture::setPicture(TimePicture picture)
{
    m_picture = std::move(picture);
    update();
}

bool TimelinePicture::textFits() const { return layOut(rect(), m_picture, m_theme).report.fits; }

double TimelinePicture::smallestTextMm() const { return layOut(rect(), m_picture, m_theme).report.smallestMm; }

QSize TimelinePicture::minimumSizeHint() const { return {m_theme.px(70), m_theme.px(28)}; }

void TimelinePicture::paintEvent(QPaintEvent*)
{
    const Layout layout = layOut(rect(), m_picture, m_theme);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintAxis(painter, layout, m_theme);
    paintLane(painter, layout, layout.planned, m_picture.planned, m_theme);
    paintLane(painter, layout, layout.actual, m_picture.actual, m_theme);
    painter.setPen(QPen(m_theme.color(Role::Stop), m_theme.px(0.8)));
    for (const TimeBar& each : m_picture.parked)
        if (each.to > layout.from && each.from < layout.to)
            painter.drawLine(QPointF(layout.x(each.from), layout.actual.center().y()),
                             QPointF(layout.x(each.to), layout.actual.center().y()));
    paintMarks(painter, layout, m_picture.marks, m_theme);
    for (const PictureText& each : layout.names)
        drawText(painter, each, m_theme.color(Role::Ink));
    for (const auto& [at, text] : layout.ticks)
        drawText(painter, text, m_theme.color(Role::MutedInk));
    for (const Legend& each : layout.legend) {
        if (each.look < looks)
            paintPart(painter, each.swatch, each.look, m_theme);
        else
            paintMark(painter, each.swatch.center(), static_cast<TimeMarkShape>(each.look - looks), m_theme);
        drawText(painter, each.name, m_theme.color(Role::Ink));
    }
}

} // namespace strandbench
