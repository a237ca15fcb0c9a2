// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/bar_chart.h"

#include <QtCharts/QBarSeries>
#include <QtCharts/QBarSet>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int most = 8;      ///< bars; more are no picture any longer
constexpr int nameLines = 3; ///< below a bar
constexpr double nameGapMm = 1;
constexpr double legendMm = 5.5;
constexpr double swatchMm = 6;
constexpr double legendGapMm = 5;
constexpr double edgeMm = 2;
constexpr double lineMm = 0.7;
constexpr double outlineMm = 0.35;
constexpr double pointMm = 3.2;
constexpr double cap = 0.12; ///< half a whisker's end, in columns

} // namespace

BarChart::BarChart(const Theme& theme, const QString& name, BarFigure figure, QWidget* parent)
    : FigureChart(theme, name, parent),
      m_figure(std::move(figure)),
      m_percent{0, 100 * FigureAxis::marksRoom, 25,
                [](double at) { return QString::number(at) + QChar(0x00a0) + u'%'; }},
      m_across(addAxis(Qt::AlignBottom)),
      m_upright(addAxis(Qt::AlignLeft))
{
    if (!m_figure.line.isEmpty()) {
        m_right = addAxis(Qt::AlignRight);
        setAxis(*m_right, m_percent);
    }
    setAxis(*m_upright, m_figure.axis);
}

bool BarChart::namesFit(int count, double column) const
{
    for (int i = 0; i < count; ++i) {
        const BarFigure::Bar& bar = m_figure.bars[std::size_t(i)];
        for (const QString& word : bar.name.split(u' '))
            if (widthOf(word) > column)
                return false;
        if (widthOf(bar.label) > column)
            return false;
    }
    return namesHeight(count, column) < (nameLines + 0.5) * lineHeight();
}

double BarChart::namesHeight(int count, double column) const
{
    double highest = lineHeight();
    for (int i = 0; i < count; ++i)
        highest = std::max(highest, heightOf(m_figure.bars[std::size_t(i)].name, column));
    return highest;
}

int BarChart::barsThatFit(double width) const
{
    int count = std::min(most, static_cast<int>(m_figure.bars.size()));
    while (count > 1 && !namesFit(count, width / count - px(nameGapMm)))
        --count;
    return count;
}

void BarChart::arrange()
{
    const double left = ticksWidth(m_figure.axis);
    const double right = m_right ? ticksWidth(m_percent) : px(edgeMm);
    const double width = this->width() - left - right;
    const int shown = barsThatFit(width);
    const double below = namesHeight(shown, width / std::max(1, shown) - px(nameGapMm)) + px(nameGapMm);
    const double above = px(legendMm) + lineHeight();
    chart()->setPlotArea({left, above, width, std::max(1.0, height() - above - below)});
    if (std::exchange(m_shown, shown) != shown)
        makeSeries();
}

void BarChart::makeSeries()
{
    chart()->removeAllSeries();
    m_across->setRange(-0.5, m_shown - 0.5);
    if (!m_figure.sets.isEmpty())
        addBars();
    if (m_right)
        addLine();
    if (!m_figure.point.isEmpty())
        addPoints();
}

QBrush BarChart::brush(int set) const
{
    const bool hatched = m_figure.sets.size() > 1 && set == 0;
    return hatched ? QBrush(theme().color(Role::Ink), Qt::BDiagPattern) : QBrush(theme().color(Role::Action));
}

void BarChart::addBars()
{
    auto* series = new QBarSeries;
    series->setBarWidth(m_figure.sets.size() > 1 ? 0.7 : 0.5);
    for (int set = 0; set < m_figure.sets.size(); ++set) {
        auto* bars = new QBarSet(m_figure.sets.at(set), series);
        bars->setBrush(brush(set));
        bars->setPen(pen(Role::Ink, outlineMm));
        for (int i = 0; i < m_shown; ++i)
            bars->append(m_figure.bars[std::size_t(i)].heights.at(std::size_t(set)));
        series->append(bars);
    }
    attach(series, m_across, m_upright);
}

void BarChart::addLine()
{
    auto* line = new QLineSeries;
    auto* points = new QScatterSeries;
    for (int i = 0; i < m_shown; ++i)
        if (const auto upTo = m_figure.bars[std::size_t(i)].upTo) {
            line->append(i, *upTo);
            points->append(i, *upTo);
        }
    line->setPen(pen(Role::Ink, lineMm, Qt::DashLine));
    points->setMarkerShape(QScatterSeries::MarkerShapeCircle);
    points->setMarkerSize(px(pointMm));
    points->setBrush(theme().color(Role::Card));
    points->setPen(pen(Role::Ink, outlineMm));
    attach(line, m_across, m_right);
    attach(points, m_across, m_right);
}

void BarChart::addPoints()
{
    auto* points = new QScatterSeries;
    for (int i = 0; i < m_shown; ++i)
        if (const auto whisker = m_figure.bars[std::size_t(i)].whisker) {
            auto* line = new QLineSeries;
            line->append({{i - cap, whisker->low},
                          {i + cap, whisker->low},
                          {double(i), whisker->low},
                          {double(i), whisker->high},
                          {i - cap, whisker->high},
                          {i + cap, whisker->high}});
            line->setPen(pen(Role::Ink, lineMm));
            attach(line, m_across, m_upright);
            points->append(i, whisker->at);
        }
    points->setMarkerShape(QScatterSeries::MarkerShapeRotatedRectangle);
    points->setMarkerSize(px(pointMm * 1.4));
    points->setBrush(theme().color(Role::Action));
    points->setPen(pen(Role::Ink, outlineMm));
    attach(points, m_across, m_upright);
}

std::vector<BarChart::Sign> BarChart::legend() const
{
    std::vector<std::pair<Sign::Kind, QString>> all;
    for (int set = 0; set < m_figure.sets.size(); ++set)
        all.emplace_back(m_figure.sets.size() > 1 && set == 0 ? Sign::Kind::Hatched : Sign::Kind::Solid,
                         m_figure.sets.at(set));
    if (m_right)
        all.emplace_back(Sign::Kind::Line, m_figure.line);
    if (!m_figure.point.isEmpty())
        all.emplace_back(Sign::Kind::Point, m_figure.point);
    std::vector<Sign> signs;
    double x = px(edgeMm);
    const double height = px(legendMm);
    for (const auto& [kind, text] : all) {
        const QRectF box(x, height * 0.2, px(swatchMm), height * 0.6);
        const QRectF place(box.right() + px(1), 0, widthOf(text) + px(1), height);
        signs.push_back({kind, box, {text, place, Qt::AlignLeft | Qt::AlignVCenter}});
        x = place.right() + px(legendGapMm);
    }
    return signs;
}

void BarChart::drawSigns(QPainter& painter) const
{
    for (const Sign& each : legend()) {
        const QPointF middle = each.box.center();
        painter.setPen(pen(Role::Ink, outlineMm));
        painter.setBrush(Qt::NoBrush);
        switch (each.kind) {
        case Sign::Kind::Hatched:
            painter.setBrush(QBrush(theme().color(Role::Ink), Qt::BDiagPattern));
            painter.drawRect(each.box);
            break;
        case Sign::Kind::Solid:
            painter.setBrush(theme().color(Role::Action));
            painter.drawRect(each.box);
            break;
        case Sign::Kind::Line:
            painter.setPen(pen(Role::Ink, lineMm, Qt::DashLine));
            painter.drawLine(QPointF(each.box.left(), middle.y()), QPointF(each.box.right(), middle.y()));
            break;
        case Sign::Kind::Point:
            painter.setPen(pen(Role::Ink, lineMm));
            painter.drawLine(QPointF(middle.x(), each.box.top()), QPointF(middle.x(), each.box.bottom()));
            painter.setBrush(theme().color(Role::Action));
            painter.drawEllipse(middle, px(1), px(1));
            break;
        }
    }
}

std::vector<FigureChart::Name> BarChart::names() const
{
    std::vector<Name> names;
    if (m_shown == 0)
        return names;
    for (const Sign& each : legend())
        names.push_back(each.name);
    addTicks(names, m_figure.axis, true);
    if (m_right)
        addTicks(names, m_percent, false);
    const QRectF plot = chart()->plotArea();
    const double column = plot.width() / m_shown;
    for (int i = 0; i < m_shown; ++i) {
        const BarFigure::Bar& bar = m_figure.bars[std::size_t(i)];
        const double x = plot.left() + column * i + px(nameGapMm) / 2.0;
        const double width = column - px(nameGapMm);
        names.push_back({bar.name,
                         {x, plot.bottom() + px(nameGapMm), width, height() - plot.bottom() - px(nameGapMm)},
                         Qt::AlignHCenter | Qt::AlignTop});
        if (bar.label.isEmpty())
            continue;
        double top = bar.whisker ? bar.whisker->high : 0;
        for (const double each : bar.heights)
            top = std::max(top, each);
        const double y = plot.bottom() - top / m_figure.axis.most * plot.height();
        names.push_back({bar.label, {x, y - lineHeight() - 1, width, lineHeight()}});
    }
    const int left = static_cast<int>(m_figure.bars.size()) - m_shown;
    if (left > 0) { // beside the legend
        const double from = legend().back().name.place.right() + px(nameGapMm);
        names.push_back({m_figure.more(left),
                         {from, 0, plot.right() - from, double(px(legendMm))},
                         Qt::AlignRight | Qt::AlignVCenter});
    }
    return names;
}

} // namespace strandbench
