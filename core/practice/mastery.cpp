// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/mastery.h"

#include <algorithm>
#include <tuple>

namespace strandbench {

Fraction afterOne(Fraction known, bool right, const MasteryRule& rule)
{
    const double l = known.value();
    const double ifKnown = right ? 1.0 - rule.slip.value() : rule.slip.value();
    const double ifNot = right ? rule.guess.value() : 1.0 - rule.guess.value();
    const double seen = l * ifKnown + (1.0 - l) * ifNot;
    const double now = seen > 0.0 ? l * ifKnown / seen : l;
    return Fraction::ofOne(now + (1.0 - now) * rule.learning.value());
}

SkillBelief SkillRecord::of(Skill skill) const
{
    const auto found = m_beliefs.find(skill);
    return found == m_beliefs.end() ? SkillBelief{m_rule.start, 0} : found->second;
}

Skill SkillRecord::weakest() const
{
    Skill least = Skill::Identify;
    for (const auto& [skill, code] : Codes<Skill>::table)
        if (of(skill).known < of(least).known)
            least = skill;
    return least;
}

void SkillRecord::see(Skill skill, bool right)
{
    const SkillBelief before = of(skill);
    m_beliefs[skill] = {afterOne(before.known, right, m_rule), before.panels + 1};
}

void SkillRecord::see(const Marking& marking)
{
    for (const auto& [skill, code] : Codes<Skill>::table) {
        bool reached = false;
        bool wrong = false;
        for (const Mark& each : marking.marks) {
            if (skillOf(each.decision) != skill)
                continue;
            reached = reached || each.judged != Judged::NotReached;
            wrong = wrong || each.judged == Judged::Wrong;
        }
        if (reached)
            see(skill, !wrong);
    }
}

bool exercises(const PanelToChoose& panel, Skill skill)
{
    return panel.fills || skill == Skill::Identify || skill == Skill::Decide;
}

std::optional<std::size_t> nextPanel(const SkillRecord& record, const std::vector<PanelToChoose>& panels,
                                     const std::vector<QString>& worked)
{
    const Skill weakest = record.weakest();
    const auto rankOf = [&](const PanelToChoose& panel) {
        const auto last = std::find(worked.rbegin(), worked.rend(), panel.id);
        const auto ago = last - worked.rbegin(); // as many as there are where it was not worked yet
        const bool trap =
            std::ranges::any_of(panel.traps, [&](TrapKind each) { return skillOf(concernedBy(each)) == weakest; });
        // A trap goes first among panels that were not worked; among those that were, the longest ago.
        return std::tuple(last == worked.rend(), last == worked.rend() && trap, ago);
    };
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < panels.size(); ++i)
        if (exercises(panels[i], weakest) && (!best || rankOf(panels[i]) > rankOf(panels[*best])))
            best = i;
    return best;
}

} // namespace strandbench
