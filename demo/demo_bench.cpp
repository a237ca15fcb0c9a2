// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the demo bench: three jobs, tapped through the real window up to where a bench would stand now.
#include "walk/demo_jobs.h"

#include <QApplication>
#include <QFileInfo>
#include <QStyleFactory>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

/// The stretch of the walk that one job has behind it.
struct Stretch {
    DemoJob job;
    Station to;
    int batch;
};

bool walkStretch(ScriptedBench& bench, const Stretch& stretch)
{
    bench.window().showHome();
    bench.thumb().settle();
    Walk walk(bench, stretch.job);
    if (walk.walkTo(stretch.to, stretch.batch))
        return true;
    std::cerr << stretch.job.job.toStdString() << ": " << walk.why().toStdString() << '\n';
    return false;
}

/// The taps take no time of their own, but the mixes that are waited for do: the walk begins so much earlier
/// that it ends now.
bool writeBench(const QString& log, const Instant& start)
{
    ScriptedBench bench({log, start, demoSettings(), {1280, 800}, 5.87, {}});
    if (bench.trouble()) {
        std::cerr << log.toStdString() << ": " << bench.trouble()->detail.toStdString() << '\n';
        return false;
    }
    const std::vector<Stretch> stretches{
        {wheelArch(), Station::Parked, 0}, {roofCap(), Station::Wait, 0}, {skirtPanel(), Station::Spread, 0}};
    for (const Stretch& each : stretches)
        if (!walkStretch(bench, each))
            return false;
    return true;
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    const QApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments();
    if (given.size() != 2 || QFileInfo::exists(given[1])) {
        std::cerr << "Usage: strandbench_demo_bench LOG, a file that is not there yet\n";
        return 2;
    }
    const SystemClock clock;
    // Until the roof cap's edges are clear about five minutes go by.
    return writeBench(given[1], before(clock.now(), minutes(6))) ? 0 : 1;
}
