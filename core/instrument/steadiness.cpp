// SPDX-License-Identifier: GPL-3.0-or-later
#include "instrument/steadiness.h"

#include <algorithm>

namespace strandbench {

void Steadiness::take(double value, std::optional<bool> steady, Duration now)
{
    const auto apart = [&](const Taken& each) { return std::abs(each.value - value) > m_within || !each.counts; };
    const bool gap = !m_taken.empty() && now - m_taken.back().at > stale();
    if (gap || steady == false || std::any_of(m_taken.cbegin(), m_taken.cend(), apart))
        m_taken.clear();
    m_taken.push_back({value, now, steady != false});
    // The oldest that still spans enough stays; what is older adds nothing.
    while (m_taken.size() > atLeast && now - m_taken[1].at >= span())
        m_taken.pop_front();
}

std::optional<double> Steadiness::newest(Duration now) const
{
    if (m_taken.empty() || now - m_taken.back().at > stale())
        return std::nullopt;
    return m_taken.back().value;
}

std::optional<double> Steadiness::steady(Duration now) const
{
    const bool stands = m_taken.size() >= atLeast && m_taken.back().at - m_taken.front().at >= span();
    return stands && m_taken.back().counts ? newest(now) : std::nullopt;
}

} // namespace strandbench
