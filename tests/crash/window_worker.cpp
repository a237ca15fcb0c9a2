// SPDX-License-Identifier: GPL-3.0-or-later
// The program that window_crash_test kills: the real window on a log, off screen, touched through a repair from
// where the log stands. After each touch, once the next screen is painted, it tells
//
//   painted SEQ SCREEN    the newest act of the repair that this screen is built from
//
// strandbench_crash_window LOG
#include "told.h"

#include "walk/demo_jobs.h"

#include <QApplication>
#include <QStyleFactory>

#include <set>

using namespace Qt::StringLiterals;
using namespace strandbench;
using strandbench::test::tell;

namespace {

/// A moment after the newest act.
Instant nowAt(const QString& path)
{
    Instant now = workingMorning();
    if (const auto log = RepairLog::open(path, LogMode::ReadOnly))
        now = (*log)->lastWritten().value_or(std::nullopt).value_or(now);
    now.utcMs += 1000;
    now.boottimeMs += 1000;
    return now;
}

/// The repair that is open, or the next.
DemoJob jobAt(ScriptedBench& bench)
{
    DemoJob job = skirtPanel();
    const auto open = bench.bench().openRepairs();
    job.job = open.empty() ? QString::number(bench.clock().now().utcMs / 1000 % 100'000) : open.front()->job;
    return job;
}

/// The repairs of this window; one that was handed over is open no more and still known to the bench.
const std::set<QUuid>& seen(ScriptedBench& bench, std::set<QUuid>& repairs)
{
    for (const Repair* each : bench.bench().openRepairs())
        repairs.insert(each->id);
    return repairs;
}

int run(const QString& path)
{
    tell(u"phase opening"_s);
    ScriptedBench bench({path, nowAt(path), demoSettings(), {1280, 800}, 5.87, {}});
    if (bench.trouble()) {
        tell(u"trouble "_s + bench.trouble()->detail);
        return 1;
    }
    tell(u"phase working"_s);
    std::set<QUuid> repairs;
    const auto told = [&](const Touch&) {
        qint64 newest = 0; // of all that the window has seen, handed over or not
        for (const QUuid& each : seen(bench, repairs))
            newest = std::max(newest, bench.bench().repair(each)->lastSeq);
        tell(u"painted %1 %2"_s.arg(newest).arg(bench.window().screen()->objectName()));
    };
    Walk walk(bench, jobAt(bench));
    walk.touched = told;
    while (walk.step() && bench.window().screen()->objectName() != u"screen_done"_s)
        continue;
    const bool over = bench.window().screen()->objectName() == u"screen_done"_s;
    tell(over ? u"over"_s : u"trouble the walk stops: "_s + walk.why());
    return over ? 0 : 1;
}

} // namespace

int main(int argc, char** argv)
{
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    const QApplication application(argc, argv);
    return argc == 2 ? run(QCoreApplication::arguments().at(1)) : 2;
}
