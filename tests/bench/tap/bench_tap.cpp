// SPDX-License-Identifier: GPL-3.0-or-later
// From a tap to its painted answer, on every tap of whole repairs from taking in to handing over, on the program's own
// window, its log on a disk, computing beside the glass as it does: touches as a panel sends them, on a clock that is
// set. Measured are the pressed look, from the touch on; from letting go the first picture after it, and the first
// whole picture of the screen that the tap leads to, with the act that it tells on the disk. After each tap the same
// window is painted once. All by the wall, and by the processor of the glass's thread, where neither a busy machine nor
// the writer's thread is in it. Prints medians, 99th percentiles and their ratios; judges nothing.
//
// bench_tap [REPAIRS [FOLDER]] [--rows FILE]    so many repairs, each on a log of its own in FOLDER
#include "rows.h"
#include "tapped_walk.h"

#include <QStyleFactory>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench::tapbench {
namespace {

using bench::at;
using bench::Rows;

constexpr double medianAim = 2; ///< of painting once
constexpr double ninetyNinthAim = 4;
constexpr int usualRepairs = 5;
constexpr std::size_t worstTold = 10;

using Which = std::function<bool(const Tap&)>;
using By = double Spent::*;

std::vector<double> of(const std::vector<Tap>& taps, Spent Tap::*what, By by, const Which& which)
{
    std::vector<double> values;
    for (const Tap& each : taps)
        if (which(each))
            values.push_back(each.*what.*by);
    return values;
}

/// Of those taps a part of what they took, beside painting the same windows once.
void print(const char* name, const std::vector<Tap>& taps, Spent Tap::*what, By by, const Which& which)
{
    const auto values = of(taps, what, by, which);
    const auto beside = of(taps, &Tap::repaint, by, which);
    if (values.empty())
        return;
    std::printf("%-42s %6zu %9.2f %9.2f %9.2f %9.2f\n", name, values.size(), at(values, 0.5), at(values, 0.99),
                at(values, 0.5) / at(beside, 0.5), at(values, 0.99) / at(beside, 0.99));
}

void printTimes(const std::vector<Tap>& taps, const char* title, By by)
{
    const Which all = [](const Tap&) { return true; };
    std::printf("\n%-42s %6s %9s %9s %9s %9s\n", title, "taps", "median", "99th", "median :", "99th :");
    print("the window painted once, after each tap", taps, &Tap::repaint, by, all);
    print("touched: the pressed look", taps, &Tap::pressed, by, &Tap::pressShown);
    print("let go: the first picture after it", taps, &Tap::changed, by, all);
    print("let go: the answer", taps, &Tap::answered, by, all);
    print("  of an act that is written", taps, &Tap::answered, by, &Tap::written);
    print("  of another screen", taps, &Tap::answered, by,
          [](const Tap& tap) { return !tap.written && tap.answer != tap.screen; });
    print("  on the same screen", taps, &Tap::answered, by,
          [](const Tap& tap) { return !tap.written && tap.answer == tap.screen; });
}

/// A tap of the walk, at the medians of all repairs.
struct TapPlace {
    Tap tap;
    double answered = 0; ///< ms
    double repaint = 0;  ///< ms
    [[nodiscard]] double ratio() const { return answered / repaint; }
};

/// Every repair is the same taps in the same order.
std::vector<TapPlace> placesOf(const std::vector<std::vector<Tap>>& repairs, By by)
{
    std::vector<TapPlace> places;
    for (std::size_t i = 0; i < repairs.front().size(); ++i) {
        std::vector<Tap> same;
        for (const std::vector<Tap>& each : repairs)
            same.push_back(each.at(i));
        const Which all = [](const Tap&) { return true; };
        places.push_back(
            {same.front(), at(of(same, &Tap::answered, by, all), 0.5), at(of(same, &Tap::repaint, by, all), 0.5)});
    }
    return places;
}

void printPlaces(std::vector<TapPlace> places, const char* title)
{
    std::vector<double> ratios;
    std::ranges::transform(places, std::back_inserter(ratios), &TapPlace::ratio);
    std::printf("\n%s, each tap of the walk at the median of its repairs, its answer beside its own window:\n"
                "median %.2f, 99th %.2f, most %.2f\n",
                title, at(ratios, 0.5), at(ratios, 0.99), at(ratios, 1));
    std::ranges::sort(places, std::ranges::greater{}, &TapPlace::ratio);
    places.resize(std::min(places.size(), worstTold));
    std::printf("%-20s %-30s %-30s %8s %8s %8s\n", "worst", "on", "led to", "answer", "painted", "ratio");
    for (const TapPlace& each : places)
        std::printf("%-20s %-30s %-30s %8.2f %8.2f %8.2f\n", qPrintable(each.tap.control), qPrintable(each.tap.screen),
                    qPrintable(each.tap.answer), each.answered, each.repaint, each.ratio());
}

/// The answer of all taps beside the windows painted once, then the tap whose own ratio is the 99th.
void tellRows(const std::vector<Tap>& taps, std::vector<TapPlace> places, const QString& by, By spent, const Rows& rows)
{
    const QString painted = u"its window painted once"_s;
    const Which all = [](const Tap&) { return true; };
    const auto answered = of(taps, &Tap::answered, spent, all);
    const auto repaint = of(taps, &Tap::repaint, spent, all);
    const auto row = [&](const QString& what, double ours, double theirs, double aim) {
        rows.add({u"tap"_s, u"%1, by the %2"_s.arg(what, by), ours, u"ms"_s, painted, theirs, aim});
    };
    row(u"tap to paint, median"_s, at(answered, 0.5), at(repaint, 0.5), medianAim);
    row(u"tap to paint, 99th"_s, at(answered, 0.99), at(repaint, 0.99), ninetyNinthAim);
    std::ranges::sort(places, {}, &TapPlace::ratio);
    const TapPlace& place = places.at(std::size_t(double(places.size() - 1) * 0.99 + 0.5));
    row(u"each tap by itself, 99th"_s, place.answered, place.repaint, ninetyNinthAim);
}

void run(WatchedGlass& glass, int repairs, const QString& folder, const Rows& rows)
{
    const QTemporaryDir place(folder + u"/bench_tap-XXXXXX"_s);
    if (!place.isValid())
        qFatal("%s takes no file", qPrintable(folder));
    std::vector<std::vector<Tap>> walks;
    std::vector<Tap> taps;
    for (int i = 0; i < repairs; ++i) {
        ScriptedBench::Spec spec;
        spec.log = place.filePath(u"%1.sqlite"_s.arg(i));
        spec.start = workingMorning();
        spec.settings = demoSettings();
        spec.moves = true; // as people see it
        spec.computing = Worker::Runs::InThread;
        ScriptedBench bench(spec);
        if (bench.trouble())
            qFatal("%s", qPrintable(bench.trouble()->detail));
        walks.push_back(TappedWalk(glass, bench, skirtPanel()).all());
        std::ranges::copy(walks.back(), std::back_inserter(taps));
    }
    const QSize size = ScriptedBench::Spec{}.glass;
    std::printf("platform %s, %d x %d, %d repairs\n", qPrintable(QGuiApplication::platformName()), size.width(),
                size.height(), repairs);
    for (const auto& [title, by] : {std::pair{"milliseconds by the wall", &Spent::wall},
                                    std::pair{"milliseconds of the glass's processor", &Spent::processor}}) {
        printTimes(taps, title, by);
        printPlaces(placesOf(walks, by), title);
        tellRows(taps, placesOf(walks, by), by == &Spent::wall ? u"wall"_s : u"processor"_s, by, rows);
    }
}

} // namespace
} // namespace strandbench::tapbench

int main(int argc, char** argv)
{
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s)); // as the program does
    strandbench::tapbench::WatchedGlass glass(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    bool isNumber = true;
    const int repairs = given.isEmpty() ? strandbench::tapbench::usualRepairs : given.front().toInt(&isNumber);
    if (!isNumber || repairs < 1 || given.size() > 2) {
        std::fputs("Usage: bench_tap [REPAIRS [FOLDER]] [--rows FILE]\n", stderr);
        return 2;
    }
    strandbench::tapbench::run(glass, repairs, given.value(1, QCoreApplication::applicationDirPath()), rows);
    return 0;
}
