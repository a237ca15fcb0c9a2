// SPDX-License-Identifier: GPL-3.0-or-later
// How long the supervisor's figures take over a year's repairs: reading the records, first and again, with the longest
// pause of the glass's own thread meanwhile; then each figure, from the digests to the painted chart, beside a plain
// chart of Qt Charts: a line through a dozen points between two axes as they come, painted as large. Nobody who draws
// a figure by that library does with less. Prints a table; judges nothing.
//
// bench_figures LOG [--rows FILE]    made by strandbench_demo_years
#include "rows.h"

#include "bench/review_ask.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "screens/figures/figure_charts.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTimer>
#include <QtCharts/QChart>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>

#include <algorithm>
#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using bench::medianOf;

constexpr int rounds = 15;
constexpr int plainPoints = 12;
constexpr QSize chartSize{900, 330}; ///< pixels: what a 1280 x 800 glass has for one

template <class F> double msOf(F&& work)
{
    QElapsedTimer clock;
    clock.start();
    work();
    return double(clock.nsecsElapsed()) / 1e6;
}

struct Read {
    Digests repairs;
    double ms = 0;
    double longestPause = 0; ///< of the event loop, in ms
};

Read readAll(Recorder& recorder, const Bench& bench)
{
    Read read;
    bool done = false;
    QElapsedTimer beat;
    beat.start();
    read.ms = msOf([&] {
        recorder.review(u"0000"_s, u"9999"_s, reviewAskOf(bench), [&](const Logged<Digests>& found) {
            if (!found)
                qFatal("the records cannot be read: %s", qPrintable(found.error().detail));
            read.repairs = *found;
            done = true;
        });
        while (!done) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
            read.longestPause = std::max(read.longestPause, double(beat.nsecsElapsed()) / 1e6);
            beat.restart();
        }
    });
    return read;
}

void paintPlainChart()
{
    auto* line = new QLineSeries; // the chart takes it
    for (int i = 0; i < plainPoints; ++i)
        line->append(i, i % 5);
    auto* chart = new QChart; // the view takes it
    chart->addSeries(line);
    chart->createDefaultAxes();
    QChartView view(chart);
    view.resize(chartSize);
    view.grab();
}

void measure(const FigureAsked& asked, const Digests& repairs, const Catalogue& catalogue, const bench::Rows& rows)
{
    const Theme theme(Metrics(1280.0 / 217), DayNight::Day, Hand::Right);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    std::vector<double> computing;
    std::vector<double> painting;
    std::vector<double> both;
    std::vector<double> plain;
    for (int i = 0; i < rounds; ++i) {
        FigureFound found;
        computing.push_back(msOf([&] { found = findFigure(asked, repairs); }));
        painting.push_back(msOf([&] {
            const std::unique_ptr<FigureChart> chart(
                makeFigureChart(theme, asked, found, DriftChart::Shows::Values, words, catalogue, nullptr));
            chart->resize(chartSize);
            chart->grab();
        }));
        both.push_back(computing.back() + painting.back());
        plain.push_back(msOf(paintPlainChart));
    }
    std::printf("%-12s %14.2f %18.2f %16.2f\n", qPrintable(codeOf(asked.kind)), medianOf(computing), medianOf(painting),
                medianOf(plain));
    rows.add({u"figures"_s, u"%1, to its painted chart"_s.arg(codeOf(asked.kind)), medianOf(both), u"ms"_s,
              u"a plain Qt chart"_s, medianOf(plain), std::nullopt, qint64(repairs.size()), u"repairs"_s});
}

void run(const QString& path, const bench::Rows& rows)
{
    Recorder recorder(path);
    auto opened = recorder.open(u"9999-12-31"_s);
    if (!opened)
        qFatal("%s: %s", qPrintable(path), qPrintable(opened.error().detail));
    const CureEngine engine;
    const SystemClock clock;
    const Bench bench({recorder, clock, {builtInTable(), demoCatalogue(), builtInSteps(), Assumptions{}, engine}});
    const Read first = readAll(recorder, bench);
    const Read again = readAll(recorder, bench);
    std::printf("%zu repairs\n\n%-12s %14s %18s\n", again.repairs.size(), "reading", "ms", "longest pause, ms");
    std::printf("%-12s %14.0f %18.1f\n%-12s %14.0f %18.1f\n\n", "first", first.ms, first.longestPause, "again",
                again.ms, again.longestPause);
    const auto lots = gelLots(again.repairs);
    if (lots.empty())
        qFatal("no gel was told");
    const auto most = std::ranges::max_element(lots, {}, &GelLotSeen::gels);
    std::printf("the lot with most gels: %d\n\n%-12s %14s %18s %16s\n", most->gels, "figure", "computing, ms",
                "chart painted, ms", "a plain one, ms");
    for (const auto& [kind, code] : Codes<FigureKind>::table)
        measure({kind, most->lot, FigurePeriod::Year}, again.repairs, bench.planning().catalogue, rows);
}

} // namespace
} // namespace strandbench

int main(int argc, char** argv)
{
    const QApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (given.size() != 1) {
        std::fputs("Usage: bench_figures LOG [--rows FILE], the log made by strandbench_demo_years\n", stderr);
        return 2;
    }
    strandbench::run(given.front(), rows);
    return 0;
}
