// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/inference.h"
#include "practice/judging.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::practice {
namespace {

using Change = std::function<void(Assessment&)>;

/// One answer marked, and what this one alone would have led to.
class Answers {
public:
    Answers(const Situation& situation, std::vector<Mark>& marks) : m_situation(situation), m_marks(marks) {}

    void add(Mark mark, const Change& asThePupil)
    {
        if (mark.judged == Judged::Wrong) {
            Assessment changed = m_situation.truth.assessment;
            asThePupil(changed);
            mark.consequence = ofWrongAnswer(m_situation.truth, changed, m_situation.shop);
        }
        m_marks.push_back(std::move(mark));
    }
    template <class E>
    void add(DecisionPoint decision, const std::optional<E>& given, E expected, Reason rule, const Change& change)
    {
        add(judged(decision, given == expected, given ? Arguments{codeOf(*given)} : Arguments{}, {codeOf(expected)},
                   std::move(rule)),
            change);
    }
    /// A yes or no.
    void add(DecisionPoint decision, const std::optional<bool>& given, bool expected, const Change& change)
    {
        const auto code = [](bool yes) { return yes ? u"yes"_s : u"no"_s; };
        add(judged(decision, given == expected, given ? Arguments{code(*given)} : Arguments{}, {code(expected)},
                   ruleOf(decision)),
            change);
    }
    void skip(DecisionPoint decision) { m_marks.push_back(notReached(decision)); }

private:
    const Situation& m_situation;
    std::vector<Mark>& m_marks;
};

/// The first test that speaks against the pupil's substrate; or that none tells those apart that are left.
Reason substrateRule(const Situation& situation)
{
    const PracticePanel& panel = situation.panel;
    const auto given = situation.own.assessment.substrate;
    if (panel.truth.substrate == Substrate::Unknown)
        return {u"not_told_apart"_s, {Count{static_cast<int>(consistentWith(panel.shown).substrates.size())}}};
    if (given) {
        const QStringList against = speaksAgainst(*given, *panel.truth.surface, panel.shown);
        if (!against.isEmpty())
            return {u"a_test_tells"_s, {against.front()}};
    }
    return ruleOf(DecisionPoint::SubstrateFound);
}

bool isNear(Length given, Length expected, double share, Length least)
{
    const double off = std::abs((given - expected).value());
    return off <= std::max(expected.value() * share, least.value()) * (1.0 + 1e-9);
}

bool isMeasured(const Damage& given, const Damage& expected, const MarkingTolerances& within)
{
    const bool width =
        expected.kind == DamageKind::Crack || isNear(given.width, expected.width, within.across, within.lengthAtLeast);
    return width && isNear(given.length, expected.length, within.length, within.lengthAtLeast) &&
           isNear(given.depth, expected.depth, within.across, within.depthAtLeast);
}

Arguments measures(const Damage& damage)
{
    if (damage.kind == DamageKind::Crack)
        return {damage.length, damage.depth};
    return {damage.length, damage.width, damage.depth};
}

void markSize(const Damage& given, const Damage& expected, Answers& answers)
{
    const MarkingTolerances within;
    const Reason rule = ruleOf(DecisionPoint::SizeFound, {Fraction::ofOne(within.length), within.lengthAtLeast,
                                                          Fraction::ofOne(within.across), within.depthAtLeast});
    answers.add(judged(DecisionPoint::SizeFound, isMeasured(given, expected, within), measures(given),
                       measures(expected), rule),
                [&](Assessment& a) { a.damage = given; });
}

/// What is asked of a damage is asked once its kind is right.
void markDamage(const Situation& situation, Answers& answers)
{
    const Assessment& own = situation.own.assessment;
    const Assessment& truth = situation.truth.assessment;
    const Damage& expected = *truth.damage;
    const bool known = own.damage && own.damage->kind == expected.kind;
    answers.add(judged(DecisionPoint::DamageFound, known,
                       own.damage ? Arguments{codeOf(own.damage->kind)} : Arguments{}, {codeOf(expected.kind)},
                       ruleOf(DecisionPoint::DamageFound)),
                [&](Assessment& a) {
                    a.damage = own.damage;
                    a.rearAccess = own.rearAccess;
                });
    if (!known) {
        answers.skip(DecisionPoint::SizeFound);
        return;
    }
    markSize(*own.damage, expected, answers);
    if (expected.weld)
        answers.add(DecisionPoint::WeldFound, own.damage->weld, *expected.weld, ruleOf(DecisionPoint::WeldFound),
                    [&](Assessment& a) { a.damage->weld = own.damage->weld; });
    if (expected.adhesiveCured)
        answers.add(DecisionPoint::AdhesiveFound, own.damage->adhesiveCured, *expected.adhesiveCured,
                    [&](Assessment& a) { a.damage->adhesiveCured = own.damage->adhesiveCured; });
    if (expected.kind == DamageKind::Hole)
        answers.add(DecisionPoint::ReachFound, own.rearAccess, truth.rearAccess.value_or(false),
                    [&](Assessment& a) { a.rearAccess = own.rearAccess; });
}

} // namespace

void markIdentifying(const Situation& situation, std::vector<Mark>& marks)
{
    const Assessment& own = situation.own.assessment;
    const Assessment& truth = situation.truth.assessment;
    Answers answers(situation, marks);
    answers.add(DecisionPoint::SubstrateFound, own.substrate, *truth.substrate, substrateRule(situation),
                [&](Assessment& a) { a.substrate = own.substrate; });
    markDamage(situation, answers);
    answers.add(DecisionPoint::SurfaceFound, own.surface, *truth.surface, ruleOf(DecisionPoint::SurfaceFound),
                [&](Assessment& a) { a.surface = own.surface; });
    answers.add(DecisionPoint::ZoneFound, own.zone, *truth.zone, ruleOf(DecisionPoint::ZoneFound, {mountingReach()}),
                [&](Assessment& a) { a.zone = own.zone; });
    answers.add(DecisionPoint::MoistureFound, own.moisture, *truth.moisture, ruleOf(DecisionPoint::MoistureFound),
                [&](Assessment& a) { a.moisture = own.moisture; });
    if (truth.substrate == Substrate::Laminate) {
        if (own.substrate == Substrate::Laminate)
            answers.add(DecisionPoint::CoreFound, std::optional(own.core), truth.core, ruleOf(DecisionPoint::CoreFound),
                        [&](Assessment& a) { a.core = own.core; });
        else
            answers.skip(DecisionPoint::CoreFound);
    }
}

} // namespace strandbench::practice
