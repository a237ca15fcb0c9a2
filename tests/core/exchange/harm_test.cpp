// SPDX-License-Identifier: GPL-3.0-or-later
// The table of what does harm: its rules, and that it is whole.
#include "exchange/harm.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "json_tools.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

bool holds(const auto& list, const auto& value) { return std::ranges::find(list, value) != list.end(); }

QByteArray builtInText() { return builtInHarm().source; }

/// The faults of the table with one text in it changed.
Faults faultsWith(const QByteArray& from, const QByteArray& to)
{
    QByteArray changed = builtInText();
    const qsizetype at = changed.indexOf(from);
    EXPECT_GE(at, 0) << from.constData();
    changed.replace(at, from.size(), to);
    const Checked<HarmTable> table = readHarmTable(changed);
    return table ? Faults{} : table.error();
}

bool names(const Faults& faults, const QString& field, FaultKind kind)
{
    return std::ranges::any_of(faults, [&](const Fault& each) { return each.field == field && each.kind == kind; });
}

TEST(Harm, EveryStepAndHandsOnStationHasItsPlaceOnce) // invariant
{
    QStringList expected{u"mix"_s, u"spread"_s, u"wait"_s, u"sand"_s, u"turn"_s};
    for (const auto* list : {&builtInSteps().prepare, &builtInSteps().finish})
        for (const StepRule& each : *list)
            expected << each.code;
    QStringList found;
    for (const HarmPlace& each : builtInHarm().places)
        found << each.code;
    expected.sort();
    found.sort();
    EXPECT_EQ(found, expected);
}

// Heitbrink, Cooper and Edmonds 1994, Amer. Ind. Hyg. Assoc. J. 55, 756-759: where filler was sanded, extraction left a
// tenth of the dust. So it comes before the first stroke, everywhere.
TEST(Harm, WhereDustIsExtractionComesFirst)
{
    int places = 0;
    for (const HarmPlace& place : builtInHarm().places)
        for (const QString& code : place.materials)
            if (builtInHarm().material(code)->kind == HarmKind::Dust) {
                EXPECT_TRUE(holds(place.first, Measure::ExtractionOn)) << place.code.toStdString();
                ++places;
            }
    EXPECT_GT(places, 15);
    for (const char* sanding : {"sand", "sand_180", "sand_320", "abrade_80", "abrade_80_metal", "strip_paint", "bevel"})
        EXPECT_TRUE(holds(builtInHarm().place(QString::fromLatin1(sanding))->first, Measure::ExtractionOn)) << sanding;
}

TEST(Harm, WhereAcetoneIsTheFlameShowsAndNoSparkComesFirst) // invariant
{
    int places = 0;
    for (const HarmPlace& place : builtInHarm().places) {
        if (!holds(place.materials, u"acetone"_s))
            continue;
        ++places;
        EXPECT_TRUE(holds(place.first, Measure::NoIgnition)) << place.code.toStdString();
        EXPECT_TRUE(holds(pictogramsOf(metAt(builtInHarm(), place.code, std::nullopt, nullptr)), GhsPictogram::Flame));
    }
    EXPECT_GE(places, 3) << "wiping, flashing off, drying";
}

TEST(Harm, NoPlaceBringsPeroxideAndAcceleratorTogether) // NOAA CAMEO 233: reacts violently with accelerators
{
    for (const HarmMaterial& one : builtInHarm().materials)
        for (const HarmMaterial& other : builtInHarm().materials)
            if (one.kind == HarmKind::Peroxide && other.kind == HarmKind::Accelerator) {
                EXPECT_TRUE(holds(one.neverWith, other.code));
                EXPECT_TRUE(holds(other.neverWith, one.code));
                for (const HarmPlace& place : builtInHarm().places)
                    EXPECT_FALSE(holds(place.materials, one.code) && holds(place.materials, other.code));
            }
    const HarmMaterial& hardener = *builtInHarm().material(u"hardener_paste"_s);
    EXPECT_TRUE(holds(hardener.neverWith, u"lay_up_resin"_s))
        << "common practice, no source: never the cream hardener in lay-up resin";
    EXPECT_TRUE(holds(builtInHarm().place(u"mix"_s)->first, Measure::NeverTogether));
}

TEST(Harm, DustOfAPanelIsThatPanelsAlone) // common practice, no source: aluminium and steel dust apart
{
    const auto codes = [](PanelKind panel) {
        QStringList list;
        for (const HarmShown& each : metAt(builtInHarm(), u"abrade_80_metal"_s, panel, nullptr))
            list << each.material;
        return list;
    };
    EXPECT_EQ(codes(PanelKind::Steel), QStringList{u"steel_dust"_s});
    EXPECT_EQ(codes(PanelKind::Aluminium), QStringList{u"aluminium_dust"_s});
}

TEST(Harm, StyreneWarnsOfHearingAndTheUnbornChild) // NITE/MHLW FY2020, RAC 2012 as announced
{
    const auto met = metAt(builtInHarm(), u"mix"_s, std::nullopt, nullptr);
    ASSERT_GE(met.size(), 2U);
    for (const char* code : {"H226", "H315", "H319", "H361d", "H372"})
        EXPECT_TRUE(holds(met[0].hazards, QString::fromLatin1(code))) << code;
    EXPECT_EQ(met[0].signal, SignalWord::Danger);
    EXPECT_EQ(met[1].signal, SignalWord::Warning) << "type E: CLP Annex I Table 2.15.1";
    EXPECT_TRUE(holds(met[1].hazards, u"H242"_s));
}

QStringList statementsOf(const QString& material)
{
    QStringList all;
    for (const HazardClass each : builtInHarm().material(material)->classes)
        all << QString::fromLatin1(labelElement(each).statement);
    return all;
}

bool warnsOf(const QString& material, std::initializer_list<const char*> statements)
{
    return std::ranges::all_of(
        statements, [&](const char* code) { return statementsOf(material).contains(QString::fromLatin1(code)); });
}

TEST(Harm, AcetoneIsAsCommonlyClassed) // CLP Annex VI, from memory
{
    EXPECT_TRUE(warnsOf(u"acetone"_s, {"H225", "H319", "H336", "EUH066"}));
}

TEST(Harm, LayUpResinIsStyreneToBreathe) // jsia.jp: acute toxicity 4, inhaled; skin 2, eye 2A
{
    EXPECT_TRUE(warnsOf(u"lay_up_resin"_s, {"H226", "H332", "H315", "H319"}));
}

TEST(Harm, HardenerIsItsPeroxide) // a supplier's listing of dibenzoyl peroxide, as quoted; H410 from memory
{
    EXPECT_TRUE(warnsOf(u"hardener_paste"_s, {"H319", "H317"}));
    EXPECT_TRUE(warnsOf(u"hardener_paste"_s, {"H410"}));
}

/// The few precautions that are shown are among those of the label: CLP Annex I, Table 2.15.1 for an organic peroxide,
/// Table 2.6.2 for a flammable liquid; a first aid or a warning of another class may stand beside them.
TEST(Harm, PrecautionsAreOfTheLabel)
{
    const auto shown = [](const QString& material) { return builtInHarm().material(material)->precautions; };
    for (const char* code : {"P210", "P235", "P280"}) // of P210 P234 P235 P240 P280
        EXPECT_TRUE(holds(shown(u"hardener_paste"_s), QString::fromLatin1(code))) << code;
    for (const char* code : {"P210", "P280", "P501"}) // NITE/MHLW FY2020 has them for styrene as well
        EXPECT_TRUE(holds(shown(u"filler"_s), QString::fromLatin1(code))) << code;
    for (const char* code : {"P210", "P233", "P280", "P403+P235"})
        EXPECT_TRUE(holds(shown(u"acetone"_s), QString::fromLatin1(code))) << code;
}

TEST(Harm, WhereTheFillerGetsHotLeftOversAreSpread) // IMCA safety flash on cans of left-over resin that overheated
{
    int places = 0;
    for (const HarmPlace& place : builtInHarm().places)
        if (holds(place.materials, u"hot_lump"_s)) {
            EXPECT_TRUE(holds(place.first, Measure::SpreadLeftOver)) << place.code.toStdString();
            ++places;
        }
    EXPECT_EQ(places, 3) << "mixing, spreading, waiting";
}

TEST(Harm, ATableThatBreaksARuleIsRefusedByName)
{
    EXPECT_TRUE(names(faultsWith(R"("materials": ["acetone"], "first": ["no_ignition", "fresh_air"])",
                                 R"("materials": ["acetone"], "first": ["fresh_air"])"),
                      u"places[4].first"_s, FaultKind::Missing));
    EXPECT_TRUE(names(faultsWith(R"("materials": ["filler", "hardener_paste", "hot_lump"])",
                                 R"("materials": ["accelerator", "hardener_paste", "hot_lump"])"),
                      u"places[28].materials"_s, FaultKind::Conflicts));
    EXPECT_TRUE(names(faultsWith(R"("never_with": ["accelerator", "lay_up_resin", "lay_up_catalyst"])",
                                 R"("never_with": ["lay_up_resin", "lay_up_catalyst"])"),
                      u"materials[1].never_with"_s, FaultKind::Missing));
    EXPECT_TRUE(
        names(faultsWith(R"("flam_liq_3")", R"("flam_liq_9")"), u"materials[0].classes[0]"_s, FaultKind::NotOneOf));
    EXPECT_TRUE(names(faultsWith(R"("P210")", R"("P21")"), u"materials[0].p[0]"_s, FaultKind::NotReadable));
    EXPECT_TRUE(
        names(faultsWith(R"("kind": "paste")", R"("sort": "paste")"), u"materials[0].sort"_s, FaultKind::UnknownKey));
    EXPECT_TRUE(names(faultsWith(R"("place": "own_tools")", R"("place": "gear_on")"), u"places[1].place"_s,
                      FaultKind::Conflicts));
    EXPECT_TRUE(names(faultsWith(R"("materials": ["acetone"])", R"("materials": ["petrol"])"), u"places[4].materials"_s,
                      FaultKind::NotOneOf));
}

QByteArray sheetWith(const QByteArray& hazards)
{
    QByteArray json = demoCatalogue().byId(u"demo_mixed_strand"_s)->source;
    return json.replace("\"demo\": true,", "\"demo\": true, \"hazards\": " + hazards + ",");
}

const QByteArray wholeHazards = R"({"signal": "danger", "pictograms": ["GHS08", "GHS02"],
    "h": ["H225", "EUH066", "H302+H312"], "p": ["P210", "P305+P351+P338"], "gloves": "Rubber.",
    "hardener": {"signal": "none", "pictograms": [], "h": [], "p": [], "first_aid": "Rinse."}})";

TEST(SheetHazards, WinOverTheTableForFillerAndHardener)
{
    const Checked<ProductSheet> sheet = readSheet(sheetWith(wholeHazards));
    ASSERT_TRUE(sheet) << sheet.error().front().field.toStdString();
    const auto met = metAt(builtInHarm(), u"mix"_s, std::nullopt, &*sheet);
    ASSERT_EQ(met.size(), 3U);
    EXPECT_TRUE(met[0].bySheet && met[1].bySheet && !met[2].bySheet);
    EXPECT_EQ(met[0].hazards, (std::vector<QString>{u"H225"_s, u"EUH066"_s, u"H302+H312"_s}));
    EXPECT_EQ(met[0].pictograms, (std::vector{GhsPictogram::HealthHazard, GhsPictogram::Flame}));
    EXPECT_EQ(met[0].ownGloves, u"Rubber."_s);
    EXPECT_TRUE(met[0].ownWaste.isEmpty()) << "the general line stands where the sheet says nothing";
    EXPECT_EQ(met[1].signal, SignalWord::None) << "a sheet that says less wins too";
    EXPECT_TRUE(met[1].pictograms.empty() && met[1].hazards.empty());
    EXPECT_EQ(met[1].ownFirstAid, u"Rinse."_s);
}

TEST(SheetHazards, AreNotAskedOfAnOldSheet)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        EXPECT_FALSE(sheet.hazards || sheet.hardenerHazards);
        EXPECT_FALSE(metAt(builtInHarm(), u"mix"_s, std::nullopt, &sheet).front().bySheet);
    }
}

TEST(SheetHazards, EachBadMemberIsNamed)
{
    const auto with = [](const QByteArray& from, const QByteArray& to) {
        QByteArray changed = wholeHazards;
        const qsizetype at = changed.indexOf(from);
        EXPECT_GE(at, 0) << from.constData();
        const Checked<ProductSheet> sheet = readSheet(sheetWith(changed.replace(at, from.size(), to)));
        return sheet ? Faults{} : sheet.error();
    };
    EXPECT_TRUE(names(with("\"danger\"", "\"deadly\""), u"hazards.signal"_s, FaultKind::NotOneOf));
    EXPECT_TRUE(names(with("\"signal\": \"danger\", ", ""), u"hazards.signal"_s, FaultKind::Missing));
    EXPECT_TRUE(names(with("\"GHS02\"", "\"GHS10\""), u"hazards.pictograms[1]"_s, FaultKind::NotOneOf));
    EXPECT_TRUE(names(with("\"GHS02\"", "\"GHS08\""), u"hazards.pictograms[1]"_s, FaultKind::Conflicts));
    for (const char* bad : {"\"H25\"", "\"R11\"", "\"H2255\"", "\"H225+\"", "\"H225 \"", "\"h225\""})
        EXPECT_TRUE(names(with("\"H225\"", bad), u"hazards.h[0]"_s, FaultKind::NotReadable)) << bad;
    EXPECT_TRUE(names(with("\"EUH066\"", "\"H225\""), u"hazards.h[1]"_s, FaultKind::Conflicts));
    for (const char* bad : {"\"P21\"", "\"P610\"", "\"H210\"", "\"P210+H225\"", "\"P210a\""})
        EXPECT_TRUE(names(with("\"P210\"", bad), u"hazards.p[0]"_s, FaultKind::NotReadable)) << bad;
    EXPECT_TRUE(names(with("\"Rubber.\"", "\" \""), u"hazards.gloves"_s, FaultKind::Empty));
    EXPECT_TRUE(names(with("\"Rubber.\"", '"' + QByteArray(161, 'x') + '"'), u"hazards.gloves"_s, FaultKind::TooLong));
    EXPECT_TRUE(names(with("\"gloves\"", "\"glove\""), u"hazards.glove"_s, FaultKind::UnknownKey));
    EXPECT_TRUE(
        names(with("\"signal\": \"none\"", "\"signal\": \"no\""), u"hazards.hardener.signal"_s, FaultKind::NotOneOf));
    EXPECT_TRUE(names(with("\"Rinse.\"", "7"), u"hazards.hardener.first_aid"_s, FaultKind::WrongKind));
    QByteArray many;
    for (int i = 0; i < 13; ++i)
        many += "\"H3" + QByteArray::number(10 + i) + "\",";
    EXPECT_TRUE(names(with("\"H225\"", many.chopped(1)), u"hazards.h"_s, FaultKind::OutOfRange));
}

} // namespace
} // namespace strandbench
