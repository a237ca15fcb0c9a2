// SPDX-License-Identifier: GPL-3.0-or-later
// From a tap to its painted answer, on every tap of whole repairs from taking in to handing over, on the program's own
// window, its log on a disk, computing beside the glass as it does: touches as a panel sends them, on a clock that is
// set. Measured are the pressed look, from the touch on; from letting go the first picture after it, and the first
// whole picture of the screen that the tap leads to, with the act that it tells on the disk. After each tap the same
// window is painted once. Prints medians, 99th percentiles and their ratios; judges nothing.
//
// bench_tap [REPAIRS [FOLDER]]    so many repairs, each on a log of its own in FOLDER
#include "tapped_walk.h"

#include <QStyleFactory>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench::tapbench {
namespace {

constexpr int usualRepairs = 5;
constexpr std::size_t worstTold = 16;

/// The value below which so large a share of them lies.
double at(std::vector<double> values, double share)
{
    std::ranges::sort(values);
    return values.at(std::size_t(double(values.size() - 1) * share + 0.5));
}

template <class Value> std::vector<double> of(const std::vector<Tap>& taps, Value value)
{
    std::vector<double> values;
    std::ranges::transform(taps, std::back_inserter(values), value);
    return values;
}

void print(const char* name, const std::vector<double>& values, const std::vector<double>& beside)
{
    if (values.empty())
        return std::puts(""), void();
    std::printf("%-44s %6zu %9.2f %9.2f %9.2f %9.2f\n", name, values.size(), at(values, 0.5), at(values, 0.99),
                at(values, 0.5) / at(beside, 0.5), at(values, 0.99) / at(beside, 0.99));
}

std::vector<Tap> those(const std::vector<Tap>& taps, const std::function<bool(const Tap&)>& which)
{
    std::vector<Tap> some;
    std::ranges::copy_if(taps, std::back_inserter(some), which);
    return some;
}

void printTimes(const std::vector<Tap>& taps)
{
    const auto repaint = of(taps, &Tap::repaint);
    const auto pressed = those(taps, [](const Tap& tap) { return tap.pressShown; });
    const auto told = those(taps, [](const Tap& tap) { return tap.written; });
    const auto led = those(taps, [](const Tap& tap) { return !tap.written && tap.answer != tap.screen; });
    const auto stayed = those(taps, [](const Tap& tap) { return !tap.written && tap.answer == tap.screen; });
    std::printf("%-44s %6s %9s %9s %9s %9s\n", "milliseconds; ratios to painting once", "taps", "median", "99th",
                "ratio", "ratio");
    print("the window painted once, after each tap", repaint, repaint);
    print("touched: the pressed look", of(pressed, &Tap::pressed), repaint);
    print("let go: the first picture after it", of(taps, &Tap::changed), repaint);
    print("let go: the answer", of(taps, &Tap::answered), repaint);
    print("  of an act that is written", of(told, &Tap::answered), of(told, &Tap::repaint));
    print("  of another screen", of(led, &Tap::answered), of(led, &Tap::repaint));
    print("  on the same screen", of(stayed, &Tap::answered), of(stayed, &Tap::repaint));
    const auto each = of(taps, [](const Tap& tap) { return tap.answered / tap.repaint; });
    std::printf("each answer beside its own window: median %.2f, 99th %.2f\n", at(each, 0.5), at(each, 0.99));
}

/// A tap of the walk, at the medians of all repairs: what else the machine did is not in it.
struct Place {
    Tap tap;
    double answered = 0; ///< ms
    double repaint = 0;  ///< ms
    [[nodiscard]] double ratio() const { return answered / repaint; }
};

/// Every repair is the same taps in the same order.
std::vector<Place> placesOf(const std::vector<std::vector<Tap>>& repairs)
{
    std::vector<Place> places;
    for (std::size_t i = 0; i < repairs.front().size(); ++i) {
        std::vector<Tap> same;
        for (const std::vector<Tap>& each : repairs)
            same.push_back(each.at(i));
        places.push_back({same.front(), at(of(same, &Tap::answered), 0.5), at(of(same, &Tap::repaint), 0.5)});
    }
    return places;
}

void printPlaces(std::vector<Place> places)
{
    std::vector<double> ratios;
    std::ranges::transform(places, std::back_inserter(ratios), &Place::ratio);
    std::printf("each tap at the median of its repairs, beside its own window: median %.2f, 99th %.2f, most %.2f\n",
                at(ratios, 0.5), at(ratios, 0.99), at(ratios, 1));
    std::ranges::sort(places, std::ranges::greater{}, &Place::ratio);
    places.resize(std::min(places.size(), worstTold));
    std::printf("\n%-24s %-30s %-30s %9s %9s %9s\n", "worst: control", "on", "led to", "ms", "painted", "ratio");
    for (const Place& each : places)
        std::printf("%-24s %-30s %-30s %9.2f %9.2f %9.2f\n", qPrintable(each.tap.control), qPrintable(each.tap.screen),
                    qPrintable(each.tap.answer), each.answered, each.repaint, each.ratio());
}

void run(WatchedGlass& glass, int repairs, const QString& folder)
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
        spec.computing = Worker::Runs::InThread;
        ScriptedBench bench(spec);
        if (bench.trouble())
            qFatal("%s", qPrintable(bench.trouble()->detail));
        walks.push_back(TappedWalk(glass, bench, skirtPanel()).all());
        std::ranges::copy(walks.back(), std::back_inserter(taps));
    }
    const QSize size = ScriptedBench::Spec{}.glass;
    std::printf("platform %s, %d x %d, %d repairs\n\n", qPrintable(QGuiApplication::platformName()), size.width(),
                size.height(), repairs);
    printTimes(taps);
    printPlaces(placesOf(walks));
}

} // namespace
} // namespace strandbench::tapbench

int main(int argc, char** argv)
{
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s)); // as the program does
    strandbench::tapbench::WatchedGlass glass(argc, argv);
    const QStringList given = QCoreApplication::arguments().mid(1);
    bool isNumber = true;
    const int repairs = given.isEmpty() ? strandbench::tapbench::usualRepairs : given.front().toInt(&isNumber);
    if (!isNumber || repairs < 1 || given.size() > 2) {
        std::fputs("Usage: bench_tap [REPAIRS [FOLDER]]\n", stderr);
        return 2;
    }
    strandbench::tapbench::run(glass, repairs, given.value(1, QCoreApplication::applicationDirPath()));
    return 0;
}
