// SPDX-License-Identifier: GPL-3.0-or-later
// A control chart of gels: single values with their mean and limits and the exponentially weighted moving average with
// its own; or the ranges between neighbours with theirs. Lines are told apart by dashes, and named at their right end.
#pragma once

#include "review/figures.h"
#include "screens/figures/figure_chart.h"

#include <set>

class QLineSeries;

namespace strandbench {

class DriftChart final : public FigureChart {
    Q_OBJECT
public:
    enum class Shows { Values, Ranges };
    /// In the person's words; each stands before a figure.
    struct Names {
        QString mean;
        QString upper;
        QString lower;
        QString average; ///< the moving one
        QString averageLimit;
        QString gel; ///< before the first number below
        QString marked;
        std::function<QString(double)> percent; ///< of the sheet's time
    };
    DriftChart(const Theme& theme, const QString& name, const GelDrift& drift, Shows shows, Names names,
               QWidget* parent);

    /// The places of the gels that are marked, from 0.
    [[nodiscard]] static std::set<std::size_t> markedOf(const GelDrift& drift, Shows shows);

protected:
    void arrange() override;
    [[nodiscard]] std::vector<Name> names() const override;
    [[nodiscard]] const FigureAxis& gridAxis() const override { return m_axis; }
    void drawSigns(QPainter& painter) const override;

private:
    struct Line {
        QString name;
        double at;
        Role ink;
        Qt::PenStyle style;
    };
    [[nodiscard]] std::vector<Line> lines() const;
    [[nodiscard]] std::vector<Name> lineNames() const;
    [[nodiscard]] double yOf(double value) const;
    void add(const QList<QPointF>& points, const QPen& pen);
    void addValues();
    void addRanges();
    void addMarks(const std::vector<double>& values, double first);

    GelDrift m_drift;
    Shows m_shows;
    Names m_names;
    FigureAxis m_axis;
    double m_step = 1; ///< between numbers of gels that stand below
    QValueAxis* m_across;
    QValueAxis* m_upright;
};

} // namespace strandbench
