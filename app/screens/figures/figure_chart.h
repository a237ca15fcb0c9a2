// SPDX-License-Identifier: GPL-3.0-or-later
// A chart of many repairs: painted at once, in the theme's colours, with every name drawn by itself at its place, so
// that none is cut off and each can be checked.
#pragma once

#include "theme/theme.h"
#include "touch/shown_text.h"

#include <QtCharts/QChartView>

#include <functional>

class QValueAxis;

namespace strandbench {

/// An upright axis: where it ends, where its ticks are, and what stands beside them.
struct FigureAxis {
    double least = 0;
    double most = 1;
    double step = 1;
    std::function<QString(double)> tick;
    static constexpr double marksRoom = 1.06; ///< an axis that ends with a mark goes on by this, so that none is cut
    /// From 0 to a little over a value above 0, in steps that people count in.
    [[nodiscard]] static FigureAxis upTo(double most, std::function<QString(double)> tick);
    /// Around values, the first not above the second.
    [[nodiscard]] static FigureAxis around(double low, double high, std::function<QString(double)> tick);
};

class FigureChart : public QChartView, public ShowsText {
    Q_OBJECT
public:
    FigureChart(const Theme& theme, const QString& name, QWidget* parent);
    [[nodiscard]] std::vector<ShownText> shownTexts() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    /// A text in the picture: within its place, which it wraps in.
    struct Name {
        QString text;
        QRectF place; ///< in the view's pixels
        Qt::Alignment alignment = Qt::AlignCenter;
        Role ink = Role::Ink;
    };
    /// Sets the plot's place by plotWithin(), and makes the series where their number follows from the size.
    virtual void arrange() = 0;
    [[nodiscard]] virtual std::vector<Name> names() const = 0;
    [[nodiscard]] virtual const FigureAxis& gridAxis() const = 0; ///< whose ticks have lines across the plot
    virtual void drawSigns(QPainter& /*painter*/) const {}        ///< beside the names: swatches of a legend

    [[nodiscard]] const Theme& theme() const { return m_theme; }
    [[nodiscard]] int px(double mm) const { return m_theme.px(mm); }
    [[nodiscard]] double lineHeight() const;
    [[nodiscard]] double widthOf(const QString& text) const;
    [[nodiscard]] double heightOf(const QString& text, double width) const; ///< wrapped
    [[nodiscard]] QFont font() const;
    /// An axis that is not to be seen: it gives series their range. What is seen of it is drawn here.
    [[nodiscard]] QValueAxis* addAxis(Qt::Alignment at);
    static void setAxis(QValueAxis& axis, const FigureAxis& as);
    void attach(QAbstractSeries* series, QValueAxis* across, QValueAxis* upright);
    [[nodiscard]] double ticksWidth(const FigureAxis& axis) const; ///< what stands beside it, with its gap
    void addTicks(std::vector<Name>& names, const FigureAxis& axis, bool left) const;
    [[nodiscard]] QPen pen(Role role, double widthMm, Qt::PenStyle style = Qt::SolidLine) const;

    void resizeEvent(QResizeEvent* event) override;
    void drawBackground(QPainter* painter, const QRectF& rect) override; ///< the grid of gridAxis()
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    const Theme& m_theme;
};

} // namespace strandbench
