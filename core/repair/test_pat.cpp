// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/test_pat.h"

#include "learning/at_rate.h"
#include "learning/learning_rules.h"

namespace strandbench {

Mix patMix(const ProductSheet& sheet) { return mixForFiller(smallestBeadMix(sheet), sheet); }

CureAnswer<PatMixed> patMixed(const ProductSheet& sheet, const QString& hardenerLot, const QString& lotOfFiller,
                              Temperature air, const CureEngine& engine, const LotBelief& lot)
{
    const LearningRules rules;
    const Belief batch = ofTheNext(lot.rate, rules.batch);
    const LogRateRange ends = middleOf(batch, rules.shown);
    const Mix mix = patMix(sheet);
    const CureEngine bySheet = engine.with(CureRates{});
    const auto puddle = bySheet.boardCase(sheet, air, mix.hardenerShare, mix.puddleHeight);
    if (!puddle)
        return tl::unexpected(puddle.error());
    PatMixed pat{sheet.id, hardenerLot, lotOfFiller, mix.filler, mix.hardener, air, {}, {}, {}, {}, sheet.hash};
    for (const auto& [time, rate] : {std::pair{&pat.bySheet, LogRate()}, std::pair{&pat.gel, batch.mean},
                                     std::pair{&pat.early, ends.high}, std::pair{&pat.late, ends.low}}) {
        const auto gel = bySheet.solveBoard(atRate(*puddle, rate));
        if (!gel)
            return tl::unexpected(gel.error());
        *time = *gel;
    }
    return pat;
}

} // namespace strandbench
