// SPDX-License-Identifier: GPL-3.0-or-later
// Pictogram and signal word of a class. Expected from CLP Annex I: Table 2.15.1 (organic peroxides) as looked up at
// reachlex.eu; statements and signal words of Tables 2.3.1, 2.6.2, 2.12.2, 3.1.3, 3.4.7, 3.8.4 and 3.10.2 looked up
// there too, their pictograms not, which are images; the other tables and Article 26 remembered and not looked up.
#include "harm/harm.h"

#include <gtest/gtest.h>

namespace strandbench {
namespace {

using enum HazardClass;
using G = GhsPictogram;
using Pictograms = std::vector<GhsPictogram>;

struct Expected {
    HazardClass hazard;
    const char* statement;
    Pictograms pictograms;
    SignalWord signal;
};

TEST(HazardClass, PictogramFollowsFromTheStatementAsClpAnnexISays)
{
    const std::vector<Expected> all{
        {FlammableLiquid2, "H225", {G::Flame}, SignalWord::Danger},
        {FlammableLiquid3, "H226", {G::Flame}, SignalWord::Warning},
        {FlammableSolid1, "H228", {G::Flame}, SignalWord::Danger},
        {FlammableAerosol1, "H222", {G::Flame}, SignalWord::Danger},
        {OrganicPeroxideB, "H241", {G::ExplodingBomb, G::Flame}, SignalWord::Danger},
        {OrganicPeroxideD, "H242", {G::Flame}, SignalWord::Danger},
        {OrganicPeroxideE, "H242", {G::Flame}, SignalWord::Warning},
        {WaterReactive2, "H261", {G::Flame}, SignalWord::Danger},
        {AcuteOral3, "H301", {G::Skull}, SignalWord::Danger},
        {AcuteOral4, "H302", {G::Exclamation}, SignalWord::Warning},
        {AcuteInhaled4, "H332", {G::Exclamation}, SignalWord::Warning},
        {SkinCorrosion1, "H314", {G::Corrosion}, SignalWord::Danger},
        {SkinIrritation2, "H315", {G::Exclamation}, SignalWord::Warning},
        {EyeIrritation2, "H319", {G::Exclamation}, SignalWord::Warning},
        {SkinSensitiser1, "H317", {G::Exclamation}, SignalWord::Warning},
        {RespiratorySensitiser1, "H334", {G::HealthHazard}, SignalWord::Danger},
        {Carcinogen1, "H350", {G::HealthHazard}, SignalWord::Danger},
        {Reproduction1, "H360", {G::HealthHazard}, SignalWord::Danger},
        {Reproduction2Unborn, "H361d", {G::HealthHazard}, SignalWord::Warning},
        {Narcosis, "H336", {G::Exclamation}, SignalWord::Warning},
        {OrgansRepeated1, "H372", {G::HealthHazard}, SignalWord::Danger},
        {OrgansRepeated2, "H373", {G::HealthHazard}, SignalWord::Warning},
        {Aspiration1, "H304", {G::HealthHazard}, SignalWord::Danger},
        {AquaticChronic1, "H410", {G::Environment}, SignalWord::Warning},
        {AquaticChronic2, "H411", {G::Environment}, SignalWord::None},
        {DrySkin, "EUH066", {}, SignalWord::None},
    };
    ASSERT_EQ(all.size(), Codes<HazardClass>::table.size()) << "invariant: every class is expected here";
    for (const Expected& each : all) {
        EXPECT_STREQ(labelElement(each.hazard).statement, each.statement);
        EXPECT_EQ(pictogramsOf({each.hazard}), each.pictograms) << each.statement;
        EXPECT_EQ(signalOf({each.hazard}), each.signal) << each.statement;
    }
}

TEST(HazardClass, DangerStandsAloneAsClpArticle20Says)
{
    EXPECT_EQ(signalOf({FlammableLiquid3, OrgansRepeated1, SkinIrritation2}), SignalWord::Danger);
    EXPECT_EQ(signalOf({SkinIrritation2, AquaticChronic2}), SignalWord::Warning);
    EXPECT_EQ(signalOf({}), SignalWord::None);
}

TEST(HazardClass, SkullTakesTheExclamationMarkAwayAsClpArticle26Says)
{
    EXPECT_EQ(pictogramsOf({AcuteOral3, SkinIrritation2, Narcosis}), Pictograms{G::Skull});
}

TEST(HazardClass, CorrosionTakesItAwayForIrritationAlone)
{
    EXPECT_EQ(pictogramsOf({SkinCorrosion1, EyeIrritation2}), Pictograms{G::Corrosion});
    EXPECT_EQ(pictogramsOf({SkinCorrosion1, EyeIrritation2, AcuteOral4}), (Pictograms{G::Corrosion, G::Exclamation}));
}

TEST(HazardClass, LungSensitiserTakesItAwayForSkinAndEye)
{
    EXPECT_EQ(pictogramsOf({RespiratorySensitiser1, SkinSensitiser1, SkinIrritation2, EyeIrritation2}),
              Pictograms{G::HealthHazard});
    EXPECT_EQ(pictogramsOf({RespiratorySensitiser1, Narcosis}), (Pictograms{G::Exclamation, G::HealthHazard}));
    EXPECT_EQ(pictogramsOf({Reproduction1, SkinSensitiser1}), (Pictograms{G::Exclamation, G::HealthHazard}))
        << "another reason for GHS08 takes nothing away";
}

} // namespace
} // namespace strandbench
