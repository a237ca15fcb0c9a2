// SPDX-License-Identifier: GPL-3.0-or-later
// One lot on the shelf: what is left, what is to be told of it, and what can be done with it.
#pragma once

#include "screens/frame/paged_rows.h"
#include "stock/ledger.h"

namespace strandbench {

/// What a tap on a lot's page begins.
enum class StockWish { Open, Count, Change, End, Moved, Probe, Movements, Pat, MorePackages };

class StockLotScreen final : public Screen {
    Q_OBJECT
public:
    /// The lot must be known on the shelf.
    StockLotScreen(const Surroundings& around, const StockLot& lot, QWidget* parent = nullptr);

Q_SIGNALS:
    void wanted(strandbench::StockWish wish);

private:
    [[nodiscard]] QWidget* facts(const StockState& state);
    [[nodiscard]] QWidget* keys(const StockState& state);

    StockLot m_lot;
};

/// Everything that changed a lot's amount, the newest first, each with what was left after it.
class StockMovesScreen final : public Screen {
    Q_OBJECT
public:
    StockMovesScreen(const Surroundings& around, const StockLot& lot, QWidget* parent = nullptr);

Q_SIGNALS:
    void traceWanted(); ///< every repair that took of it
};

} // namespace strandbench
