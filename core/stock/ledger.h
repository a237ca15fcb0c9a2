// SPDX-License-Identifier: GPL-3.0-or-later
// What is there of each lot: opening plus movements, to the microgram. Made from acts alone. Nothing is clamped: more
// taken off than was there shows as less than nothing.
#pragma once

#include "clock/clock.h"
#include "stock/stock_acts.h"

#include <map>

namespace strandbench {

/// Why an amount changed.
enum class StockMove { Received, Counted, Adjusted, ThrownAway, Mixed, TestPat };

/// One change of an amount.
struct StockMovement {
    StockMove move = StockMove::Received;
    qint64 micrograms = 0; ///< added; below 0: taken off
    Instant at;
    QString person;
    QString note; ///< of a batch its job; of an end or a change its code; else empty
    bool operator==(const StockMovement&) const = default;
};

/// One lot as it stands.
struct StockState {
    StockLot of;
    qint64 micrograms = 0;           ///< left: the sum of its movements; below 0 when more was used than was there
    Mass each;                       ///< of a package, as received last; 0: only ever counted
    int unopened = 0;                ///< packages
    std::optional<Instant> opened;   ///< the package that is open: told, or its first batch; empty: none is
    std::optional<QDate> bestBefore; ///< the earliest that was printed on one
    Instant since;                   ///< received or counted first
    std::optional<std::pair<Temperature, Instant>> moved;  ///< from where, when
    std::optional<std::pair<Temperature, Instant>> probed; ///< its middle, when
    std::optional<StockEnd> ended;                         ///< nothing of it is used any more
    std::vector<StockMovement> movements;                  ///< in the order told

    [[nodiscard]] Mass left() const; ///< may be below 0
    /// What is thought to be in the package that is open: what is left less the unopened ones; at least 0.
    [[nodiscard]] Mass inTheOpenOne() const;
    bool operator==(const StockState&) const = default;
};

class StockLedger {
public:
    /// When, and by whom.
    struct Told {
        Instant at;
        QString person;
        QString note = {};
    };
    void take(const StockReceived& act, const Told& told);
    void take(const StockOpened& act, const Told& told);
    void take(const StockCounted& act, const Told& told);
    void take(const StockAdjusted& act, const Told& told);
    void take(const StockEnded& act, const Told& told);
    void take(const StockMoved& act, const Told& told);
    void take(const StockProbed& act, const Told& told);
    /// A batch or a test pat took so much. Of a lot that was never received or counted nothing is kept.
    void used(const StockLot& lot, Mass amount, StockMove move, const Told& told);

    /// Null of a lot of which nothing is kept.
    [[nodiscard]] const StockState* of(const StockLot& lot) const;
    /// All of them, ended ones too, by product and lot.
    [[nodiscard]] std::vector<const StockState*> all() const;
    /// What may be used of a product: the sum over lots that have not ended, those below 0 counting as nothing.
    [[nodiscard]] Mass usable(const QString& product) const;
    /// Whether anything is kept of a product.
    [[nodiscard]] bool keeps(const QString& product) const;
    /// The lot of a product that is to be used next: of those that have not ended the one that is open, else the one
    /// that came first; of several open ones the one opened first. Where all have ended, the one that ended last. Null
    /// when nothing is kept of it.
    [[nodiscard]] const StockState* nextOf(const QString& product) const;

private:
    StockState& known(const StockLot& lot, const Told& told);
    static void add(StockState& state, StockMove move, qint64 micrograms, const Told& told);
    static void open(StockState& state, const Instant& at);

    std::map<StockLot, StockState> m_lots;
};

/// To the nearest; the ledger's own grid.
[[nodiscard]] qint64 inMicrograms(Mass mass);
[[nodiscard]] Mass fromMicrogramsOfStock(qint64 micrograms);

} // namespace strandbench
