// SPDX-License-Identifier: GPL-3.0-or-later
// Dice that fall alike on every machine: the standard's distributions need not.
#pragma once

#include <QtGlobal>

#include <cstddef>
#include <vector>

namespace strandbench::practice {

/// SplitMix64 (Steele, Lea and Flood, OOPSLA 2014), in whole numbers alone.
class Dice {
public:
    explicit Dice(quint64 seed) : m_state(seed) {}

    [[nodiscard]] quint64 next()
    {
        m_state += 0x9e3779b97f4a7c15ULL;
        quint64 z = m_state;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31);
    }
    /// 0 to count - 1; count from 1 to 2^31. Its bias is less than 2^-32 a value.
    [[nodiscard]] int below(int count)
    {
        return static_cast<int>(((next() >> 32) * static_cast<quint64>(count)) >> 32);
    }
    /// Both ends included.
    [[nodiscard]] int between(int low, int high) { return low + below(high - low + 1); }
    [[nodiscard]] bool percent(int share) { return below(100) < share; }
    template <class T> [[nodiscard]] const T& from(const std::vector<T>& all)
    {
        return all[static_cast<std::size_t>(below(static_cast<int>(all.size())))];
    }

private:
    quint64 m_state;
};

} // namespace strandbench::practice
