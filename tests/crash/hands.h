// SPDX-License-Identifier: GPL-3.0-or-later
// Three technicians at one bench, by the script: they do what is due on repairs of their own, take photos, write notes,
// mix test pats, try what is the supervisor's. Each act carries a mark of its own where its person stands.
#pragma once

#include "told.h"

#include "bench/bench.h"

#include <QEventLoop>

#include <random>

namespace strandbench::test {

/// The machine's clock, whose wall somebody sets now and then.
class SteppedClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override;
    void step(qint64 ms) { m_byMs += ms; }

private:
    SystemClock m_system;
    qint64 m_byMs = 0;
};

class Hands {
public:
    struct Rules {
        QString tag;       ///< of this process: its acts are marked tag.1, tag.2, ...
        bool lies = false; ///< says that an act is written before it is handed to the log
    };
    Hands(Rules rules, std::mt19937& random) : m_rules(std::move(rules)), m_random(random) {}

    /// What stands in the log up to this seq is not told again.
    void knowUpTo(qint64 seq) { m_placed = std::max(m_placed, seq); }
    /// Works so many acts at the bench; returns when all of them were answered. `between` is called before each.
    void work(Bench& bench, SteppedClock& clock, int acts, const std::function<void(int act)>& between);

private:
    void next(std::size_t hand);
    void act(std::size_t hand, const QUuid& subject, const Payload& payload, const std::vector<QByteArray>& kept = {});
    void answered(std::size_t hand, const QString& mark, const QUuid& subject,
                  const std::optional<LogFailure>& failure);
    void tellPlaces();
    /// The open repair of this hand: its own, one that nobody has, or a new one.
    [[nodiscard]] const Repair* inHand(std::size_t hand);
    [[nodiscard]] int below(int end) { return std::uniform_int_distribution(0, end - 1)(m_random); }

    Rules m_rules;
    std::mt19937& m_random;
    Bench* m_bench = nullptr;
    SteppedClock* m_clock = nullptr;
    std::function<void(int)> m_between;
    QEventLoop m_loop;
    std::array<QUuid, 3> m_repairs;
    int m_acts = 0; ///< of this call of work()
    int m_begun = 0;
    int m_waiting = 0;   ///< for an answer of the log
    int m_marks = 0;     ///< given out by this process
    qint64 m_placed = 0; ///< up to here the places in the chain were told
};

} // namespace strandbench::test
