// SPDX-License-Identifier: GPL-3.0-or-later
// A pupil of flesh and blood, as far as a test has one: it works a panel by taps as an attempt says.
#pragma once

#include "school/practice_flow.h"
#include "walk/scripted_bench.h"

namespace strandbench::test {

/// A panel that the program carries; the test ends where there is none of this id.
[[nodiscard]] PracticePanel carried(const QString& id);

class PracticeThumb {
public:
    explicit PracticeThumb(ScriptedBench& bench) : m_bench(bench) {}
    /// From the first look to the marks. Empty: it got there; otherwise where it did not get on.
    [[nodiscard]] QString work(const Attempt& attempt);
    /// One tap for what is asked now; empty when it was done.
    [[nodiscard]] QString step(const Attempt& attempt);

private:
    [[nodiscard]] QString tap(const QString& control);
    [[nodiscard]] QString pick(const QString& control, const QString& more);
    [[nodiscard]] QString pickAll(const std::vector<QString>& codes);
    [[nodiscard]] QString keyed(const QString& name, double value) const;
    [[nodiscard]] QString keyIn(const std::vector<std::pair<QString, double>>& figures);
    [[nodiscard]] QString answer(Question question, const Attempt& attempt);
    [[nodiscard]] QString mix(const MixedBatch& batch);
    [[nodiscard]] QString after(Duration since);
    [[nodiscard]] bool saysWhatIsAsked(const Attempt& attempt) const;
    [[nodiscard]] const PracticeRun& run() const { return *m_bench.practice().run(); }
    [[nodiscard]] QString screen() const { return m_bench.window().screen()->objectName(); }

    ScriptedBench& m_bench;
};

} // namespace strandbench::test
