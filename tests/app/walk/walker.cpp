// SPDX-License-Identifier: GPL-3.0-or-later
// The program that kill_test kills. Opens the bench of a log at a given time, does so many touches of the
// repair from where the log stands, says on one line where it is, and waits to be killed.
//
// strandbench_walker LOG TOUCHES UTC_MS BOOTTIME_MS BOOT_ID
#include "walk/demo_jobs.h"

#include <QApplication>
#include <QStyleFactory>

#include <iostream>

#include <unistd.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

/// "events station index batch utc_ms boottime_ms screen", events 0 before the panel is taken in.
void report(ScriptedBench& bench, bool over)
{
    const Repair* repair = bench.repair(u"4421"_s);
    const NextStep next = repair ? nextStep(*repair) : NextStep{};
    const Instant now = bench.clock().now();
    std::cout << (over ? "over " : "at ") << (repair ? repair->lastSeq : 0) << ' ' << codeOf(next.station).toStdString()
              << ' ' << next.index << ' ' << (next.batch ? next.batch->index : -1) << ' ' << now.utcMs << ' '
              << now.boottimeMs << ' ' << bench.window().screen()->objectName().toStdString() << std::endl;
}

} // namespace

int main(int argc, char** argv)
{
    QApplication::setStyle(QStyleFactory::create(u"Fusion"_s));
    const QApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments();
    if (given.size() != 6)
        return 2;
    ScriptedBench bench(
        {given[1], {given[3].toLongLong(), given[4].toLongLong(), given[5], 0}, demoSettings(), {1280, 800}, 5.87, {}});
    if (bench.trouble()) {
        std::cout << "trouble " << bench.trouble()->detail.toStdString() << std::endl;
        return 1;
    }
    Walk walk(bench, skirtPanel());
    // The first touch of a walk that has begun opens its card: that one is free.
    if (bench.repair(u"4421"_s) && !walk.step())
        return 1;
    bool over = false;
    for (int left = given[2].toInt(); left > 0 && !over; --left)
        over = !walk.step() || bench.window().screen()->objectName() == u"screen_done"_s;
    report(bench, over);
    ::pause();
    return 0;
}
