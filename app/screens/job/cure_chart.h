// SPDX-License-Identifier: GPL-3.0-or-later
// Temperatures and conversion of a layer against time, with its marks, its limit and now.
#pragma once

#include "cure/cure_result.h"
#include "theme/theme.h"
#include "words/words.h"

#include <QtCharts/QChartView>

#include <optional>

class QLineSeries;
class QValueAxis;

namespace strandbench {

class CureChart final : public QChartView {
    Q_OBJECT
public:
    struct Names {
        QString hottest;
        QString face;
        QString cured;
        QString gel;
        QString sand;
        QString limit;
        QString now;
    };
    CureChart(const Theme& theme, const Words& words, Names names, QWidget* parent = nullptr);

    /// limit: empty when none is known.
    void setResult(const CureResult& result, std::optional<Temperature> limit);
    void setNow(Duration sinceHardener);

protected:
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] double degrees(Temperature temperature) const;
    void draw();
    /// Parts of the time's axis whose labels stand beside each other in the present width.
    [[nodiscard]] int partsOfTime(double lastMinute) const;
    [[nodiscard]] QPointF at(double minute, double degree) const;
    void addSeries(QLineSeries* series, QValueAxis* upright, const QPen& pen);
    void drawMark(QPainter& painter, Duration at, const QString& name, const QPen& pen, int row);
    /// At its place, or the nearest line above or below where no other name stands.
    void drawName(QPainter& painter, const QPointF& place, const QString& name, const QColor& ink);
    void drawSeriesNames(QPainter& painter);

    const Theme& m_theme;
    const Words& m_words;
    Names m_names;
    CureResult m_result;
    std::optional<Temperature> m_limit;
    Duration m_now;
    std::vector<QRectF> m_taken; ///< by names, while it is painted
    QValueAxis* m_minutes;
    QValueAxis* m_degrees;
    QValueAxis* m_percent;
    QLineSeries* m_hottest;
    QLineSeries* m_face;
    QLineSeries* m_cured;
};

} // namespace strandbench
