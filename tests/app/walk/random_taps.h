// SPDX-License-Identifier: GPL-3.0-or-later
// Taps at random on what can be tapped, over several repairs; now and then what the walk of a job would tap, so that
// they get on.
#pragma once

#include "walk/demo_jobs.h"

#include <QSet>

#include <random>

namespace strandbench::test {

class RandomThumb {
public:
    RandomThumb(ScriptedBench& bench, unsigned seed);

    /// One touch; false when nothing on the glass takes one.
    [[nodiscard]] bool touch();
    /// What does not fit between the screen and the repair it belongs to; empty when all does.
    [[nodiscard]] QString oddOfScreen() const;
    /// Walks a job on by its own answers; where it ends.
    [[nodiscard]] Station leadToTheEnd(const DemoJob& job);

    [[nodiscard]] const QString& last() const { return m_last; } ///< the control touched last
    [[nodiscard]] const QString& why() const { return m_why; }
    [[nodiscard]] const std::vector<DemoJob>& jobs() const { return m_jobs; }
    [[nodiscard]] int screensSeen() const { return static_cast<int>(m_seen.size()); }
    [[nodiscard]] QString summary() const;

private:
    [[nodiscard]] std::vector<QAbstractButton*> touchable() const;
    [[nodiscard]] bool touchAny();
    [[nodiscard]] bool touchOnTheWay();
    [[nodiscard]] bool chance(double share);
    [[nodiscard]] const DemoJob& any();
    /// Whose screen it is, by a job with every answer; empty where no walk leads on.
    [[nodiscard]] std::optional<DemoJob> onGlass();

    ScriptedBench& m_bench;
    std::mt19937 m_dice;
    std::vector<DemoJob> m_jobs;
    std::size_t m_next = 0; ///< the job that is taken in next
    QSet<QString> m_seen;
    int m_handedOver = 0;
    QString m_last;
    QString m_why;
};

} // namespace strandbench::test
