// SPDX-License-Identifier: GPL-3.0-or-later
// One decision as it is marked: what was decided, what would have been right, what it would have come to in one
// sentence and one picture, and the rule behind it.
#pragma once

#include "bench/worker.h"
#include "practice/marking.h"
#include "practice/practice_run.h"
#include "screens/frame/screen.h"

namespace strandbench {

class CureChart;
class FitColumn;

class MarkScreen final : public Screen {
    Q_OBJECT
public:
    MarkScreen(const Surroundings& around, const PracticeRun& run, const Mark& mark, QWidget* parent = nullptr);

private:
    void buildWords();
    /// What was decided beside what is right; of a wrong one nothing where that is more than fits.
    void addDecision(FitColumn& lines);
    void buildPicture(const PracticeRun& run);
    [[nodiscard]] QWidget* curve();

    Mark m_mark;
    CureChart* m_chart = nullptr;
    Worker m_worker;
};

} // namespace strandbench
