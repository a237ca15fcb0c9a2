// SPDX-License-Identifier: GPL-3.0-or-later
// Follows a walk and compares what each screen shows with the plan that the core makes of the answers.
#pragma once

#include "shown.h"

#include "plan/forecast.h"

#include <map>

namespace strandbench::test {

class PlanChecker {
public:
    /// The bench must outlive the checker; its settings say the units and the language.
    PlanChecker(ScriptedBench& bench, DemoJob job);

    /// Compares the present screen; each difference fails the test.
    void check();
    /// How often each screen was compared; "dew" counts the readings that were judged.
    [[nodiscard]] const std::map<QString, int>& checked() const { return m_checked; }
    [[nodiscard]] int timesOf(const QString& screen) const;
    /// The codes of the steps as the glass showed them, each once.
    [[nodiscard]] const QStringList& prepared() const { return m_prepared; }
    [[nodiscard]] const QStringList& finished() const { return m_finished; }
    /// The plan as it was accepted; empty before.
    [[nodiscard]] const std::optional<RepairPlan>& plan() const { return m_plan; }
    [[nodiscard]] const Words& words() const { return m_words; }

private:
    void checkPlan();
    void checkSection(const RepairPlan& plan);
    void checkMix(BatchRef ref);
    void checkClock(BatchRef ref, bool spreading);
    void checkStep(const std::vector<Step>& steps, int index);
    void checkReading();
    void checkHandOver();
    /// No figure stands on the screen that is not expected there.
    void expectOnly(const QStringList& expected);

    [[nodiscard]] const Repair& repair() const { return *m_bench.repair(m_job.job); }
    [[nodiscard]] QString screen() const { return m_bench.window().screen()->objectName(); }
    [[nodiscard]] QString text(const QString& name) const { return shown(m_bench.window(), name); }
    [[nodiscard]] const Batch& batch(BatchRef ref) const;
    [[nodiscard]] const ProductSheet& sheetOf(BatchRef ref) const;
    /// What the engine says of a batch with the newest reading, apart from the screens.
    [[nodiscard]] BatchForecast forecast(BatchRef ref, double shareOfPlanned = 1.0) const;
    [[nodiscard]] QString sizeShown() const;
    /// A figure of the job as the core reads it from what was keyed in.
    [[nodiscard]] Length length(const QString& field) const;
    [[nodiscard]] Reading readingOf(const std::map<QString, QString>& figures) const;

    ScriptedBench& m_bench;
    DemoJob m_job;
    Words m_words;
    CureEngine m_engine;
    std::map<QString, int> m_checked;
    QStringList m_prepared;
    QStringList m_finished;
    std::optional<RepairPlan> m_plan;
};

/// The opening that a section shows, after the bevel, from the figures of a job alone (common practice, no source):
/// along a hole or a dent, across a crack, a gouge or a seam; a bevel of B : 1 adds B times its depth on each side.
[[nodiscard]] Length openingOf(const Damage& damage, bool rearAccess);

} // namespace strandbench::test
