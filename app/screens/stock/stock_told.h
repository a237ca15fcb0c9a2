// SPDX-License-Identifier: GPL-3.0-or-later
// What the shelf has to tell: of a lot, of everything on it, and of what a plan takes.
#pragma once

#include "screens/frame/screen.h"
#include "stock/reorder.h"
#include "stock/stock_notes.h"

namespace strandbench {

namespace stocktold {

/// What is to be told of a lot by itself; nothing of one that has ended.
[[nodiscard]] std::vector<StockNote> ofLot(const StockState& state, const Surroundings& around);
/// What is to be told before the rest of a plan is mixed, with the lots in the hand or next on the shelf.
[[nodiscard]] std::vector<StockNote> ofPlan(const Repair& repair, const RepairPlan& plan, const Surroundings& around);
/// Products and their levels for reordering, those that are due first.
[[nodiscard]] std::vector<ReorderLine> reorder(const Surroundings& around);
/// How many lots have something to tell, and products are to be reordered.
[[nodiscard]] int toMind(const Surroundings& around);
/// What stands small on a key that leads to the shelf: "2 to mind", "in order"; empty where nothing was ever booked in.
[[nodiscard]] QString summary(const Surroundings& around);

} // namespace stocktold

/// What the shelf has to tell of a plan: read, then back to the plan.
class StockNotesScreen final : public Screen {
    Q_OBJECT
public:
    StockNotesScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan,
                     QWidget* parent = nullptr);

Q_SIGNALS:
    void shelfWanted();
};

} // namespace strandbench
