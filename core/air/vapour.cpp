// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/vapour.h"

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Cubic metres of a mole at 25 degC and 760 mmHg.
constexpr double molarVolume = 24.45e-3;

/// Kilograms of a mole.
double molarMass(Vapour vapour) { return vapour == Vapour::Styrene ? 104.15e-3 : 58.08e-3; }

} // namespace

Fraction shareOf(Vapour vapour, Concentration concentration)
{
    return Fraction::ofOne(concentration.value() * molarVolume / molarMass(vapour));
}

Concentration concentrationOf(Vapour vapour, Fraction share)
{
    return share.value() * molarMass(vapour) / molarVolume * si::kilogram / si::cubic_metre;
}

Temperature flashPoint(Vapour vapour) { return celsius(vapour == Vapour::Styrene ? 31 : -18); }

Fraction lowerExplosiveLimit(Vapour vapour) { return Fraction::ofHundred(vapour == Vapour::Styrene ? 0.9 : 2.5); }

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
