// SPDX-License-Identifier: GPL-3.0-or-later
// The work as it was done, below the model answer, on one time axis.
#pragma once

#include "bench/worker.h"
#include "pictures/timeline_picture.h"
#include "practice/practice_run.h"
#include "practice/replay.h"
#include "screens/frame/screen.h"

namespace strandbench {

class ReplayScreen final : public Screen {
    Q_OBJECT
public:
    /// hand: what the work was judged by; see Marking.
    ReplayScreen(const Surroundings& around, const PracticeRun& run, const ModelAnswer& hand,
                 QWidget* parent = nullptr);

private:
    void showBoth(const Replay& replay);

    TimelinePicture* m_picture = nullptr;
    FitLabel* m_told = nullptr;
    Worker m_worker;
};

} // namespace strandbench
