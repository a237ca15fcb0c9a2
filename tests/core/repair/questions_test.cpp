// SPDX-License-Identifier: GPL-3.0-or-later
// Which questions are asked, in which order, and when asking ends.
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

struct Panel {
    const char* name;
    Substrate substrate;
    DamageKind kind;
    WeldKind weld;
    QStringList asked;
};

/// Answers whatever is asked, and lists it.
QStringList askedOf(const Panel& panel)
{
    RepairScript script;
    QStringList asked;
    while (script.next().station == Station::Assess) {
        const Question question = *script.next().question;
        asked << codeOf(question);
        AnswerValue value = true;
        if (question == Question::Substrate)
            value = panel.substrate;
        else if (question == Question::DamageKind)
            value = panel.kind;
        else if (question == Question::Weld)
            value = panel.weld;
        else if (question == Question::Core)
            value = CoreMaterial::None; // the same as not answered, and still an answer
        else if (question != Question::AdhesiveCured)
            for (const Answered& answer : sampleAnswers())
                if (answer.question == question)
                    value = answer.value;
        if (const auto fault = script.put(Answered{question, value, {}})) {
            ADD_FAILURE() << qPrintable(fault->field) << " " << qPrintable(fault->value);
            break;
        }
    }
    EXPECT_EQ(script.next().station, Station::Decide);
    return asked;
}

const QStringList common{u"surface"_s, u"zone"_s, u"moisture"_s};
const QString first = u"substrate"_s;
const QString second = u"damage_kind"_s;

class Questions : public ::testing::TestWithParam<Panel> {};

TEST_P(Questions, AreAskedInOrderAndNoFurtherThanNeeded) { EXPECT_EQ(askedOf(GetParam()), GetParam().asked); }

INSTANTIATE_TEST_SUITE_P(
    Panels, Questions,
    ::testing::Values(
        Panel{"SmcHole",
              Substrate::Smc,
              DamageKind::Hole,
              {},
              QStringList{first, second, u"size"_s, u"rear_access"_s} + common + QStringList{u"reading"_s}},
        Panel{"LaminateCrack",
              Substrate::Laminate,
              DamageKind::Crack,
              {},
              QStringList{first, second, u"size"_s} + common + QStringList{u"core"_s, u"reading"_s}},
        Panel{"SteelDent",
              Substrate::Steel,
              DamageKind::Dent,
              {},
              QStringList{first, second, u"size"_s} + common + QStringList{u"reading"_s}},
        Panel{"SolidWeld", Substrate::Steel, DamageKind::WeldSeam, WeldKind::Solid,
              QStringList{first, second, u"weld"_s, u"size"_s} + common + QStringList{u"reading"_s}},
        Panel{"BondSeam",
              Substrate::Aluminium,
              DamageKind::BondSeam,
              {},
              QStringList{first, second, u"adhesive_cured"_s, u"size"_s} + common + QStringList{u"reading"_s}},
        Panel{"SpotWeld", Substrate::Steel, DamageKind::WeldSeam, WeldKind::Spot, {first, second, u"weld"_s}},
        Panel{"StitchWeld", Substrate::Galvanised, DamageKind::WeldSeam, WeldKind::Stitch, {first, second, u"weld"_s}},
        Panel{"RustHole", Substrate::Steel, DamageKind::RustHole, {}, {first, second}},
        Panel{"MetalHole", Substrate::Aluminium, DamageKind::Hole, {}, {first, second}},
        Panel{"MetalCrack", Substrate::Galvanised, DamageKind::Crack, {}, {first, second}},
        Panel{"Thermoplastic", Substrate::Thermoplastic, DamageKind::Gouge, {}, {first}},
        Panel{"Carbon", Substrate::Carbon, DamageKind::Gouge, {}, {first}},
        Panel{"NotKnown", Substrate::Unknown, DamageKind::Gouge, {}, {first}}),
    [](const auto& each) { return std::string(each.param.name); });

} // namespace
