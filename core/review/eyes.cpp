// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/eyes.h"

#include <algorithm>

namespace strandbench {
namespace {

/// How many of each weight.
std::array<std::ptrdiff_t, 3> counts(const std::vector<DeviationKind>& kinds)
{
    std::array<std::ptrdiff_t, 3> all{};
    for (const DeviationKind each : kinds)
        ++all.at(static_cast<std::size_t>(weightOf(each)));
    return all;
}

} // namespace

Weight weightOf(DeviationKind kind)
{
    switch (kind) {
    case DeviationKind::Overridden:
    case DeviationKind::PanelNearDewPoint:
    case DeviationKind::HardenerLow:
    case DeviationKind::HardenerHigh:
    case DeviationKind::EdgesAfterGel:
    case DeviationKind::SandsEarly:
    case DeviationKind::LiftTooThick:
    case DeviationKind::StepsSkimmed:
    case DeviationKind::WaitCutShort:
    case DeviationKind::BareMetalLate:
        return Weight::First;
    case DeviationKind::PanelTooCold:
    case DeviationKind::PanelTooHot:
    case DeviationKind::AirTooCold:
    case DeviationKind::AirTooHot:
    case DeviationKind::NoReading:
    case DeviationKind::ReadingOld:
    case DeviationKind::EdgesAfterPredictedGel:
    case DeviationKind::StartedAgain:
    case DeviationKind::ClockSetForward:
    case DeviationKind::ClockSetBack:
        return Weight::Look;
    case DeviationKind::LotNotTold:
    case DeviationKind::HardenerLotNotTold:
    case DeviationKind::DemoSheet:
    case DeviationKind::AnswerCorrected:
    case DeviationKind::PlannedAgain:
    case DeviationKind::Parked:
    case DeviationKind::PhotoMissing:
    case DeviationKind::PersonNotTold:
        break;
    }
    return Weight::Record;
}

void sortByWeight(std::vector<DeviationKind>& kinds) { std::ranges::stable_sort(kinds, {}, weightOf); }

bool needsEyesBefore(const std::vector<DeviationKind>& one, const std::vector<DeviationKind>& other)
{
    return counts(one) > counts(other);
}

} // namespace strandbench
