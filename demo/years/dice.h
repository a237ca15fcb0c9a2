// SPDX-License-Identifier: GPL-3.0-or-later
// Chance that falls the same way everywhere: the standard lays down what std::mt19937_64 gives (C++20 [rand.predef]),
// but not what its distributions make of it.
#pragma once

#include <QUuid>

#include <random>

namespace strandbench::years {

class Dice {
public:
    explicit Dice(quint64 seed) : m_engine(seed) {}

    /// 0 to n - 1; n above 0. Its bias, of 1 in 2^64 / n, does not matter here.
    [[nodiscard]] quint64 below(quint64 n) { return m_engine() % n; }
    /// Both ends included.
    [[nodiscard]] qint64 from(qint64 least, qint64 most) { return least + qint64(below(quint64(most - least + 1))); }
    [[nodiscard]] double between(double least, double most)
    {
        constexpr double steps = 9007199254740992.0; // 2^53: what a double holds
        return least + (most - least) * (double(m_engine() >> 11) / steps);
    }
    [[nodiscard]] bool chance(double share) { return between(0, 1) < share; }
    template <class List> [[nodiscard]] const auto& any(const List& list)
    {
        return list.begin()[std::ptrdiff_t(below(quint64(list.size())))];
    }
    /// A random uuid as RFC 4122 has them (version 4).
    [[nodiscard]] QUuid uuid()
    {
        const quint64 high = (m_engine() & ~0xf000ULL) | 0x4000ULL;
        const quint64 low = (m_engine() >> 2) | (1ULL << 63);
        const auto byte = [low](int i) { return uchar(low >> (56 - 8 * i)); };
        return {uint(high >> 32), ushort(high >> 16),
                ushort(high),     byte(0),
                byte(1),          byte(2),
                byte(3),          byte(4),
                byte(5),          byte(6),
                byte(7)};
    }

private:
    std::mt19937_64 m_engine;
};

} // namespace strandbench::years
