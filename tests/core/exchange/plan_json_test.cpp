// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/plan_json.h"

#include "sample_payloads.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

PlanTexts texts()
{
    return {[](const Reason& reason) { return u"text of "_s + reason.code; },
            [](const Step& step) { return u"step "_s + step.code; }};
}

QStringList sorted(QStringList keys)
{
    keys.sort();
    return keys;
}

// The keys of the headless contract, level by level.
const QStringList rootKeys{
    u"verdict"_s,        u"reasons"_s,          u"filler_class"_s,      u"rejected"_s, u"cavity_ml"_s,
    u"filler_total_g"_s, u"hardener_total_g"_s, u"allowances"_s,        u"layers"_s,   u"batches"_s,
    u"prep"_s,           u"finish"_s,           u"ready_for_primer_s"_s};
const QStringList allowanceKeys{u"proud_ml"_s, u"shrinkage_ml"_s, u"board_loss_g"_s};
const QStringList layerKeys{u"face"_s, u"thickness_mm"_s, u"filler_class"_s, u"peak_c"_s, u"cure_case"_s};
const QStringList batchKeys{u"layer"_s,       u"puddle_mm"_s, u"puddle_height_mm"_s,
                            u"bead_mm"_s,     u"filler_g"_s,  u"hardener_g"_s,
                            u"board_gel_s"_s, u"gel_s"_s,     u"sand_s"_s};

TEST(PlanResult, HoldsTheKeysOfTheContract)
{
    const QJsonObject json = planToJson(samplePlan(), texts());
    EXPECT_EQ(json.keys(), sorted(rootKeys));
    EXPECT_EQ(json[u"allowances"_s].toObject().keys(), sorted(allowanceKeys));
    EXPECT_EQ(json[u"layers"_s].toArray().at(0).toObject().keys(), sorted(layerKeys));
    EXPECT_EQ(json[u"batches"_s].toArray().at(0).toObject().keys(), sorted(batchKeys));
    EXPECT_EQ(json[u"reasons"_s].toArray().at(0).toObject().keys(), (QStringList{u"code"_s, u"text"_s}));
    EXPECT_EQ(json[u"prep"_s].toArray().at(0).toObject().keys(), (QStringList{u"code"_s, u"text"_s}));
    EXPECT_EQ(json[u"rejected"_s].toArray().at(0).toObject().keys(),
              (QStringList{u"code"_s, u"filler_class"_s, u"text"_s}));
    EXPECT_EQ(json[u"finish"_s].toObject().keys(), (QStringList{u"coats"_s, u"thickness_mm"_s}));
}

TEST(PlanResult, HoldsThePlansFigures)
{
    const QJsonObject json = planToJson(samplePlan(), texts());
    EXPECT_EQ(json[u"verdict"_s], u"fill"_s);
    EXPECT_EQ(json[u"filler_class"_s], u"mixed_strand"_s);
    EXPECT_EQ(json[u"reasons"_s].toArray().size(), 2);
    EXPECT_EQ(json[u"reasons"_s].toArray().at(0).toObject(),
              (QJsonObject{{u"code"_s, u"mixed_bonds_to_smc"_s}, {u"text"_s, u"text of mixed_bonds_to_smc"_s}}));
    EXPECT_EQ(json[u"rejected"_s].toArray().at(0).toObject(), (QJsonObject{{u"filler_class"_s, u"long_strand"_s},
                                                                           {u"code"_s, u"long_not_on_smc"_s},
                                                                           {u"text"_s, u"text of long_not_on_smc"_s}}));
    EXPECT_EQ(json[u"cavity_ml"_s].toDouble(), 7.123);
    EXPECT_EQ(json[u"filler_total_g"_s].toDouble(), 33.333);
    EXPECT_EQ(json[u"hardener_total_g"_s].toDouble(), 0.666667);
    EXPECT_EQ(json[u"allowances"_s].toObject(),
              (QJsonObject{{u"proud_ml"_s, 1.5}, {u"shrinkage_ml"_s, 0.25}, {u"board_loss_g"_s, 5.3}}));
    EXPECT_EQ(json[u"layers"_s].toArray().at(0).toObject(), (QJsonObject{{u"face"_s, u"front"_s},
                                                                         {u"thickness_mm"_s, 1.75},
                                                                         {u"filler_class"_s, u"mixed_strand"_s},
                                                                         {u"peak_c"_s, QJsonValue()},
                                                                         {u"cure_case"_s, QJsonValue()}}));
    EXPECT_EQ(json[u"layers"_s].toArray().at(1).toObject()[u"peak_c"_s].toDouble(), 71.5);
    const QJsonObject batch = json[u"batches"_s].toArray().at(0).toObject();
    EXPECT_EQ(batch[u"layer"_s].toInt(-1), 0);
    EXPECT_EQ(batch[u"puddle_mm"_s].toDouble(), 101.6);
    EXPECT_EQ(batch[u"filler_g"_s].toDouble(), 58.42);
    EXPECT_EQ(batch[u"hardener_g"_s].toDouble(), 1.1684);
    EXPECT_EQ(batch[u"gel_s"_s].toDouble(), 310.25);
    EXPECT_EQ(batch[u"board_gel_s"_s].toDouble(), 66.667);
    EXPECT_EQ(batch[u"sand_s"_s].toDouble(), 333.333);
    EXPECT_EQ(batch[u"puddle_height_mm"_s].toDouble(), 4.333);
    EXPECT_EQ(batch[u"bead_mm"_s].toDouble(), 152.4);
    EXPECT_EQ(json[u"batches"_s].toArray().size(), 2);
    EXPECT_EQ(json[u"prep"_s].toArray().at(1).toObject(),
              (QJsonObject{{u"code"_s, u"wash"_s}, {u"text"_s, u"step wash"_s}}));
    EXPECT_EQ(json[u"finish"_s].toObject(), (QJsonObject{{u"thickness_mm"_s, 0.5}, {u"coats"_s, 2}}));
    EXPECT_EQ(json[u"ready_for_primer_s"_s].toDouble(), 4000.5);
}

/// Numbers are the plan's in full precision, not the grid's.
TEST(PlanResult, RoundsNothing)
{
    RepairPlan plan = samplePlan();
    plan.cavity = millilitres(22.0 / 3);
    plan.readyForPrimer = seconds(10'000.0 / 3);
    const QJsonObject json = planToJson(plan, texts());
    EXPECT_NEAR(json[u"cavity_ml"_s].toDouble(), 22.0 / 3, 1e-14);
    EXPECT_NEAR(json[u"ready_for_primer_s"_s].toDouble(), 10'000.0 / 3, 1e-11);
}

TEST(PlanResult, AStopHoldsItsReasonsAndNothingElse)
{
    const QByteArray expected =
        R"({"allowances":{"board_loss_g":null,"proud_ml":null,"shrinkage_ml":null},)"
        R"("batches":[],"cavity_ml":null,"filler_class":null,"filler_total_g":null,)"
        R"("finish":{"coats":0,"thickness_mm":0},"hardener_total_g":null,"layers":[],"prep":[],)"
        R"("ready_for_primer_s":null,"reasons":[{"code":"spot_weld","text":"text of spot_weld"},)"
        R"({"code":"panel_near_dew_point","text":"text of panel_near_dew_point"}],)"
        R"("rejected":[],"verdict":"stop"})";
    EXPECT_EQ(QJsonDocument(planToJson(sampleStop(), texts())).toJson(QJsonDocument::Compact), expected);
}

TEST(Tidy, KeepsWhatWasMeant)
{
    EXPECT_EQ(tidy(inMillimetres(inches(4))), 101.6);
    EXPECT_EQ(tidy(0.1 + 0.2), 0.3);
    EXPECT_EQ(tidy(0.1 * 3), 0.3);
    EXPECT_EQ(tidy(0), 0);
    EXPECT_EQ(tidy(-1234567.125), -1234567.125);
    EXPECT_NEAR(tidy(1.0 / 3.0), 1.0 / 3.0, 1e-15);
}

} // namespace
} // namespace strandbench
