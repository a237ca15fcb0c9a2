// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite's default file system with somebody looking on, who is told of every call and may let it fail.
#pragma once

#include <functional>

namespace strandbench::test {

enum class DiskCall {
    Open,
    Close,
    Read,
    Write,
    Truncate,
    Sync,
    Size,
    Lock,
    Unlock,
    CheckLock,
    ShmMap,
    ShmLock,
    ShmUnlock,
    Delete,
    Access,
    FullPath,
    SyncFolder, ///< told only: the folder is about to be synced
};

struct CallOfDisk {
    DiskCall call = DiskCall::Open;
    const char* file = nullptr; ///< its full path; nullptr for a file that SQLite deletes by itself
    const void* bytes = nullptr;
    int size = 0; ///< of a write or a read; of ShmMap: not 0 when it may grow the file
    long long at = 0;
    int flags = 0;
};

/// Told before the call is made. Anything but SQLITE_OK stands for the answer of the disk: the call is not made, except
/// for those that give something back (Close, Unlock, ShmUnlock, and ShmLock when it unlocks): they are made, too.
using OnDiskCall = std::function<int(const CallOfDisk&)>;

/// Stands as SQLite's default while it lives, so that connections opened meanwhile go through it. One at a time.
class WatchedVfs {
public:
    explicit WatchedVfs(OnDiskCall onCall);
    ~WatchedVfs();
    WatchedVfs(const WatchedVfs&) = delete;
    WatchedVfs& operator=(const WatchedVfs&) = delete;
};

} // namespace strandbench::test
