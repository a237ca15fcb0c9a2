// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/plan_json.h"

#include "json_tools.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

namespace strandbench {
namespace {

// The repair description of the headless contract, word for word.
const QByteArray sample = R"({"job":"4421","panel":"skirt panel, right rear","substrate":"smc",
 "damage":{"kind":"hole","length_mm":60,"width_mm":40,"depth_mm":3.5,"panel_thickness_mm":3.5,"bevel_ratio":4},
 "rear_access":true,"surface":"bare","zone":"cosmetic","moisture":"dry",
 "air_c":18.5,"panel_c":17,"humidity_percent":52})";

QByteArray damaged(const QByteArray& members)
{
    return R"({"job":"4421","panel":"front wing","substrate":"steel","damage":{)" + members +
           R"(},"air_c":20,"panel_c":20,"humidity_percent":50})";
}

TEST(RepairDescription, ReadsTheSample)
{
    const auto read = readAssessment(sample);
    ASSERT_THAT(faultsOf(read), IsEmpty());
    EXPECT_EQ(read->job, u"4421"_s);
    EXPECT_EQ(read->panel, u"skirt panel, right rear"_s);
    EXPECT_EQ(read->substrate, Substrate::Smc);
    ASSERT_TRUE(read->damage);
    EXPECT_EQ(read->damage->kind, DamageKind::Hole);
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->length), 60);
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->width), 40);
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->depth), 3.5);
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->panelThickness), 3.5);
    EXPECT_EQ(read->damage->bevelRatio, 4);
    EXPECT_EQ(read->damage->weld, std::nullopt);
    EXPECT_EQ(read->damage->adhesiveCured, std::nullopt);
    EXPECT_EQ(read->rearAccess, true);
    EXPECT_EQ(read->surface, SurfaceState::Bare);
    EXPECT_EQ(read->zone, Zone::Cosmetic);
    EXPECT_EQ(read->moisture, Moisture::Dry);
    EXPECT_EQ(read->core, CoreMaterial::None);
    ASSERT_TRUE(read->reading);
    EXPECT_DOUBLE_EQ(inCelsius(read->reading->air), 18.5);
    EXPECT_DOUBLE_EQ(inCelsius(read->reading->panel), 17);
    EXPECT_DOUBLE_EQ(read->reading->humidity.percent(), 52);
}

TEST(RepairDescription, WhatIsLeftOutIsNotAssessed)
{
    QByteArray json = sample;
    for (const QString& key : {u"rear_access"_s, u"surface"_s, u"zone"_s, u"moisture"_s})
        json = without(json, key);
    const auto read = readAssessment(without(json, u"damage.depth_mm"_s));
    ASSERT_THAT(faultsOf(read), IsEmpty());
    EXPECT_EQ(read->rearAccess, std::nullopt);
    EXPECT_EQ(read->surface, std::nullopt);
    EXPECT_EQ(read->zone, std::nullopt);
    EXPECT_EQ(read->moisture, std::nullopt);
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->depth), 3.5); // a hole goes through
}

TEST(RepairDescription, SaysWhatMustBeThere)
{
    for (const QString& key : {u"job"_s, u"panel"_s, u"substrate"_s, u"damage"_s, u"damage.kind"_s,
                               u"damage.length_mm"_s, u"damage.width_mm"_s, u"damage.panel_thickness_mm"_s,
                               u"damage.bevel_ratio"_s, u"air_c"_s, u"panel_c"_s, u"humidity_percent"_s})
        EXPECT_THAT(faultsOf(readAssessment(without(sample, key))),
                    ElementsAre(StartsWith(key.toStdString() + "||Missing|")));
    EXPECT_THAT(faultsOf(readAssessment("{}")).size(), 7u);
}

struct Refused {
    const char16_t* path;
    QJsonValue value;
    const char* fault;
};

TEST(RepairDescription, NamesWhatItRefuses)
{
    const Refused cases[] = {
        {u"job", u""_s, "job||Empty|text"},
        {u"job", u"   "_s, "job|   |Empty|text"},
        {u"job", 4421, "job|4421|WrongKind|text"},
        {u"job", QString(25, u'7'), "job|7777777777777777777777777|TooLong|24"},
        {u"panel", u""_s, "panel||Empty|text"},
        {u"panel", QString(61, u'x'), "panel|xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx|TooLong|60"},
        {u"substrate", u"wood"_s,
         "substrate|wood|NotOneOf|frp,smc,steel,galvanised,aluminium,thermoplastic,flexible_polyurethane,carbon,"
         "cast_thermoset,magnesium,unknown"},
        {u"damage", 3, "damage|3|WrongKind|object"},
        {u"damage.kind", u"scratch"_s,
         "damage.kind|scratch|NotOneOf|gouge,dent,crack,hole,rust_hole,weld_seam,bond_seam"},
        {u"damage.length_mm", 0.5, "damage.length_mm|0.5|OutOfRange|1,3000,mm"},
        {u"damage.length_mm", 3001, "damage.length_mm|3001|OutOfRange|1,3000,mm"},
        {u"damage.width_mm", 0, "damage.width_mm|0|OutOfRange|0.5,1000,mm"},
        {u"damage.width_mm", 1001, "damage.width_mm|1001|OutOfRange|0.5,1000,mm"},
        {u"damage.depth_mm", 3, "damage.depth_mm|3|Conflicts|damage.panel_thickness_mm,3.5"},
        {u"damage.depth_mm", 0, "damage.depth_mm|0|OutOfRange|0.1,60,mm"},
        {u"damage.panel_thickness_mm", 0.2, "damage.panel_thickness_mm|0.2|OutOfRange|0.3,60,mm"},
        {u"damage.bevel_ratio", 101, "damage.bevel_ratio|101|OutOfRange|0,100,"},
        {u"damage.bevel_ratio", -1, "damage.bevel_ratio|-1|OutOfRange|0,100,"},
        {u"damage.weld", u"spot"_s, "damage.weld|spot|Conflicts|damage.kind,hole"},
        {u"damage.adhesive_cured", true, "damage.adhesive_cured|true|Conflicts|damage.kind,hole"},
        {u"weld", u"solid"_s, "weld|solid|Conflicts|damage.kind,hole"},
        {u"adhesive_cured", false, "adhesive_cured|false|Conflicts|damage.kind,hole"},
        {u"rear_access", u"yes"_s, "rear_access|yes|WrongKind|true or false"},
        {u"surface", u"clean"_s,
         "surface|clean|NotOneOf|bare,abraded_epoxy,paint,old_filler,sealer,rust,rust_converter,etch_primer,"
         "uncured_primer,flux"},
        {u"zone", QJsonValue(), "zone|null|WrongKind|text"},
        {u"moisture", u"wet"_s, "moisture|wet|NotOneOf|dry,damp"},
        {u"core", u"cork"_s, "core|cork|NotOneOf|none,foam,dry_wood,wet_wood"},
        {u"air_c", -31, "air_c|-31|OutOfRange|-30,200,°C"},
        {u"panel_c", 201, "panel_c|201|OutOfRange|-30,200,°C"},
        {u"humidity_percent", 0, "humidity_percent|0|OutOfRange|0.01,100,%"},
        {u"humidity_percent", 100.5, "humidity_percent|100.5|OutOfRange|0.01,100,%"},
    };
    for (const Refused& each : cases) {
        const QString path = QString::fromUtf16(each.path);
        EXPECT_THAT(faultsOf(readAssessment(with(sample, path, each.value))), ElementsAre(each.fault));
    }
}

TEST(RepairDescription, NamesUnknownKeysAndOtherUnits)
{
    EXPECT_THAT(faultsOf(readAssessment(with(sample, u"colour"_s, u"red"_s))),
                ElementsAre(StartsWith("colour|red|UnknownKey|adhesive_cured,air_c,")));
    EXPECT_THAT(
        faultsOf(readAssessment(with(without(sample, u"damage.length_mm"_s), u"damage.length_in"_s, 2.4))),
        ElementsAre("damage.length_mm||Missing|number,mm", StartsWith("damage.length_in|2.4|UnknownKey|length_mm,")));
    EXPECT_THAT(faultsOf(readAssessment(with(without(sample, u"air_c"_s), u"air_f"_s, 65))),
                ElementsAre("air_c||Missing|number,°C", StartsWith("air_f|65|UnknownKey|air_c,")));
}

TEST(RepairDescription, GivesEveryFaultAtOnce)
{
    QByteArray json = with(sample, u"job"_s, u""_s);
    json = with(json, u"damage.length_mm"_s, -5);
    json = with(json, u"humidity_percent"_s, 140);
    json = with(json, u"note"_s, u"x"_s);
    EXPECT_THAT(faultsOf(readAssessment(json)),
                ElementsAre("job||Empty|text", "damage.length_mm|-5|OutOfRange|1,3000,mm",
                            "humidity_percent|140|OutOfRange|0.01,100,%", StartsWith("note|x|UnknownKey|")));
}

TEST(RepairDescription, CracksMayHaveNoWidthButHaveABevel)
{
    const QByteArray crack = R"("kind":"crack","length_mm":80,"width_mm":0,"depth_mm":3,"panel_thickness_mm":3)";
    EXPECT_THAT(faultsOf(readAssessment(damaged(crack + R"(,"bevel_ratio":0.5)"))), IsEmpty());
    EXPECT_THAT(faultsOf(readAssessment(damaged(crack))), ElementsAre("damage.bevel_ratio||Missing|number"));
    EXPECT_THAT(faultsOf(readAssessment(damaged(crack + R"(,"bevel_ratio":0)"))),
                ElementsAre("damage.bevel_ratio|0|OutOfRange|0.5,100,"));
}

TEST(RepairDescription, WhatIsDeeperThanThePanelWouldBeAHole)
{
    const QByteArray sizes = R"("length_mm":80,"width_mm":10,"depth_mm":4,"panel_thickness_mm":3,"bevel_ratio":2)";
    for (const QByteArray kind : {"gouge", "crack"})
        EXPECT_THAT(faultsOf(readAssessment(damaged("\"kind\":\"" + kind + "\"," + sizes))),
                    ElementsAre("damage.depth_mm|4|Conflicts|damage.panel_thickness_mm,3"));
    EXPECT_THAT(faultsOf(readAssessment(damaged("\"kind\":\"dent\"," + sizes))), IsEmpty());
}

TEST(RepairDescription, ARustHoleGoesThroughToo)
{
    const QByteArray hole = R"("kind":"rust_hole","length_mm":20,"width_mm":15,"panel_thickness_mm":0.8)";
    const auto read = readAssessment(damaged(hole));
    ASSERT_THAT(faultsOf(read), IsEmpty());
    EXPECT_DOUBLE_EQ(inMillimetres(read->damage->depth), 0.8);
    EXPECT_EQ(read->damage->bevelRatio, 0);
    EXPECT_THAT(faultsOf(readAssessment(damaged(hole + R"(,"depth_mm":2)"))),
                ElementsAre("damage.depth_mm|2|Conflicts|damage.panel_thickness_mm,0.8"));
}

TEST(RepairDescription, SeamsAreAskedAboutInTheDamageOrAtTheRoot)
{
    const QByteArray sizes = R"(,"length_mm":300,"width_mm":20,"depth_mm":2,"panel_thickness_mm":3)";
    const QByteArray weld = damaged("\"kind\":\"weld_seam\"" + sizes);
    EXPECT_EQ(readAssessment(weld).value().damage->weld, std::nullopt);
    EXPECT_EQ(readAssessment(with(weld, u"damage.weld"_s, u"stitch"_s)).value().damage->weld, WeldKind::Stitch);
    EXPECT_EQ(readAssessment(with(weld, u"weld"_s, u"solid"_s)).value().damage->weld, WeldKind::Solid);
    EXPECT_THAT(faultsOf(readAssessment(with(weld, u"damage.weld"_s, u"seam"_s))),
                ElementsAre("damage.weld|seam|NotOneOf|solid,spot,stitch"));
    EXPECT_THAT(faultsOf(readAssessment(with(with(weld, u"weld"_s, u"solid"_s), u"damage.weld"_s, u"spot"_s))),
                ElementsAre("weld|solid|Conflicts|damage.weld,spot"));
    EXPECT_THAT(faultsOf(readAssessment(with(weld, u"damage.adhesive_cured"_s, true))),
                ElementsAre("damage.adhesive_cured|true|Conflicts|damage.kind,weld_seam"));

    const QByteArray bond = damaged("\"kind\":\"bond_seam\"" + sizes);
    EXPECT_EQ(readAssessment(bond).value().damage->adhesiveCured, std::nullopt);
    EXPECT_EQ(readAssessment(with(bond, u"damage.adhesive_cured"_s, false)).value().damage->adhesiveCured, false);
    EXPECT_EQ(readAssessment(with(bond, u"adhesive_cured"_s, true)).value().damage->adhesiveCured, true);
    EXPECT_THAT(faultsOf(readAssessment(with(bond, u"damage.weld"_s, u"solid"_s))),
                ElementsAre("damage.weld|solid|Conflicts|damage.kind,bond_seam"));
}

TEST(RepairDescription, EverySubstrateAndCoreHasItsWord)
{
    for (const QString& code : allCodes<Substrate>())
        EXPECT_EQ(readAssessment(with(sample, u"substrate"_s, code)).value().substrate, fromCode<Substrate>(code));
    for (const QString& code : allCodes<CoreMaterial>())
        EXPECT_EQ(readAssessment(with(sample, u"core"_s, code)).value().core, fromCode<CoreMaterial>(code));
}

} // namespace
} // namespace strandbench
