// SPDX-License-Identifier: GPL-3.0-or-later
#include "watched_vfs.h"

#include <sqlite3.h>

#include <stdexcept>
#include <utility>

namespace strandbench::test {
namespace {

OnDiskCall onCall;
sqlite3_vfs* real = nullptr;
sqlite3_vfs wrapper{};
using OpenFolder = int (*)(const char*, int*);
OpenFolder realOpenFolder = nullptr;

/// SQLite's file object, then room for the real file's.
struct File {
    sqlite3_file base;
    sqlite3_file* real;
    const char* name;
};

sqlite3_file* of(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real; }
const sqlite3_io_methods& methodsOf(sqlite3_file* file) { return *of(file)->pMethods; }
const char* nameOf(sqlite3_file* file) { return reinterpret_cast<File*>(file)->name; }

/// Tells, and makes the call when it may be made.
template <class Make> int told(const CallOfDisk& call, Make make)
{
    const int code = onCall(call);
    return code == SQLITE_OK ? make() : code;
}

/// Makes the call whatever the answer: what was given back is given back.
template <class Make> int toldAfterwards(const CallOfDisk& call, Make make)
{
    const int code = onCall(call);
    const int made = make();
    return code == SQLITE_OK ? made : code;
}

int closeFile(sqlite3_file* f)
{
    return toldAfterwards({DiskCall::Close, nameOf(f)}, [&] { return methodsOf(f).xClose(of(f)); });
}

int readFrom(sqlite3_file* f, void* to, int size, sqlite3_int64 at)
{
    return told({DiskCall::Read, nameOf(f), nullptr, size, at},
                [&] { return methodsOf(f).xRead(of(f), to, size, at); });
}

int writeTo(sqlite3_file* f, const void* bytes, int size, sqlite3_int64 at)
{
    return told({DiskCall::Write, nameOf(f), bytes, size, at},
                [&] { return methodsOf(f).xWrite(of(f), bytes, size, at); });
}

int truncate(sqlite3_file* f, sqlite3_int64 size)
{
    return told({DiskCall::Truncate, nameOf(f), nullptr, 0, size}, [&] { return methodsOf(f).xTruncate(of(f), size); });
}

int sync(sqlite3_file* f, int flags)
{
    return told({DiskCall::Sync, nameOf(f), nullptr, 0, 0, flags}, [&] { return methodsOf(f).xSync(of(f), flags); });
}

int fileSize(sqlite3_file* f, sqlite3_int64* size)
{
    return told({DiskCall::Size, nameOf(f)}, [&] { return methodsOf(f).xFileSize(of(f), size); });
}

int lock(sqlite3_file* f, int level)
{
    return told({DiskCall::Lock, nameOf(f)}, [&] { return methodsOf(f).xLock(of(f), level); });
}

int unlock(sqlite3_file* f, int level)
{
    return toldAfterwards({DiskCall::Unlock, nameOf(f)}, [&] { return methodsOf(f).xUnlock(of(f), level); });
}

int checkLock(sqlite3_file* f, int* held)
{
    return told({DiskCall::CheckLock, nameOf(f)}, [&] { return methodsOf(f).xCheckReservedLock(of(f), held); });
}

int shmMap(sqlite3_file* f, int page, int size, int extend, void volatile** at)
{
    return told({DiskCall::ShmMap, nameOf(f), nullptr, extend},
                [&] { return methodsOf(f).xShmMap(of(f), page, size, extend, at); });
}

int shmLock(sqlite3_file* f, int offset, int count, int flags)
{
    const CallOfDisk call{DiskCall::ShmLock, nameOf(f), nullptr, 0, 0, flags};
    const auto make = [&] { return methodsOf(f).xShmLock(of(f), offset, count, flags); };
    return flags & SQLITE_SHM_UNLOCK ? toldAfterwards(call, make) : told(call, make);
}

int shmUnmap(sqlite3_file* f, int remove)
{
    return toldAfterwards({DiskCall::ShmUnlock, nameOf(f)}, [&] { return methodsOf(f).xShmUnmap(of(f), remove); });
}

/// Version 2: with shared memory, without mapping.
const sqlite3_io_methods methods{
    2,
    closeFile,
    readFrom,
    writeTo,
    truncate,
    sync,
    fileSize,
    lock,
    unlock,
    checkLock,
    [](sqlite3_file* f, int what, void* with) { return methodsOf(f).xFileControl(of(f), what, with); },
    [](sqlite3_file* f) { return methodsOf(f).xSectorSize(of(f)); },
    [](sqlite3_file* f) { return methodsOf(f).xDeviceCharacteristics(of(f)); },
    shmMap,
    shmLock,
    [](sqlite3_file* f) { methodsOf(f).xShmBarrier(of(f)); },
    shmUnmap,
    nullptr,
    nullptr,
};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* opened)
{
    auto* mine = reinterpret_cast<File*>(file);
    mine->real = reinterpret_cast<sqlite3_file*>(mine + 1);
    mine->name = name;
    mine->base.pMethods = nullptr;
    const int code = told({DiskCall::Open, name, nullptr, 0, 0, flags},
                          [&] { return real->xOpen(real, name, mine->real, flags, opened); });
    if (code == SQLITE_OK)
        mine->base.pMethods = &methods;
    return code;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncFolder)
{
    return told({DiskCall::Delete, name}, [&] { return real->xDelete(real, name, syncFolder); });
}

int accessFile(sqlite3_vfs*, const char* name, int flags, int* result)
{
    return told({DiskCall::Access, name, nullptr, 0, 0, flags},
                [&] { return real->xAccess(real, name, flags, result); });
}

int fullPath(sqlite3_vfs*, const char* name, int size, char* to)
{
    return told({DiskCall::FullPath, name}, [&] { return real->xFullPathname(real, name, size, to); });
}

/// SQLite opens a folder only to sync it.
int openFolder(const char* inside, int* descriptor)
{
    onCall({DiskCall::SyncFolder, inside});
    return realOpenFolder(inside, descriptor);
}

} // namespace

WatchedVfs::WatchedVfs(OnDiskCall look)
{
    onCall = std::move(look);
    sqlite3_initialize();
    real = sqlite3_vfs_find(nullptr);
    wrapper = *real;
    wrapper.zName = "watched";
    wrapper.szOsFile = int(sizeof(File)) + real->szOsFile;
    wrapper.xOpen = openFile;
    wrapper.xDelete = deleteFile;
    wrapper.xAccess = accessFile;
    wrapper.xFullPathname = fullPath;
    wrapper.pNext = nullptr;
    realOpenFolder = reinterpret_cast<OpenFolder>(real->xGetSystemCall(real, "openDirectory"));
    if (!realOpenFolder ||
        real->xSetSystemCall(real, "openDirectory", reinterpret_cast<sqlite3_syscall_ptr>(openFolder)) != SQLITE_OK ||
        sqlite3_vfs_register(&wrapper, 1) != SQLITE_OK)
        throw std::runtime_error("the file system is not registered");
}

WatchedVfs::~WatchedVfs()
{
    sqlite3_vfs_unregister(&wrapper);
    sqlite3_vfs_register(real, 1);
    real->xSetSystemCall(real, "openDirectory", nullptr);
    onCall = nullptr;
}

} // namespace strandbench::test
