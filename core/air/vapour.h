// SPDX-License-Identifier: GPL-3.0-or-later
// Vapours of the bench: how much of one is in the air, and the limits that authorities publish for it. A reason to
// ventilate and to wear what the safety data sheet asks for; being below a limit clears nobody for anything.
#pragma once

#include "quantity/codes.h"
#include "quantity/quantity.h"

#include <QString>

#include <vector>

namespace strandbench {

enum class Vapour {
    Styrene, ///< of the filler
    Acetone, ///< of wiping down where much fibre lies open
    Naphtha, ///< light petroleum: of wiping down with a wax remover, whose own sheet may name others
};
template <> struct Codes<Vapour> {
    static constexpr std::array<std::pair<Vapour, const char*>, 3> table{
        {{Vapour::Styrene, "styrene"}, {Vapour::Acetone, "acetone"}, {Vapour::Naphtha, "naphtha"}}};
};

/// What a volume of air holds of a vapour; 0 or more.
using Concentration = Density;
[[nodiscard]] inline Concentration milligramsPerCubicMetre(double v)
{
    return v * 1e-6 * si::kilogram / si::cubic_metre;
}
[[nodiscard]] inline double inMilligramsPerCubicMetre(Concentration q) { return q.value() * 1e6; }

/// Parts per million by volume, as a share of the air.
[[nodiscard]] inline Fraction partsPerMillion(double v) { return Fraction::ofOne(v * 1e-6); }
[[nodiscard]] inline double inPartsPerMillion(Fraction q) { return q.value() * 1e6; }

/// The share of the air by volume at 25 degC and 760 mmHg, where a mole of gas fills 24.45 litres: the footnote (a) of
/// 29 CFR 1910.1000, Table Z-1. Molar masses 104.15 and 58.08 g; about 99 g for naphtha, which is a mixture (NIOSH
/// Pocket Guide, petroleum distillates).
[[nodiscard]] Fraction shareOf(Vapour vapour, Concentration concentration);
[[nodiscard]] Concentration concentrationOf(Vapour vapour, Fraction share);

/// Flash point, closed cup: styrene 31 degC, NIOSH Pocket Guide (2005-151); acetone -18 degC (0 degF) there too, from
/// memory; naphtha -40 degC, the upper end that the Guide gives for petroleum distillates. Above it the vapour over the
/// liquid can be lit.
[[nodiscard]] Temperature flashPoint(Vapour vapour);
/// The lower explosive limit as a share of the air: styrene 0.9 %, NIOSH Pocket Guide; acetone 2.5 %, NIOSH; naphtha
/// 1.1 %, NIOSH, petroleum distillates.
[[nodiscard]] Fraction lowerExplosiveLimit(Vapour vapour);

enum class LimitKind {
    TimeWeighted, ///< mean of a working day of eight hours
    ShortTerm,    ///< mean of fifteen minutes
    Ceiling,
    Peak,         ///< for five minutes in any three hours
    LifeOrHealth, ///< immediately dangerous to life or health
};

struct ExposureLimit {
    Vapour vapour = Vapour::Styrene;
    QString name; ///< as it is known, the same in every language: "OSHA PEL"
    LimitKind kind = LimitKind::TimeWeighted;
    Fraction level;
    QString source;
};

/// Published limits, in the order of vapour and level within a kind; the local ones, and newer ones, go first.
[[nodiscard]] const std::vector<ExposureLimit>& exposureLimits();

/// One stretch of a day.
struct Exposure {
    Fraction level;
    Duration time; ///< 0 or more
};

/// The mean over a working day: what was breathed, divided by eight hours however long it was (29 CFR 1910.1000(d)).
[[nodiscard]] Fraction timeWeighted(const std::vector<Exposure>& day);

/// A level beside the limit of its own kind.
struct BesideLimit {
    Fraction level;
    Fraction limit; ///< above 0
};

/// The sum of the shares of their limits of vapours that act together; above 1 the mixture is over the limit although
/// none of them may be (29 CFR 1910.1000(d)(2)). Throws std::logic_error for a limit of 0.
[[nodiscard]] Fraction ofMixtureLimit(const std::vector<BesideLimit>& vapours);

} // namespace strandbench
