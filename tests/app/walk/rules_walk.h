// SPDX-License-Identifier: GPL-3.0-or-later
// Walks a job and holds each of its screens against the rules of look and touch.
#pragma once

#include "every_look.h"

#include <QSet>
#include <QTemporaryDir>

namespace strandbench::test {

/// Every glass, language and theme, hand and units by turns; and the pseudo-language as everyLook() has it.
[[nodiscard]] std::vector<Look> everyLookInBothThemes();

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
    /// Compares the layouts of all that was checked with those accepted.
    void close() { m_book.close(); }

private:
    /// Waits until the control can be tapped: the log is read in its own thread.
    void waitFor(const QString& control);
    void checkAside(const QString& job, const QString& control);
    void checkAsides(const QString& job, const QString& screen);

    QTemporaryDir m_folder;
    Spoken m_spoken;
    ScreenBook m_book;
    std::unique_ptr<ScriptedBench> m_bench;
    QSet<QString> m_seen;
};

} // namespace strandbench::test
