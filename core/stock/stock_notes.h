// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be told of a lot before it is mixed: at the decision, not at the board.
#pragma once

#include "material/sheet.h"
#include "quantity/reason.h"
#include "stock/ledger.h"

namespace strandbench {

/// What a plan takes of one lot.
struct StockNeed {
    StockLot of;
    Mass amount;                         ///< of everything that is still to be mixed
    const ProductSheet* sheet = nullptr; ///< of the filler; the hardener goes by its filler's
    bool tried = true;                   ///< a pat or a batch of it has gelled at this bench
};

/// What the notes are made with.
struct StockNow {
    Instant at;
    std::optional<Temperature> air; ///< the newest reading
    HeatTransfer faces;             ///< of a tub in still air
};

/// Limits of the trade: tub, hardener and panel at 18 to 25 degrees (common practice, no source).
struct StockLimits {
    Temperature coolest = celsius(18);
    Temperature warmest = celsius(25);
    TemperatureStep even = kelvinStep(2); ///< ours: so near the air counts as evened out
};

struct StockNote {
    StockLot of;
    Reason reason;
    bool operator==(const StockNote&) const = default;
};

/// Notes of one lot, the gravest first; none when nothing is to be told. state: null of a lot of which nothing is kept,
/// of which only stock_untried is told. Codes and arguments:
///   stock_has_ended (why)              stock_overdrawn (by so much)        stock_short (needed, left)
///   stock_past_its_date (ISO date)     stock_open_too_long (ISO date, months)
///   stock_evens_out (time left)        stock_air_unknown ()                stock_probe_off (middle, coolest, warmest)
///   stock_untried ()
[[nodiscard]] std::vector<StockNote> notesOf(const StockState* state, const StockNeed& need, const StockNow& now,
                                             const StockLimits& limits = {});

/// The day after which a lot is not to be used: as printed, else the sheet's months from when it came.
[[nodiscard]] QDate lastDayOf(const StockState& state, const ProductSheet& sheet);
/// The day after which the package that is open is not to be used; empty when none is open.
[[nodiscard]] std::optional<QDate> lastOpenDayOf(const StockState& state, const ProductSheet& sheet);
/// When it has evened out with this air; empty when it was never moved, or was probed since.
[[nodiscard]] std::optional<Duration> evensOutIn(const StockState& state, const ProductSheet& sheet, Temperature air,
                                                 const StockNow& now, const StockLimits& limits = {});

} // namespace strandbench
