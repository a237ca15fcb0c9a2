// SPDX-License-Identifier: GPL-3.0-or-later
// An answer changed after the plan, by taps: what the glass says of it is core's own difference of the two plans.
#include "bench_fixture.h"

#include "plan/plan_difference.h"
#include "touch/fit_label.h"
#include "words/plan_words.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// A gouge deep enough for two lifts.
DemoJob deepGouge()
{
    DemoJob job = roofCap();
    job.figures[u"depth_mm"_s] = u"12"_s;
    job.figures[u"panel_thickness_mm"_s] = u"16"_s;
    return job;
}

class ChangeAnswer : public BenchTest {
protected:
    [[nodiscard]] const Repair& repair() { return *bench().repair(deepGouge().job); }
    [[nodiscard]] QString text(const QString& name)
    {
        const auto* label = window().findChild<FitLabel*>(name);
        return label ? label->text() : QString();
    }
    /// From the mix screen to what was answered.
    void toTheAnswers()
    {
        tap(u"answer_back"_s);
        ASSERT_EQ(screen(), u"screen_plan"_s);
        tap(u"answers"_s);
        ASSERT_EQ(screen(), u"screen_answers"_s);
    }
    /// Makes the gouge so many half millimetres deeper.
    void deepen(int steps)
    {
        tap(u"answered_size"_s);
        ASSERT_EQ(screen(), u"screen_assess_size"_s);
        for (int i = 0; i < steps; ++i)
            tap(u"depth_mm_plus"_s);
        tap(u"answer_way_on"_s);
    }
    /// What the screen shows of the change, beside what core makes of it.
    void compareShown(const RepairPlan& before)
    {
        const Words words(UnitSystem::Metric, QLocale(u"en"_s));
        const RepairPlan now = bench().bench().plan(repair());
        const PlanDifference difference = planDifference(before, now, planProgressOf(repair()));
        EXPECT_FALSE(difference.figures.empty());
        for (const PlanChange& each : difference.figures)
            EXPECT_EQ(text(u"change_"_s + each.code),
                      words::planFigure(*each.before, words) + u" → "_s + words::planFigure(*each.now, words))
                << each.code.toStdString();
    }
};

TEST_F(ChangeAnswer, BeforeMixingOpensTheStepsThatDependedOnIt)
{
    open();
    walkTo(deepGouge(), Station::Mix);
    const RepairPlan before = *repair().plan;
    toTheAnswers();
    tap(u"answered_substrate"_s);
    tap(u"answer_smc"_s);
    ASSERT_EQ(screen(), u"screen_replan"_s);
    EXPECT_TRUE(repair().replanDue());
    compareShown(before);
    EXPECT_FALSE(text(u"steps_opened"_s).isEmpty());
    tap(u"answer_way_on"_s);
    EXPECT_FALSE(repair().replanDue());
    EXPECT_EQ(repair().planVersion, 2);
    EXPECT_LT(repair().prepDone, static_cast<int>(before.prep.size()));
    EXPECT_EQ(nextStep(repair()).station, Station::Prepare);
    EXPECT_EQ(repair().plan->filler, FillerClass::MixedStrand);
}

TEST_F(ChangeAnswer, ChangedBackThePlanStands)
{
    open();
    walkTo(deepGouge(), Station::Mix);
    toTheAnswers();
    tap(u"answered_substrate"_s);
    tap(u"answer_smc"_s);
    ASSERT_EQ(screen(), u"screen_replan"_s);
    tap(u"answers"_s);
    tap(u"answered_substrate"_s);
    tap(u"answer_frp"_s);
    EXPECT_EQ(screen(), u"screen_mix"_s);
    EXPECT_EQ(repair().planVersion, 1);
}

TEST_F(ChangeAnswer, AfterMixingKeepsWhatIsLaidAndPlansTheRest)
{
    open();
    walkTo(deepGouge(), Station::Wait);
    const RepairPlan before = *repair().plan;
    ASSERT_EQ(before.lifts.size(), 2u);
    const std::vector<BatchRun> runs = repair().runs;
    tap(u"answer_back"_s);
    tap(u"answers"_s);
    deepen(6);
    ASSERT_EQ(screen(), u"screen_replan"_s);
    compareShown(before);
    EXPECT_EQ(text(u"batches_kept"_s), Words(UnitSystem::Metric, QLocale(u"en"_s)).batches(1));
    EXPECT_EQ(bench().bench().runningMixes().size(), 1u) << "the mix on the panel runs on";
    tap(u"answer_way_on"_s);
    EXPECT_EQ(repair().runs, runs);
    EXPECT_EQ(repair().plan->batches.front(), before.batches.front());
    EXPECT_EQ(repair().plan->lifts.front(), before.lifts.front());
    EXPECT_EQ(repair().prepDone, static_cast<int>(before.prep.size()));
    EXPECT_GT(repair().plan->fillerTotal, before.fillerTotal);
    EXPECT_EQ(screen(), u"screen_wait"_s);
    const Repair stood = repair();
    open(); // and again after a restart
    EXPECT_EQ(repair(), stood);
    walkTo(deepGouge(), Station::Done);
}

TEST_F(ChangeAnswer, ToARefusalStopsWhateverWasMixedAndTheSameAnswersLeadBack)
{
    open();
    walkTo(deepGouge(), Station::Wait);
    tap(u"answer_back"_s);
    tap(u"answers"_s);
    tap(u"answered_zone"_s);
    tap(u"answer_structural"_s);
    ASSERT_EQ(screen(), u"screen_refusal"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(nextStep(repair()).station, Station::Parked);
    ASSERT_TRUE(bench().thumb().hold(u"assess_again"_s));
    ASSERT_EQ(nextStep(repair()).station, Station::Assess);
    EXPECT_TRUE(repair().plan) << "a batch was mixed: its plan is kept";
    walkTo(deepGouge(), Station::Sand);
    EXPECT_EQ(repair().planVersion, 1) << "the same answers, the same plan";
}

TEST_F(ChangeAnswer, NoLongerOnceFinishingFillerIsOn)
{
    open();
    walkTo(deepGouge(), Station::Finish);
    tap(u"answer_back"_s);
    if (screen() != u"screen_plan"_s)
        tap(u"answer_back"_s);
    tap(u"answers"_s);
    const Repair before = repair();
    tap(u"answered_zone"_s);
    EXPECT_EQ(screen(), u"screen_answers"_s);
    EXPECT_FALSE(window().screen()->troubleShown().isEmpty());
    EXPECT_EQ(repair(), before);
}

} // namespace
} // namespace strandbench::test
