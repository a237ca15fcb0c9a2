// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench_fixture.h"

#include "shown.h"

#include <QDeadlineTimer>

namespace strandbench::test {

ScriptedBench& BenchTest::open(const Settings& settings, const std::optional<PlanningSet>& planning, Bell* bell)
{
    close();
    m_bench = std::make_unique<ScriptedBench>(ScriptedBench::Spec{
        log(), m_now, settings, {1280, 800}, 1280.0 / 217, planning, Worker::Runs::Inline, nullptr, m_cameras, bell});
    return *m_bench;
}

void BenchTest::close()
{
    if (m_bench)
        m_now = m_bench->clock().now();
    m_bench.reset();
}

void BenchTest::tap(const QString& control)
{
    ASSERT_TRUE(bench().thumb().tap(control)) << control.toStdString() << " on " << screen().toStdString();
}

void BenchTest::waitFor(const QString& control)
{
    ASSERT_TRUE(bench().thumb().waitFor(control)) << control.toStdString() << " on " << screen().toStdString();
}

QString BenchTest::waitText(const QString& name)
{
    const QDeadlineTimer deadline(20000);
    QString text;
    do {
        bench().thumb().settle();
        text = shown(window(), name);
    } while (text.isEmpty() && !deadline.hasExpired());
    return text;
}

void BenchTest::walkTo(const DemoJob& job, Station station, int batch)
{
    Walk walk(bench(), job);
    ASSERT_TRUE(walk.walkTo(station, batch)) << walk.why().toStdString();
}

std::size_t BenchTest::eventsInLog(const QUuid& repair) const
{
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    if (!opened)
        return 0;
    const auto events = (*opened)->events(repair);
    return events ? events->size() : 0;
}

} // namespace strandbench::test
