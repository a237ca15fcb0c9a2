// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/figures/figure_chart.h"

#include "pictures/axis_step.h"

#include <QAccessibleWidget>
#include <QGraphicsLayout>
#include <QtCharts/QAbstractSeries>
#include <QtCharts/QChart>
#include <QtCharts/QValueAxis>

#include <algorithm>
#include <cmath>

namespace strandbench {
namespace {

constexpr double textMm = 3.6;
constexpr double tickGapMm = 1.2;
constexpr double gridMm = 0.2;
constexpr double edgeMm = 0.35;
constexpr double leastWidthMm = 60;
constexpr double leastHeightMm = 24;
constexpr int steps = 5;
constexpr double hair = 1e-6; ///< of a step: sums of steps miss the end by that

QAccessibleInterface* chartInterface(const QString&, QObject* object)
{
    auto* chart = qobject_cast<FigureChart*>(object);
    return chart ? new QAccessibleWidget(chart, QAccessible::Chart) : nullptr;
}

void installChartAccess()
{
    static const bool installed = [] {
        QAccessible::installFactory(chartInterface);
        return true;
    }();
    Q_UNUSED(installed);
}

} // namespace

FigureAxis FigureAxis::upTo(double most, std::function<QString(double)> tick)
{
    const double step = niceStep(most, steps - 1);
    return {0, step * std::ceil(most * 1.02 / step), step, std::move(tick)};
}

FigureAxis FigureAxis::around(double low, double high, std::function<QString(double)> tick)
{
    const double span = std::max(high - low, 0.02);
    const double step = niceStep(span, steps);
    return {step * std::floor((low - 0.05 * span) / step), step * std::ceil((high + 0.05 * span) / step), step,
            std::move(tick)};
}

FigureChart::FigureChart(const Theme& theme, const QString& name, QWidget* parent) : QChartView(parent), m_theme(theme)
{
    installChartAccess();
    setObjectName(name);
    setRenderHint(QPainter::Antialiasing);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFrameShape(QFrame::NoFrame);
    setBackgroundBrush(theme.color(Role::Card));
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->setBackgroundVisible(false);
    chart()->legend()->hide(); // what is drawn is named where it is drawn
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    setFocusPolicy(Qt::NoFocus);
    for (QWidget* part : findChildren<QWidget*>())
        part->setFocusPolicy(Qt::NoFocus); // the viewport too: there is nothing in it to go to
}

QSize FigureChart::minimumSizeHint() const { return {px(leastWidthMm), px(leastHeightMm)}; }

QFont FigureChart::font() const { return m_theme.font(textMm); }

double FigureChart::lineHeight() const { return QFontMetricsF(font()).height(); }

double FigureChart::widthOf(const QString& text) const { return QFontMetricsF(font()).horizontalAdvance(text); }

double FigureChart::heightOf(const QString& text, double width) const
{
    return QFontMetricsF(font()).boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, text).height();
}

QPen FigureChart::pen(Role role, double widthMm, Qt::PenStyle style) const
{
    return {m_theme.color(role), widthMm * m_theme.metrics().pixelsPerMillimetre(), style};
}

QValueAxis* FigureChart::addAxis(Qt::Alignment at)
{
    auto* axis = new QValueAxis(this);
    axis->setVisible(false); // a plot whose place is set is not followed by axes' own lines
    chart()->addAxis(axis, at);
    return axis;
}

void FigureChart::setAxis(QValueAxis& axis, const FigureAxis& as) { axis.setRange(as.least, as.most); }

void FigureChart::attach(QAbstractSeries* series, QValueAxis* across, QValueAxis* upright)
{
    chart()->addSeries(series);
    series->attachAxis(across);
    series->attachAxis(upright);
}

double FigureChart::ticksWidth(const FigureAxis& axis) const
{
    double widest = 0;
    for (double at = axis.least; at < axis.most + axis.step * hair; at += axis.step)
        widest = std::max(widest, widthOf(axis.tick(at)));
    return widest + px(2 * tickGapMm);
}

void FigureChart::addTicks(std::vector<Name>& names, const FigureAxis& axis, bool left) const
{
    const QRectF plot = chart()->plotArea();
    const double room = ticksWidth(axis);
    for (double at = axis.least; at < axis.most + axis.step * hair; at += axis.step) {
        const double y = plot.bottom() - (at - axis.least) / (axis.most - axis.least) * plot.height();
        const QRectF place(left ? plot.left() - room : plot.right() + px(tickGapMm), y - lineHeight() / 2,
                           room - px(tickGapMm), lineHeight());
        names.push_back({axis.tick(at), place, (left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter});
    }
}

void FigureChart::resizeEvent(QResizeEvent* event)
{
    QChartView::resizeEvent(event);
    arrange();
}

std::vector<ShownText> FigureChart::shownTexts() const
{
    const QFontMetricsF metrics(font());
    std::vector<ShownText> shown;
    for (const Name& each : names()) {
        const QRectF box = metrics.boundingRect(each.place, int(each.alignment) | Qt::TextWordWrap, each.text);
        const bool fits = each.place.adjusted(-1, -1, 1, 1).contains(box) && QRectF(rect()).contains(box);
        shown.push_back({each.text, box, textMm, fits});
    }
    return shown;
}

void FigureChart::drawBackground(QPainter* painter, const QRectF& rect)
{
    QChartView::drawBackground(painter, rect);
    const QRectF plot = chart()->plotArea();
    const FigureAxis& axis = gridAxis();
    painter->save();
    painter->setPen(pen(Role::SoftEdge, gridMm));
    for (double at = axis.least; at < axis.most + axis.step * hair; at += axis.step) {
        const double y = plot.bottom() - (at - axis.least) / (axis.most - axis.least) * plot.height();
        painter->drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
    painter->setPen(pen(Role::Edge, edgeMm));
    painter->drawLine(plot.topLeft(), plot.bottomLeft());
    painter->drawLine(plot.bottomLeft(), plot.bottomRight());
    painter->restore();
}

void FigureChart::drawForeground(QPainter* painter, const QRectF&)
{
    painter->save();
    drawSigns(*painter);
    painter->setFont(font());
    const QFontMetricsF metrics(font());
    for (const Name& each : names()) {
        const QRectF box = metrics.boundingRect(each.place, int(each.alignment) | Qt::TextWordWrap, each.text);
        if (chart()->plotArea().contains(box.center())) // no line of the grid runs through it
            painter->fillRect(box, m_theme.color(Role::Card));
        painter->setPen(m_theme.color(each.ink));
        painter->drawText(each.place, int(each.alignment) | Qt::TextWordWrap, each.text);
    }
    painter->restore();
}

} // namespace strandbench
