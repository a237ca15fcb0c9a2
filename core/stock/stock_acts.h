// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the stock of filler and hardener, as values: one a kind of event.
#pragma once

#include "quantity/codes.h"
#include "quantity/quantity.h"

#include <QDate>
#include <QString>

#include <optional>
#include <tuple>
#include <vector>

namespace strandbench {

/// What the hardener stands under in the place of a sheet's id: one hardener goes with every filler of the shop.
inline const QString hardenerProduct = QStringLiteral("hardener");

/// One lot of one product on the shelf of a bench; its tubs or tubes count together.
struct StockLot {
    QString product; ///< a sheet's id, or hardenerProduct
    QString lot;     ///< as printed on it, never empty
    bool operator==(const StockLot&) const = default;
    bool operator<(const StockLot& other) const { return std::tie(product, lot) < std::tie(other.product, other.lot); }
};

/// Why a tub or a tube ends. A skin, separation that kneading does not mend and hard hardener end it whatever its date.
enum class StockEnd { UsedUp, Skin, Separated, HardHardener, PastItsDate, OpenTooLong, Spoilt };
template <> struct Codes<StockEnd> {
    static constexpr std::array<std::pair<StockEnd, const char*>, 7> table{{
        {StockEnd::UsedUp, "used_up"},
        {StockEnd::Skin, "skin"},
        {StockEnd::Separated, "separated"},
        {StockEnd::HardHardener, "hard_hardener"},
        {StockEnd::PastItsDate, "past_its_date"},
        {StockEnd::OpenTooLong, "open_too_long"},
        {StockEnd::Spoilt, "spoilt"},
    }};
};

/// Why an amount is put right without a count.
enum class StockChange { Spilled, ToAnotherBench, FromAnotherBench, KeyedInWrong };
template <> struct Codes<StockChange> {
    static constexpr std::array<std::pair<StockChange, const char*>, 4> table{{
        {StockChange::Spilled, "spilled"},
        {StockChange::ToAnotherBench, "to_another_bench"},
        {StockChange::FromAnotherBench, "from_another_bench"},
        {StockChange::KeyedInWrong, "keyed_in_wrong"},
    }};
};

/// Packages of a lot came in, unopened.
struct StockReceived {
    StockLot of;
    int packages = 1;                ///< 1 to 1000
    Mass each;                       ///< of one package, above 0 and at most 100 kg
    std::optional<QDate> bestBefore; ///< as printed; the sheet's months count where none is
    bool operator==(const StockReceived&) const = default;
}; // stock_received
/// The next package of a lot is open now.
struct StockOpened {
    StockLot of;
    bool operator==(const StockOpened&) const = default;
}; // stock_opened
/// Stock-take: so much of the lot is there, whatever was thought.
struct StockCounted {
    StockLot of;
    Mass there;
    bool operator==(const StockCounted&) const = default;
}; // stock_counted
/// So much more, or less, than was thought.
struct StockAdjusted {
    StockLot of;
    Mass by;           ///< above 0
    bool less = false; ///< taken off, not added
    StockChange reason = StockChange::Spilled;
    bool operator==(const StockAdjusted&) const = default;
}; // stock_adjusted
/// The package that is open ends; what was left in it is thrown away. Where none is unopened, the lot ends with it.
struct StockEnded {
    StockLot of;
    StockEnd reason = StockEnd::UsedUp;
    Mass thrownAway;
    bool operator==(const StockEnded&) const = default;
}; // stock_ended
/// It came out of a colder or a hotter place, and evens out from now on.
struct StockMoved {
    StockLot of;
    Temperature from;
    bool operator==(const StockMoved&) const = default;
}; // stock_moved
/// A probe in the middle of it read so much.
struct StockProbed {
    StockLot of;
    Temperature middle;
    bool operator==(const StockProbed&) const = default;
}; // stock_probed

} // namespace strandbench
