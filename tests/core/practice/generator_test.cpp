// SPDX-License-Identifier: GPL-3.0-or-later
// A thousand generated panels: each solvable, the same again, over all that the trade tells apart; and pupils on them.
#include "pupils.h"

#include "practice/dice.h"
#include "practice/generator.h"
#include "practice/inference.h"
#include "practice/panel_json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr quint64 thousand = 1000;

const std::vector<PracticePanel>& generatedPanels()
{
    static const std::vector<PracticePanel> panels = [] {
        std::vector<PracticePanel> all;
        for (quint64 seed = 0; seed < thousand; ++seed)
            all.push_back(generatedPanel(seed));
        return all;
    }();
    return panels;
}

template <class E, class Has> void expectEvery(const Has& has)
{
    for (const auto& entry : Codes<E>::table)
        EXPECT_TRUE(
            std::ranges::any_of(generatedPanels(), [&](const PracticePanel& each) { return has(each, entry.first); }))
            << "no panel with " << entry.second;
}

TEST(PracticeGenerator, EveryPanelIsSolvedByWhatItShows)
{
    for (const PracticePanel& each : generatedPanels())
        EXPECT_TRUE(unanswered(each).isEmpty())
            << each.id.toStdString() << " " << unanswered(each).join(u' ').toStdString() << " "
            << writePracticePanel(each).toStdString();
}

TEST(PracticeGenerator, EveryPanelIsOneThatTheReaderTakes)
{
    for (const PracticePanel& each : generatedPanels()) {
        const QByteArray json = writePracticePanel(each);
        const Checked<PracticePanel> again = readPracticePanel(json);
        ASSERT_TRUE(again) << json.toStdString() << again.error().front().field.toStdString();
        EXPECT_EQ(writePracticePanel(*again), json);
    }
}

TEST(PracticeGenerator, CoversWhatTheTradeTellsApart)
{
    expectEvery<Substrate>([](const PracticePanel& p, Substrate s) { return p.truth.substrate == s; });
    expectEvery<DamageKind>([](const PracticePanel& p, DamageKind k) { return p.truth.damage->kind == k; });
    expectEvery<WeldKind>([](const PracticePanel& p, WeldKind w) { return p.truth.damage->weld == w; });
    expectEvery<SurfaceState>([](const PracticePanel& p, SurfaceState s) { return p.truth.surface == s; });
    expectEvery<Zone>([](const PracticePanel& p, Zone z) { return p.truth.zone == z; });
    expectEvery<Moisture>([](const PracticePanel& p, Moisture m) { return p.truth.moisture == m; });
    expectEvery<CoreMaterial>([](const PracticePanel& p, CoreMaterial c) { return p.truth.core == c; });
    expectEvery<TrapKind>([](const PracticePanel& p, TrapKind t) { return std::ranges::count(p.traps, t) > 0; });
}

TEST(PracticeGenerator, HalfOfThemAreFilled)
{
    const auto fills = std::ranges::count_if(generatedPanels(), [](const PracticePanel& each) {
        return decide(each.truth, shop().table, shop().catalogue).fill;
    });
    EXPECT_GT(fills, 400);
    EXPECT_LT(fills, 600);
}

/// SplitMix64's first numbers from the seed 1234567, as they are published for those who port it.
TEST(PracticeGenerator, ItsDiceAreThePublishedOnes)
{
    practice::Dice dice(1234567);
    for (const quint64 each : {6457827717110365317ULL, 3203168211198807973ULL, 9817491932198370423ULL,
                               4593380528125082431ULL, 16408922859458223821ULL})
        EXPECT_EQ(dice.next(), each);
}

TEST(PracticeGenerator, TheSameSeedIsTheSamePanelAndAnotherIsAnother)
{
    std::set<QByteArray> different;
    for (quint64 seed = 0; seed < thousand; ++seed) {
        EXPECT_EQ(generatedPanel(seed), generatedPanels()[seed]);
        PracticePanel nameless = generatedPanels()[seed];
        nameless.id = u"x"_s;
        different.insert(writePracticePanel(nameless));
    }
    EXPECT_GT(different.size(), 990U);
}

/// What the work on a panel can be besides one lift in one batch.
struct Varied {
    int lifts = 0;
    int faces = 0;
    int batches = 0;
    int bridged = 0;
    int backed = 0;
    void count(const RepairPlan& plan)
    {
        const auto front = std::ranges::count(plan.lifts, Face::Front, &Lift::face);
        lifts += front > 1 ? 1 : 0;
        faces += front < std::ssize(plan.lifts) ? 1 : 0;
        batches += plan.batches.size() > plan.lifts.size() ? 1 : 0;
        bridged += std::ranges::count(plan.lifts, *plan.filler, &Lift::filler) < std::ssize(plan.lifts) ? 1 : 0;
        backed += std::ranges::any_of(plan.prep, [](const Step& each) { return each.code.startsWith(u"backing"_s); });
    }
};

TEST(PracticeGenerator, WhoDoesEverythingRightHasFullMarksOnAThousand)
{
    Varied varied;
    for (const PracticePanel& panel : generatedPanels()) {
        const Lesson lesson = lessonOf(panel);
        if (lesson.truth.fill())
            varied.count(lesson.truth.plan);
        const Marking marking = markOf(lesson, perfectAttempt(lesson.truth, shop()));
        for (const Mark& each : marking.marks)
            EXPECT_EQ(each.judged, Judged::Right) << panel.id.toStdString() << ": " << textOf(each);
        EXPECT_TRUE(marking.outcome.passed()) << panel.id.toStdString();
    }
    for (const int each : {varied.lifts, varied.faces, varied.batches, varied.bridged, varied.backed})
        EXPECT_GT(each, 10);
}

TEST(PracticeGenerator, WhoFillsAGeneratedStopNeverPasses)
{
    std::mt19937_64 random{4};
    for (const PracticePanel& panel : generatedPanels()) {
        const Lesson lesson = lessonOf(panel);
        Attempt attempt = randomAttempt(lesson, random);
        attempt.fill = true;
        const Outcome outcome = markOf(lesson, attempt).outcome;
        EXPECT_EQ(outcome.filledAStop, !lesson.truth.fill());
        EXPECT_FALSE(outcome.filledAStop && outcome.passed());
    }
}

TEST(PracticeGenerator, OneMistakeCostsOneMarkOnGeneratedPanelsToo)
{
    for (quint64 seed = 0; seed < 200; ++seed) {
        const Lesson lesson = lessonOf(generatedPanels()[seed]);
        for (const std::vector<Mistake> mistakes = singleMistakes(lesson); const Mistake& mistake : mistakes) {
            const Marking marking = markOf(lesson, mistake.attempt);
            std::string wrong;
            for (const Mark& each : marking.marks)
                if (each.judged == Judged::Wrong)
                    wrong += textOf(each) + "; ";
            EXPECT_EQ(std::ranges::count(marking.marks, Judged::Wrong, &Mark::judged), 1)
                << lesson.panel.id.toStdString() << ", " << mistake.name << ": " << wrong;
            const auto lost = std::ranges::find(marking.marks, Judged::Wrong, &Mark::judged);
            EXPECT_TRUE(lost != marking.marks.end() && lost->decision == mistake.decision) << wrong;
        }
    }
}

} // namespace
} // namespace strandbench::test
