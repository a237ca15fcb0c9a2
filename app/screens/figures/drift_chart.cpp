// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/drift_chart.h"

#include "pictures/axis_step.h"

#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t mostRings = 100; ///< with more gels the line alone is drawn, and what is marked
constexpr double thinMm = 0.35;
constexpr double lineMm = 0.5;
constexpr double thickMm = 0.9;
constexpr double ringMm = 2.2;
constexpr double markMm = 4;
constexpr double gapMm = 1;
constexpr double columnMm = 14; ///< at least, for a number below

} // namespace

std::set<std::size_t> DriftChart::markedOf(const GelDrift& drift, Shows shows)
{
    std::set<std::size_t> marked;
    if (shows == Shows::Values) {
        for (const RunSignal& each : drift.runs)
            marked.insert(each.at);
        return marked;
    }
    for (std::size_t i = 0; i < drift.chart.movingRanges.size(); ++i)
        if (!drift.chart.rangeLimits.holds(drift.chart.movingRanges[i]))
            marked.insert(i + 1);
    return marked;
}

DriftChart::DriftChart(const Theme& theme, const QString& name, const GelDrift& drift, Shows shows, Names names,
                       QWidget* parent)
    : FigureChart(theme, name, parent),
      m_drift(drift),
      m_shows(shows),
      m_names(std::move(names)),
      m_across(addAxis(Qt::AlignBottom)),
      m_upright(addAxis(Qt::AlignLeft))
{
    const IndividualsChart& chart = drift.chart;
    if (shows == Shows::Values) {
        const auto [low, high] = std::ranges::minmax(chart.values);
        m_axis = FigureAxis::around(std::min({low, chart.limits.lower, drift.ewma.limits.lower}),
                                    std::max({high, chart.limits.upper, drift.ewma.limits.upper}), m_names.percent);
        addValues();
    } else {
        m_axis = FigureAxis::upTo(std::max({std::ranges::max(chart.movingRanges), chart.rangeLimits.upper, 0.01}),
                                  m_names.percent);
        addRanges();
    }
    setAxis(*m_upright, m_axis);
    m_across->setRange(0, double(chart.values.size()) + 1);
}

void DriftChart::add(const QList<QPointF>& points, const QPen& pen)
{
    auto* series = new QLineSeries;
    series->append(points);
    series->setPen(pen);
    attach(series, m_across, m_upright);
}

void DriftChart::addValues()
{
    QList<QPointF> values;
    QList<QPointF> averages;
    for (std::size_t i = 0; i < m_drift.chart.values.size(); ++i)
        values.append({double(i) + 1, m_drift.chart.values[i]});
    for (std::size_t i = 0; i < m_drift.ewma.averages.size(); ++i)
        averages.append({double(i), m_drift.ewma.averages[i]}); // the first is the sheet, before any gel
    add(values, pen(Role::MutedInk, thinMm));
    add(averages, pen(Role::Action, thickMm));
    addMarks(m_drift.chart.values, 1);
}

void DriftChart::addRanges()
{
    QList<QPointF> ranges;
    for (std::size_t i = 0; i < m_drift.chart.movingRanges.size(); ++i)
        ranges.append({double(i) + 2, m_drift.chart.movingRanges[i]});
    add(ranges, pen(Role::MutedInk, thinMm));
    addMarks(m_drift.chart.movingRanges, 2);
}

void DriftChart::addMarks(const std::vector<double>& values, double first)
{
    auto* rings = new QScatterSeries;
    auto* marks = new QScatterSeries;
    const std::set<std::size_t> marked = markedOf(m_drift, m_shows);
    for (std::size_t i = 0; i < values.size(); ++i) {
        const QPointF point(double(i) + first, values[i]);
        if (marked.contains(i + std::size_t(first) - 1))
            marks->append(point);
        else if (values.size() <= mostRings)
            rings->append(point);
    }
    rings->setMarkerShape(QScatterSeries::MarkerShapeCircle);
    rings->setMarkerSize(px(ringMm));
    rings->setBrush(theme().color(Role::Card));
    rings->setPen(pen(Role::Ink, thinMm));
    marks->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
    marks->setMarkerSize(px(markMm));
    marks->setBrush(theme().color(Role::Stop));
    marks->setPen(pen(Role::Ink, thinMm));
    attach(rings, m_across, m_upright);
    attach(marks, m_across, m_upright);
}

std::vector<DriftChart::Line> DriftChart::lines() const
{
    const auto said = [this](const QString& name, double at) { return name + u' ' + m_names.percent(at); };
    if (m_shows == Shows::Ranges) {
        const ControlLimits& limits = m_drift.chart.rangeLimits;
        return {{said(m_names.upper, limits.upper), limits.upper, Role::Stop, Qt::DashLine},
                {said(m_names.mean, limits.centre), limits.centre, Role::Ink, Qt::SolidLine}};
    }
    const ControlLimits& of = m_drift.chart.limits;
    const ControlLimits& ewma = m_drift.ewma.limits;
    return {{said(m_names.upper, of.upper), of.upper, Role::Stop, Qt::DashLine},
            {said(m_names.averageLimit, ewma.upper), ewma.upper, Role::Action, Qt::DotLine},
            {said(m_names.mean, of.centre), of.centre, Role::Ink, Qt::SolidLine},
            {said(m_names.averageLimit, ewma.lower), ewma.lower, Role::Action, Qt::DotLine},
            {said(m_names.lower, of.lower), of.lower, Role::Stop, Qt::DashLine}};
}

double DriftChart::yOf(double value) const
{
    const QRectF plot = chart()->plotArea();
    return plot.bottom() - (value - m_axis.least) / (m_axis.most - m_axis.least) * plot.height();
}

void DriftChart::arrange()
{
    double right = 0;
    for (const Line& each : lines())
        right = std::max(right, widthOf(each.name));
    if (m_shows == Shows::Values)
        right = std::max(right, widthOf(m_names.average));
    const double left = ticksWidth(m_axis);
    const double width = std::max(1.0, this->width() - left - right - px(3 * gapMm));
    const double above = lineHeight() * 1.3;
    const double below = lineHeight() + px(gapMm);
    chart()->setPlotArea({left, above, width, std::max(1.0, height() - above - below)});
    const double gels = double(m_drift.chart.values.size());
    m_step = std::max(1.0, niceStep(gels, std::max(1, int(width / px(columnMm)))));
}

std::vector<FigureChart::Name> DriftChart::lineNames() const
{
    const QRectF plot = chart()->plotArea();
    const double x = plot.right() + px(2 * gapMm);
    std::vector<std::pair<double, Name>> named;
    const auto add = [&](const QString& text, double at, Role ink) {
        named.push_back({yOf(at), {text, {x, 0, width() - x, lineHeight()}, Qt::AlignLeft | Qt::AlignVCenter, ink}});
    };
    for (const Line& each : lines())
        add(each.name, each.at, each.ink);
    if (m_shows == Shows::Values)
        add(m_names.average, m_drift.ewma.averages.back(), Role::Action);
    std::ranges::stable_sort(named, {}, [](const auto& each) { return each.first; });
    // Each below the one before; then, from the bottom, back up where they would leave the picture.
    double least = lineHeight() / 2;
    for (auto& [y, name] : named) {
        y = std::max(y, least);
        least = y + lineHeight();
    }
    double largest = height() - lineHeight() / 2;
    for (auto each = named.rbegin(); each != named.rend(); ++each) {
        each->first = std::min(each->first, largest);
        largest = each->first - lineHeight();
    }
    std::vector<Name> names;
    for (auto& [y, name] : named) {
        name.place.moveTop(y - lineHeight() / 2);
        names.push_back(name);
    }
    return names;
}

std::vector<FigureChart::Name> DriftChart::names() const
{
    std::vector<Name> names = lineNames();
    addTicks(names, m_axis, true);
    const QRectF plot = chart()->plotArea();
    const double gels = double(m_drift.chart.values.size());
    const double top = plot.bottom() + px(gapMm);
    names.push_back({m_names.gel, {0, top, plot.left(), lineHeight()}, Qt::AlignLeft | Qt::AlignVCenter});
    for (double at = m_step == 1 ? 1 : m_step; at <= gels; at += m_step) {
        const double x = plot.left() + at / (gels + 1) * plot.width();
        names.push_back({QString::number(at), {x - px(columnMm) / 2.0, top, double(px(columnMm)), lineHeight()}});
    }
    if (!markedOf(m_drift, m_shows).empty())
        names.push_back({m_names.marked,
                         {plot.left() + px(2 * markMm), 0, plot.width() - px(2 * markMm), lineHeight() * 1.2},
                         Qt::AlignLeft | Qt::AlignVCenter});
    return names;
}

void DriftChart::drawSigns(QPainter& painter) const
{
    const QRectF plot = chart()->plotArea();
    for (const Line& each : lines()) {
        painter.setPen(pen(each.ink, lineMm, each.style));
        painter.drawLine(QPointF(plot.left(), yOf(each.at)), QPointF(plot.right(), yOf(each.at)));
    }
    if (markedOf(m_drift, m_shows).empty())
        return;
    const double size = px(markMm) * 0.9;
    const QPointF middle(plot.left() + px(markMm), lineHeight() * 0.6);
    painter.setPen(pen(Role::Ink, thinMm));
    painter.setBrush(theme().color(Role::Stop));
    painter.drawPolygon(QPolygonF{{middle.x(), middle.y() - size / 2},
                                  {middle.x() + size / 2, middle.y() + size / 2},
                                  {middle.x() - size / 2, middle.y() + size / 2}});
}

} // namespace strandbench
