// SPDX-License-Identifier: GPL-3.0-or-later
// What the fuzz targets share: how one says that something does not hold, and what every refusal must be.
#pragma once

#include "quantity/fault.h"

#include <QByteArray>

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

/// libFuzzer's entry: one for each target.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace strandbench::fuzz {

inline QByteArray bytesOf(const std::uint8_t* data, std::size_t size)
{
    return {reinterpret_cast<const char*>(data), qsizetype(size)};
}

/// Ends the run as a find, with words for it, when something does not hold.
inline void require(bool holds, const char* what)
{
    if (holds)
        return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

/// A refusal has at least one fault, and none without a field, a value or what is allowed in its place.
inline void requireTold(const Faults& faults)
{
    require(!faults.empty(), "a refusal names a fault");
    for (const Fault& each : faults)
        require(!each.field.isEmpty() || !each.value.isEmpty() || !each.allowed.isEmpty(), "a fault says something");
}

inline void requireWithin(double value, double lowest, double highest, const char* what)
{
    // Going to the unit inside and back may cost the last digits.
    const double slack = 1e-12 * std::max(std::abs(lowest), std::abs(highest));
    require(std::isfinite(value) && value >= lowest - slack && value <= highest + slack, what);
}

} // namespace strandbench::fuzz
