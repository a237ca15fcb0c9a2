// SPDX-License-Identifier: GPL-3.0-or-later
// Bars with their names below, side by side for two sets; with a line of running shares (a Pareto chart), or with
// points and whiskers in the place of bars. As many as have room for their names.
#pragma once

#include "screens/figures/figure_chart.h"

namespace strandbench {

/// What is drawn, in the person's units and words.
struct BarFigure {
    struct Whisker {
        double low = 0;
        double at = 0;
        double high = 0;
    };
    struct Bar {
        QString name;
        std::vector<double> heights;    ///< one a set
        std::optional<double> upTo;     ///< per cent, of the line
        std::optional<Whisker> whisker; ///< in the place of a bar
        QString label;                  ///< stands above
    };
    std::vector<Bar> bars;
    QStringList sets; ///< names of the sets: the first hatched, the second solid; one alone is solid
    QString line;     ///< name of the line; empty: there is none
    QString point;    ///< name of the points with their whiskers; empty: there are none
    FigureAxis axis;
    std::function<QString(int)> more; ///< of how many that have no room: "+3 in the table"
};

class BarChart final : public FigureChart {
    Q_OBJECT
public:
    BarChart(const Theme& theme, const QString& name, BarFigure figure, QWidget* parent);
    /// How many have room.
    [[nodiscard]] int shownBars() const { return m_shown; }

protected:
    void arrange() override;
    [[nodiscard]] std::vector<Name> names() const override;
    [[nodiscard]] const FigureAxis& gridAxis() const override { return m_figure.axis; }
    void drawSigns(QPainter& painter) const override;

private:
    struct Sign {
        enum class Kind { Hatched, Solid, Line, Point } kind;
        QRectF box;
        Name name;
    };
    [[nodiscard]] int barsThatFit(double width) const;
    [[nodiscard]] bool namesFit(int count, double column) const;
    [[nodiscard]] double namesHeight(int count, double column) const;
    [[nodiscard]] std::vector<Sign> legend() const;
    [[nodiscard]] QBrush brush(int set) const;
    void makeSeries();
    void addBars();
    void addLine();
    void addPoints();

    BarFigure m_figure;
    FigureAxis m_percent;
    QValueAxis* m_across;
    QValueAxis* m_upright;
    QValueAxis* m_right = nullptr;
    int m_shown = 0;
};

} // namespace strandbench
