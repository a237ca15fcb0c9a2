// SPDX-License-Identifier: GPL-3.0-or-later
// Time that survives sleep and restart. Passed in, never reached for.
#pragma once

#include "quantity/quantity.h"

#include <QString>

namespace strandbench {

/// One moment by two clocks: the wall's and the machine's since boot (CLOCK_BOOTTIME, which runs on in
/// suspend), with the boot that the second one belongs to.
struct Instant {
    qint64 utcMs = 0;
    qint64 boottimeMs = 0;
    QString bootId;
    int utcOffsetSeconds = 0; ///< local time less UTC
    bool operator==(const Instant&) const = default;
};

class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
    /// How long the machine has slept since boot; 0 where nobody knows.
    [[nodiscard]] virtual Duration asleep() const { return seconds(0); }
};

/// The machine's own clocks.
class SystemClock final : public Clock {
public:
    SystemClock();
    /// Both clocks are read as one: what was interrupted between them is read again.
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] Duration asleep() const override;

private:
    QString m_bootId;
};

/// From one moment to a later one: by the boot clock within one boot, by UTC across boots. Never negative.
[[nodiscard]] Duration elapsed(const Instant& from, const Instant& to);

/// The local calendar day of a moment, "YYYY-MM-DD", by the offset it carries.
[[nodiscard]] QString localDay(const Instant& at);

} // namespace strandbench
