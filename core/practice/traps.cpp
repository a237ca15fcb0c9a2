// SPDX-License-Identifier: GPL-3.0-or-later
// What each trap stands on, so that no panel claims one that is not in it.
#include "practice/panel.h"

#include "air/gate.h"

#include <algorithm>

namespace strandbench {
namespace {

template <class T> bool has(const std::vector<T>& all, const T& wanted)
{
    return std::ranges::find(all, wanted) != all.end();
}

bool isSubstrate(const PracticePanel& panel, Substrate substrate) { return panel.truth.substrate == substrate; }
bool isSurface(const PracticePanel& panel, SurfaceState surface) { return panel.truth.surface == surface; }
bool isWeld(const PracticePanel& panel, WeldKind weld)
{
    return panel.truth.damage && panel.truth.damage->weld == weld;
}

/// How far the panel is above the dew point.
std::optional<TemperatureStep> dewMargin(const PracticePanel& panel)
{
    if (!panel.truth.reading)
        return std::nullopt;
    return judgeAir(*panel.truth.reading).margin;
}

/// Dry to the foil, and yet too near the dew point: short by little (over 1 K) or by most of it.
bool isNearDew(const PracticePanel& panel, double fromKelvin, double toKelvin)
{
    const auto margin = dewMargin(panel);
    return margin && panel.shown.foil == FoilTest::Dry && inKelvinStep(*margin) > fromKelvin &&
           inKelvinStep(*margin) < toKelvin;
}

bool isHotPorous(const PracticePanel& panel)
{
    return isWeld(panel, WeldKind::Solid) && has(panel.shown.front, FrontMark::Pores) && panel.truth.reading &&
           panel.truth.reading->panel > FillingLimits{}.panelHigh;
}

bool zincIsGroundAway(const PracticePanel& panel)
{
    return isSubstrate(panel, Substrate::Galvanised) && panel.shown.zincHere == Length() &&
           panel.shown.magnetHere == MagnetPull::Strong;
}

bool isSoftBond(const PracticePanel& panel)
{
    return panel.truth.damage && panel.truth.damage->adhesiveCured == false &&
           has(panel.shown.front, FrontMark::SqueezeOut);
}

bool steelOnAluminium(const PracticePanel& panel)
{
    return isSubstrate(panel, Substrate::Aluminium) && has(panel.shown.front, FrontMark::SteelSpecks) &&
           panel.shown.sinceCut && *panel.shown.sinceCut > minutes(60);
}

} // namespace

DecisionPoint concernedBy(TrapKind trap)
{
    switch (trap) {
    case TrapKind::CrackPastCrazing:
        return DecisionPoint::SizeFound;
    case TrapKind::SmcAsLaminate:
    case TrapKind::ZincGroundAway:
    case TrapKind::HardThermoplastic:
    case TrapKind::CarbonUnderPaint:
    case TrapKind::FibrelessHood:
        return DecisionPoint::SubstrateFound;
    case TrapKind::WeakMagnetOverFiller:
    case TrapKind::BlackConverter:
    case TrapKind::GoodEtchPrimer:
        return DecisionPoint::SurfaceFound;
    case TrapKind::DewMarginShort:
    case TrapKind::JustAboveDew:
    case TrapKind::HotPorousWeld:
        return DecisionPoint::FillOrStop;
    case TrapKind::SpotSeam:
        return DecisionPoint::InsteadOfFilling;
    case TrapKind::StitchFromBehind:
        return DecisionPoint::WeldFound;
    case TrapKind::AluminiumSteelDisc:
        return DecisionPoint::StepsLeftOut;
    case TrapKind::SoftSqueezeOut:
        return DecisionPoint::AdhesiveFound;
    case TrapKind::SensorZone:
    case TrapKind::FuelTank:
        return DecisionPoint::ZoneFound;
    case TrapKind::FoamCore:
        return DecisionPoint::CoreFound;
    }
    Q_UNREACHABLE();
}

bool isLaid(TrapKind trap, const PracticePanel& panel)
{
    const Evidence& shown = panel.shown;
    switch (trap) {
    case TrapKind::CrackPastCrazing:
        return has(shown.front, FrontMark::Crazing) && shown.tipsAt && *shown.tipsAt > shown.visibleLength;
    case TrapKind::SmcAsLaminate:
        return isSubstrate(panel, Substrate::Smc) && shown.sanded == SandedTo::Powder;
    case TrapKind::DewMarginShort:
        return isNearDew(panel, 1.0, 3.0);
    case TrapKind::JustAboveDew:
        return isSubstrate(panel, Substrate::Steel) && isNearDew(panel, 0.0, 1.0);
    case TrapKind::WeakMagnetOverFiller:
        return isSurface(panel, SurfaceState::OldFiller) && shown.magnetHere == MagnetPull::Weak;
    case TrapKind::HotPorousWeld:
        return isHotPorous(panel);
    case TrapKind::SpotSeam:
        return isWeld(panel, WeldKind::Spot);
    case TrapKind::StitchFromBehind:
        return isWeld(panel, WeldKind::Stitch) && has(shown.front, FrontMark::SeamLine);
    case TrapKind::BlackConverter:
        return isSurface(panel, SurfaceState::RustConverter);
    case TrapKind::ZincGroundAway:
        return zincIsGroundAway(panel);
    case TrapKind::AluminiumSteelDisc:
        return steelOnAluminium(panel);
    case TrapKind::SoftSqueezeOut:
        return isSoftBond(panel);
    case TrapKind::HardThermoplastic:
        return isSubstrate(panel, Substrate::Thermoplastic) && shown.tap == TapSound::Hard;
    case TrapKind::CarbonUnderPaint:
        return isSubstrate(panel, Substrate::Carbon) && isSurface(panel, SurfaceState::Paint);
    case TrapKind::FibrelessHood:
        return isSubstrate(panel, Substrate::CastThermoset) && shown.sanded == SandedTo::Powder;
    case TrapKind::GoodEtchPrimer:
        return isSurface(panel, SurfaceState::EtchPrimer) && shown.film == FilmLook::EvenGrey;
    case TrapKind::SensorZone:
        return panel.truth.zone == Zone::Sensor;
    case TrapKind::FuelTank:
        return panel.truth.zone == Zone::FuelOrPressure;
    case TrapKind::FoamCore:
        return panel.truth.core == CoreMaterial::Foam;
    }
    Q_UNREACHABLE();
}

} // namespace strandbench
