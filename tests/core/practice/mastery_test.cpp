// SPDX-License-Identifier: GPL-3.0-or-later
// The mastery rule against its published form (by hand, and by every hidden path summed up), and with pupils whose
// skills are known.
#include "pupils.h"

#include "practice/mastery.h"

#include <gtest/gtest.h>

#include <cmath>
#include <iostream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

MasteryRule ruleOf(double start, double learning, double slip, double guess)
{
    return {Fraction::ofOne(start), Fraction::ofOne(learning), Fraction::ofOne(slip), Fraction::ofOne(guess),
            Fraction::ofOne(0.95)};
}

/// Worked by hand, in fractions. Right: 1/2 becomes (1/2 9/10)/(1/2 9/10 + 1/2 1/5) = 9/11, and with 3/10 of the rest
/// 48/55. Wrong after that: (48/55 1/10)/(48/55 1/10 + 7/55 4/5) = 6/13, and 81/130.
TEST(PracticeMastery, GoesByThePublishedEquations)
{
    const MasteryRule rule = ruleOf(0.5, 0.3, 0.1, 0.2);
    const Fraction right = afterOne(rule.start, true, rule);
    EXPECT_NEAR(right.value(), 48.0 / 55.0, 1e-14);
    EXPECT_NEAR(afterOne(right, false, rule).value(), 81.0 / 130.0, 1e-14);
}

/// P(known after n | seen) of the same model, by adding up all paths through known and not known.
double byEveryPath(const std::vector<bool>& seen, double start, double learning, double slip, double guess)
{
    double all = 0;
    double known = 0;
    const std::size_t n = seen.size();
    // Once known it stays known: a path is the panel from which on it is known; n + 1 is never.
    for (std::size_t from = 0; from <= n + 1; ++from) {
        double path = from == 0 ? start : 1 - start;
        for (std::size_t i = 0; i < n; ++i) {
            const bool knows = i >= from;
            path *= knows ? (seen[i] ? 1 - slip : slip) : (seen[i] ? guess : 1 - guess);
            if (!knows)
                path *= i + 1 == from ? learning : 1 - learning;
        }
        all += path;
        if (from <= n)
            known += path;
    }
    return known / all;
}

TEST(PracticeMastery, IsThePosteriorOfItsHiddenModel)
{
    std::mt19937_64 random{95};
    std::uniform_real_distribution<double> share(0.02, 0.4);
    for (int round = 0; round < 200; ++round) {
        const double start = share(random);
        const double learning = share(random);
        const double slip = share(random);
        const double guess = share(random);
        SkillRecord record(ruleOf(start, learning, slip, guess));
        std::vector<bool> seen;
        for (int panel = 0; panel < 12; ++panel) {
            seen.push_back(random() % 2 == 0);
            record.see(Skill::Mix, seen.back());
            EXPECT_NEAR(record.of(Skill::Mix).known.value(), byEveryPath(seen, start, learning, slip, guess), 1e-12);
        }
        EXPECT_EQ(record.of(Skill::Mix).panels, 12);
        EXPECT_EQ(record.of(Skill::Time).panels, 0);
    }
}

TEST(PracticeMastery, StandsWhereWhatWasSeenCannotBe)
{
    const MasteryRule sure = ruleOf(1.0, 0.0, 0.0, 0.2);
    EXPECT_EQ(afterOne(Fraction::ofOne(1.0), false, sure).value(), 1.0);
}

/// One pupil of the model, until the record calls the skill mastered.
struct Declared {
    bool mastered = false;
    bool knows = false;
    double believed = 0;
    int panels = 0;
};
Declared untilMastered(const MasteryRule& rule, std::mt19937_64& random)
{
    std::uniform_real_distribution<double> share(0, 1);
    SkillRecord record(rule);
    Declared pupil;
    pupil.knows = share(random) < rule.start.value();
    while (!pupil.mastered && pupil.panels < 200) {
        record.see(Skill::Time, share(random) < (pupil.knows ? 1 - rule.slip.value() : rule.guess.value()));
        pupil.knows = pupil.knows || share(random) < rule.learning.value();
        pupil.mastered = record.isMastered(Skill::Time);
        ++pupil.panels;
    }
    pupil.believed = record.of(Skill::Time).known.value();
    return pupil;
}

/// Of those whom it calls masters at most one in twenty may not be, and as many as it believes itself.
TEST(PracticeMastery, IsRightAboutPupilsWhoseSkillsAreKnown)
{
    std::mt19937_64 random{1995};
    constexpr int pupils = 20000;
    int declared = 0;
    double wrongly = 0;
    double believedWrongly = 0;
    for (int i = 0; i < pupils; ++i) {
        const Declared pupil = untilMastered(MasteryRule{}, random);
        if (!pupil.mastered)
            continue;
        ++declared;
        wrongly += pupil.knows ? 0 : 1;
        believedWrongly += 1 - pupil.believed;
    }
    ASSERT_GT(declared, pupils * 99 / 100);
    const double share = wrongly / declared;
    const double expected = believedWrongly / declared;
    const double spread = std::sqrt(expected * (1 - expected) / declared);
    std::cout << "called masters who are none: " << share * 100 << " %, believed " << expected * 100 << " %\n";
    EXPECT_NEAR(share, expected, 4 * spread);
    EXPECT_LE(share, 0.05);
    EXPECT_GT(share, 0.0); // it is a belief, not a proof
}

/// Who never learns and guesses has to guess right three times running before anybody is fooled: with 1 in 5 that is
/// rare. The exact chance of being called a master within twelve panels, by every string of answers, is what is met.
TEST(PracticeMastery, IsSeldomFooledByAPupilWhoOnlyGuesses)
{
    const MasteryRule rule;
    double fooled = 0;
    for (unsigned answers = 0; answers < (1U << 12); ++answers) {
        SkillRecord record(rule);
        double chance = 1;
        bool called = false;
        for (unsigned i = 0; i < 12; ++i) {
            const bool right = (answers >> i & 1U) != 0;
            chance *= right ? 0.2 : 0.8;
            record.see(Skill::Mix, right);
            called = called || record.isMastered(Skill::Mix);
        }
        fooled += called ? chance : 0;
    }
    std::cout << "fooled by guessing within twelve panels: " << fooled * 100 << " %\n";
    EXPECT_LT(fooled, 0.10);
    std::mt19937_64 random{3};
    int met = 0;
    for (int i = 0; i < 20000; ++i) {
        SkillRecord record(rule);
        bool called = false;
        for (int panel = 0; panel < 12; ++panel) {
            record.see(Skill::Mix, random() % 5 == 0);
            called = called || record.isMastered(Skill::Mix);
        }
        met += called ? 1 : 0;
    }
    EXPECT_NEAR(met / 20000.0, fooled, 4 * std::sqrt(fooled * (1 - fooled) / 20000));
}

TEST(PracticeMastery, APanelIsOneObservationASkill)
{
    const Lesson lesson = lessonOf(delivered(u"smc_bonnet_hole"_s));
    Attempt attempt = perfectAttempt(lesson.truth, shop());
    attempt.finish->tests.clear();
    attempt.finish->beforePrimer = seconds(0);
    SkillRecord record;
    record.see(markOf(lesson, attempt));
    for (const auto& [skill, code] : Codes<Skill>::table) {
        EXPECT_EQ(record.of(skill).panels, 1) << code;
        EXPECT_EQ(record.of(skill).known, afterOne(record.rule().start, skill != Skill::Finish)) << code;
    }
    EXPECT_EQ(record.weakest(), Skill::Finish);

    const Lesson stop = lessonOf(delivered(u"spot_joint"_s));
    record.see(markOf(stop, perfectAttempt(stop.truth, shop())));
    EXPECT_EQ(record.of(Skill::Decide).panels, 2);
    EXPECT_EQ(record.of(Skill::Mix).panels, 1); // nothing of it was reached
}

TEST(PracticeMastery, TheNextPanelExercisesTheWeakestSkill)
{
    const std::vector<PanelToChoose> panels{{u"stop"_s, false, {TrapKind::SpotSeam}},
                                            {u"plain"_s, true, {}},
                                            {u"disc"_s, true, {TrapKind::AluminiumSteelDisc}}};
    SkillRecord record;
    for (const auto& [skill, code] : Codes<Skill>::table)
        record.see(skill, skill != Skill::Prepare);
    EXPECT_EQ(record.weakest(), Skill::Prepare);
    EXPECT_EQ(nextPanel(record, panels, {}), 2U);                      // a trap for it goes first
    EXPECT_EQ(nextPanel(record, panels, {u"disc"_s}), 1U);             // then what was not worked yet
    EXPECT_EQ(nextPanel(record, panels, {u"disc"_s, u"plain"_s}), 2U); // then the one of longest ago
    EXPECT_EQ(nextPanel(record, {panels.front()}, {}), std::nullopt);  // a stop does not exercise it
    for (int i = 0; i < 3; ++i)
        record.see(Skill::Decide, false);
    EXPECT_EQ(nextPanel(record, panels, {}), 0U);
}

/// Wherever the weakest skill is, the delivered panels have one for it that its model answer reaches.
TEST(PracticeMastery, TheDeliveredPanelsExerciseEverySkill)
{
    std::vector<PanelToChoose> panels;
    for (const Lesson& each : deliveredLessons())
        panels.push_back({each.panel.id, each.truth.fill(), each.panel.traps});
    for (const auto& [weak, code] : Codes<Skill>::table) {
        SkillRecord record;
        record.see(weak, false);
        for (const auto& [skill, name] : Codes<Skill>::table)
            record.see(skill, skill != weak);
        const auto next = nextPanel(record, panels, {});
        ASSERT_TRUE(next) << code;
        const Lesson& lesson = deliveredLessons()[*next];
        const Marking marking = markOf(lesson, perfectAttempt(lesson.truth, shop()));
        bool reached = false;
        for (const Mark& each : marking.marks)
            reached = reached || skillOf(each.decision) == weak;
        EXPECT_TRUE(reached) << code;
    }
}

} // namespace
} // namespace strandbench::test
