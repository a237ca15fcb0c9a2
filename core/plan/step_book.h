// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of preparing and finishing as data: a new step is an entry in resources/steps, not a hunt
// through switches.
#pragma once

#include "quantity/quantity.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace strandbench {

/// One step that a plan may hold, and when.
struct StepRule {
    QString code;
    Duration handsOn;               ///< the technician's time
    Duration waiting;               ///< time it then needs by itself
    std::vector<QString> cautions;  ///< codes, shown at the step
    std::vector<QString> when;      ///< conditions that must all hold; "!x" is x not holding; empty: always
    std::vector<QString> arguments; ///< names of figures that the planner puts into the step's text
};

struct StepBook {
    std::vector<StepRule> prepare; ///< in the order they are done
    std::vector<StepRule> finish;  ///< after the last finishing coat
    QByteArray source;
    QByteArray hash; ///< SHA-256 of source
};

/// The conditions and the arguments that the planner knows; the reader refuses others.
[[nodiscard]] const std::vector<QString>& knownStepConditions();
[[nodiscard]] const std::vector<QString>& knownStepArguments();

} // namespace strandbench
