// SPDX-License-Identifier: GPL-3.0-or-later
// The repairs of a day as a supervisor looks them through: narrowed to some of them, the ones that need eyes first.
#pragma once

#include "review/digest.h"

namespace strandbench {

/// By what repairs are told apart.
enum class NarrowBy { Nothing, Bench, Person, Product, Lot, Substrate };
template <> struct Codes<NarrowBy> {
    static constexpr std::array<std::pair<NarrowBy, const char*>, 6> table{{
        {NarrowBy::Nothing, "nothing"},
        {NarrowBy::Bench, "bench"},         ///< value: its origin
        {NarrowBy::Person, "person"},       ///< who told anything of the repair; empty: nobody is named
        {NarrowBy::Product, "product"},     ///< a sheet's id
        {NarrowBy::Lot, "lot"},             ///< of filler or hardener; empty: one was not told
        {NarrowBy::Substrate, "substrate"}, ///< its code; empty: not answered
    }};
};
struct Narrowing {
    NarrowBy by = NarrowBy::Nothing;
    QString value;
    bool operator==(const Narrowing&) const = default;
};

/// The values that a repair has of that kind, each once. Of nothing there is none.
[[nodiscard]] QStringList valuesOf(const RepairDigest& repair, NarrowBy by);
/// Every value of some repairs and how many have it; the most frequent first, then by the value.
[[nodiscard]] std::vector<std::pair<QString, int>> valuesOf(const std::vector<RepairDigest>& repairs, NarrowBy by);

/// Those that have the value, what needs eyes first before the rest; of equal ones the one taken in first.
[[nodiscard]] std::vector<RepairDigest> eyesFirst(std::vector<RepairDigest> repairs, const Narrowing& narrowing);

/// True of a repair with a deviation of the first weight, and of one that cannot be read.
[[nodiscard]] bool needsEyes(const RepairDigest& repair);

/// A day in figures.
struct DayFigures {
    int repairs = 0;
    int toLookThrough = 0; ///< handed over, neither signed off nor returned
    int signedOff = 0;
    int returned = 0;
    int needEyes = 0; ///< with a deviation of the first weight
    Mass planned;     ///< filler
    Mass mixed;
    Duration hands; ///< laying, sanding, preparing and finishing of those that were handed over
    Duration handsPlanned;
};
[[nodiscard]] DayFigures dayFigures(const std::vector<RepairDigest>& repairs);

} // namespace strandbench
