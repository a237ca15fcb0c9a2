// SPDX-License-Identifier: GPL-3.0-or-later
// One repair of the depot while it is told: its script with its own job, people, lots, masses, readings and times.
#pragma once

#include "years/depot.h"
#include "years/scripts.h"

#include <deque>
#include <memory>
#include <optional>

namespace strandbench::years {

/// Where a repair leaves its script.
struct Quirks {
    double hardener = 1; ///< of what is planned
    double edges = 0.8;  ///< of the time to the predicted gel
    double gel = 1;      ///< likewise
    double sands = 1.05; ///< of the time to the predicted sanding
    double hands = 1;    ///< of every other time
    bool nearDewPoint = false;
    bool noLot = false;
    bool noHardenerLot = false;
    bool nameless = false; ///< its first act is told by nobody
    bool helped = false;   ///< a second technician goes on with it
    bool gelTold = true;
    bool noted = false;
};

[[nodiscard]] Quirks quirksOf(Dice& dice);

/// What comes after the script: the supervisor's acts.
struct Closing {
    qint64 atMs = 0;
    QString person;
    Payload payload;
};

struct ToldRepair {
    const Script* script = nullptr;
    std::size_t next = 0;
    QUuid id;
    QString origin;
    QString job;
    QString panel;
    QString person;
    QString helper;
    Quirks quirks;
    std::shared_ptr<ToldRepair> reworkOf;
    std::deque<Closing> closing;

    Repair repair; ///< as folded so far
    qint64 dueMs = 0;
    qint64 lastMs = 0;
    qint64 mixedMs = 0; ///< of the newest 'hardener in'
    qint64 mixedSeq = 0;
    QString lastPerson;

    [[nodiscard]] bool scriptOver() const { return next == script->acts.size(); }
    /// The script's next act as this repair tells it, and its bytes; empty where this repair leaves it out.
    struct Telling {
        Event event;
        QByteArray bytes;
    };
    [[nodiscard]] std::optional<Telling> tell(const Instant& at, Dice& dice) const;
    /// When the script's next act is due.
    [[nodiscard]] qint64 nextDueMs(Dice& dice) const;

private:
    [[nodiscard]] Payload payloadOf(const Act& act, const Instant& at, Dice& dice) const;
};

} // namespace strandbench::years
