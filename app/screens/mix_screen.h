// SPDX-License-Identifier: GPL-3.0-or-later
// Puddle and bead at true size, or weighed; 'Hardener in' starts the clock.
#pragma once

#include "plan/forecast.h"
#include "screens/screen.h"
#include "screens/station_screens.h"

namespace strandbench {

class MixScreen final : public Screen {
    Q_OBJECT
public:
    MixScreen(const Surroundings& around, const Repair& repair, BatchRef batch, const Ways& ways,
              QWidget* parent = nullptr);

private:
    void buildCards(const Batch& batch, const ProductSheet* sheet);
    [[nodiscard]] QWidget* puddleCard(const Batch& batch);
    [[nodiscard]] QWidget* figuresCard(const Batch& batch, const ProductSheet* sheet);
    [[nodiscard]] QWidget* beadKey();

    Ways m_ways;                             ///< copied: the window makes them anew for every screen
    std::optional<BatchForecast> m_forecast; ///< as planned, with the newest reading
    QString m_quarterOff;                    ///< what a quarter too little or too much does
};

/// What a hardener share makes of a batch now: with the newest reading of the repair. Empty where the plan is older
/// than the cure engine, its sheet is not loaded, or the cure has no answer.
[[nodiscard]] std::optional<BatchForecast> forecastOf(const Repair& repair, BatchRef ref, Fraction hardener,
                                                      const PlanningSet& planning);
/// The act of putting the hardener in.
[[nodiscard]] HardenerIn hardenerIn(const Repair& repair, BatchRef ref, Mass hardener,
                                    const std::optional<BatchForecast>& forecast);

/// The batch of the plan that a reference names. The plan must have it.
[[nodiscard]] const Batch& batchOf(const RepairPlan& plan, BatchRef ref);

/// The sheet that the batch is mixed from.
[[nodiscard]] const QString& sheetIdOf(const RepairPlan& plan, BatchRef ref);

/// "batch 1 of 2 · front face · mixed strand"
[[nodiscard]] QString batchContext(const Repair& repair, BatchRef ref, const Words& words);

} // namespace strandbench
