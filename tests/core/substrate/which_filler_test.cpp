// SPDX-License-Identifier: GPL-3.0-or-later
// Which filler where, for every filler, substrate and damage. Common practice, no source: the expectations are
// written out here a second time, apart from the table that the program carries.
#include "sound_panels.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <gmock/gmock.h>

#include <map>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace strandbench::test {
namespace {

/// One damage: for every substrate (frp, smc, steel, galvanised, aluminium) which of the fillers may be used
/// when it is the only one on the bench (S short, L light, M mixed, X long), and which one goes first.
struct Row {
    const char* name;
    DamageKind kind;
    double acrossMm;
    std::array<const char*, 5> may;
    std::array<const char*, 5> first; ///< empty where the damage itself is a stop
};

constexpr std::array<Row, 8> rows{{
    {"gouge", DamageKind::Gouge, 10, {"SLMX", "SM", "SLMX", "SM", "SM"}, {"S", "M", "S", "S", "S"}},
    {"dent", DamageKind::Dent, 10, {"SLMX", "SM", "SLMX", "SM", "SM"}, {"S", "M", "S", "S", "S"}},
    {"crack", DamageKind::Crack, 10, {"SLMX", "SM", "", "", ""}, {"S", "M", "", "", ""}},
    {"hole, 12 mm", DamageKind::Hole, 12, {"SM", "SM", "", "", ""}, {"M", "M", "", "", ""}},
    {"hole, over 12 mm", DamageKind::Hole, 12.1, {"M", "M", "", "", ""}, {"M", "M", "", "", ""}},
    {"solid weld seam", DamageKind::WeldSeam, 10, {"", "", "SLM", "SM", "SM"}, {"", "", "S", "S", "S"}},
    {"bond seam", DamageKind::BondSeam, 10, {"SLM", "SM", "SLM", "SM", "SM"}, {"S", "S", "S", "S", "S"}},
    {"rust hole", DamageKind::RustHole, 10, {"", "", "", "", ""}, {"", "", "", "", ""}},
}};

const QString letters = u"SLMX"_s;

Assessment panelOf(const Row& row, std::size_t substrate)
{
    Assessment assessment = soundPanel(filledSubstrates.at(substrate), row.kind);
    assessment.damage->length = millimetres(row.acrossMm);
    return assessment;
}

std::string nameOf(const Row& row, std::size_t substrate)
{
    return std::string(row.name) + " in " + codeOf(filledSubstrates.at(substrate)).toStdString();
}

TEST(WhichFiller, MayBeUsedWhenItIsTheOnlyOne)
{
    for (const Row& row : rows) {
        for (std::size_t substrate = 0; substrate < filledSubstrates.size(); ++substrate) {
            QString may;
            for (std::size_t filler = 0; filler < fibreFillers.size(); ++filler) {
                const Catalogue alone = only({fibreFillers.at(filler)});
                const Decision decision = decide(panelOf(row, substrate), builtInTable(), alone);
                if (decision.fill)
                    may += letters.at(static_cast<qsizetype>(filler));
                EXPECT_TRUE(!decision.filler || decision.filler == fibreFillers.at(filler))
                    << "a class without a sheet";
            }
            EXPECT_EQ(may, QLatin1StringView(row.may.at(substrate))) << nameOf(row, substrate);
        }
    }
}

TEST(WhichFiller, GoesFirstWhenAllAreThere)
{
    for (const Row& row : rows) {
        for (std::size_t substrate = 0; substrate < filledSubstrates.size(); ++substrate) {
            const Decision decision = decideHere(panelOf(row, substrate));
            const QString expected = QString::fromLatin1(row.first.at(substrate));
            ASSERT_EQ(decision.fill, !expected.isEmpty()) << nameOf(row, substrate);
            if (!decision.fill)
                continue;
            const auto wanted = static_cast<std::size_t>(letters.indexOf(expected));
            EXPECT_EQ(decision.filler, fibreFillers.at(wanted)) << nameOf(row, substrate);
            ASSERT_NE(decision.sheet, nullptr);
            EXPECT_EQ(decision.sheet->fillerClass, decision.filler) << nameOf(row, substrate);
        }
    }
}

/// Every class that is not taken says why: its own cell where that keeps it out, or that another is better.
TEST(WhichFiller, EveryOtherClassHasItsReason)
{
    int seen = 0;
    for (const Row& row : rows) {
        for (std::size_t substrate = 0; substrate < filledSubstrates.size(); ++substrate) {
            const Decision decision = decideHere(panelOf(row, substrate));
            if (!decision.fill) {
                EXPECT_THAT(decision.rejected, IsEmpty()) << nameOf(row, substrate);
                continue;
            }
            EXPECT_THAT(decision.rejected, SizeIs(3)) << nameOf(row, substrate);
            for (std::size_t filler = 0; filler < fibreFillers.size(); ++filler) {
                if (fibreFillers.at(filler) == decision.filler)
                    continue;
                const QString why = whyNot(decision, fibreFillers.at(filler));
                const bool may = QString::fromLatin1(row.may.at(substrate)).contains(letters.at(qsizetype(filler)));
                EXPECT_FALSE(why.isEmpty()) << nameOf(row, substrate);
                EXPECT_EQ(why == u"another_is_better"_s, may) << nameOf(row, substrate) << ", " << why.toStdString();
                ++seen;
            }
        }
    }
    // 2 + 3 metals of gouge and dent, 2 of crack and both holes, 3 weld seams, 5 bond seams; three classes each.
    EXPECT_EQ(seen, (10 + 6 + 3 + 5) * 3);
}

TEST(WhichFiller, ReasonsBeginWithTheChosenOnesCells)
{
    const auto codesOf = [](const Decision& decision) {
        std::vector<QString> codes;
        for (const Reason& each : decision.reasons)
            codes.push_back(each.code);
        return codes;
    };
    EXPECT_THAT(codesOf(decideHere(soundPanel(Substrate::Smc, DamageKind::Hole))),
                ElementsAre(u"mixed_bridges_hole"_s, u"mixed_bonds_to_smc"_s));
    EXPECT_THAT(codesOf(decideHere(soundPanel(Substrate::Steel, DamageKind::WeldSeam))),
                ElementsAre(u"dense_seals_weld"_s, u"holds_on_steel"_s));
    EXPECT_THAT(codesOf(decideHere(soundPanel(Substrate::Laminate, DamageKind::Gouge))),
                ElementsAre(u"wets_laminate"_s));
}

/// The light class over a weld only after every other: 'second, pore-free'.
TEST(WhichFiller, SecondGoesAfterTheRest)
{
    const Assessment weld = soundPanel(Substrate::Steel, DamageKind::WeldSeam);
    const Catalogue lightAndMixed = only({FillerClass::ShortStrandLight, FillerClass::MixedStrand});
    EXPECT_EQ(decide(weld, builtInTable(), lightAndMixed).filler, FillerClass::MixedStrand);
    EXPECT_EQ(decide(weld, builtInTable(), only({FillerClass::ShortStrandLight})).filler,
              FillerClass::ShortStrandLight);
}

TEST(WhichFiller, ClassWithoutASheetIsNeverChosen)
{
    const Decision decision = decide(soundPanel(Substrate::Smc, DamageKind::Hole), builtInTable(),
                                     only({FillerClass::ShortStrand, FillerClass::FinishSmooth}));
    EXPECT_EQ(decision.filler, FillerClass::ShortStrand);
    EXPECT_EQ(whyNot(decision, FillerClass::MixedStrand), u"no_sheet"_s);
    const Decision none = decide(soundPanel(Substrate::Smc, DamageKind::Hole), builtInTable(),
                                 only({FillerClass::FinishSmooth, FillerClass::FinishFine}));
    EXPECT_THAT(stopCodes(none), ElementsAre(u"no_filler_fits"_s));
    EXPECT_FALSE(none.filler);
}

TEST(WhichFiller, NoFillerFitsNamesSubstrateAndDamage)
{
    const Decision decision =
        decide(soundPanel(Substrate::Smc, DamageKind::Gouge), builtInTable(), only({FillerClass::LongStrand}));
    EXPECT_EQ(stopNamed(decision, u"no_filler_fits"_s).reason, (Reason{u"no_filler_fits"_s, {u"smc"_s, u"gouge"_s}}));
}

/// Galvanised: only a sheet that names zinc, or on cured, abraded epoxy.
TEST(WhichFiller, GalvanisedIsNamedOrOnEpoxy)
{
    ProductSheet silent = demoSheet(FillerClass::ShortStrand);
    silent.namesZinc = false;
    Assessment panel = soundPanel(Substrate::Galvanised, DamageKind::Gouge);
    EXPECT_THAT(stopCodes(decide(panel, builtInTable(), Catalogue({silent}))), ElementsAre(u"no_filler_fits"_s));
    const Decision beside = decide(panel, builtInTable(), Catalogue({silent, demoSheet(FillerClass::MixedStrand)}));
    EXPECT_EQ(beside.filler, FillerClass::MixedStrand);
    EXPECT_EQ(whyNot(beside, FillerClass::ShortStrand), u"zinc_must_be_named"_s);
    panel.surface = SurfaceState::AbradedEpoxy;
    EXPECT_EQ(decide(panel, builtInTable(), Catalogue({silent})).filler, FillerClass::ShortStrand);
}

TEST(WhichFiller, TwelveMillimetresAreAcrossTheGreaterWay)
{
    const Catalogue dense = only({FillerClass::ShortStrand});
    Assessment panel = soundPanel(Substrate::Laminate, DamageKind::Hole);
    panel.damage->length = millimetres(5);
    panel.damage->width = millimetres(12);
    EXPECT_TRUE(decide(panel, builtInTable(), dense).fill);
    panel.damage->width = millimetres(13);
    EXPECT_FALSE(decide(panel, builtInTable(), dense).fill);
    const Decision all = decideHere(panel);
    EXPECT_EQ(whyNot(all, FillerClass::ShortStrand), u"strands_too_short_for_hole"_s);
}

} // namespace
} // namespace strandbench::test
