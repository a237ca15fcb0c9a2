// SPDX-License-Identifier: GPL-3.0-or-later
// What a person's practice says of each skill.
#pragma once

#include "practice/mastery.h"
#include "practice/practice_record.h"

namespace strandbench {

/// Folds what a person worked, in the order of the entries.
[[nodiscard]] SkillRecord skillRecordOf(const std::vector<PracticeEntry>& entries, const QString& person);
/// Ids of the panels that a person worked, the newest last.
[[nodiscard]] std::vector<QString> workedBy(const std::vector<PracticeEntry>& entries, const QString& person);

struct SkillState {
    Skill skill = Skill::Identify;
    int panels = 0; ///< at which it was asked for
    int right = 0;  ///< of these, without a mistake
    Fraction known; ///< as it is believed
    bool mastered = false;
    bool operator==(const SkillState&) const = default;
};
/// Every skill of a person, in the order of the job.
[[nodiscard]] std::vector<SkillState> skillsOf(const std::vector<PracticeEntry>& entries, const QString& person);

} // namespace strandbench
