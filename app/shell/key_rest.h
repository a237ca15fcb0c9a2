// SPDX-License-Identifier: GPL-3.0-or-later
// The half second after a press in which a foot switch may still bounce.
#pragma once

#include "clock/clock.h"

#include <optional>

class QKeyEvent;

namespace strandbench {

class KeyRest {
public:
    /// True for a press that is meant: not one of a key that is held down, and none within half a second of the press
    /// before, which then begins to count anew.
    [[nodiscard]] bool passes(const QKeyEvent& press, const Instant& now);
    /// A press was taken elsewhere: its bounces are not meant.
    void begin(const Instant& now) { m_last = now; }
    [[nodiscard]] bool resting(const Instant& now) const;

private:
    std::optional<Instant> m_last;
};

} // namespace strandbench
