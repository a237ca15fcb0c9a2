// SPDX-License-Identifier: GPL-3.0-or-later
// What is kept of a PIN: its hash, and how often a wrong one was given. Inside core/roles only.
#pragma once

#include "clock/clock.h"

#include <QByteArray>

#include <chrono>

namespace strandbench {

/// Counting stops here; the wait stopped growing long before.
inline constexpr int mostWrong = 1'000'000;

struct PinState {
    QByteArray hash;
    int wrong = 0;     ///< wrong ones, one after another, up to mostWrong
    Instant lastWrong; ///< boot and boot clock of the last
    bool operator==(const PinState&) const = default;
};

/// What a file holds. A file that is there and does not read is no missing one: the door stays shut.
struct ReadPin {
    enum class Is { Missing, Unreadable, Read } is = Is::Missing;
    PinState state;
};
[[nodiscard]] ReadPin readPinFile(const QString& path);

/// Writes it whole or not at all, for its owner alone to read, and on the disk before it comes back; false when the
/// disk refuses.
[[nodiscard]] bool writePinFile(const QString& path, const PinState& state);

/// Held while a count is read and written, so that of two programs, or two threads, none counts the other's try as its
/// own. It is the kernel's and goes with its program, however that ends; its file, beside the PIN's, stays.
class PinLock {
public:
    /// Waits for whoever has it, but not for ever: a try holds it for two writes to the disk.
    explicit PinLock(const QString& path, std::chrono::milliseconds atMost = std::chrono::seconds(5));
    ~PinLock();
    PinLock(const PinLock&) = delete;
    PinLock& operator=(const PinLock&) = delete;
    [[nodiscard]] bool isHeld() const { return m_file >= 0; }

private:
    int m_file = -1;
};

} // namespace strandbench
