// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fills up: SQLite's default file system, with writes that fail after a number of them.
#pragma once

namespace strandbench::test {

enum class Failure { None, Full, Write, Sync };

/// Stands as SQLite's default while it lives, so that connections opened meanwhile go through it.
class FailingVfs {
public:
    FailingVfs();
    ~FailingVfs();
    FailingVfs(const FailingVfs&) = delete;
    FailingVfs& operator=(const FailingVfs&) = delete;

    /// From now on `allowed` writes (or syncs) go through, and all that follow fail.
    static void failAfter(int allowed, Failure failure);
    static void work();
    /// Writes and syncs seen since the last call of failAfter() or work().
    static int writes();
    static int syncs();
};

} // namespace strandbench::test
