// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with the log, in words. Apart from Words, so that only who shows it knows repairlog.
#pragma once

#include "repairlog/repair_log.h"

namespace strandbench {

struct LogTroubleText {
    QString headline; ///< what is wrong, one short sentence
    QString whatToDo; ///< one or two short sentences
};

[[nodiscard]] LogTroubleText logTrouble(LogTrouble trouble);

/// Where verifying found the first break, by VerifyReport::breaksAt; in brackets for a code without a text.
[[nodiscard]] QString breakName(const QString& breaksAt);

} // namespace strandbench
