// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/dew_picture.h"

#include "pictures/axis_step.h"
#include "pictures/picture_access.h"
#include "pictures/picture_text.h"

#include <QPolygonF>

#include <algorithm>
#include <array>
#include <cmath>

namespace strandbench {
namespace {

constexpr double rowMm = 5.0;     // of a line of text
constexpr double markMm = 1.7;    // half of a mark's width
constexpr double hatchMm = 2.4;   // between two lines
constexpr double hour = 60;       // minutes
constexpr double markMinutes = 5; // kept free beside the first and the last

struct DewLayout {
    QRectF plot;
    double fromMinute = 0;
    double toMinute = 1;
    double lowest = 0; // degrees
    double highest = 1;
    std::vector<double> degrees; // of the lines across
    std::vector<PictureText> degreeTexts;
    std::vector<std::pair<double, PictureText>> minutes;
    PictureText least;
    PictureText below;
    TextReport report;

    [[nodiscard]] double x(double minute) const
    {
        return plot.left() + plot.width() * (minute - fromMinute) / (toMinute - fromMinute);
    }
    [[nodiscard]] double y(double degree) const
    {
        return plot.bottom() - plot.height() * (degree - lowest) / (highest - lowest);
    }
};

/// Whole hours around the readings, and degrees around them, the limit and nought.
void span(DewLayout& layout, const DewDay& day)
{
    const auto [first, last] =
        std::minmax_element(day.marks.begin(), day.marks.end(),
                            [](const DewMark& one, const DewMark& other) { return one.minute < other.minute; });
    layout.fromMinute = std::max(0.0, std::floor((first->minute - markMinutes) / hour) * hour);
    layout.toMinute = std::max(std::ceil((last->minute + markMinutes) / hour) * hour, layout.fromMinute + hour);
    layout.toMinute = std::min(layout.toMinute, 24 * hour);
    double low = 0;
    double high = 2 * day.least;
    for (const DewMark& each : day.marks) {
        low = std::min(low, each.margin);
        high = std::max(high, each.margin);
    }
    const double step = niceStep(high - low, 5);
    layout.lowest = std::floor(low / step) * step;
    layout.highest = std::ceil((high + 0.2 * step) / step) * step;
    for (double at = layout.lowest; at <= layout.highest + step / 2; at += step)
        layout.degrees.push_back(at);
}

void placeDegrees(DewLayout& layout, const DewDay& day, const QRectF& inner, const Theme& theme)
{
    double width = 0;
    for (const double at : layout.degrees)
        width = std::max(width, lineSize(theme, day.degrees(at), Theme::size(TextRole::Small).leastMm).width());
    const double row = theme.px(rowMm);
    layout.plot = QRectF(QPointF(inner.left() + width + theme.px(1.5), inner.top() + row / 2),
                         QPointF(inner.right() - theme.px(2), inner.bottom() - row - theme.px(1)));
    for (const double at : layout.degrees) {
        const QRectF place(inner.left(), layout.y(at) - row / 2, width, row);
        layout.degreeTexts.push_back(
            fitLine(theme, day.degrees(at), place, TextRole::Small, false, Qt::AlignRight | Qt::AlignVCenter));
    }
}

void placeMinutes(DewLayout& layout, const DewDay& day, const QRectF& inner, const Theme& theme)
{
    const auto widthOf = [&](double minute) {
        const QString text = day.minute(static_cast<int>(minute));
        return lineSize(theme, text, Theme::size(TextRole::Small).leastMm).width();
    };
    const double pixels = layout.plot.width() / (layout.toMinute - layout.fromMinute);
    const double widest = widthOf(layout.fromMinute) + theme.px(4);
    constexpr std::array<double, 8> steps{15, 30, 60, 120, 180, 240, 360, 720};
    const auto step = std::find_if(steps.begin(), steps.end(), [&](double each) { return each * pixels >= widest; });
    if (step == steps.end())
        return;
    const double row = theme.px(rowMm);
    for (double at = std::ceil(layout.fromMinute / *step) * *step; at <= layout.toMinute; at += *step) {
        const double width = widthOf(at);
        const double left = std::clamp(layout.x(at) - width / 2, layout.plot.left(), inner.right() - width);
        layout.minutes.emplace_back(at, fitLine(theme, day.minute(static_cast<int>(at)),
                                                QRectF(left, inner.bottom() - row, width, row), TextRole::Small));
    }
}

void placeNames(DewLayout& layout, const DewDay& day, const Theme& theme)
{
    const double row = theme.px(rowMm);
    const double left = layout.plot.left() + theme.px(2);
    const double width = layout.plot.width() - theme.px(4);
    const auto line = [&](const QString& text, double top, Qt::Alignment side) {
        return fitLine(theme, text, QRectF(left, top, width, row), TextRole::Small, true, side | Qt::AlignVCenter);
    };
    // At two ends: the field may be lower than a line of text.
    layout.least = line(day.leastName, layout.y(day.least) - row - theme.px(0.4), Qt::AlignLeft);
    layout.below = line(day.belowName, layout.plot.bottom() - row - theme.px(0.4), Qt::AlignRight);
}

DewLayout layOut(const QRectF& room, const DewDay& day, const Theme& theme)
{
    DewLayout layout;
    if (day.marks.empty())
        return layout;
    const QRectF inner = room.adjusted(theme.px(1), theme.px(0.5), -theme.px(1), -theme.px(0.5));
    span(layout, day);
    placeDegrees(layout, day, inner, theme);
    placeMinutes(layout, day, inner, theme);
    placeNames(layout, day, theme);
    for (const PictureText& each : layout.degreeTexts)
        layout.report.add(each);
    for (const auto& [at, text] : layout.minutes)
        layout.report.add(text);
    layout.report.add(layout.least);
    layout.report.add(layout.below);
    return layout;
}

void paintAxes(QPainter& painter, const DewLayout& layout, const Theme& theme)
{
    painter.setPen(QPen(theme.color(Role::SoftEdge), std::max(1.0, theme.px(0.25) * 1.0)));
    for (const double at : layout.degrees)
        painter.drawLine(QPointF(layout.plot.left(), layout.y(at)), QPointF(layout.plot.right(), layout.y(at)));
    painter.setPen(QPen(theme.color(Role::Edge), std::max(1.0, theme.px(0.3) * 1.0)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(layout.plot);
    for (const auto& [at, text] : layout.minutes)
        painter.drawLine(QPointF(layout.x(at), layout.plot.bottom()),
                         QPointF(layout.x(at), layout.plot.bottom() + theme.px(1)));
}

/// The hatched field below the limit, and its line.
void paintField(QPainter& painter, const DewLayout& layout, double least, const Theme& theme)
{
    const QRectF field(QPointF(layout.plot.left(), layout.y(least)), layout.plot.bottomRight());
    painter.save();
    painter.setClipRect(field);
    QColor hatch = theme.color(Role::Stop);
    hatch.setAlphaF(0.35F);
    painter.setPen(QPen(hatch, std::max(1.0, theme.px(0.3) * 1.0)));
    for (double x = field.left() - field.height(); x < field.right(); x += theme.px(hatchMm))
        painter.drawLine(QPointF(x, field.bottom()), QPointF(x + field.height(), field.top()));
    painter.restore();
    painter.setPen(QPen(theme.color(Role::Stop), theme.px(0.6), Qt::DashDotLine, Qt::FlatCap));
    painter.drawLine(field.topLeft(), field.topRight());
}

void paintOnPlate(QPainter& painter, const PictureText& text, const Theme& theme)
{
    const double pad = theme.px(0.8);
    painter.fillRect(inkOf(text).adjusted(-pad, 0, pad, 0), theme.color(Role::Card));
    drawText(painter, text, theme.color(Role::Ink));
}

void paintMark(QPainter& painter, const QPointF& at, bool below, const Theme& theme)
{
    const double half = theme.px(markMm);
    const double pen = std::max(1.0, theme.px(0.5) * 1.0);
    if (below) {
        painter.setPen(QPen(theme.color(Role::Card), pen));
        painter.setBrush(theme.color(Role::Stop));
        painter.drawPolygon(QPolygonF{at + QPointF(-half, -half), at + QPointF(half, -half), at + QPointF(0, half)});
        return;
    }
    painter.setPen(QPen(theme.color(Role::Ink), pen));
    painter.setBrush(theme.color(Role::Card));
    painter.drawEllipse(at, half, half);
}

} // namespace

DewPicture::DewPicture(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    installPictureAccess();
}

void DewPicture::setDay(DewDay day)
{
    m_day = std::move(day);
    update();
}

bool DewPicture::textFits() const { return layOut(rect(), m_day, m_theme).report.fits; }

double DewPicture::smallestTextMm() const { return layOut(rect(), m_day, m_theme).report.smallestMm; }

QSize DewPicture::minimumSizeHint() const { return {m_theme.px(60), m_theme.px(34)}; }

void DewPicture::paintEvent(QPaintEvent*)
{
    const DewLayout layout = layOut(rect(), m_day, m_theme);
    if (m_day.marks.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintAxes(painter, layout, m_theme);
    paintField(painter, layout, m_day.least, m_theme);
    QPolygonF line;
    for (const DewMark& each : m_day.marks)
        line << QPointF(layout.x(each.minute), layout.y(each.margin));
    painter.setPen(QPen(m_theme.color(Role::Ink), std::max(1.0, m_theme.px(0.4) * 1.0)));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line);
    paintOnPlate(painter, layout.least, m_theme);
    paintOnPlate(painter, layout.below, m_theme);
    for (const PictureText& each : layout.degreeTexts)
        drawText(painter, each, m_theme.color(Role::Ink));
    for (const auto& [at, text] : layout.minutes)
        drawText(painter, text, m_theme.color(Role::Ink));
    for (qsizetype i = 0; i < line.size(); ++i)
        paintMark(painter, line[i], m_day.marks[static_cast<std::size_t>(i)].below, m_theme);
}

} // namespace strandbench
