// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sheets.h"

#include "exchange/built_in.h"
#include "exchange/strict_json.h"
#include "json_tools.h"

#include <QCryptographicHash>

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

namespace strandbench {
namespace {

QByteArray mixed() { return builtInBytes(u"sheets/demo_mixed_strand.json"_s); }

QByteArray smooth() { return builtInBytes(u"sheets/demo_finish_smooth.json"_s); }

/// One column of the table of invented demo values: that table is the reference, there is no source.
struct DemoColumn {
    FillerClass filler;
    double density;
    double working[3]; // nominal, early, late
    double sanding[3];
    double heat;
    double conductivity;
    double lift;
    double finishInAll; // 0: none
    double styrene;
};

constexpr DemoColumn demoColumns[] = {
    {FillerClass::ShortStrand, 1.70, {5, 4, 6}, {12.5, 10, 15}, 115, 0.45, 8, 0, 13},
    {FillerClass::ShortStrandLight, 1.15, {5, 4, 6}, {13, 10, 15}, 165, 0.28, 5, 0, 19},
    {FillerClass::MixedStrand, 1.45, {4.5, 3.5, 5.5}, {8, 5, 10}, 130, 0.38, 6, 0, 15},
    {FillerClass::LongStrand, 1.25, {5.5, 4.5, 7}, {15, 12, 20}, 150, 0.33, 7, 0, 17},
    {FillerClass::FinishSmooth, 1.25, {4.5, 3.5, 5.5}, {15, 12, 18}, 140, 0.35, 3, 6, 16},
    {FillerClass::FinishFine, 1.50, {4, 3, 5}, {12, 10, 15}, 125, 0.40, 1.5, 3, 14},
};

void expectTime(const StatedTime& time, const double (&minutesStated)[3])
{
    EXPECT_DOUBLE_EQ(inMinutes(time.nominal), minutesStated[0]);
    EXPECT_DOUBLE_EQ(inMinutes(time.early), minutesStated[1]);
    EXPECT_DOUBLE_EQ(inMinutes(time.late), minutesStated[2]);
}

TEST(DemoSheets, HoldTheInventedTable)
{
    ASSERT_EQ(demoCatalogue().sheets().size(), std::size(demoColumns));
    for (std::size_t i = 0; i < std::size(demoColumns); ++i) {
        const DemoColumn& column = demoColumns[i];
        const ProductSheet& sheet = demoCatalogue().sheets()[i];
        SCOPED_TRACE(sheet.id.toStdString());
        EXPECT_EQ(sheet.fillerClass, column.filler);
        EXPECT_EQ(sheet.id, u"demo_"_s + codeOf(column.filler));
        EXPECT_DOUBLE_EQ(inGramsPerMillilitre(sheet.density), column.density);
        expectTime(sheet.working, column.working);
        expectTime(sheet.sanding, column.sanding);
        EXPECT_DOUBLE_EQ(sheet.heat.value(), column.heat * 1000);
        EXPECT_DOUBLE_EQ(sheet.conductivity.value(), column.conductivity);
        EXPECT_DOUBLE_EQ(inMillimetres(sheet.greatestLift), column.lift);
        EXPECT_EQ(sheet.finishInAll.has_value(), column.finishInAll > 0);
        if (sheet.finishInAll) {
            EXPECT_DOUBLE_EQ(inMillimetres(*sheet.finishInAll), column.finishInAll);
        }
        EXPECT_DOUBLE_EQ(sheet.styrene.percent(), column.styrene);
        EXPECT_EQ(inMillimetres(sheet.sandingTestThickness), column.finishInAll > 0 ? 1 : 3);
    }
}

TEST(DemoSheets, HoldWhatAllOfThemShare)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        SCOPED_TRACE(sheet.id.toStdString());
        EXPECT_TRUE(sheet.demo);
        EXPECT_TRUE(sheet.name.endsWith(u"(demo sheet)"));
        EXPECT_DOUBLE_EQ(inCelsius(sheet.reference), 25);
        EXPECT_DOUBLE_EQ(sheet.specificHeat.value(), 1250);
        EXPECT_DOUBLE_EQ(sheet.shrinkage.percent(), 3.5);
        EXPECT_DOUBLE_EQ(sheet.hardenerNominal.percent(), 2);
        EXPECT_DOUBLE_EQ(sheet.hardenerLow.percent(), 1.5);
        EXPECT_DOUBLE_EQ(sheet.hardenerHigh.percent(), 2.5);
        EXPECT_DOUBLE_EQ(sheet.hardenerLowCaution.percent(), 1.2);
        EXPECT_DOUBLE_EQ(sheet.hardenerHighCaution.percent(), 3);
        EXPECT_DOUBLE_EQ(sheet.peroxideInHardener.percent(), 50);
        EXPECT_DOUBLE_EQ(inMilligramsPerMillimetre(sheet.beadMass), 23);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.panelLowCaution), 10);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.panelLow), 15);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.panelHigh), 30);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.peakLimit), 100);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.storeLow), 5);
        EXPECT_DOUBLE_EQ(inCelsius(sheet.storeHigh), 25);
        EXPECT_EQ(sheet.monthsSealed, 12);
        EXPECT_EQ(sheet.monthsOpened, 6);
        EXPECT_EQ(sheet.namesZinc,
                  sheet.fillerClass == FillerClass::ShortStrand || sheet.fillerClass == FillerClass::MixedStrand);
        EXPECT_EQ(sheet.cure, CureLaw());
        EXPECT_TRUE(sheet.cells.empty());
        EXPECT_EQ(sheet.hash, QCryptographicHash::hash(sheet.source, QCryptographicHash::Sha256));
    }
}

TEST(Sheets, KeepTheBytesTheyWereReadFrom)
{
    const auto sheet = readSheet(mixed());
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->source, mixed());
    EXPECT_EQ(sheet->hash.size(), 32);
}

TEST(Sheets, NameEveryMissingKey)
{
    const QJsonObject whole = parseObject(mixed()).value();
    for (const QString& key : whole.keys()) {
        SCOPED_TRACE(key.toStdString());
        EXPECT_THAT(faultsOf(readSheet(without(mixed(), key))),
                    ElementsAre(StartsWith(key.toStdString() + "||Missing|")));
    }
}

TEST(Sheets, NameTheRightKeyForAnotherUnit)
{
    const auto wrongUnit = [](const QString& right, const QString& wrong) {
        return faultsOf(readSheet(with(without(mixed(), right), wrong, 1)));
    };
    EXPECT_THAT(wrongUnit(u"density_g_per_ml"_s, u"density_lb_per_ft3"_s),
                ElementsAre("density_g_per_ml||Missing|number,g/ml",
                            StartsWith("density_lb_per_ft3|1|UnknownKey|density_g_per_ml,")));
    EXPECT_THAT(wrongUnit(u"working_min"_s, u"working_s"_s),
                ElementsAre("working_min||Missing|object", StartsWith("working_s|1|UnknownKey|working_min,")));
    EXPECT_THAT(wrongUnit(u"greatest_lift_mm"_s, u"greatest_lift_in"_s),
                ElementsAre("greatest_lift_mm||Missing|number,mm",
                            StartsWith("greatest_lift_in|1|UnknownKey|greatest_lift_mm,")));
    EXPECT_THAT(wrongUnit(u"reference_c"_s, u"reference_f"_s),
                ElementsAre("reference_c||Missing|number,°C", StartsWith("reference_f|1|UnknownKey|reference_c,")));
}

struct BadSheet {
    const char16_t* path;
    QJsonValue value;
    const char* fault;
};

TEST(Sheets, NameWhatIsOutOfRangeOrOutOfOrder)
{
    const BadSheet cases[] = {
        {u"density_g_per_ml", 0.1, "density_g_per_ml|0.1|OutOfRange|0.3,4,g/ml"},
        {u"density_g_per_ml", u"1.45"_s, "density_g_per_ml|1.45|WrongKind|number"},
        {u"id", u"Mixed Strand"_s, "id|Mixed Strand|NotReadable|short_strand_2"},
        {u"id", u" "_s, "id| |Empty|text"},
        {u"filler_class", u"putty"_s,
         "filler_class|putty|NotOneOf|short_strand,short_strand_light,mixed_strand,long_strand,finish_smooth,finish_"
         "fine"},
        {u"working_min.early", 5, "working_min.early|5|Conflicts|working_min.nominal,4.5"},
        {u"working_min.late", 4, "working_min.nominal|4.5|Conflicts|working_min.late,4"},
        {u"working_min.nominal", 0, "working_min.nominal|0|OutOfRange|0.5,120,min"},
        {u"working_min.usual", 5, "working_min.usual|5|UnknownKey|early,late,nominal"},
        {u"sanding_min.early", 9, "sanding_min.early|9|Conflicts|sanding_min.nominal,8"},
        {u"hardener_percent.low", 2.25, "hardener_percent.low|2.25|Conflicts|hardener_percent.nominal,2"},
        {u"hardener_percent.low_caution", 1.75, "hardener_percent.low_caution|1.75|Conflicts|hardener_percent.low,1.5"},
        {u"hardener_percent.high", 1.75, "hardener_percent.nominal|2|Conflicts|hardener_percent.high,1.75"},
        {u"hardener_percent.high_caution", 2.25,
         "hardener_percent.high|2.5|Conflicts|hardener_percent.high_caution,2.25"},
        {u"panel_c.low", 31, "panel_c.low|31|Conflicts|panel_c.high,30"},
        {u"panel_c.low_caution", 16, "panel_c.low_caution|16|Conflicts|panel_c.low,15"},
        {u"store_c.low", 26, "store_c.low|26|Conflicts|store_c.high,25"},
        {u"heat_kj_per_kg", 501, "heat_kj_per_kg|501|Conflicts|specific_heat_j_per_kg_k,1250"},
        {u"finish_in_all_mm", 6, nullptr},
        {u"months_sealed", 2.5, "months_sealed|2.5|WrongKind|whole number"},
        {u"names_zinc", 1, "names_zinc|1|WrongKind|true or false"},
        {u"cure.m", 0.01, "cure.m|0.01|OutOfRange|0.05,5,"},
        {u"cure.n", 0.1, "cure.n|0.1|OutOfRange|0.5,5,"},
        {u"cells.brass.reason", u"x"_s, nullptr},
        {u"cells.smc.suitability", u"maybe"_s, nullptr},
    };
    for (const BadSheet& each : cases) {
        const QString path = QString::fromUtf16(each.path);
        SCOPED_TRACE(path.toStdString());
        const auto faults = faultsOf(readSheet(with(mixed(), path, each.value)));
        ASSERT_FALSE(faults.empty());
        if (each.fault)
            EXPECT_THAT(faults, ElementsAre(each.fault));
        else
            EXPECT_THAT(faults.front(), StartsWith(path.section(u'.', 0, 1).toStdString()));
    }
}

TEST(Sheets, SandsOnlyAfterItCouldBeWorked)
{
    const QByteArray json = with(with(mixed(), u"sanding_min.nominal"_s, 4.5), u"sanding_min.early"_s, 4);
    EXPECT_THAT(faultsOf(readSheet(json)), ElementsAre("sanding_min.nominal|4.5|Conflicts|working_min.nominal,4.5"));
}

TEST(Sheets, FinishingSheetsSayHowThickInAll)
{
    EXPECT_THAT(faultsOf(readSheet(without(smooth(), u"finish_in_all_mm"_s))),
                ElementsAre("finish_in_all_mm||Missing|number,mm"));
    EXPECT_THAT(faultsOf(readSheet(with(smooth(), u"greatest_lift_mm"_s, 7))),
                ElementsAre("greatest_lift_mm|7|Conflicts|finish_in_all_mm,6"));
}

TEST(Sheets, GiveEveryFaultAtOnce)
{
    QByteArray json = without(with(mixed(), u"styrene_percent"_s, 61), u"working_min.late"_s);
    json = with(json, u"panel_c"_s, 15);
    json = with(json, u"colour"_s, u"grey"_s);
    EXPECT_THAT(faultsOf(readSheet(json)),
                ElementsAre("working_min.late||Missing|number,min", "styrene_percent|61|OutOfRange|0,60,%",
                            "panel_c|15|WrongKind|object", StartsWith("colour|grey|UnknownKey|")));
}

TEST(Sheets, ReadTheirOwnCureLawAndCells)
{
    QByteArray json = with(mixed(), u"cure.m"_s, 0);
    json = with(json, u"cure.activation_energy_j_per_mol"_s, 62000);
    json = with(json, u"cells.galvanised"_s,
                QJsonObject{{u"suitability"_s, u"no"_s}, {u"reason"_s, u"not on zinc, says the maker's sheet"_s}});
    const auto sheet = readSheet(json);
    ASSERT_THAT(faultsOf(sheet), IsEmpty());
    EXPECT_EQ(sheet->cure.m, 0);
    EXPECT_EQ(sheet->cure.activationEnergyJoulesPerMole, 62000);
    EXPECT_EQ(sheet->cure.n, CureLaw().n);
    ASSERT_EQ(sheet->cells.size(), 1u);
    EXPECT_EQ(sheet->cells.at(u"galvanised"_s).suitability, Suitability::No);
    EXPECT_EQ(sheet->cells.at(u"galvanised"_s).reason, u"not on zinc, says the maker's sheet"_s);
}

TEST(BuiltIn, AMissingFileIsADefectOfTheBuild)
{
    EXPECT_THROW((void)builtInBytes(u"sheets/none.json"_s), std::logic_error);
}

} // namespace
} // namespace strandbench
