// SPDX-License-Identifier: GPL-3.0-or-later
// People at a bench, each with one job after another, on one clock: what takes time on a bench takes it here.
#pragma once

#include "walk/demo_jobs.h"

#include <optional>

namespace strandbench {

/// The stretch of the walk that one job gets behind it.
struct Stretch {
    DemoJob job;
    Station to;
    int index = 0; ///< of the step, or of the batch
};

/// One person's work: stretches one after another, from a moment on.
struct Shift {
    std::vector<Stretch> stretches;
    Instant from;
};

/// Works through all shifts side by side on the real window, one touch after another, each at its time. A step takes
/// the hands-on and waiting time of the plan, a mix its clock. Returns when each shift ended; empty when one of them
/// leads nowhere: why() says which.
class PacedBench {
public:
    explicit PacedBench(ScriptedBench& bench) : m_bench(bench) {}
    [[nodiscard]] std::optional<std::vector<Instant>> work(const std::vector<Shift>& shifts);
    [[nodiscard]] const QString& why() const { return m_why; }

private:
    struct Hand {
        const Shift* shift;
        std::size_t at = 0;
        Instant ready;       ///< when the next touch can be made
        bool waited = false; ///< the time of the touch that comes next is over
        [[nodiscard]] bool done() const { return at == shift->stretches.size(); }
        [[nodiscard]] const Stretch& stretch() const { return shift->stretches[at]; }
    };
    [[nodiscard]] bool turn(Hand& hand);
    [[nodiscard]] bool touch(Hand& hand);
    [[nodiscard]] bool bringUp(const DemoJob& job);
    [[nodiscard]] bool reached(const Stretch& stretch) const;
    [[nodiscard]] Duration timeFor(const DemoJob& job, const Touch& touch) const;
    [[nodiscard]] const Repair* repairOf(const DemoJob& job) const;

    ScriptedBench& m_bench;
    std::map<QString, QUuid> m_taken; ///< repairs by job
    QString m_why;
};

} // namespace strandbench
