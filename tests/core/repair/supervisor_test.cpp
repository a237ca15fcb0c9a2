// SPDX-License-Identifier: GPL-3.0-or-later
// What a supervisor does to a repair: overriding, signing off, putting right.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Overridden damp{{u"moisture_damp"_s}, u"proved_otherwise"_s};

TEST(SupervisorsFold, AnOverrideComesWhenTheDecisionIsDueAndStaysWithTheAnswers)
{
    RepairScript script;
    EXPECT_TRUE(script.put(damp)) << "nothing is decided yet";
    for (const Answered& each : sampleAnswers())
        ASSERT_FALSE(script.put(each));
    ASSERT_EQ(script.next().station, Station::Decide);
    EXPECT_TRUE(script.put(Overridden{{}, u"proved_otherwise"_s}));
    EXPECT_TRUE(script.put(Overridden{{u"moisture_damp"_s}, u" "_s}));
    ASSERT_FALSE(script.put(damp));
    EXPECT_EQ(script.repair().assessment.overridden, std::vector{u"moisture_damp"_s});
    ASSERT_EQ(script.repair().overrides.size(), 1U);
    ASSERT_FALSE(script.put(AssessAgain{}));
    EXPECT_TRUE(script.repair().assessment.overridden.empty()) << "what is asked again is judged again";
    EXPECT_EQ(script.repair().overrides.size(), 1U) << "what was done stays told";
}

TEST(SupervisorsFold, ARefusalThatIsOverriddenLetsTheOtherQuestionsBeAsked)
{
    RepairScript script;
    ASSERT_FALSE(script.put(Answered{Question::Substrate, Substrate::Steel, {}}));
    ASSERT_FALSE(script.put(Answered{Question::DamageKind, DamageKind::RustHole, {}}));
    ASSERT_EQ(script.next().station, Station::Decide);
    ASSERT_FALSE(script.put(Overridden{{u"rust_hole"_s}, u"trial_piece"_s}));
    EXPECT_EQ(script.next().question, Question::Size);
}

TEST(SupervisorsFold, OnlyWhatWasHandedOverIsSignedOffOnceAndThenSealed)
{
    RepairScript script;
    script.walkTo(Station::HandOver);
    EXPECT_TRUE(script.put(SignedOff{}));
    EXPECT_TRUE(script.put(Corrected{1, u"other door"_s}));
    script.walkTo(Station::Done);
    const qint64 last = script.repair().lastSeq;
    EXPECT_FALSE(script.put(Corrected{1, u"it was the other door"_s}));
    EXPECT_FALSE(script.put(SignedOff{}));
    EXPECT_TRUE(script.put(SignedOff{}));
    EXPECT_TRUE(script.put(Noted{{}, u"too late"_s}));
    EXPECT_FALSE(script.put(Corrected{last, u"handed over to the night shift"_s}));
    EXPECT_TRUE(script.put(Corrected{last + 50, u"of nothing"_s}));
    EXPECT_TRUE(script.put(Corrected{0, u"of nothing"_s}));
    EXPECT_TRUE(script.put(Corrected{1, u"  "_s}));
    EXPECT_EQ(script.repair().corrections.size(), 2U);
    EXPECT_TRUE(script.repair().signedOff);
}

TEST(SupervisorsFold, WhatIsReturnedIsOpenUntilItsReworkHasBegun)
{
    RepairScript script;
    script.walkTo(Station::HandOver);
    EXPECT_TRUE(script.put(Returned{u"soft"_s})) << "nothing was handed over";
    script.walkTo(Station::Done);
    const QUuid rework = QUuid::createUuid();
    EXPECT_TRUE(script.put(ReworkBegun{rework})) << "nothing was returned";
    EXPECT_TRUE(script.put(Returned{u" "_s}));
    ASSERT_FALSE(script.put(Returned{u"soft"_s, u"at the lower edge"_s}));
    EXPECT_TRUE(script.repair().open());
    EXPECT_EQ(script.next().station, Station::Returned);
    EXPECT_TRUE(script.put(Returned{u"soft"_s})) << "once";
    EXPECT_TRUE(script.put(SignedOff{})) << "what is returned is not signed off";
    EXPECT_TRUE(script.put(Noted{{}, u"its record is closed"_s}));
    EXPECT_TRUE(script.put(AssessAgain{}));
    EXPECT_FALSE(mayCorrect(script.repair()));
    EXPECT_FALSE(script.put(Corrected{1, u"of the left side"_s}));
    EXPECT_TRUE(script.put(ReworkBegun{script.repair().id})) << "its own rework";
    EXPECT_TRUE(script.put(ReworkBegun{QUuid()}));
    ASSERT_FALSE(script.put(ReworkBegun{rework}));
    EXPECT_FALSE(script.repair().open());
    EXPECT_EQ(script.repair().rework, rework);
    EXPECT_EQ(script.next().station, Station::Done);
    EXPECT_TRUE(script.put(ReworkBegun{QUuid::createUuid()})) << "once";
}

TEST(SupervisorsFold, WhatIsSignedOffIsNotReturned)
{
    RepairScript script;
    script.walkTo(Station::Done);
    ASSERT_FALSE(script.put(SignedOff{}));
    EXPECT_TRUE(script.put(Returned{u"soft"_s}));
}

TEST(SupervisorsFold, NothingOfTheBenchIsOfARepair)
{
    RepairScript script;
    script.walkTo(Station::Prepare);
    EXPECT_TRUE(script.put(ClockJumped{ClockJump::Slept, seconds(5)}));
    EXPECT_TRUE(script.put(ActRefused{SupervisorAct::SignOff, ActRefusal::NoPin}));
    EXPECT_TRUE(script.put(PinSet{}));
}

TEST(SupervisorsActs, AreTheseAndNoOthers)
{
    EXPECT_EQ(supervisorActOf(SignedOff{}), SupervisorAct::SignOff);
    EXPECT_EQ(supervisorActOf(Returned{}), SupervisorAct::Return);
    EXPECT_EQ(supervisorActOf(ReworkBegun{}), std::nullopt) << "whoever is at the bench takes it in";
    EXPECT_EQ(supervisorActOf(Overridden{}), SupervisorAct::Override);
    EXPECT_EQ(supervisorActOf(Corrected{}), SupervisorAct::Correct);
    EXPECT_EQ(supervisorActOf(LotForgotten{}), SupervisorAct::Forget);
    EXPECT_EQ(supervisorActOf(PinSet{}), SupervisorAct::ChangePin);
    EXPECT_EQ(supervisorActOf(SheetKept{}), SupervisorAct::Sheets);
    EXPECT_EQ(supervisorActOf(SheetLaidAside{}), SupervisorAct::Sheets);
    for (const Payload& each : std::vector<Payload>{TakenIn{}, HandedOver{}, AlarmAnswered{}, PatMixed{}, ActRefused{}})
        EXPECT_EQ(supervisorActOf(each), std::nullopt) << kindOf(each).toStdString();
}

} // namespace
} // namespace strandbench::test
