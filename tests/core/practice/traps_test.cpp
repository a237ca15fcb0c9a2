// SPDX-License-Identifier: GPL-3.0-or-later
// Each trap with the pupil who falls into it: that decision is lost and no other, and a stop that was filled so is no
// pass.
#include "pupils.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// What somebody takes the panel for who falls into the trap; the truth itself where the fall is no answer.
Assessment takenFor(TrapKind trap, const PracticePanel& panel)
{
    Assessment taken = panel.truth;
    switch (trap) {
    case TrapKind::CrackPastCrazing:
        taken.damage->length = panel.shown.visibleLength;
        break;
    case TrapKind::SmcAsLaminate:
    case TrapKind::CarbonUnderPaint:
        taken.substrate = Substrate::Laminate;
        break;
    case TrapKind::ZincGroundAway:
        taken.substrate = Substrate::Steel;
        break;
    case TrapKind::HardThermoplastic:
    case TrapKind::FibrelessHood:
        taken.substrate = Substrate::Smc;
        break;
    case TrapKind::WeakMagnetOverFiller:
    case TrapKind::BlackConverter:
    case TrapKind::GoodEtchPrimer:
        taken.surface = SurfaceState::AbradedEpoxy;
        break;
    case TrapKind::StitchFromBehind:
        taken.damage->weld = WeldKind::Solid;
        break;
    case TrapKind::SoftSqueezeOut:
        taken.damage->adhesiveCured = true;
        break;
    case TrapKind::SensorZone:
    case TrapKind::FuelTank:
        taken.zone = Zone::Cosmetic;
        break;
    case TrapKind::FoamCore:
        taken.core = CoreMaterial::None;
        break;
    case TrapKind::DewMarginShort:
    case TrapKind::JustAboveDew:
    case TrapKind::HotPorousWeld:
    case TrapKind::SpotSeam:
    case TrapKind::AluminiumSteelDisc:
        break;
    }
    return taken;
}

Attempt fallInto(TrapKind trap, const PracticePanel& panel)
{
    Attempt attempt = perfectAttempt(modelAnswer(takenFor(trap, panel), shop()), shop());
    if (trap == TrapKind::DewMarginShort || trap == TrapKind::JustAboveDew || trap == TrapKind::HotPorousWeld)
        attempt.fill = true;
    if (trap == TrapKind::SpotSeam)
        attempt.instead = u"weld_up"_s;
    if (trap == TrapKind::AluminiumSteelDisc) // 'it is bright already'
        std::erase(attempt.steps, u"abrade_80_metal"_s);
    return attempt;
}

TEST(PracticeTraps, WhoFallsIntoOneLosesTheDecisionThatItConcerns)
{
    int fallen = 0;
    for (const PracticePanel& panel : deliveredPanels()) {
        for (const TrapKind trap : panel.traps) {
            const Lesson lesson = lessonOf(panel);
            const Attempt attempt = fallInto(trap, panel);
            const Marking marking = markOf(lesson, attempt);
            ++fallen;
            ASSERT_EQ(std::ranges::count(marking.marks, Judged::Wrong, &Mark::judged), 1)
                << panel.id.toStdString() << " " << codeOf(trap).toStdString();
            const Mark& lost = *std::ranges::find(marking.marks, Judged::Wrong, &Mark::judged);
            EXPECT_EQ(lost.decision, concernedBy(trap)) << panel.id.toStdString();
            const bool filledAStop = attempt.fill == true && !lesson.truth.fill();
            EXPECT_EQ(marking.outcome.filledAStop, filledAStop);
            EXPECT_FALSE(filledAStop && marking.outcome.passed());
        }
    }
    EXPECT_GE(fallen, static_cast<int>(Codes<TrapKind>::table.size()));
}

/// 'Take zinc for steel' changes nothing that the sheet in the hand does not say: it names zinc. 'Take carbon for
/// laminate' meets the paint. The others fill what is a stop, or lay out less than there is.
TEST(PracticeTraps, MostOfThemEndInAFilledStop)
{
    std::vector<TrapKind> filled;
    for (const PracticePanel& panel : deliveredPanels())
        for (const TrapKind trap : panel.traps)
            if (markOf(lessonOf(panel), fallInto(trap, panel)).outcome.filledAStop)
                filled.push_back(trap);
    for (const TrapKind each :
         {TrapKind::DewMarginShort, TrapKind::JustAboveDew, TrapKind::WeakMagnetOverFiller, TrapKind::HotPorousWeld,
          TrapKind::StitchFromBehind, TrapKind::SoftSqueezeOut, TrapKind::FibrelessHood, TrapKind::GoodEtchPrimer,
          TrapKind::SensorZone, TrapKind::FuelTank, TrapKind::FoamCore})
        EXPECT_GT(std::ranges::count(filled, each), 0) << codeOf(each).toStdString();
}

} // namespace
} // namespace strandbench::test
