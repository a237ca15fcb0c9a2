// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/decision_point.h"

namespace strandbench {

Skill skillOf(DecisionPoint decision)
{
    switch (decision) {
    case DecisionPoint::SubstrateFound:
    case DecisionPoint::DamageFound:
    case DecisionPoint::SizeFound:
    case DecisionPoint::WeldFound:
    case DecisionPoint::AdhesiveFound:
    case DecisionPoint::ReachFound:
    case DecisionPoint::SurfaceFound:
    case DecisionPoint::ZoneFound:
    case DecisionPoint::MoistureFound:
    case DecisionPoint::CoreFound:
        return Skill::Identify;
    case DecisionPoint::FillOrStop:
    case DecisionPoint::WhyStop:
    case DecisionPoint::InsteadOfFilling:
    case DecisionPoint::WhichFiller:
        return Skill::Decide;
    case DecisionPoint::StepsLeftOut:
    case DecisionPoint::StepsThatHarm:
    case DecisionPoint::StepsInOrder:
        return Skill::Prepare;
    case DecisionPoint::LiftThickness:
    case DecisionPoint::BuildUp:
    case DecisionPoint::MixedAmount:
    case DecisionPoint::HardenerDose:
        return Skill::Mix;
    case DecisionPoint::EdgesCleared:
    case DecisionPoint::SandedAt:
        return Skill::Time;
    case DecisionPoint::Turned:
    case DecisionPoint::FinishCoats:
    case DecisionPoint::Inspected:
    case DecisionPoint::PrimerAfter:
        return Skill::Finish;
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
