// SPDX-License-Identifier: GPL-3.0-or-later
// The way through a panel, question by question: who answers as the model answer does gets full marks on every one.
#include "shop.h"

#include "practice/marking.h"
#include "practice/practice_run.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

AnswerValue valueOf(Question question, const Assessment& found)
{
    const Damage& damage = *found.damage;
    switch (question) {
    case Question::Substrate:
        return *found.substrate;
    case Question::DamageKind:
        return damage.kind;
    case Question::Weld:
        return *damage.weld;
    case Question::AdhesiveCured:
        return *damage.adhesiveCured;
    case Question::Size:
        return DamageSize{damage.length, damage.width, damage.depth, damage.panelThickness, damage.bevelRatio};
    case Question::RearAccess:
        return found.rearAccess.value_or(false);
    case Question::Surface:
        return *found.surface;
    case Question::Zone:
        return *found.zone;
    case Question::Moisture:
        return *found.moisture;
    case Question::Core:
        return found.core;
    case Question::Reading:
        break;
    }
    return *found.reading;
}

/// Does what is asked as the attempt has it, until nothing is.
void work(PracticeRun& run, const Attempt& attempt)
{
    for (int acts = 0; acts < 200 && run.asks() != PracticeAsks::Done; ++acts) {
        const auto& laid = run.attempt().lifts;
        const AttemptedLift* now = laid.empty() ? nullptr : &attempt.lifts.at(laid.size() - 1);
        switch (run.asks()) {
        case PracticeAsks::Question:
            ASSERT_FALSE(run.answer({*run.question(), valueOf(*run.question(), attempt.found), {}}, {}));
            break;
        case PracticeAsks::FillOrStop:
            run.decide(*attempt.fill);
            break;
        case PracticeAsks::WhyStop:
            run.giveStops(attempt.stops);
            break;
        case PracticeAsks::Instead:
            run.giveInstead(attempt.instead);
            break;
        case PracticeAsks::Filler:
            run.choose(*attempt.filler);
            break;
        case PracticeAsks::Steps:
            run.putSteps(attempt.steps);
            break;
        case PracticeAsks::Lift:
            run.beginLift(attempt.lifts.at(laid.size()).thickness);
            break;
        case PracticeAsks::Mix: {
            const MixedBatch& batch = now->batches.at(laid.back().batches.size());
            run.mix(batch.puddle, batch.bead);
            break;
        }
        case PracticeAsks::Spread:
            run.clearEdges(*now->batches.at(laid.back().batches.size() - 1).edgesCleared);
            break;
        case PracticeAsks::Sand:
            laid.back().batches.size() < now->batches.size() ? run.mixAnother() : run.sand(*now->sanded);
            break;
        case PracticeAsks::AfterSanding:
            if (laid.size() == attempt.lifts.size())
                run.beginFinish();
            else if (attempt.lifts[laid.size()].face != run.face())
                run.turn();
            else
                run.nextLift();
            break;
        case PracticeAsks::Coats:
            run.layFinish(attempt.finish->coats, attempt.finish->coat);
            break;
        case PracticeAsks::Tests:
            run.test(attempt.finish->tests);
            break;
        case PracticeAsks::Primer:
            run.waitForPrimer(attempt.finish->beforePrimer);
            break;
        case PracticeAsks::Done:
            break;
        }
    }
}

TEST(PracticeRun, WorksEveryDeliveredPanelToFullMarks)
{
    for (const PracticePanel& each : deliveredPanels()) {
        SCOPED_TRACE(each.id.toStdString());
        const ModelAnswer model = modelAnswer(each.truth, shop());
        PracticeRun run(each, shop(), {});
        work(run, perfectAttempt(model, shop()));
        ASSERT_EQ(run.asks(), PracticeAsks::Done);
        const Marking marking = mark(each, model, run.attempt(), shop());
        for (const Mark& mark : marking.marks)
            EXPECT_NE(mark.judged, Judged::Wrong) << codeOf(mark.decision).toStdString();
        EXPECT_TRUE(marking.outcome.passed());
    }
}

TEST(PracticeRun, AnAnswerThatDoesNotFitChangesNothing)
{
    PracticeRun run(deliveredPanels().front(), shop(), {});
    const Attempt before = run.attempt();
    EXPECT_TRUE(run.answer({Question::Substrate, DamageKind::Hole, {}}, {}));
    EXPECT_EQ(run.attempt(), before);
    EXPECT_EQ(run.question(), Question::Substrate);
}

TEST(PracticeRun, FillingWhatTheOwnAnswersStopEndsIt)
{
    for (const PracticePanel& each : deliveredPanels()) {
        const ModelAnswer model = modelAnswer(each.truth, shop());
        if (model.fill())
            continue;
        Attempt attempt = perfectAttempt(model, shop());
        attempt.fill = true;
        PracticeRun run(each, shop(), {});
        work(run, attempt);
        EXPECT_EQ(run.asks(), PracticeAsks::Done);
        EXPECT_TRUE(mark(each, model, run.attempt(), shop()).outcome.filledAStop);
    }
}

} // namespace
} // namespace strandbench::test
