// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/predict.h"

#include <algorithm>

namespace strandbench {

CureCase atRate(const CureCase& sheet, LogRate rate)
{
    CureCase changed = sheet;
    changed.kinetics.k1 = sheet.kinetics.k1 * rate.multiplier();
    changed.kinetics.k2 = sheet.kinetics.k2 * rate.multiplier();
    return changed;
}

tl::expected<CureRange, CureDifficulty> predictCure(const CureCase& sheet, const Belief& batch, Fraction share,
                                                    const CureFineness& fineness)
{
    const LogRateRange ends = middleOf(batch, share);
    const auto marks = [](const CureResult& solved) { return CureMarks{solved.gel, solved.sand, solved.peak}; };
    CureOutcome expected = solveCure(atRate(sheet, batch.mean), fineness);
    if (!expected)
        return tl::unexpected(expected.error());
    const CureOutcome early = solveCure(atRate(sheet, ends.high), fineness);
    if (!early)
        return tl::unexpected(early.error());
    const CureOutcome late = solveCure(atRate(sheet, ends.low), fineness);
    if (!late)
        return tl::unexpected(late.error());
    const Temperature hottest = std::max({expected->peak, early->peak, late->peak});
    return CureRange{std::move(*expected), marks(*early), marks(*late), hottest};
}

} // namespace strandbench
