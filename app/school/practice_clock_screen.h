// SPDX-License-Identifier: GPL-3.0-or-later
// A batch that cures on a practice panel: what is felt of it, never when what is due.
#pragma once

#include "bench/worker.h"
#include "practice/laid_lift.h"
#include "practice/paced_time.h"
#include "practice/practice_run.h"
#include "screens/frame/side_key.h"

namespace strandbench {

class PracticeClockScreen final : public Screen {
    Q_OBJECT
public:
    /// run and time outlive the screen.
    PracticeClockScreen(const Surroundings& around, const PracticeRun& run, PacedTime& time, QWidget* parent = nullptr);

    void tick() override;

Q_SIGNALS:
    void edgesCleared(Duration since);
    void sanded(Duration since);
    void anotherWanted(); ///< another batch for the same lift

private:
    /// When what happens, by the engine, of the batch as it was mixed; empty: it never does.
    struct Course {
        std::optional<Duration> board;
        std::optional<Duration> gel;
        std::optional<Duration> sand;
    };
    [[nodiscard]] static Course courseOf(const Attempt& attempt, const ModelAnswer& own, const PlanningSet& shop);
    void buildKeys();
    void feel();
    [[nodiscard]] QString feltWhileSpreading(Duration gone) const;
    [[nodiscard]] QString nailSays(Duration gone) const;

    const PracticeRun& m_run;
    PacedTime& m_time;
    bool m_spreading;
    std::optional<Course> m_course;
    Worker m_worker;
    FitLabel* m_figure = nullptr;
    FitLabel* m_felt = nullptr;
    TapButton* m_pace = nullptr;
};

} // namespace strandbench
