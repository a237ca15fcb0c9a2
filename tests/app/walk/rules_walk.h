// SPDX-License-Identifier: GPL-3.0-or-later
// Walks a job and holds each of its screens against the rules of look and touch.
#pragma once

#include "walk/demo_jobs.h"

#include "touch_rules/glass.h"

#include <QSet>
#include <QTemporaryDir>

namespace strandbench::test {

/// How the program stands on one glass.
struct Look {
    rules::Glass glass;
    QString language;
    DayNight dayNight;
    Hand hand;
    UnitSystem units;
};

/// Every glass, language and theme; hand and units by turns.
[[nodiscard]] std::vector<Look> everyLook();
/// "1280x800_de_night".
[[nodiscard]] std::string nameOf(const Look& look);
void PrintTo(const Look& look, std::ostream* out);

class RulesWalk {
public:
    /// A bench of its own, as the look says; planning: the program's own when empty.
    explicit RulesWalk(const Look& look, const std::optional<PlanningSet>& planning = {});

    [[nodiscard]] ScriptedBench& bench() { return *m_bench; }
    /// Checks the present screen, once a name and station unless told.
    void check(const QString& job, bool again = false);
    /// Walks to the end and checks each screen, with what is one hop aside. Fails the test when it gets stuck.
    void walk(const DemoJob& job);
    /// Today's work, every page of one repair's record, and where its job sheet goes.
    void checkRecord();
    void toHome();

private:
    /// Waits until the control can be tapped: the log is read in its own thread.
    void waitFor(const QString& control);
    void checkAside(const QString& job, const QString& control);
    void checkAsides(const QString& job, const QString& screen);

    QTemporaryDir m_folder;
    std::unique_ptr<ScriptedBench> m_bench;
    QSet<QString> m_seen;
};

} // namespace strandbench::test
