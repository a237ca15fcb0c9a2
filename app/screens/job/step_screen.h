// SPDX-License-Identifier: GPL-3.0-or-later
// One step of preparing, finishing or handing over: a sentence, a picture, the cautions of this step, and
// one way on named by what it records.
#pragma once

#include "screens/frame/side_key.h"

namespace strandbench {

class StepScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        QString name;
        QString context; ///< with "step 6 of 13"
        StepText text;
        QString stepCode;     ///< picks the picture
        bool looking = false; ///< done before, only looked at
        std::function<void()> done;
        std::vector<SideKey> side = {}; ///< what can hurt here; a photo that belongs to this step
    };
    StepScreen(const Surroundings& around, const Repair& repair, Spec spec, QWidget* parent = nullptr);

Q_SIGNALS:
    void presentWanted();
};

} // namespace strandbench
