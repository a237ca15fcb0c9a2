// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/practice_progress.h"

#include <algorithm>

namespace strandbench {
namespace {

/// Whether a skill was shown without a mistake; empty where it was not asked for.
std::optional<bool> shownIn(const PracticeEntry& entry, Skill skill)
{
    std::optional<bool> right;
    for (const PracticeEntry::Answer& each : entry.answers)
        if (skillOf(each.decision) == skill)
            right = right.value_or(true) && each.right;
    return right;
}

} // namespace

SkillRecord skillRecordOf(const std::vector<PracticeEntry>& entries, const QString& person)
{
    SkillRecord record;
    for (const PracticeEntry& each : entries)
        for (const auto& [skill, code] : Codes<Skill>::table)
            if (const auto right = shownIn(each, skill); right && each.person == person)
                record.see(skill, *right);
    return record;
}

std::vector<QString> workedBy(const std::vector<PracticeEntry>& entries, const QString& person)
{
    std::vector<QString> worked;
    for (const PracticeEntry& each : entries)
        if (each.person == person)
            worked.push_back(each.panel);
    return worked;
}

std::vector<SkillState> skillsOf(const std::vector<PracticeEntry>& entries, const QString& person)
{
    const SkillRecord record = skillRecordOf(entries, person);
    std::vector<SkillState> all;
    for (const auto& [skill, code] : Codes<Skill>::table) {
        SkillState state{skill, 0, 0, record.of(skill).known, record.isMastered(skill)};
        for (const PracticeEntry& each : entries) {
            const auto right = each.person == person ? shownIn(each, skill) : std::nullopt;
            state.panels += right ? 1 : 0;
            state.right += right.value_or(false) ? 1 : 0;
        }
        all.push_back(state);
    }
    return all;
}

} // namespace strandbench
