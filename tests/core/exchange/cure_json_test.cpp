// SPDX-License-Identifier: GPL-3.0-or-later
// Cure cases as JSON: read strictly, every fault by name, and written so that they read back.
#include "exchange/cure_json.h"

#include <gmock/gmock.h>

#include <QJsonArray>
#include <QJsonDocument>

#include <random>

using namespace Qt::StringLiterals;
using testing::ElementsAre;

namespace strandbench {
namespace {

QJsonObject sample()
{
    return QJsonDocument::fromJson(R"({
        "kinetics":{"k1_per_s":1.4e-4,"k2_per_s":8.5e-3,"m":0.9,"n":1.3,"activation_energy_j_per_mol":50000,
                    "hardener_exponent":0.7,"reference_temperature_c":25,"reference_hardener_percent":2,
                    "max_conversion_at_reference":0.85,"max_conversion_per_k":0.003,
                    "gel_conversion":0.10,"sand_conversion":0.60},
        "filler":{"density_kg_per_m3":1150,"specific_heat_j_per_kg_k":1250,"conductivity_w_per_m_k":0.35,
                  "heat_of_reaction_j_per_kg":150000},
        "layer":{"thickness_mm":4,"hardener_percent":2,"temperature_c":25},
        "stack":[{"thickness_mm":0.8,"density_kg_per_m3":7850,"specific_heat_j_per_kg_k":470,
                  "conductivity_w_per_m_k":45,"temperature_c":25}],
        "air":{"temperature_c":25,"front_w_per_m2_k":10,"back_w_per_m2_k":8},
        "until_s":3600})")
        .object();
}

QJsonObject changed(const QStringList& path, const QJsonValue& value)
{
    QJsonObject root = sample();
    if (path.size() == 1) {
        root[path[0]] = value;
        return root;
    }
    QJsonObject inner = root[path[0]].toObject();
    inner[path[1]] = value;
    root[path[0]] = inner;
    return root;
}

Checked<CureCase> read(const QJsonObject& json) { return readCureCase(QJsonDocument(json).toJson()); }

std::vector<std::string> fieldsOf(const Checked<CureCase>& read)
{
    std::vector<std::string> fields;
    if (!read)
        for (const Fault& each : read.error())
            fields.push_back(each.field.toStdString());
    return fields;
}

TEST(CureJson, ReadsEveryFieldInItsUnit)
{
    const auto cureCase = read(sample());
    ASSERT_TRUE(cureCase);
    EXPECT_DOUBLE_EQ(inPerSecond(cureCase->kinetics.k2), 8.5e-3);
    EXPECT_DOUBLE_EQ(inMillimetres(cureCase->thickness), 4);
    EXPECT_DOUBLE_EQ(cureCase->hardener.percent(), 2);
    EXPECT_DOUBLE_EQ(inCelsius(cureCase->air.at(0).temperature), 25);
    EXPECT_DOUBLE_EQ(inMillimetres(cureCase->stack.at(0).thickness), 0.8);
    EXPECT_DOUBLE_EQ(cureCase->front.value(), 10);
    EXPECT_DOUBLE_EQ(cureCase->initialConversion.value(), 0);
    EXPECT_DOUBLE_EQ(inSeconds(cureCase->horizon), 3600);
}

TEST(CureJson, WhatIsWrittenReadsBack)
{
    QJsonObject lamp = changed({u"air"_s, u"temperature_c"_s}, QJsonArray{QJsonArray{0, 20}, QJsonArray{90, 45.5}});
    lamp[u"stack"_s] = QJsonArray();
    for (const QJsonObject& json : {sample(), lamp}) {
        const auto cureCase = read(json);
        ASSERT_TRUE(cureCase);
        const auto again = read(cureCaseToJson(*cureCase));
        ASSERT_TRUE(again);
        EXPECT_EQ(cureCaseToJson(*again), cureCaseToJson(*cureCase));
    }
}

struct Refused {
    QStringList path;
    QJsonValue value;
    const char* field;
};

/// Just outside each row of the contract's table of valid values.
TEST(CureJson, RefusesWhatIsOutOfRangeByName)
{
    const QJsonArray thirteen = [] {
        QJsonArray list;
        for (int i = 0; i < 13; ++i)
            list << sample()[u"stack"_s][0];
        return list;
    }();
    const Refused cases[] = {
        {{u"kinetics"_s, u"k1_per_s"_s}, 1.01, "kinetics.k1_per_s"},
        {{u"kinetics"_s, u"k2_per_s"_s}, -0.1, "kinetics.k2_per_s"},
        {{u"kinetics"_s, u"m"_s}, 5.1, "kinetics.m"},
        {{u"kinetics"_s, u"m"_s}, 0.049, "kinetics.m"},
        {{u"kinetics"_s, u"n"_s}, 0.49, "kinetics.n"},
        {{u"kinetics"_s, u"activation_energy_j_per_mol"_s}, 300'001, "kinetics.activation_energy_j_per_mol"},
        {{u"kinetics"_s, u"hardener_exponent"_s}, 3.1, "kinetics.hardener_exponent"},
        {{u"kinetics"_s, u"reference_temperature_c"_s}, -1, "kinetics.reference_temperature_c"},
        {{u"kinetics"_s, u"reference_hardener_percent"_s}, 0.09, "kinetics.reference_hardener_percent"},
        {{u"kinetics"_s, u"max_conversion_at_reference"_s}, 0.04, "kinetics.max_conversion_at_reference"},
        {{u"kinetics"_s, u"max_conversion_per_k"_s}, 0.021, "kinetics.max_conversion_per_k"},
        {{u"kinetics"_s, u"gel_conversion"_s}, 0.7, "kinetics.gel_conversion"},
        {{u"kinetics"_s, u"sand_conversion"_s}, 1, "kinetics.sand_conversion"},
        {{u"filler"_s, u"density_kg_per_m3"_s}, 9, "filler.density_kg_per_m3"},
        {{u"filler"_s, u"specific_heat_j_per_kg_k"_s}, 49, "filler.specific_heat_j_per_kg_k"},
        {{u"filler"_s, u"conductivity_w_per_m_k"_s}, 501, "filler.conductivity_w_per_m_k"},
        {{u"filler"_s, u"heat_of_reaction_j_per_kg"_s}, 500'001, "filler.heat_of_reaction_j_per_kg"},
        {{u"layer"_s, u"thickness_mm"_s}, 0.09, "layer.thickness_mm"},
        {{u"layer"_s, u"hardener_percent"_s}, 11, "layer.hardener_percent"},
        {{u"layer"_s, u"temperature_c"_s}, -31, "layer.temperature_c"},
        {{u"layer"_s, u"initial_conversion"_s}, 1, "layer.initial_conversion"},
        {{u"stack"_s}, thirteen, "stack"},
        {{u"stack"_s}, 5, "stack"},
        {{u"air"_s, u"temperature_c"_s}, 201, "air.temperature_c"},
        {{u"air"_s, u"temperature_c"_s}, u"warm"_s, "air.temperature_c"},
        {{u"air"_s, u"temperature_c"_s}, QJsonArray(), "air.temperature_c"},
        {{u"air"_s, u"temperature_c"_s}, QJsonArray{QJsonArray{0, 20}, QJsonArray{0, 21}}, "air.temperature_c[1]"},
        {{u"air"_s, u"temperature_c"_s}, QJsonArray{QJsonArray{0, 20, 3}}, "air.temperature_c[0]"},
        {{u"air"_s, u"temperature_c"_s}, QJsonArray{QJsonArray{-1, 20}}, "air.temperature_c[0]"},
        {{u"air"_s, u"temperature_c"_s}, QJsonArray{QJsonArray{0, 300}}, "air.temperature_c[0]"},
        {{u"air"_s, u"front_w_per_m2_k"_s}, 1'000'001, "air.front_w_per_m2_k"},
        {{u"air"_s, u"back_w_per_m2_k"_s}, -1, "air.back_w_per_m2_k"},
        {{u"until_s"_s}, 0.5, "until_s"},
        {{u"until_s"_s}, 604'801, "until_s"},
        {{u"until"_s}, 1, "until"},
    };
    for (const Refused& each : cases)
        EXPECT_THAT(fieldsOf(read(changed(each.path, each.value))), ElementsAre(each.field));
    QJsonObject still = changed({u"kinetics"_s, u"k1_per_s"_s}, 0);
    QJsonObject kinetics = still[u"kinetics"_s].toObject();
    kinetics[u"k2_per_s"_s] = 0;
    still[u"kinetics"_s] = kinetics;
    EXPECT_THAT(fieldsOf(read(still)), ElementsAre("kinetics.k1_per_s"));
}

/// One leaf of the case becomes a value that no case may hold; seeded.
class Spoiler {
public:
    QJsonObject spoil(const QJsonObject& root)
    {
        QJsonObject changed = root;
        const QStringList parts{u"kinetics"_s, u"filler"_s, u"layer"_s, u"air"_s};
        const QString part = parts.at(below(4));
        QJsonObject inner = changed[part].toObject();
        const QStringList keys = inner.keys();
        const QString key = keys.at(below(static_cast<int>(keys.size())));
        switch (below(5)) {
        case 0:
            inner.remove(key);
            break;
        case 1:
            inner[key] = u"a word"_s;
            break;
        case 2:
            inner[key + u"_x"_s] = 1;
            break;
        case 3:
            inner[key] = -1e9 * (1 + below(100));
            break;
        default:
            inner[key] = 1e9 * (1 + below(100));
        }
        changed[part] = inner;
        return changed;
    }

private:
    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(m_random); }
    std::mt19937_64 m_random{20261125};
};

/// 20 000 invalid ones (seed 20261125): refused, and every fault names a field.
TEST(CureJson, RefusesRandomInvalidCasesByName)
{
    Spoiler spoiler;
    for (int round = 0; round < 20'000; ++round) {
        const QJsonObject json = spoiler.spoil(sample());
        const auto cureCase = read(json);
        ASSERT_FALSE(cureCase) << QJsonDocument(json).toJson().toStdString();
        for (const Fault& each : cureCase.error())
            ASSERT_FALSE(each.field.isEmpty());
    }
}

} // namespace
} // namespace strandbench
