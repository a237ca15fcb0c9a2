// SPDX-License-Identifier: GPL-3.0-or-later
// A bench of its own for each test: a log in an empty folder, opened and opened again.
#pragma once

#include "walk/demo_jobs.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace strandbench::test {

class BenchTest : public ::testing::Test {
protected:
    [[nodiscard]] QString log() const { return m_folder.filePath(QStringLiteral("bench.sqlite")); }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    /// Closes the bench that is open and opens the log again, at the time where the clock stood.
    /// planning: the program's own when empty.
    ScriptedBench& open(const Settings& settings = demoSettings(), const std::optional<PlanningSet>& planning = {},
                        Bell* bell = nullptr);
    void close();
    [[nodiscard]] ScriptedBench& bench() { return *m_bench; }
    [[nodiscard]] BenchWindow& window() { return m_bench->window(); }
    [[nodiscard]] QString screen() { return window().screen()->objectName(); }
    void tap(const QString& control);
    /// Waits until a control is there: what is read from the log comes a moment after its screen.
    void waitFor(const QString& control);
    /// The same of a text; empty when it does not come.
    [[nodiscard]] QString waitText(const QString& name);
    /// Walks a job to a station; the test fails with the reason when it does not get there.
    void walkTo(const DemoJob& job, Station station, int batch = 0);
    /// How many events of a repair the log holds, read from the file again.
    [[nodiscard]] std::size_t eventsInLog(const QUuid& repair) const;

    CameraFeed* m_cameras = nullptr; ///< of the benches that are opened; outlives them

private:
    QTemporaryDir m_folder;
    Instant m_now = workingMorning();
    std::unique_ptr<ScriptedBench> m_bench;
};

} // namespace strandbench::test
