// SPDX-License-Identifier: GPL-3.0-or-later
// What marking must hold: full marks for who does everything right, one mark for one mistake, and no pass for a
// filled stop.
#include "pupils.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

TEST(PracticePupil, WhoDoesEverythingRightHasFullMarks)
{
    for (const Lesson& lesson : deliveredLessons()) {
        const Marking marking = markOf(lesson, perfectAttempt(lesson.truth, shop()));
        for (const Mark& each : marking.marks)
            EXPECT_EQ(each.judged, Judged::Right) << lesson.panel.id.toStdString() << ": " << textOf(each);
        EXPECT_TRUE(marking.outcome.passed()) << lesson.panel.id.toStdString();
        expectWellFormed(marking);
    }
}

TEST(PracticePupil, WhoMakesOneMistakeLosesThatMarkAndSeesWhatComesOfIt)
{
    std::map<DecisionPoint, int> made;
    std::set<QString> seen;
    for (const Lesson& lesson : deliveredLessons()) {
        for (const std::vector<Mistake> mistakes = singleMistakes(lesson); const Mistake& mistake : mistakes) {
            const Marking marking = markOf(lesson, mistake.attempt);
            expectWellFormed(marking);
            std::string wrong;
            for (const Mark& each : marking.marks)
                if (each.judged == Judged::Wrong)
                    wrong += textOf(each) + "; ";
            const auto lost = std::ranges::count(marking.marks, Judged::Wrong, &Mark::judged);
            const auto mark = std::ranges::find(marking.marks, Judged::Wrong, &Mark::judged);
            EXPECT_EQ(lost, 1) << lesson.panel.id.toStdString() << ", " << mistake.name << ": " << wrong;
            if (lost == 0)
                continue;
            EXPECT_EQ(mark->decision, mistake.decision) << lesson.panel.id.toStdString() << ", " << wrong;
            EXPECT_TRUE(mistake.consequences.contains(mark->consequence->what.code))
                << lesson.panel.id.toStdString() << ", " << mistake.name << ": " << wrong;
            seen.insert(mark->consequence->what.code);
            if (mark->consequence->sheetsWord)
                seen.insert(mark->consequence->sheetsWord->code);
            ++made[mistake.decision];
        }
    }
    for (const auto& [decision, code] : Codes<DecisionPoint>::table)
        EXPECT_GT(made[decision], 0) << "no mistake at " << code;
    // These take more than one mistake, or figures that no bench could lay.
    const std::set<QString> others{u"built_too_high"_s, u"beyond_the_model"_s, u"nothing_laid"_s};
    for (const CodeWithArguments& each : knownConsequences())
        EXPECT_TRUE(seen.contains(each.code) || others.contains(each.code)) << each.code.toStdString();
}

TEST(PracticePupil, WhoFillsAStopNeverPasses)
{
    for (const Lesson& lesson : deliveredLessons()) {
        if (lesson.truth.fill())
            continue;
        for (const std::vector<Mistake> mistakes = singleMistakes(lesson); const Mistake& mistake : mistakes) {
            const Outcome outcome = markOf(lesson, mistake.attempt).outcome;
            EXPECT_EQ(outcome.filledAStop, mistake.attempt.fill == true);
            EXPECT_FALSE(outcome.passed() && mistake.attempt.fill == true) << mistake.name;
        }
    }
}

TEST(PracticePupil, WhoTapsAtRandomNeverBreaksItNorPassesWithAFilledStop)
{
    std::mt19937_64 random{20261};
    int filled = 0;
    int marked = 0;
    for (int round = 0; round < 12; ++round) {
        for (const Lesson& lesson : deliveredLessons()) {
            const Attempt attempt = randomAttempt(lesson, random);
            const Marking marking = markOf(lesson, attempt);
            expectWellFormed(marking);
            ++marked;
            if (attempt.fill != true || lesson.truth.fill())
                continue;
            ++filled;
            EXPECT_TRUE(marking.outcome.filledAStop);
            EXPECT_FALSE(marking.outcome.passed());
        }
    }
    EXPECT_GT(filled, marked / 4);
}

TEST(PracticePupil, TheSameAttemptHasTheSameMarks)
{
    std::mt19937_64 random{7};
    for (const Lesson& lesson : deliveredLessons()) {
        const Attempt attempt = randomAttempt(lesson, random);
        EXPECT_EQ(markOf(lesson, attempt).marks, markOf(lesson, attempt).marks);
    }
}

} // namespace
} // namespace strandbench::test
