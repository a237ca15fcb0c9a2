// SPDX-License-Identifier: GPL-3.0-or-later
// The lines and marks of every chart are told apart without their hue: by dashes, thickness, the shape of their marks
// or how light they are.
#include "bench_fixture.h"
#include "depot_log.h"

#include "touch_rules/colour_vision.h"
#include "touch_rules/contrast.h"

#include <QtCharts/QChart>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr double lineStep = 1.4; ///< thickness: ISO 128 grades lines by the root of two
constexpr double leastRatio = 3.0;

/// One series as it is drawn.
struct Stroke {
    int kind; ///< of the series: a line, or marks of one shape
    QPen pen;
    QColor ink; ///< of the line, or what fills the marks
};

Stroke strokeOf(const QXYSeries& series)
{
    const auto* marks = qobject_cast<const QScatterSeries*>(&series);
    return marks ? Stroke{1 + int(marks->markerShape()), marks->pen(), marks->color()}
                 : Stroke{0, series.pen(), series.pen().color()};
}

bool toldApart(const Stroke& one, const Stroke& other, rules::Vision vision)
{
    if (one.kind != other.kind || one.pen.style() != other.pen.style())
        return true;
    const double thick = std::max(one.pen.widthF(), other.pen.widthF());
    const double thin = std::min(one.pen.widthF(), other.pen.widthF());
    return (one.kind == 0 && thick >= lineStep * thin) ||
           rules::contrastRatio(rules::seen(one.ink, vision), rules::seen(other.ink, vision)) >= leastRatio;
}

bool drawnAlike(const Stroke& one, const Stroke& other)
{
    return one.kind == other.kind && one.pen == other.pen && one.ink == other.ink; // pieces of one line
}

/// How many kinds of strokes there are.
int expectToldApart(const QChart& chart)
{
    std::vector<Stroke> strokes;
    for (const QAbstractSeries* each : chart.series())
        if (const auto* series = qobject_cast<const QXYSeries*>(each))
            strokes.push_back(strokeOf(*series));
    int kinds = 0;
    for (std::size_t i = 0; i < strokes.size(); ++i) {
        bool known = false;
        for (std::size_t j = 0; j < i; ++j) {
            known = known || drawnAlike(strokes[i], strokes[j]);
            for (const rules::Vision vision : rules::everyVision)
                EXPECT_TRUE(drawnAlike(strokes[i], strokes[j]) || toldApart(strokes[i], strokes[j], vision))
                    << "series " << j << " and " << i << " with " << rules::nameOf(vision);
        }
        kinds += known ? 0 : 1;
    }
    return kinds;
}

class ChartVision : public BenchTest {
protected:
    [[nodiscard]] const QChart* chart()
    {
        for (const QChartView* view : window().findChildren<QChartView*>())
            if (view->isVisible())
                return view->chart();
        return nullptr;
    }
};

TEST_F(ChartVision, TheCurvesInsideALayer)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        Settings settings = demoSettings();
        settings.dayNight = dayNight;
        open(settings);
        DemoJob job = skirtPanel();
        job.job = dayNight == DayNight::Day ? u"4421"_s : u"4422"_s;
        ASSERT_NO_FATAL_FAILURE(walkTo(job, Station::Wait));
        ASSERT_NO_FATAL_FAILURE(tap(u"curve_key"_s));
        ASSERT_NE(chart(), nullptr);
        EXPECT_GE(expectToldApart(*chart()), 3);
    }
}

TEST(ChartVisionOfFigures, TheLinesAndMarksOfTheControlChart)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        ScriptedBench::Spec spec;
        spec.log = depotLog().path;
        spec.start = depotLog().evening;
        spec.settings = demoSettings();
        spec.settings.dayNight = dayNight;
        ScriptedBench bench(spec);
        Thumb thumb = bench.thumb();
        for (const QString& each : {u"today"_s, u"review"_s, u"figures"_s, u"figure_gel"_s})
            ASSERT_TRUE(thumb.waitFor(each) && thumb.tap(each)) << each.toStdString();
        ASSERT_TRUE(thumb.waitFor(u"figure_lot_0"_s) && thumb.tap(u"figure_lot_0"_s));
        ASSERT_TRUE(thumb.waitFor(u"figure_turn"_s));
        const auto* view = bench.window().findChild<QChartView*>();
        ASSERT_NE(view, nullptr);
        EXPECT_GE(expectToldApart(*view->chart()), 3);
    }
}

/// Two lines that only their hue tells apart.
TEST(ChartVisionPlanted, RedAndGreenOfOneThicknessAreFound)
{
    const Stroke red{0, QPen(QColor(0x9C1218), 3), QColor(0x9C1218)};
    const Stroke green{0, QPen(QColor(0x075A31), 3), QColor(0x075A31)};
    EXPECT_FALSE(toldApart(red, green, rules::Vision::Full));
    EXPECT_FALSE(toldApart(red, green, rules::Vision::Deuteranopia));
    Stroke dashed = green;
    dashed.pen.setStyle(Qt::DashLine);
    EXPECT_TRUE(toldApart(red, dashed, rules::Vision::Deuteranopia));
}

} // namespace
} // namespace strandbench::test
