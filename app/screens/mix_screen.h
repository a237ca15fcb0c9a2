// SPDX-License-Identifier: GPL-3.0-or-later
// Puddle and bead at true size, or weighed; 'Hardener in' starts the clock.
#pragma once

#include "screens/screen.h"

namespace strandbench {

class MixScreen final : public Screen {
    Q_OBJECT
public:
    MixScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent = nullptr);

private:
    void buildCards(const Batch& batch, const ProductSheet* sheet);
    [[nodiscard]] QWidget* puddleCard(const Batch& batch);
    [[nodiscard]] QWidget* figuresCard(const Batch& batch, const ProductSheet* sheet);
};

/// The batch of the plan that a reference names. The plan must have it.
[[nodiscard]] const Batch& batchOf(const RepairPlan& plan, BatchRef ref);

/// "batch 1 of 2 · front face · mixed strand"
[[nodiscard]] QString batchContext(const Repair& repair, BatchRef ref, const Words& words);

} // namespace strandbench
