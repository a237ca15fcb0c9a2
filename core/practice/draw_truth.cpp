// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/drawing.h"

namespace strandbench::practice {
namespace {

/// Air, panel and humidity in tenths: a figure that is read, not computed, is the same everywhere.
struct TenthsRead {
    int air;
    int panel;
    int humidity;
};

Reading readingOf(const TenthsRead& tenths)
{
    return {celsius(tenths.air / 10.0), celsius(tenths.panel / 10.0), Fraction::ofHundred(tenths.humidity / 10.0)};
}

const std::vector<TenthsRead>& shortOfDewMargin()
{
    static const std::vector<TenthsRead> all{{200, 169, 700}, {180, 165, 780}, {220, 197, 740},
                                             {160, 146, 790}, {240, 214, 730}, {250, 223, 720}};
    return all;
}
const std::vector<TenthsRead>& justAboveDew()
{
    static const std::vector<TenthsRead> all{{140, 121, 850}, {180, 151, 800}, {200, 174, 820}, {160, 134, 810}};
    return all;
}
const std::vector<TenthsRead>& tooColdOrHot()
{
    static const std::vector<TenthsRead> all{
        {80, 70, 450}, {120, 90, 500}, {360, 350, 300}, {290, 340, 350}, {90, 110, 40 * 10}};
    return all;
}

/// Within limits: a dry shop, the panel a little off its air.
TenthsRead fairReading(Dice& dice)
{
    const int air = dice.between(170, 270);
    return {air, air + dice.between(-20, 10), dice.between(300, 550)};
}

Length tenths(int value) { return millimetres(value / 10.0); }

bool isComposite(Substrate substrate) { return !isMetal(substrate) && substrate != Substrate::Magnesium; }

/// As thick as such a panel is.
Length thicknessOf(Substrate substrate, Dice& dice)
{
    if (!isComposite(substrate))
        return tenths(dice.between(7, 15));
    return tenths(dice.percent(15) ? dice.between(120, 200) : dice.between(25, 60));
}

Damage gouge(Dice& dice, Length thickness)
{
    // Of a thick panel most is ground away, so that it takes more than one lift.
    const Length depth = thickness * (dice.between(4, 8) / 10.0);
    return {DamageKind::Gouge,
            tenths(dice.between(200, 1500)),
            tenths(dice.between(50, 400)),
            millimetres(qRound(inMillimetres(depth) * 10.0) / 10.0),
            thickness,
            0,
            {},
            {}};
}

Damage dent(Dice& dice, Length thickness)
{
    return {DamageKind::Dent,
            tenths(dice.between(400, 3200)),
            tenths(dice.between(300, 2500)),
            tenths(dice.between(10, 60)),
            thickness,
            0,
            {},
            {}};
}

Damage crack(Dice& dice, Length thickness)
{
    return {DamageKind::Crack,
            tenths(dice.between(300, 2500)),
            millimetres(0),
            thickness,
            thickness,
            dice.between(2, 5) * 1.0,
            {},
            {}};
}

Damage hole(Dice& dice, Length thickness)
{
    return {DamageKind::Hole,
            tenths(dice.between(100, 750)),
            tenths(dice.between(80, 700)),
            thickness,
            thickness,
            dice.between(0, 5) * 1.0,
            {},
            {}};
}

Damage seam(Dice& dice, Length thickness, DamageKind kind)
{
    Damage damage{kind,
                  tenths(dice.between(800, 6000)),
                  tenths(dice.between(80, 300)),
                  tenths(dice.between(8, 25)),
                  thickness,
                  0,
                  {},
                  {}};
    if (kind == DamageKind::WeldSeam)
        damage.weld = WeldKind::Solid;
    else
        damage.adhesiveCured = true;
    return damage;
}

/// A damage that may be filled on such a panel.
Damage fillable(Substrate substrate, Dice& dice)
{
    const Length thickness = thicknessOf(substrate, dice);
    const int which = dice.below(isComposite(substrate) ? 6 : 4);
    switch (which) {
    case 0:
        return gouge(dice, thickness);
    case 1:
        return dent(dice, thickness);
    case 2:
        return seam(dice, thickness, DamageKind::BondSeam);
    case 3:
        return isComposite(substrate) ? hole(dice, thickness) : seam(dice, thickness, DamageKind::WeldSeam);
    case 4:
        return crack(dice, thickness);
    default:
        return hole(dice, thickness);
    }
}

/// What keeps a panel from being filled.
enum class Complication {
    BadSubstrate,
    Surface,
    Zone,
    Core,
    Damp,
    DewShort,
    JustAboveDew,
    ColdOrHot,
    MetalDamage,
    DeepDent,
    WideHole,
    SpotOrStitch,
    HotWeld,
    SoftBond
};
constexpr int complications = 14;

void complicateDamage(Complication complication, Assessment& truth, Dice& dice)
{
    static const std::vector<Substrate> metals{Substrate::Steel, Substrate::Galvanised, Substrate::Aluminium};
    const bool hole75 = complication == Complication::WideHole;
    if (hole75)
        truth.substrate = dice.percent(50) ? Substrate::Laminate : Substrate::Smc;
    else if (complication != Complication::SoftBond)
        truth.substrate = dice.from(metals);
    const Length thickness = thicknessOf(*truth.substrate, dice);
    if (hole75) {
        truth.damage = hole(dice, thickness);
        truth.damage->length = tenths(dice.between(760, 1500));
    } else if (complication == Complication::MetalDamage) {
        const int which = dice.below(3);
        truth.damage = which == 0 ? crack(dice, thickness) : hole(dice, thickness);
        if (which == 2) {
            truth.damage->kind = DamageKind::RustHole;
            truth.damage->bevelRatio = 0;
        }
    } else if (complication == Complication::DeepDent) {
        truth.damage = dent(dice, thickness);
        truth.damage->depth = tenths(dice.between(65, 120));
    } else if (complication == Complication::SoftBond) {
        truth.damage = seam(dice, thickness, DamageKind::BondSeam);
        truth.damage->adhesiveCured = false;
    } else {
        truth.damage = seam(dice, thickness, DamageKind::WeldSeam);
        if (complication == Complication::SpotOrStitch)
            truth.damage->weld = dice.percent(50) ? WeldKind::Spot : WeldKind::Stitch;
        else
            truth.reading->panel = celsius(dice.between(35, 70));
    }
}

void complicate(Complication complication, Assessment& truth, Dice& dice)
{
    static const std::vector<Substrate> bad{Substrate::Thermoplastic, Substrate::FlexiblePolyurethane,
                                            Substrate::Carbon,        Substrate::CastThermoset,
                                            Substrate::Magnesium,     Substrate::Unknown};
    switch (complication) {
    case Complication::BadSubstrate:
        truth.substrate = dice.from(bad);
        truth.damage = dice.percent(50) ? gouge(dice, tenths(30)) : crack(dice, tenths(30));
        truth.surface = dice.percent(50) ? SurfaceState::Paint : SurfaceState::Bare;
        break;
    case Complication::Surface:
        truth.surface = Codes<SurfaceState>::table[static_cast<std::size_t>(dice.between(2, 9))].first;
        break;
    case Complication::Zone:
        truth.zone = Codes<Zone>::table[static_cast<std::size_t>(dice.between(1, 4))].first;
        break;
    case Complication::Core:
        truth.substrate = Substrate::Laminate;
        truth.damage = crack(dice, tenths(30));
        truth.core = dice.percent(60) ? CoreMaterial::Foam : CoreMaterial::WetWood;
        break;
    case Complication::Damp:
        truth.moisture = Moisture::Damp;
        break;
    case Complication::DewShort:
        truth.reading = readingOf(dice.from(shortOfDewMargin()));
        break;
    case Complication::JustAboveDew:
        truth.reading = readingOf(dice.from(justAboveDew()));
        break;
    case Complication::ColdOrHot:
        truth.reading = readingOf(dice.from(tooColdOrHot()));
        break;
    default:
        complicateDamage(complication, truth, dice);
    }
}

} // namespace

Assessment drawTruth(Dice& dice)
{
    static const std::vector<Substrate> good{Substrate::Laminate, Substrate::Laminate,   Substrate::Smc,
                                             Substrate::Steel,    Substrate::Galvanised, Substrate::Aluminium};
    Assessment truth;
    truth.job = QStringLiteral("practice");
    truth.substrate = dice.from(good);
    truth.damage = fillable(*truth.substrate, dice);
    truth.surface = dice.percent(20) ? SurfaceState::AbradedEpoxy : SurfaceState::Bare;
    truth.zone = Zone::Cosmetic;
    truth.moisture = Moisture::Dry;
    truth.reading = readingOf(fairReading(dice));
    if (truth.substrate == Substrate::Laminate && dice.percent(15))
        truth.core = CoreMaterial::DryWood;
    const int several = dice.percent(50) ? 0 : dice.percent(85) ? 1 : 2;
    for (int i = 0; i < several; ++i)
        complicate(static_cast<Complication>(dice.below(complications)), truth, dice);
    // A core belongs to a laminate, a way to the back to a hole.
    if (truth.substrate != Substrate::Laminate)
        truth.core = CoreMaterial::None;
    if (truth.damage->kind == DamageKind::Hole)
        truth.rearAccess = dice.percent(60);
    return truth;
}

} // namespace strandbench::practice
