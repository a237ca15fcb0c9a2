// SPDX-License-Identifier: GPL-3.0-or-later
// A clock that a test sets.
#pragma once

#include "clock/clock.h"

namespace strandbench::test {

class SetClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return at; }
    void pass(double seconds)
    {
        const auto ms = static_cast<qint64>(seconds * 1e3 + 0.5);
        at.utcMs += ms;
        at.boottimeMs += ms;
    }
    /// The machine is started again: a new boot, whose clock begins.
    void reboot(const QString& bootId)
    {
        at.bootId = bootId;
        at.boottimeMs = 0;
    }
    Instant at{1'772'434'800'000, 3'600'000, QStringLiteral("boot-0"), 0};
};

} // namespace strandbench::test
