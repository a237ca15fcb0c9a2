// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench cure: the contract's case in, marks, peak and curve out; a plan's own cases give the plan's times.
#include "program.h"

#include <gmock/gmock.h>

#include <QJsonArray>
#include <QJsonDocument>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::HasSubstr;

namespace strandbench {
namespace {

/// The case that the contract shows.
QJsonObject sample()
{
    return QJsonDocument::fromJson(R"({
        "kinetics":{"k1_per_s":1.4e-4,"k2_per_s":8.5e-3,"m":0.9,"n":1.3,"activation_energy_j_per_mol":50000,
                    "hardener_exponent":0.7,"reference_temperature_c":25,"reference_hardener_percent":2,
                    "max_conversion_at_reference":0.85,"max_conversion_per_k":0.003,
                    "gel_conversion":0.10,"sand_conversion":0.60},
        "filler":{"density_kg_per_m3":1150,"specific_heat_j_per_kg_k":1250,"conductivity_w_per_m_k":0.35,
                  "heat_of_reaction_j_per_kg":150000},
        "layer":{"thickness_mm":4,"hardener_percent":2,"temperature_c":25,"initial_conversion":0},
        "stack":[{"thickness_mm":0.8,"density_kg_per_m3":7850,"specific_heat_j_per_kg_k":470,
                  "conductivity_w_per_m_k":45,"temperature_c":25}],
        "air":{"temperature_c":25,"front_w_per_m2_k":10,"back_w_per_m2_k":8},
        "until_s":3600})")
        .object();
}

QJsonObject with(const QString& part, const QString& key, const QJsonValue& value)
{
    QJsonObject changed = sample();
    QJsonObject inner = changed[part].toObject();
    inner[key] = value;
    changed[part] = inner;
    return changed;
}

Ran cure(const QJsonObject& cureCase) { return program({u"cure"_s, u"-"_s}, QJsonDocument(cureCase).toJson()); }

TEST(CureCommand, SolvesTheContractsCase)
{
    const Ran ran = cure(sample());
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    const QJsonObject result = ran.json();
    EXPECT_THAT(result.keys(),
                ElementsAre(u"curve"_s, u"final_mean_conversion"_s, u"gel_s"_s, u"peak_c"_s, u"peak_s"_s, u"sand_s"_s));
    EXPECT_LT(result[u"gel_s"_s].toDouble(), result[u"sand_s"_s].toDouble());
    const QJsonArray curve = result[u"curve"_s].toArray();
    ASSERT_GT(curve.size(), 50);
    EXPECT_EQ(curve.first()[u"t_s"_s].toDouble(), 0);
    EXPECT_EQ(curve.last()[u"t_s"_s].toDouble(), 3600);
    EXPECT_EQ(curve.last()[u"mean_conversion"_s].toDouble(), result[u"final_mean_conversion"_s].toDouble());
    double hottest = 0;
    for (const QJsonValue& point : curve)
        hottest = std::max(hottest, point[u"hottest_c"_s].toDouble());
    EXPECT_LE(hottest, result[u"peak_c"_s].toDouble());
    EXPECT_GT(hottest, result[u"peak_c"_s].toDouble() - 1);
}

TEST(CureCommand, AMarkBeyondTheHorizonIsNull)
{
    QJsonObject brief = sample();
    brief[u"until_s"_s] = 60;
    const QJsonObject result = cure(brief).json();
    EXPECT_TRUE(result[u"gel_s"_s].isNull());
    EXPECT_TRUE(result[u"sand_s"_s].isNull());
}

/// A lamp: air that warms brings the gel forward, a list that stays level is the number.
TEST(CureCommand, TakesRampsOfAir)
{
    const double still = cure(sample()).json()[u"gel_s"_s].toDouble();
    const QJsonArray level{QJsonArray{0, 25}, QJsonArray{3600, 25}};
    EXPECT_NEAR(cure(with(u"air"_s, u"temperature_c"_s, level)).json()[u"gel_s"_s].toDouble(), still, 1e-6 * still);
    const QJsonArray lamp{QJsonArray{0, 25}, QJsonArray{120, 60}};
    EXPECT_LT(cure(with(u"air"_s, u"temperature_c"_s, lamp)).json()[u"gel_s"_s].toDouble(), still - 5);
}

TEST(CureCommand, RefusesByName)
{
    const Ran far = cure(with(u"layer"_s, u"thickness_mm"_s, 61));
    EXPECT_EQ(far.status, 2);
    ASSERT_EQ(far.messages().size(), 1);
    EXPECT_THAT(far.messages().first().toStdString(),
                testing::AllOf(HasSubstr("layer.thickness_mm"), HasSubstr("61"), HasSubstr("60")));
    const Ran both = cure(with(u"kinetics"_s, u"K1_per_s"_s, 1));
    EXPECT_EQ(both.status, 2);
    EXPECT_THAT(both.err.toStdString(), HasSubstr("kinetics.K1_per_s"));
    EXPECT_TRUE(both.out.isEmpty());
}

/// So violent that time cannot tell its steps apart: a message and exit 1, no number.
TEST(CureCommand, NamesADifficulty)
{
    QJsonObject wild = with(u"kinetics"_s, u"activation_energy_j_per_mol"_s, 300'000);
    QJsonObject kinetics = wild[u"kinetics"_s].toObject();
    kinetics[u"k1_per_s"_s] = 1;
    kinetics[u"k2_per_s"_s] = 1;
    kinetics[u"reference_temperature_c"_s] = 0;
    wild[u"kinetics"_s] = kinetics;
    QJsonObject filler = wild[u"filler"_s].toObject();
    filler[u"heat_of_reaction_j_per_kg"_s] = 500'000;
    wild[u"filler"_s] = filler;
    QJsonObject layer = wild[u"layer"_s].toObject();
    layer[u"thickness_mm"_s] = 60;
    layer[u"temperature_c"_s] = 10;
    wild[u"layer"_s] = layer;
    const Ran ran = cure(wild);
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.out.isEmpty());
    EXPECT_EQ(ran.messages().size(), 1);
}

TEST(CureCommand, GivesThePlansOwnTimesForItsCases)
{
    const QByteArray description = R"({"job":"4421","panel":"skirt panel","substrate":"smc",
        "damage":{"kind":"hole","length_mm":60,"width_mm":40,"depth_mm":3.5,"panel_thickness_mm":3.5,"bevel_ratio":4},
        "rear_access":true,"surface":"bare","zone":"cosmetic","moisture":"dry","air_c":18.5,"panel_c":17,
        "humidity_percent":52})";
    const QJsonObject plan = program({u"plan"_s, u"-"_s}, description).json();
    const QJsonArray layers = plan[u"layers"_s].toArray();
    ASSERT_FALSE(layers.isEmpty());
    for (const QJsonValue& batch : plan[u"batches"_s].toArray()) {
        const QJsonValue layer = layers.at(batch[u"layer"_s].toInt());
        const QJsonObject result = cure(layer[u"cure_case"_s].toObject()).json();
        EXPECT_NEAR(result[u"gel_s"_s].toDouble(), batch[u"gel_s"_s].toDouble(), 1e-3);
        EXPECT_NEAR(result[u"sand_s"_s].toDouble(), batch[u"sand_s"_s].toDouble(), 1e-3);
        EXPECT_NEAR(result[u"peak_c"_s].toDouble(), layer[u"peak_c"_s].toDouble(), 1e-3);
        EXPECT_LT(batch[u"board_gel_s"_s].toDouble(), batch[u"gel_s"_s].toDouble()) << "the puddle is thicker";
    }
}

} // namespace
} // namespace strandbench
