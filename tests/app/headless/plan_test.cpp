// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTemporaryDir>

#include <cmath>
#include <map>
#include <numbers>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The repair description of the contract: a hole 60 x 40 mm through a 3.5 mm SMC panel.
QJsonObject sample()
{
    return QJsonDocument::fromJson(R"({"job":"4421","panel":"skirt panel, right rear","substrate":"smc",
        "damage":{"kind":"hole","length_mm":60,"width_mm":40,"depth_mm":3.5,"panel_thickness_mm":3.5,"bevel_ratio":4},
        "rear_access":true,"surface":"bare","zone":"cosmetic","moisture":"dry","air_c":18.5,"panel_c":17,
        "humidity_percent":52})")
        .object();
}

QJsonObject with(const QString& key, const QJsonValue& value)
{
    QJsonObject changed = sample();
    changed[key] = value;
    return changed;
}

QJsonObject withDamage(const QJsonObject& damage)
{
    QJsonObject changed = sample();
    QJsonObject merged = changed[u"damage"_s].toObject();
    for (auto each = damage.begin(); each != damage.end(); ++each)
        merged[each.key()] = each.value();
    changed[u"damage"_s] = merged;
    return changed;
}

Ran plan(const QJsonObject& description, const QStringList& more = {})
{
    return program(QStringList{u"plan"_s, u"-"_s} + more, QJsonDocument(description).toJson());
}

QStringList codesOf(const QJsonValue& list)
{
    QStringList codes;
    for (const QJsonValue& each : list.toArray())
        codes << each[u"code"_s].toString();
    return codes;
}

double sumOf(const QJsonValue& list, const QString& key)
{
    double sum = 0;
    for (const QJsonValue& each : list.toArray())
        sum += each[key].toDouble();
    return sum;
}

const QStringList planKeys{
    u"allowances"_s, u"batches"_s,          u"cavity_ml"_s, u"filler_class"_s, u"filler_total_g"_s,
    u"finish"_s,     u"hardener_total_g"_s, u"layers"_s,    u"prep"_s,         u"ready_for_primer_s"_s,
    u"reasons"_s,    u"rejected"_s,         u"verdict"_s};

TEST(Plan, OfTheSampleFillsBothFacesWithMixedStrand)
{
    const Ran ran = plan(sample());
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty());
    const QJsonObject json = ran.json();
    EXPECT_EQ(json.keys(), planKeys);
    EXPECT_EQ(json[u"verdict"_s].toString(), u"fill"_s);
    EXPECT_EQ(json[u"filler_class"_s].toString(), u"mixed_strand"_s);
    EXPECT_EQ(json[u"rejected"_s].toArray().size(), 3);
    for (const QJsonValue& each : json[u"rejected"_s].toArray())
        EXPECT_FALSE(each[u"filler_class"_s].toString().isEmpty() || each[u"code"_s].toString().isEmpty() ||
                     each[u"text"_s].toString().isEmpty());
    for (const QJsonValue& each : json[u"layers"_s].toArray()) {
        EXPECT_GT(each[u"peak_c"_s].toDouble(), 18.5);
        EXPECT_LT(each[u"peak_c"_s].toDouble(), 90) << "the limit of SMC";
        EXPECT_TRUE(each[u"cure_case"_s].isObject());
    }
    EXPECT_GT(json[u"ready_for_primer_s"_s].toDouble(), 3600);
    EXPECT_GE(json[u"finish"_s][u"coats"_s].toInt(), 1);
}

TEST(Plan, HasTotalsThatHold)
{
    const QJsonObject json = plan(sample()).json();
    // One face of half the thickness, a = 30, b = 20, B = 4: pi [ a b h + (a+b) B h^2/2 + B^2 h^3/3 ].
    const double h = 1.75;
    const double face = std::numbers::pi * (30 * 20 * h + 50 * 4 * h * h / 2 + 16 * h * h * h / 3) / 1000.0;
    EXPECT_NEAR(json[u"cavity_ml"_s].toDouble(), 2 * face, 1e-9);

    const double total = json[u"filler_total_g"_s].toDouble();
    const QJsonValue allowances = json[u"allowances"_s];
    const double volume = json[u"cavity_ml"_s].toDouble() + allowances[u"proud_ml"_s].toDouble() +
                          allowances[u"shrinkage_ml"_s].toDouble();
    EXPECT_NEAR(total, volume * 1.45 + allowances[u"board_loss_g"_s].toDouble(), 1e-6 * total);
    EXPECT_NEAR(sumOf(json[u"batches"_s], u"filler_g"_s), total, 1e-9 * total);
    EXPECT_NEAR(sumOf(json[u"batches"_s], u"hardener_g"_s), json[u"hardener_total_g"_s].toDouble(), 1e-9);
    EXPECT_NEAR(json[u"hardener_total_g"_s].toDouble(), total * 0.02, 1e-9 * total);
}

TEST(Plan, HasLiftsThatAddUpAndBatchesThatSpreadInTime)
{
    for (const double thickness : {3.5, 9.0, 20.0}) {
        const QJsonObject json = plan(withDamage({{u"length_mm"_s, 40},
                                                  {u"width_mm"_s, 30},
                                                  {u"depth_mm"_s, thickness},
                                                  {u"panel_thickness_mm"_s, thickness}}))
                                     .json();
        ASSERT_EQ(json[u"verdict"_s].toString(), u"fill"_s) << thickness;
        const QJsonArray layers = json[u"layers"_s].toArray();
        std::map<QString, double> height;
        for (const QJsonValue& each : layers) {
            height[each[u"face"_s].toString()] += each[u"thickness_mm"_s].toDouble();
            EXPECT_LE(each[u"thickness_mm"_s].toDouble(), 6.0) << "over the sheet's greatest lift";
        }
        ASSERT_EQ(height.size(), 2U);
        EXPECT_NEAR(height[u"front"_s], thickness / 2, 1e-9);
        EXPECT_NEAR(height[u"back"_s], thickness / 2, 1e-9);
        for (const QJsonValue& each : json[u"batches"_s].toArray()) {
            EXPECT_LE(each[u"puddle_mm"_s].toDouble(), 250.0) << "wider than the board";
            EXPECT_LT(45 + each[u"filler_g"_s].toDouble() / 45 * 60, each[u"board_gel_s"_s].toDouble());
            EXPECT_LT(each[u"gel_s"_s].toDouble(), each[u"sand_s"_s].toDouble());
            ASSERT_LT(each[u"layer"_s].toInt(), layers.size());
            ASSERT_GE(each[u"layer"_s].toInt(), 0);
        }
    }
}

TEST(Plan, ReadsAFileAndStandardInputAlike)
{
    QTemporaryDir folder;
    QFile file(folder.filePath(u"repair %1.json"_s));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QJsonDocument(sample()).toJson());
    file.close();
    const Ran fromFile = program({u"plan"_s, file.fileName()});
    EXPECT_EQ(fromFile.status, 0);
    EXPECT_EQ(fromFile.out, plan(sample()).out);
}

TEST(Plan, StopsWithReasonsAndNothingElse)
{
    QJsonObject seam = withDamage({{u"kind"_s, u"weld_seam"_s}, {u"weld"_s, u"spot"_s}, {u"depth_mm"_s, 2}});
    seam[u"substrate"_s] = u"steel"_s;
    const Ran ran = plan(seam);
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    const QJsonObject json = ran.json();
    EXPECT_EQ(json.keys(), planKeys);
    EXPECT_EQ(json[u"verdict"_s].toString(), u"stop"_s);
    EXPECT_EQ(codesOf(json[u"reasons"_s]), QStringList{u"weld_spot"_s});
    for (const QString& key : {u"layers"_s, u"batches"_s, u"prep"_s, u"rejected"_s})
        EXPECT_TRUE(json[key].isArray() && json[key].toArray().isEmpty()) << key.toStdString();
    for (const QString& key :
         {u"filler_class"_s, u"cavity_ml"_s, u"filler_total_g"_s, u"hardener_total_g"_s, u"ready_for_primer_s"_s})
        EXPECT_TRUE(json[key].isNull()) << key.toStdString();
    EXPECT_EQ(json[u"finish"_s].toObject(), (QJsonObject{{u"thickness_mm"_s, 0}, {u"coats"_s, 0}}));
}

TEST(Plan, CountsAnUnansweredQuestionAsAStop)
{
    for (const QString& key : {u"surface"_s, u"zone"_s, u"moisture"_s, u"rear_access"_s}) {
        QJsonObject open = sample();
        open.remove(key);
        const Ran ran = plan(open);
        EXPECT_EQ(ran.status, 0) << key.toStdString();
        EXPECT_EQ(codesOf(ran.json()[u"reasons"_s]), QStringList{u"not_assessed"_s}) << key.toStdString();
    }
}

TEST(Plan, GivesEveryReasonAtOnce)
{
    QJsonObject bad = with(u"zone"_s, u"structural"_s);
    bad[u"surface"_s] = u"rust"_s;
    bad[u"panel_c"_s] = 5;
    const QStringList codes = codesOf(plan(bad).json()[u"reasons"_s]);
    for (const QString& code : {u"zone_structural"_s, u"surface_rust"_s, u"panel_too_cold"_s})
        EXPECT_TRUE(codes.contains(code)) << code.toStdString();
}

struct Case {
    QJsonObject description;
    QString message;
};

TEST(Plan, RefusesBadInputByFieldValueAndWhatIsAllowed)
{
    QJsonObject noJob = sample();
    noJob.remove(u"job"_s);
    const std::vector<Case> cases{
        {noJob, u"job: missing; it must be a text"_s},
        {with(u"job"_s, u" "_s), u"job: must not be empty"_s},
        {with(u"job"_s, 4421), u"job: '4421' does not fit; it must be a text"_s},
        {with(u"air_c"_s, u"warm"_s), u"air_c: 'warm' does not fit; it must be a number"_s},
        {with(u"zone"_s, u"roof"_s),
         u"zone: 'roof' is not one of: cosmetic, structural, restraint, sensor, fuel_or_pressure"_s},
        {with(u"moisture"_s, u"wet"_s), u"moisture: 'wet' is not one of: dry, damp"_s},
        {withDamage({{u"depth_mm"_s, 3}}),
         u"damage.depth_mm: '3' does not agree with damage.panel_thickness_mm: '3.5'"_s},
        {withDamage({{u"length_mm"_s, 0}}), u"damage.length_mm: 0 is out of range; allowed is 1 to 3000 mm"_s},
    };
    for (const Case& each : cases) {
        const Ran ran = plan(each.description);
        EXPECT_EQ(ran.status, 2) << each.message.toStdString();
        EXPECT_EQ(ran.messages(), QStringList{each.message});
        EXPECT_TRUE(ran.out.isEmpty());
    }
}

TEST(Plan, RefusesUnknownKeysByName)
{
    const Ran top = plan(with(u"colour"_s, u"red"_s));
    EXPECT_EQ(top.status, 2);
    ASSERT_EQ(top.messages().size(), 1);
    EXPECT_TRUE(top.messages().first().startsWith(u"colour: not known; known here: "_s)) << top.err.toStdString();
    const Ran nested = plan(withDamage({{u"length_in"_s, 3}}));
    EXPECT_EQ(nested.status, 2);
    EXPECT_TRUE(nested.messages().value(0).startsWith(u"damage.length_in: not known"_s)) << nested.err.toStdString();
}

TEST(Plan, GivesOneLineAFault)
{
    QJsonObject bad = with(u"job"_s, QString());
    bad[u"air_c"_s] = 900;
    bad[u"odd\nkey"_s] = 1;
    const Ran ran = plan(bad);
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.messages().size(), 3) << ran.err.toStdString();
    EXPECT_TRUE(ran.out.isEmpty());
}

TEST(Plan, RefusesWhatIsNoJson)
{
    for (const QByteArray& text : {QByteArray(), QByteArray("{"), QByteArray("[]"), QByteArray("{\"job\":\"1\",}"),
                                   QByteArray("\xff\xfe"), QByteArray("nonsense")}) {
        const Ran ran = program({u"plan"_s, u"-"_s}, text);
        EXPECT_EQ(ran.status, 2) << text.toStdString();
        EXPECT_EQ(ran.messages().size(), 1) << text.toStdString();
    }
    const Ran large = program({u"plan"_s, u"-"_s}, QByteArray((1 << 20) + 1, ' '));
    EXPECT_EQ(large.status, 2);
    EXPECT_EQ(large.messages(), QStringList{u"FILE: '-' is too long; at most 1048576 characters"_s});
}

TEST(Plan, SaysWhichFileCannotBeRead)
{
    QTemporaryDir folder;
    const QString missing = folder.filePath(u"none.json"_s);
    const Ran ran = program({u"plan"_s, missing});
    EXPECT_EQ(ran.status, 1);
    ASSERT_EQ(ran.messages().size(), 1);
    EXPECT_TRUE(ran.messages().first().startsWith(u"FILE: '%1' cannot be read"_s.arg(missing)));
    EXPECT_EQ(program({u"plan"_s, folder.path()}).status, 1) << "a folder";
}

TEST(Plan, SpeaksTheLanguageAskedForAndKeepsItsFigures)
{
    const QJsonObject english = plan(sample()).json();
    for (const QString& language : {u"en"_s, u"de"_s, u"es"_s, u"fr"_s}) {
        const Ran ran = plan(sample(), {u"--lang"_s, language});
        ASSERT_EQ(ran.status, 0) << language.toStdString();
        EXPECT_EQ(ran.json()[u"batches"_s], english[u"batches"_s]);
        EXPECT_EQ(codesOf(ran.json()[u"prep"_s]), codesOf(english[u"prep"_s]));
        if (language == u"en"_s)
            EXPECT_EQ(ran.json(), english);
        else
            EXPECT_NE(ran.json()[u"prep"_s], english[u"prep"_s]) << language.toStdString() << " is still English";
    }
}

} // namespace
} // namespace strandbench
