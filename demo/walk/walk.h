// SPDX-License-Identifier: GPL-3.0-or-later
// What a technician would tap next, told from the screen alone: so a walk goes on after any restart.
#pragma once

#include "walk/scripted_bench.h"

#include <map>

namespace strandbench {

/// A repair as a technician finds it: the answers by question code, the figures by field name.
struct DemoJob {
    QString job;
    QString panel;
    QString person;
    std::map<QString, QString> answers;   ///< question code: answer code
    std::map<QString, QString> figures;   ///< field: what is keyed in, metric
    std::map<QString, QString> readAgain; ///< the reading before filling
};

/// One touch, and how long to wait for it.
struct Touch {
    QString control;
    bool held = false;
    std::optional<Duration> sinceHardener = std::nullopt; ///< the clock of the mix first gets here
};

class Walk {
public:
    Walk(ScriptedBench& bench, DemoJob job) : m_bench(bench), m_job(std::move(job)) {}

    /// The next touch on the screen that shows; empty when the walk is over or the screen leads nowhere.
    [[nodiscard]] std::optional<Touch> next() const;
    /// Does the next touch. False when there is none or the control refuses it; why() then says which.
    [[nodiscard]] bool step();
    /// Walks until the repair stands at this station with this batch index, or as far as it goes.
    [[nodiscard]] bool walkTo(Station station, int batch = 0);
    /// Called after each touch has settled.
    std::function<void(const Touch&)> touched;
    [[nodiscard]] const QString& why() const { return m_why; }

private:
    [[nodiscard]] std::optional<Touch> onHome() const;
    [[nodiscard]] QString panelAsShown() const; ///< in the language of the walk
    [[nodiscard]] std::optional<Touch> tileOf(const QString& title) const;
    [[nodiscard]] std::optional<Touch> keyAfter(const QString& shown, const QString& wanted) const;
    [[nodiscard]] std::optional<Touch> onFigures(const std::map<QString, QString>& figures) const;
    [[nodiscard]] std::optional<Touch> onClock(bool spreading) const;
    [[nodiscard]] QString textOf(const QString& label) const;
    [[nodiscard]] const BatchRun* run() const;

    ScriptedBench& m_bench;
    DemoJob m_job;
    QString m_why;
};

} // namespace strandbench
