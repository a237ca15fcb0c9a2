// SPDX-License-Identifier: GPL-3.0-or-later
// Answers, corrections, and what a correction drops.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Answers : public ::testing::Test {
protected:
    void answerAll() { script.walkTo(Station::Decide); }
    qint64 seqOf(Question question) const { return script.repair().answeredBy.at(question); }
    std::optional<Fault> correct(Question question, const AnswerValue& value)
    {
        return script.put(Answered{question, value, seqOf(question)});
    }
    RepairScript script;
};

TEST_F(Answers, NameWhatToldTheSubstrateOnceAndOfNothingElse)
{
    script.walkTo(Station::Assess);
    Answered answered{Question::Substrate, Substrate::Smc, {}, {}, {FoundBy::TapSound, FoundBy::TapSound}};
    const auto twice = script.put(answered);
    ASSERT_TRUE(twice);
    EXPECT_EQ(twice->field, u"answered.found_by"_s);
    EXPECT_EQ(twice->value, u"tap_sound"_s);
    answered.foundBy = {FoundBy::TapSound, FoundBy::BrokenEdge};
    EXPECT_FALSE(script.put(answered));
    const auto elsewhere = script.put(Answered{Question::DamageKind, DamageKind::Hole, {}, {}, {FoundBy::Magnet}});
    ASSERT_TRUE(elsewhere);
    EXPECT_EQ(elsewhere->field, u"answered.found_by"_s);
    EXPECT_EQ(elsewhere->value, u"damage_kind"_s);
}

TEST_F(Answers, FillTheAssessment)
{
    answerAll();
    const Assessment& found = script.repair().assessment;
    EXPECT_EQ(found.job, u"4421"_s);
    EXPECT_EQ(found.panel, u"skirt panel, right rear"_s);
    EXPECT_EQ(found.substrate, Substrate::Smc);
    ASSERT_TRUE(found.damage);
    EXPECT_EQ(found.damage->kind, DamageKind::Hole);
    EXPECT_DOUBLE_EQ(inMillimetres(found.damage->length), 60);
    EXPECT_DOUBLE_EQ(inMillimetres(found.damage->width), 40);
    EXPECT_DOUBLE_EQ(found.damage->bevelRatio, 4);
    EXPECT_EQ(found.rearAccess, true);
    EXPECT_EQ(found.surface, SurfaceState::Bare);
    EXPECT_EQ(found.zone, Zone::Cosmetic);
    EXPECT_EQ(found.moisture, Moisture::Dry);
    ASSERT_TRUE(found.reading);
    EXPECT_DOUBLE_EQ(inCelsius(found.reading->panel), 17);
    EXPECT_EQ(script.repair().lastReading, found.reading);
}

TEST_F(Answers, DamageKindAloneIsNotMeasured)
{
    script.put(Answered{Question::Substrate, Substrate::Smc, {}});
    script.put(Answered{Question::DamageKind, DamageKind::Hole, {}});
    ASSERT_TRUE(script.repair().assessment.damage);
    EXPECT_FALSE(script.repair().assessment.damage->measured());
}

TEST_F(Answers, HoleIsAsDeepAsThePanelIsThick)
{
    script.put(Answered{Question::DamageKind, DamageKind::Hole, {}});
    const DamageSize size{millimetres(30), millimetres(20), millimetres(1), millimetres(4), 4.0};
    ASSERT_FALSE(script.put(Answered{Question::Size, size, {}}));
    EXPECT_DOUBLE_EQ(inMillimetres(script.repair().assessment.damage->depth), 4);
}

TEST_F(Answers, DentKeepsItsOwnDepth)
{
    script.put(Answered{Question::DamageKind, DamageKind::Dent, {}});
    const DamageSize size{millimetres(30), millimetres(20), millimetres(2), millimetres(1), 0.0};
    ASSERT_FALSE(script.put(Answered{Question::Size, size, {}}));
    EXPECT_DOUBLE_EQ(inMillimetres(script.repair().assessment.damage->depth), 2);
}

TEST_F(Answers, SecondAnswerMustSayThatItCorrects)
{
    answerAll();
    const Repair before = script.repair();
    const auto fault = script.put(Answered{Question::Zone, Zone::Structural, {}});
    ASSERT_TRUE(fault);
    EXPECT_EQ(*fault, (Fault{u"answered"_s,
                             u"zone"_s,
                             FaultKind::Conflicts,
                             {u"answered_by"_s, QString::number(before.answeredBy.at(Question::Zone))}}));
    EXPECT_EQ(script.repair(), before);
}

TEST_F(Answers, CorrectionNamesTheSeqThatAnsweredLast)
{
    answerAll();
    const qint64 original = seqOf(Question::Zone);
    EXPECT_TRUE(script.put(Answered{Question::Zone, Zone::Sensor, original + 1})) << "another event's seq";
    ASSERT_FALSE(correct(Question::Zone, Zone::Sensor));
    EXPECT_EQ(script.repair().assessment.zone, Zone::Sensor);
    EXPECT_TRUE(script.put(Answered{Question::Zone, Zone::Cosmetic, original})) << "corrected already";
    ASSERT_FALSE(correct(Question::Zone, Zone::Cosmetic));
    EXPECT_EQ(script.repair().assessment.zone, Zone::Cosmetic);
}

TEST_F(Answers, NothingToCorrectIsAFault) { EXPECT_TRUE(script.put(Answered{Question::Zone, Zone::Cosmetic, 1})); }

TEST_F(Answers, OncePlannedOnlyWhatIsAskedForIsAnsweredAndOnlyByCorrecting)
{
    script.toPlan();
    const Repair before = script.repair();
    EXPECT_TRUE(script.put(Answered{Question::Zone, Zone::Structural, {}}));
    EXPECT_TRUE(script.put(Answered{Question::Core, CoreMaterial::Foam, {}})) << "no laminate, no core";
    EXPECT_EQ(script.repair(), before);
    EXPECT_FALSE(correct(Question::Zone, Zone::Structural));
    EXPECT_EQ(script.next().station, Station::Decide);
}

TEST_F(Answers, AnotherDamageDropsWhatWasSaidOfTheOldOne)
{
    answerAll();
    ASSERT_FALSE(correct(Question::DamageKind, DamageKind::Crack));
    const Repair& repair = script.repair();
    EXPECT_EQ(repair.assessment.damage, (Damage{DamageKind::Crack, {}, {}, {}, {}, 0, {}, {}}));
    EXPECT_FALSE(repair.assessment.rearAccess);
    EXPECT_FALSE(repair.answeredBy.contains(Question::Size));
    EXPECT_FALSE(repair.answeredBy.contains(Question::RearAccess));
    EXPECT_TRUE(repair.answeredBy.contains(Question::Surface));
    EXPECT_EQ(script.next().question, Question::Size);
}

TEST_F(Answers, AnotherSeamDropsTheWeldAndTheAdhesive)
{
    script.put(Answered{Question::Substrate, Substrate::Steel, {}});
    script.put(Answered{Question::DamageKind, DamageKind::WeldSeam, {}});
    ASSERT_FALSE(script.put(Answered{Question::Weld, WeldKind::Solid, {}}));
    ASSERT_FALSE(correct(Question::DamageKind, DamageKind::BondSeam));
    EXPECT_FALSE(script.repair().assessment.damage->weld);
    EXPECT_EQ(script.next().question, Question::AdhesiveCured);
    ASSERT_FALSE(script.put(Answered{Question::AdhesiveCured, true, {}}));
    ASSERT_FALSE(correct(Question::DamageKind, DamageKind::WeldSeam));
    EXPECT_FALSE(script.repair().assessment.damage->adhesiveCured);
    EXPECT_EQ(script.next().question, Question::Weld);
}

TEST_F(Answers, SameDamageAgainDropsNothing)
{
    answerAll();
    const Assessment before = script.repair().assessment;
    ASSERT_FALSE(correct(Question::DamageKind, DamageKind::Hole));
    EXPECT_EQ(script.repair().assessment, before);
    EXPECT_EQ(script.next().station, Station::Decide);
}

TEST_F(Answers, CoreIsTheLaminatesAlone)
{
    EXPECT_TRUE(script.put(Answered{Question::Core, CoreMaterial::Foam, {}})) << "no substrate yet";
    script.put(Answered{Question::Substrate, Substrate::Laminate, {}});
    ASSERT_FALSE(script.put(Answered{Question::Core, CoreMaterial::Foam, {}}));
    ASSERT_FALSE(correct(Question::Substrate, Substrate::Smc));
    EXPECT_EQ(script.repair().assessment.core, CoreMaterial::None);
    EXPECT_FALSE(script.repair().answeredBy.contains(Question::Core));
    ASSERT_FALSE(correct(Question::Substrate, Substrate::Laminate));
    EXPECT_FALSE(script.repair().answeredBy.contains(Question::Core)) << "asked again";
}

TEST_F(Answers, LeadOutOfARefusalByCorrection)
{
    script.put(Answered{Question::Substrate, Substrate::Carbon, {}});
    ASSERT_EQ(script.next().station, Station::Decide);
    ASSERT_FALSE(correct(Question::Substrate, Substrate::Smc));
    EXPECT_EQ(script.next().question, Question::DamageKind);
}

TEST_F(Answers, MustBeOfTheQuestionsKind)
{
    script.put(Answered{Question::DamageKind, DamageKind::Hole, {}});
    for (const auto& entry : Codes<Question>::table) {
        const Question question = entry.first;
        const AnswerValue wrong = question == Question::Zone ? AnswerValue(Moisture::Dry) : AnswerValue(Zone::Cosmetic);
        const Repair before = script.repair();
        const auto fault = script.put(Answered{question, wrong, {}});
        ASSERT_TRUE(fault) << entry.second;
        EXPECT_EQ(fault->kind, FaultKind::WrongKind) << entry.second;
        EXPECT_EQ(script.repair(), before) << entry.second;
    }
}

TEST_F(Answers, SizeNeedsALengthAndADamage)
{
    const DamageSize flat{millimetres(0), millimetres(20), millimetres(2), millimetres(1), 0.0};
    EXPECT_TRUE(script.put(Answered{Question::Size, sampleAnswers()[2].value, {}})) << "no damage yet";
    script.put(Answered{Question::DamageKind, DamageKind::Dent, {}});
    const auto fault = script.put(Answered{Question::Size, flat, {}});
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->kind, FaultKind::OutOfRange);
    DamageSize none = flat;
    none.length = millimetres(std::numeric_limits<double>::quiet_NaN());
    EXPECT_TRUE(script.put(Answered{Question::Size, none, {}}));
}

} // namespace
