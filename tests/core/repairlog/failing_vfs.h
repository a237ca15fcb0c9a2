// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fills up, or a program that dies in the midst of a write: SQLite's default file system, which after a
// number of writes lets no more through.
#pragma once

namespace strandbench::test {

enum class Failure {
    None,
    Full,
    Write,
    ReadOnly,
    Sync,
    DieInWrite, ///< half of the write, then SIGKILL
    DieInSync,  ///< SIGKILL instead of the sync
};

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
    /// Writes seen since the last sync of the file that they went to.
    static int unsynced();
};

} // namespace strandbench::test
