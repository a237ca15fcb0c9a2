// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/vapour.h"

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Cubic metres of a mole at 25 degC and 760 mmHg.
constexpr double molarVolume = 24.45e-3;

/// Kilograms of a mole.
double molarMass(Vapour vapour)
{
    switch (vapour) {
    case Vapour::Styrene:
        return 104.15e-3;
    case Vapour::Acetone:
        return 58.08e-3;
    case Vapour::Naphtha:
        break;
    }
    return 99e-3;
}

double naphthaPpm(double milligrams)
{
    return inPartsPerMillion(shareOf(Vapour::Naphtha, milligramsPerCubicMetre(milligrams)));
}

} // namespace

Fraction shareOf(Vapour vapour, Concentration concentration)
{
    return Fraction::ofOne(concentration.value() * molarVolume / molarMass(vapour));
}

Concentration concentrationOf(Vapour vapour, Fraction share)
{
    return share.value() * molarMass(vapour) / molarVolume * si::kilogram / si::cubic_metre;
}

Temperature flashPoint(Vapour vapour)
{
    switch (vapour) {
    case Vapour::Styrene:
        return celsius(31);
    case Vapour::Acetone:
        return celsius(-18);
    case Vapour::Naphtha:
        break;
    }
    return celsius(-40);
}

Fraction lowerExplosiveLimit(Vapour vapour)
{
    switch (vapour) {
    case Vapour::Styrene:
        return Fraction::ofHundred(0.9);
    case Vapour::Acetone:
        return Fraction::ofHundred(2.5);
    case Vapour::Naphtha:
        break;
    }
    return Fraction::ofHundred(1.1);
}

const std::vector<ExposureLimit>& exposureLimits()
{
    using enum LimitKind;
    const auto of = [](Vapour vapour, const QString& name, LimitKind kind, double ppm, const QString& source) {
        return ExposureLimit{vapour, name, kind, partsPerMillion(ppm), source};
    };
    static const std::vector<ExposureLimit> all{
        of(Vapour::Styrene, u"ACGIH TLV (1996)"_s, TimeWeighted, 20, u"OSHA chemical sampling page, styrene"_s),
        of(Vapour::Styrene, u"NIOSH REL"_s, TimeWeighted, 50, u"NIOSH, styrene"_s),
        of(Vapour::Styrene, u"OSHA PEL"_s, TimeWeighted, 100, u"29 CFR 1910.1000, Table Z-2"_s),
        of(Vapour::Styrene, u"ACGIH TLV (1996)"_s, ShortTerm, 40, u"OSHA chemical sampling page, styrene"_s),
        of(Vapour::Styrene, u"NIOSH REL"_s, ShortTerm, 100, u"NIOSH, styrene"_s),
        of(Vapour::Styrene, u"OSHA PEL"_s, Ceiling, 200, u"29 CFR 1910.1000, Table Z-2"_s),
        of(Vapour::Styrene, u"OSHA PEL"_s, Peak, 600, u"29 CFR 1910.1000, Table Z-2"_s),
        of(Vapour::Styrene, u"NIOSH IDLH"_s, LifeOrHealth, 700, u"NIOSH, styrene"_s),
        of(Vapour::Acetone, u"NIOSH REL"_s, TimeWeighted, 250, u"NIOSH, acetone"_s),
        of(Vapour::Acetone, u"OSHA PEL"_s, TimeWeighted, 1000, u"29 CFR 1910.1000, Table Z-1"_s),
        of(Vapour::Acetone, u"NIOSH IDLH"_s, LifeOrHealth, 2500, u"NIOSH, acetone"_s),
        // In mg/m3 there; a ceiling that is a mean of fifteen minutes.
        of(Vapour::Naphtha, u"NIOSH REL"_s, TimeWeighted, naphthaPpm(350), u"NIOSH, petroleum distillates"_s),
        of(Vapour::Naphtha, u"OSHA PEL"_s, TimeWeighted, 500, u"29 CFR 1910.1000, Table Z-1"_s),
        of(Vapour::Naphtha, u"NIOSH REL"_s, ShortTerm, naphthaPpm(1800), u"NIOSH, petroleum distillates"_s),
        of(Vapour::Naphtha, u"NIOSH IDLH"_s, LifeOrHealth, 1100, u"NIOSH, petroleum distillates"_s),
    };
    return all;
}

Fraction timeWeighted(const std::vector<Exposure>& day)
{
    const Duration workingDay = minutes(8 * 60);
    double breathed = 0;
    for (const Exposure& each : day)
        breathed += each.level.value() * (each.time / workingDay).value();
    return Fraction::ofOne(breathed);
}

Fraction ofMixtureLimit(const std::vector<BesideLimit>& vapours)
{
    double sum = 0;
    for (const BesideLimit& each : vapours) {
        if (each.limit <= Fraction())
            throw std::logic_error("an exposure limit of 0");
        sum += each.level.value() / each.limit.value();
    }
    return Fraction::ofOne(sum);
}

} // namespace strandbench
