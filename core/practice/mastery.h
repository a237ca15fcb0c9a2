// SPDX-License-Identifier: GPL-3.0-or-later
// What is believed of a person's skills, by Bayesian knowledge tracing: A. T. Corbett and J. R. Anderson, Knowledge
// tracing: modeling the acquisition of procedural knowledge, User Modeling and User-Adapted Interaction 4 (1995)
// 253-278.
#pragma once

#include "practice/marking.h"

#include <map>

namespace strandbench {

/// Their four parameters, alike for every skill here, and where they call a skill mastered (0.95, as they have it). The
/// four are assumptions of ours: no apprentices were measured.
struct MasteryRule {
    Fraction start = Fraction::ofOne(0.20);    ///< P(L0): knows it before the first panel
    Fraction learning = Fraction::ofOne(0.15); ///< P(T): comes to know it at a panel
    Fraction slip = Fraction::ofOne(0.10);     ///< P(S): errs though it is known
    Fraction guess = Fraction::ofOne(0.20);    ///< P(G): right though it is not known
    Fraction mastered = Fraction::ofOne(0.95);
    bool operator==(const MasteryRule&) const = default;
};

/// P(L) after one more panel: first by Bayes' rule what it says of now, then the chance of having learnt at it.
///   P(L | right) = P(L) (1 - P(S)) / ( P(L) (1 - P(S)) + (1 - P(L)) P(G) )
///   P(L | wrong) = P(L) P(S) / ( P(L) P(S) + (1 - P(L)) (1 - P(G)) )
///   P(L next)    = P(L | seen) + (1 - P(L | seen)) P(T)
/// Where what was seen cannot be (its probability is 0), what was believed stands.
[[nodiscard]] Fraction afterOne(Fraction known, bool right, const MasteryRule& rule = {});

struct SkillBelief {
    Fraction known; ///< P(L)
    int panels = 0; ///< that it was learnt from
    bool operator==(const SkillBelief&) const = default;
};

/// One person's skills. A value: whoever keeps it keeps what was seen, too, and folds it anew.
class SkillRecord {
public:
    explicit SkillRecord(const MasteryRule& rule = {}) : m_rule(rule) {}

    [[nodiscard]] SkillBelief of(Skill skill) const;
    [[nodiscard]] bool isMastered(Skill skill) const { return of(skill).known >= m_rule.mastered; }
    [[nodiscard]] const MasteryRule& rule() const { return m_rule; }
    /// The skill that is least believed in; of those alike the first in the order of the work.
    [[nodiscard]] Skill weakest() const;
    /// Takes in one panel of one skill.
    void see(Skill skill, bool right);
    /// Takes in a marked panel: one observation a skill, right where none of its marks is wrong; a skill of which no
    /// mark was reached is not seen. The marks of one panel hang together, so they do not count one by one.
    void see(const Marking& marking);
    bool operator==(const SkillRecord&) const = default;

private:
    MasteryRule m_rule;
    std::map<Skill, SkillBelief> m_beliefs;
};

/// What a choice of the next panel needs to know of one.
struct PanelToChoose {
    QString id;
    bool fills = false; ///< a stop exercises identifying and deciding alone
    std::vector<TrapKind> traps;
};
[[nodiscard]] bool exercises(const PanelToChoose& panel, Skill skill);

/// The panel to give next, as its index: one that exercises the weakest skill, before others one that has a trap for
/// it, one not worked yet, or else the one worked longest ago. Empty where none exercises it: then a generated one.
/// worked: ids, the newest last.
[[nodiscard]] std::optional<std::size_t> nextPanel(const SkillRecord& record, const std::vector<PanelToChoose>& panels,
                                                   const std::vector<QString>& worked);

} // namespace strandbench
