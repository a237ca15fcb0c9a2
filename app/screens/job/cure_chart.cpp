// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/cure_chart.h"

#include "pictures/axis_step.h"
#include "pictures/picture_access.h"

#include <QGraphicsLayout>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr double textMm = 3.6;
constexpr double lineMm = 0.6;
constexpr double thinMm = 0.35;

} // namespace

CureChart::CureChart(const Theme& theme, const Words& words, Names names, QWidget* parent)
    : QChartView(parent),
      m_theme(theme),
      m_words(words),
      m_names(std::move(names)),
      m_minutes(new QValueAxis(this)),
      m_degrees(new QValueAxis(this)),
      m_percent(new QValueAxis(this)),
      m_hottest(new QLineSeries(this)),
      m_face(new QLineSeries(this)),
      m_cured(new QLineSeries(this))
{
    sayIsPicture(*this);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::NoFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFrameShape(QFrame::NoFrame);
    setBackgroundBrush(theme.color(Role::Card));
    QChart* sheet = chart();
    sheet->setBackgroundVisible(false);
    sheet->legend()->hide(); // the curves are named where they run
    sheet->setMargins({theme.px(1), theme.px(textMm * 1.4), theme.px(1), theme.px(0.5)});
    sheet->layout()->setContentsMargins(0, 0, 0, 0);
    for (QValueAxis* axis : {m_minutes, m_degrees, m_percent}) {
        axis->setLabelsFont(theme.font(textMm));
        axis->setLabelsColor(theme.color(Role::Ink));
        axis->setLinePenColor(theme.color(Role::Edge));
        axis->setGridLineColor(theme.color(Role::SoftEdge));
        axis->setTickType(QValueAxis::TicksDynamic);
        axis->setTickAnchor(0);
    }
    m_percent->setGridLineVisible(false);
    m_percent->setRange(0, 100);
    m_percent->setTickInterval(25);
    m_percent->setLabelFormat(u"%.0f %%"_s);
    // Qt Charts' formats take plain ASCII alone: the degree's sign is drawn above the axis.
    m_degrees->setLabelFormat(u"%.0f"_s);
    m_minutes->setLabelFormat(u"%.0f min"_s);
    sheet->addAxis(m_minutes, Qt::AlignBottom);
    sheet->addAxis(m_degrees, Qt::AlignLeft);
    sheet->addAxis(m_percent, Qt::AlignRight);
    for (QWidget* part : findChildren<QWidget*>())
        part->setFocusPolicy(Qt::NoFocus); // the viewport too: there is nothing in it to go to
    const double thick = theme.px(lineMm);
    addSeries(m_hottest, m_degrees, QPen(theme.color(Role::Stop), thick * 1.6));
    addSeries(m_face, m_degrees, QPen(theme.color(Role::Ink), thick));
    addSeries(m_cured, m_percent, QPen(theme.color(Role::Action), thick, Qt::DashLine));
}

void CureChart::addSeries(QLineSeries* series, QValueAxis* upright, const QPen& pen)
{
    series->setPen(pen);
    chart()->addSeries(series);
    series->attachAxis(m_minutes);
    series->attachAxis(upright);
}

double CureChart::degrees(Temperature temperature) const
{
    return m_words.units() == UnitSystem::UsCustomary ? inFahrenheit(temperature) : inCelsius(temperature);
}

void CureChart::setResult(const CureResult& result, std::optional<Temperature> limit)
{
    m_result = result;
    m_limit = limit;
    draw();
}

void CureChart::resizeEvent(QResizeEvent* event)
{
    QChartView::resizeEvent(event);
    if (!m_result.curve.empty())
        draw();
}

int CureChart::partsOfTime(double lastMinute) const
{
    constexpr double plotOfWidth = 0.75; // the axes at the sides take the rest
    constexpr double labelWithGap = 1.6;
    constexpr int fewest = 2;
    constexpr int most = 6;
    const double label = QFontMetricsF(m_theme.font(textMm)).horizontalAdvance(u"%1 min"_s.arg(lastMinute, 0, 'f', 0));
    return std::clamp(int(viewport()->width() * plotOfWidth / (label * labelWithGap)), fewest, most);
}

void CureChart::draw()
{
    const CureResult& result = m_result;
    const Duration last =
        std::max({result.peakAt, result.sand.value_or(result.peakAt), result.gel.value_or(minutes(1))});
    const double step = niceStep(inMinutes(last) * 1.3, partsOfTime(inMinutes(last)));
    const double end = std::ceil(inMinutes(last) * 1.25 / step) * step;
    double coolest = degrees(result.peak);
    QList<QPointF> hottest;
    QList<QPointF> face;
    QList<QPointF> cured;
    for (const CurvePoint& point : result.curve) {
        const double minute = inMinutes(point.at);
        if (minute > end)
            break;
        hottest << QPointF(minute, degrees(point.hottest));
        face << QPointF(minute, degrees(point.face));
        cured << QPointF(minute, point.mean.percent());
        coolest = std::min(coolest, degrees(point.face));
    }
    m_hottest->replace(hottest);
    m_face->replace(face);
    m_cured->replace(cured);
    const double top = std::max(degrees(result.peak), m_limit ? degrees(*m_limit) : degrees(result.peak));
    const double rise = niceStep(top - coolest + 1.0, 5);
    m_minutes->setRange(0, end);
    m_minutes->setTickInterval(step);
    m_degrees->setRange(std::floor(coolest / rise) * rise, std::ceil((top + 0.2 * rise) / rise) * rise);
    m_degrees->setTickInterval(rise);
    viewport()->update();
}

void CureChart::setNow(Duration sinceHardener)
{
    m_now = sinceHardener;
    viewport()->update();
}

QPointF CureChart::at(double minute, double degree) const
{
    return chart()->mapToPosition({minute, degree}, m_hottest);
}

void CureChart::drawName(QPainter& painter, const QPointF& place, const QString& name, const QColor& ink)
{
    const QRectF plot = chart()->plotArea();
    const QFontMetricsF metrics(painter.font());
    QRectF box = metrics.boundingRect(name).adjusted(-m_theme.px(0.8), 0, m_theme.px(0.8), 0);
    box.moveCenter(place);
    box.moveLeft(std::clamp(box.left(), plot.left(), std::max(plot.left(), plot.right() - box.width())));
    const double wished = box.top();
    for (const int lines : {0, -1, 1, -2, 2, -3, 3}) {
        box.moveTop(std::clamp(wished + lines * box.height(), plot.top(), plot.bottom() - box.height()));
        if (std::ranges::none_of(m_taken, [&](const QRectF& other) { return other.intersects(box); }))
            break;
    }
    m_taken.push_back(box);
    painter.fillRect(box, m_theme.color(Role::Card));
    painter.setPen(ink);
    painter.drawText(box, Qt::AlignCenter, name);
}

void CureChart::drawMark(QPainter& painter, Duration moment, const QString& name, const QPen& pen, int row)
{
    if (inMinutes(moment) > m_minutes->max())
        return;
    const QRectF plot = chart()->plotArea();
    const double x = at(inMinutes(moment), m_degrees->min()).x();
    painter.setPen(pen);
    painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
    const double line = QFontMetricsF(painter.font()).height();
    drawName(painter, {x, plot.bottom() - line * (row + 0.6)}, name, pen.color());
}

void CureChart::drawSeriesNames(QPainter& painter)
{
    const QColor ink = m_theme.color(Role::Ink);
    const double line = QFontMetricsF(painter.font()).height();
    drawName(painter, at(inMinutes(m_result.peakAt), degrees(m_result.peak)) - QPointF(0, line * 0.7), m_names.hottest,
             m_theme.color(Role::Stop));
    const auto middle = std::find_if(m_result.curve.begin(), m_result.curve.end(), [this](const CurvePoint& point) {
        return inMinutes(point.at) > m_minutes->max() * 0.85;
    });
    if (middle == m_result.curve.end())
        return;
    drawName(painter, at(inMinutes(middle->at), degrees(middle->face)) + QPointF(0, line * 0.8), m_names.face, ink);
    const QPointF cured = chart()->mapToPosition({inMinutes(middle->at), middle->mean.percent()}, m_cured);
    drawName(painter, cured + QPointF(0, line * 0.8), m_names.cured, m_theme.color(Role::Action));
}

void CureChart::drawForeground(QPainter* painter, const QRectF&)
{
    if (m_result.curve.empty())
        return;
    painter->setFont(m_theme.font(textMm));
    m_taken.clear();
    const QRectF plot = chart()->plotArea();
    const double thin = m_theme.px(thinMm);
    painter->setPen(m_theme.color(Role::Ink));
    painter->drawText(QRectF(0, 0, plot.left(), plot.top()), Qt::AlignRight | Qt::AlignVCenter,
                      temperatureUnit(m_words.units()));
    if (m_limit) {
        const double y = at(0, degrees(*m_limit)).y();
        painter->setPen(QPen(m_theme.color(Role::Stop), thin, Qt::DashDotLine));
        painter->drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        drawName(*painter, {plot.left(), y}, m_names.limit, m_theme.color(Role::Stop));
    }
    drawSeriesNames(*painter);
    const QPen mark(m_theme.color(Role::Ink), thin, Qt::DotLine);
    if (m_result.gel)
        drawMark(*painter, *m_result.gel, m_names.gel, mark, 0);
    if (m_result.sand)
        drawMark(*painter, *m_result.sand, m_names.sand, mark, 0);
    drawMark(*painter, m_now, m_names.now, QPen(m_theme.color(Role::Go), m_theme.px(lineMm)), 1);
}

} // namespace strandbench
