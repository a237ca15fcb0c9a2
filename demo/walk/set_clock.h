// SPDX-License-Identifier: GPL-3.0-or-later
// A clock that stands until it is moved: a walk of hours takes seconds.
#pragma once

#include "clock/clock.h"

namespace strandbench {

class SetClock final : public Clock {
public:
    explicit SetClock(Instant from) : m_now(std::move(from)) {}
    [[nodiscard]] Instant now() const override { return m_now; }
    [[nodiscard]] Duration asleep() const override { return m_asleep; }
    void advance(Duration by);
    /// The machine is suspended for a while.
    void sleep(Duration by)
    {
        advance(by);
        m_asleep += by;
    }
    void set(const Instant& at) { m_now = at; }

private:
    Instant m_now;
    Duration m_asleep = seconds(0);
};

/// A moment earlier by `by`, in the same boot.
[[nodiscard]] Instant before(const Instant& at, Duration by);

} // namespace strandbench
