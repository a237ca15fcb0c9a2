// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fails at one call of SQLite's, whichever it is, or from that call on.
#pragma once

#include "../watched_vfs.h"

namespace strandbench::test {

enum class Trouble {
    IoError, ///< any call may fail
    Full,    ///< what takes room fails: writing, making a file, growing the shared memory
};
enum class Lasts { Once, UntilMended };

/// Stands as SQLite's default while it lives.
class TroubledDisk {
public:
    TroubledDisk();

    /// The calls that may fail are counted anew from 0, and the one with this number does.
    void failAt(int number, Trouble trouble, Lasts lasts);
    void mend() { m_failing = false; }
    /// Whether a call has failed since failAt().
    [[nodiscard]] bool hasFailed() const { return m_failed; }
    /// How many calls have been made to fail, all in all.
    [[nodiscard]] int failures() const { return m_failures; }

private:
    [[nodiscard]] int answer(const CallOfDisk& call);

    bool m_failing = false;
    bool m_failed = false;
    int m_failures = 0;
    int m_number = 0;
    int m_met = 0;
    Trouble m_trouble = Trouble::IoError;
    Lasts m_lasts = Lasts::Once;
    WatchedVfs m_watched;
};

} // namespace strandbench::test
