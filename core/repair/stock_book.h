// SPDX-License-Identifier: GPL-3.0-or-later
// The stock of a bench as its events tell it: acts of stock, and what batches and test pats took.
#pragma once

#include "repair/event.h"
#include "stock/stock_notes.h"

#include <map>
#include <set>

namespace strandbench {

/// The subject of a lot's acts of stock, in the place of a repair's id: a name-based UUID, the same on every bench.
[[nodiscard]] QUuid stockSubject(const StockLot& lot);
/// Of an act of stock; null of all others.
[[nodiscard]] const StockLot* stockLotOf(const Payload& payload);

class StockBook {
public:
    /// Takes in one more event; most are none of its business. In the order in which they were written.
    void add(const Event& event);

    [[nodiscard]] const StockLedger& ledger() const { return m_ledger; }
    /// Whether a batch or a pat of this lot has gelled at this bench.
    [[nodiscard]] bool tried(const StockLot& lot) const { return m_tried.contains(lot); }

private:
    void mixed(const StockLot& filler, Mass fillerMass, const StockLot& hardener, Mass hardenerMass, StockMove move,
               const StockLedger::Told& told);

    using Lots = std::pair<StockLot, StockLot>;
    StockLedger m_ledger;
    std::set<StockLot> m_tried;
    std::map<QUuid, QString> m_jobs;
    std::map<std::pair<QUuid, BatchRef>, Lots> m_batches; ///< lots of a batch that has not gelled yet
    std::map<QUuid, Lots> m_pats;                         ///< likewise, by the pat's subject
};

/// Why an act of stock cannot follow on those of the same lot before it; empty when it can.
[[nodiscard]] std::optional<Fault> followsOfStock(const std::vector<Event>& before, const Event& event);

/// From when on batches and pats must be known for the amounts of the lots that have not ended: the local day of their
/// earliest act, "YYYY-MM-DD"; empty when there is none. Such are the acts of stock of one bench, in their order.
/// Of a lot that has ended, what is kept may lack older batches.
[[nodiscard]] QString stockFromDay(const std::vector<Event>& actsOfStock);

} // namespace strandbench
