// SPDX-License-Identifier: GPL-3.0-or-later
// How much faster than its sheet a filler cures, as the natural logarithm of a rate multiplier.
#pragma once

#include "quantity/quantity.h"

#include <cmath>
#include <compare>
#include <optional>

namespace strandbench {

/// 0: as the sheet says; ln 2: twice as fast; -ln 2: half as fast.
class LogRate {
public:
    constexpr LogRate() = default;
    [[nodiscard]] static constexpr LogRate ofLogarithm(double value) { return LogRate(value); }
    [[nodiscard]] static LogRate ofMultiplier(double multiplier) { return LogRate(std::log(multiplier)); }
    /// What a mark that came after 'observed' says, where the sheet predicts it after 'predicted': the logarithm of
    /// predicted by observed. Empty unless both are longer than nothing.
    [[nodiscard]] static std::optional<LogRate> between(Duration predicted, Duration observed)
    {
        if (predicted <= seconds(0) || observed <= seconds(0))
            return std::nullopt;
        return LogRate(std::log(predicted / observed));
    }

    [[nodiscard]] constexpr double value() const { return m_value; }
    [[nodiscard]] double multiplier() const { return std::exp(m_value); }
    constexpr auto operator<=>(const LogRate&) const = default;

private:
    constexpr explicit LogRate(double value) : m_value(value) {}
    double m_value = 0.0;
};

} // namespace strandbench
