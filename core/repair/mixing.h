// SPDX-License-Identifier: GPL-3.0-or-later
// A batch as it is about to be mixed: of which product, what becomes of it, and what keeps the hardener out.
#pragma once

#include "plan/forecast.h"
#include "plan/planner.h"
#include "repair/repair.h"

namespace strandbench {

/// The batch of the plan that a reference names. The plan must have it.
[[nodiscard]] const Batch& batchOf(const RepairPlan& plan, BatchRef ref);
/// The sheet that the batch was planned with: its lift's own, or the plan's.
[[nodiscard]] const QString& sheetIdOf(const RepairPlan& plan, BatchRef ref);
/// The same with the version that it was planned with.
[[nodiscard]] SheetVersion sheetOf(const RepairPlan& plan, BatchRef ref);
/// The filler class that the batch was planned with.
[[nodiscard]] FillerClass fillerOf(const RepairPlan& plan, BatchRef ref);

/// A planned batch with the product that is in the hand.
struct BatchInHand {
    BatchRef ref;
    Batch batch;                         ///< of another product: the same volume, at that product's density and share
    const ProductSheet* sheet = nullptr; ///< null when the planned sheet is not loaded; then all is as planned
    bool planned = true;                 ///< false: another product of the same class
};

/// The batch with the product of this sheet id. Empty, not loaded, or of another class: the one it was planned with,
/// in the version that it was planned with.
[[nodiscard]] BatchInHand batchInHand(const RepairPlan& plan, BatchRef ref, const QString& product,
                                      const PlanningSet& planning);

/// What a hardener share makes of a batch now: with the newest reading of the repair, of the lot in the hand. Empty
/// where the plan is older than the cure engine, its sheet is not loaded, or the cure has no answer.
[[nodiscard]] std::optional<BatchForecast> forecastOf(const Repair& repair, const BatchInHand& batch, Fraction hardener,
                                                      const PlanningSet& planning, const LotBelief& lot);

/// The lowest of what product, panel and seam may come to. Empty in plans older than the cure engine.
[[nodiscard]] std::optional<Temperature> peakLimitOf(const RepairPlan& plan, const BatchInHand& batch);

/// Why the hardener must not go in now, or empty. A planned batch: too_hot_for_lift (peak, limit), when by the newest
/// reading it comes to the limit that the plan stays under. Another product besides: what the table, its own sheet or
/// the panel has against it (the codes of chooseFiller()), lift_over_product (laid, greatest), product_cure_unknown.
[[nodiscard]] std::optional<Reason> holdOf(const Repair& repair, const BatchInHand& batch,
                                           const std::optional<BatchForecast>& forecast, const PlanningSet& planning);

/// True when to plan again with the newest reading can change this batch: it is not the reading that the plan was
/// made for, an answer may still be corrected, and the batch's lift has not begun.
[[nodiscard]] bool replanHelps(const Repair& repair, BatchRef ref);

/// The act of putting the hardener in: as forecast, or where there is no forecast as planned.
[[nodiscard]] HardenerIn hardenerIn(const BatchInHand& batch, const SheetVersion& planned, Mass hardener,
                                    const std::optional<BatchForecast>& forecast);

} // namespace strandbench
