// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet's own cell wins over the table, both ways; a cell that nobody wrote is no.
#include "sound_panels.h"

#include "exchange/rules.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::ElementsAre;

namespace strandbench::test {
namespace {

Catalogue withCell(FillerClass filler, const QString& column, const SheetCell& cell,
                   const std::vector<ProductSheet>& besides = {})
{
    ProductSheet sheet = demoSheet(filler);
    sheet.cells[column] = cell;
    std::vector<ProductSheet> sheets{sheet};
    sheets.insert(sheets.end(), besides.begin(), besides.end());
    return Catalogue(std::move(sheets));
}

TEST(OwnCell, AllowsWhatTheTableRefuses)
{
    const Assessment panel = soundPanel(Substrate::Smc, DamageKind::Gouge);
    ASSERT_FALSE(decide(panel, builtInTable(), only({FillerClass::LongStrand})).fill);
    const Catalogue own = withCell(FillerClass::LongStrand, u"smc"_s, {Suitability::Yes, u"tried here"_s});
    const Decision decision = decide(panel, builtInTable(), own);
    EXPECT_EQ(decision.filler, FillerClass::LongStrand);
    EXPECT_EQ(decision.reasons.front().code, u"tried here"_s);
}

TEST(OwnCell, RefusesWhatTheTableAllows)
{
    const Assessment panel = soundPanel(Substrate::Smc, DamageKind::Hole);
    const SheetCell no{Suitability::No, u"not on this one"_s};
    const Catalogue own = withCell(FillerClass::MixedStrand, u"smc"_s, no, {demoSheet(FillerClass::ShortStrand)});
    const Decision decision = decide(panel, builtInTable(), own);
    EXPECT_EQ(decision.filler, FillerClass::ShortStrand);
    EXPECT_EQ(whyNot(decision, FillerClass::MixedStrand), u"not on this one"_s);
}

TEST(OwnCell, OfADamageToo)
{
    const Assessment panel = soundPanel(Substrate::Steel, DamageKind::WeldSeam);
    const Catalogue best = withCell(FillerClass::MixedStrand, u"weld_seam"_s, {Suitability::Best, u"made for it"_s});
    EXPECT_EQ(decide(panel, builtInTable(), best).reasons.front().code, u"made for it"_s);
    const Catalogue no = withCell(FillerClass::ShortStrand, u"weld_seam"_s, {Suitability::No, u"never here"_s});
    EXPECT_THAT(stopCodes(decide(panel, builtInTable(), no)), ElementsAre(u"no_filler_fits"_s));
}

/// The substrate's and the damage's cell combine to the worse of the two.
TEST(OwnCell, WorseOfTheTwoCounts)
{
    const Assessment panel = soundPanel(Substrate::Aluminium, DamageKind::WeldSeam);
    // The light class: 'second' on the weld, 'no' on aluminium.
    EXPECT_FALSE(decide(panel, builtInTable(), only({FillerClass::ShortStrandLight})).fill);
    const Catalogue own = withCell(FillerClass::ShortStrandLight, u"aluminium"_s, {Suitability::Best, u"own"_s});
    EXPECT_TRUE(decide(panel, builtInTable(), own).fill);
}

/// A sheet's cell cannot make a refused damage or substrate fillable: that is not the filler's to say.
TEST(OwnCell, LiftsNoStop)
{
    const Catalogue own = withCell(FillerClass::MixedStrand, u"hole"_s, {Suitability::Best, u"own"_s});
    EXPECT_FALSE(decide(soundPanel(Substrate::Steel, DamageKind::Hole), builtInTable(), own).fill);
    EXPECT_FALSE(decide(soundPanel(Substrate::Carbon, DamageKind::Hole), builtInTable(), own).fill);
}

TEST(EmptyTable, SaysNoToEverything)
{
    EXPECT_EQ(DecisionTable().cell(FillerClass::MixedStrand, u"smc"_s).suitability, Suitability::No);
    EXPECT_EQ(DecisionTable().cell(FillerClass::MixedStrand, u"smc"_s).reason, u"no_cell"_s);
    for (const Substrate substrate : filledSubstrates) {
        const Decision decision = decide(soundPanel(substrate, DamageKind::Gouge), DecisionTable(),
                                         only({fibreFillers.begin(), fibreFillers.end()}));
        EXPECT_THAT(stopCodes(decision), ElementsAre(u"no_filler_fits"_s)) << codeOf(substrate).toStdString();
    }
}

/// A table that has the substrates but not the damages: nothing defaults to yes.
TEST(EmptyTable, MissingColumnIsNo)
{
    DecisionTable::Cells cells;
    for (const FillerClass filler : fibreFillers)
        cells[{filler, u"frp"_s}] = {Suitability::Best, u"own"_s};
    const DecisionTable table(cells, {}, {});
    const Catalogue all = only({fibreFillers.begin(), fibreFillers.end()});
    EXPECT_TRUE(decide(soundPanel(Substrate::Laminate, DamageKind::Gouge), table, all).fill);
    EXPECT_FALSE(decide(soundPanel(Substrate::Laminate, DamageKind::Hole), table, all).fill);
    EXPECT_FALSE(decide(soundPanel(Substrate::Laminate, DamageKind::BondSeam), table, all).fill);
    EXPECT_FALSE(decide(soundPanel(Substrate::Smc, DamageKind::Gouge), table, all).fill);
}

/// The long class bridges a hole and needs mixed over it: alone it is not a repair.
TEST(Bridging, IsNotARepairAlone)
{
    const Decision decision = decideHere(soundPanel(Substrate::Laminate, DamageKind::Hole));
    EXPECT_EQ(whyNot(decision, FillerClass::LongStrand), u"long_only_bridges"_s);
}

} // namespace
} // namespace strandbench::test
