// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's PIN: kept as a memory-hard hash in a file of its own, and asked for at a documented rate that
// outlives every restart.
#pragma once

#include "clock/clock.h"
#include "quantity/fault.h"
#include "roles/supervisor.h"

#include <tl/expected.hpp>

namespace strandbench {

struct PinState;

/// What hashing a PIN costs: Argon2id as libsodium does it.
struct PinCost {
    quint64 passes = 3;
    std::size_t memoryBytes = std::size_t{64} * 1024 * 1024;
};

/// How many digits a PIN has.
inline constexpr int pinShortest = 6;
inline constexpr int pinLongest = 12;

/// The rate: `freeTries` wrong PINs one after another cost nothing; after each further one the next is not looked at
/// before a wait has passed, which doubles from `firstWait` to `longestWait`. The right PIN begins anew.
struct PinRate {
    int freeTries = 3;
    Duration firstWait = seconds(30);
    Duration longestWait = seconds(900);
};
/// The wait that stands after so many wrong PINs.
[[nodiscard]] Duration waitAfter(int wrong, const PinRate& rate = {});

/// Why the door stayed shut.
struct PinRefused {
    ActRefusal why = ActRefusal::WrongPin;
    Duration wait; ///< until the next may be tried; 0 when at once
    bool operator==(const PinRefused&) const = default;
};

/// The file of a bench, beside its log.
[[nodiscard]] QString pinPathOf(const QString& log);

class PinDoor {
public:
    /// path: the file; it need not be there. The clock must outlive the door.
    PinDoor(QString path, const Clock& clock, PinCost cost = {}, PinRate rate = {});

    [[nodiscard]] bool isSet() const;
    /// What is left of the wait; 0 when a PIN may be tried. Within one boot it runs by the boot clock; after a restart
    /// of the machine it begins anew, since the clock of the wall can be set.
    [[nodiscard]] Duration waitLeft() const;
    /// Tries a PIN. It is counted as wrong, on the disk, before it is looked at. Takes some tenths of a second.
    [[nodiscard]] tl::expected<void, PinRefused> open(const QString& pin);
    /// Sets the PIN, or says why not: the field is "pin", the value is never repeated. OutOfRange: not of so many
    /// digits; NotOneOf: too easy to guess; NotFound: its file could not be written. Whoever calls this has asked for
    /// the old one, or stands at the machine.
    [[nodiscard]] Faults set(const QString& pin);

private:
    /// Counts a try as wrong, on the disk, alone at the file; what was read, with it counted.
    [[nodiscard]] tl::expected<PinState, PinRefused> count() const;
    /// Takes the count away: the PIN of this hash was right.
    [[nodiscard]] tl::expected<void, PinRefused> beginAnew(const QByteArray& hash) const;

    QString m_path;
    const Clock& m_clock;
    PinCost m_cost;
    PinRate m_rate;
};

} // namespace strandbench
