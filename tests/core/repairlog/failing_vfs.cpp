// SPDX-License-Identifier: GPL-3.0-or-later
#include "failing_vfs.h"

#include <sqlite3.h>

#include <csignal>
#include <map>
#include <stdexcept>

namespace strandbench::test {
namespace {

struct State {
    Failure failure = Failure::None;
    int allowed = 0;
    int writes = 0;
    int syncs = 0;
    std::map<sqlite3_file*, int> unsynced;
};
State state;
sqlite3_vfs* real = nullptr;
sqlite3_vfs wrapper{};

/// SQLite's file object, then room for the real file's.
struct File {
    sqlite3_file base;
    sqlite3_file* real;
};

sqlite3_file* of(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real; }

bool fails(int count) { return count > state.allowed; }

int writeTo(sqlite3_file* file, const void* bytes, int size, sqlite3_int64 at)
{
    ++state.writes;
    if (state.failure == Failure::Full && fails(state.writes))
        return SQLITE_FULL;
    if (state.failure == Failure::Write && fails(state.writes))
        return SQLITE_IOERR_WRITE;
    if (state.failure == Failure::ReadOnly && fails(state.writes))
        return SQLITE_READONLY;
    if (state.failure == Failure::DieInWrite && fails(state.writes)) {
        of(file)->pMethods->xWrite(of(file), bytes, size / 2, at);
        std::raise(SIGKILL);
    }
    ++state.unsynced[file];
    return of(file)->pMethods->xWrite(of(file), bytes, size, at);
}

int sync(sqlite3_file* file, int flags)
{
    ++state.syncs;
    if (state.failure == Failure::Sync && fails(state.syncs))
        return SQLITE_IOERR_FSYNC;
    if (state.failure == Failure::DieInSync && fails(state.syncs))
        std::raise(SIGKILL);
    state.unsynced.erase(file);
    return of(file)->pMethods->xSync(of(file), flags);
}

/// Everything but writing and syncing goes straight through. Version 2: with shared memory, without mapping.
const sqlite3_io_methods methods{
    2,
    [](sqlite3_file* f) {
        state.unsynced.erase(f);
        return of(f)->pMethods->xClose(of(f));
    },
    [](sqlite3_file* f, void* to, int size, sqlite3_int64 at) { return of(f)->pMethods->xRead(of(f), to, size, at); },
    writeTo,
    [](sqlite3_file* f, sqlite3_int64 size) { return of(f)->pMethods->xTruncate(of(f), size); },
    sync,
    [](sqlite3_file* f, sqlite3_int64* size) { return of(f)->pMethods->xFileSize(of(f), size); },
    [](sqlite3_file* f, int level) { return of(f)->pMethods->xLock(of(f), level); },
    [](sqlite3_file* f, int level) { return of(f)->pMethods->xUnlock(of(f), level); },
    [](sqlite3_file* f, int* held) { return of(f)->pMethods->xCheckReservedLock(of(f), held); },
    [](sqlite3_file* f, int what, void* with) { return of(f)->pMethods->xFileControl(of(f), what, with); },
    [](sqlite3_file* f) { return of(f)->pMethods->xSectorSize(of(f)); },
    [](sqlite3_file* f) { return of(f)->pMethods->xDeviceCharacteristics(of(f)); },
    [](sqlite3_file* f, int page, int size, int extend, void volatile** at) {
        return of(f)->pMethods->xShmMap(of(f), page, size, extend, at);
    },
    [](sqlite3_file* f, int offset, int count, int flags) {
        return of(f)->pMethods->xShmLock(of(f), offset, count, flags);
    },
    [](sqlite3_file* f) { of(f)->pMethods->xShmBarrier(of(f)); },
    [](sqlite3_file* f, int remove) { return of(f)->pMethods->xShmUnmap(of(f), remove); },
    nullptr,
    nullptr,
};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* opened)
{
    auto* mine = reinterpret_cast<File*>(file);
    mine->real = reinterpret_cast<sqlite3_file*>(mine + 1);
    mine->base.pMethods = nullptr;
    const int code = real->xOpen(real, name, mine->real, flags, opened);
    if (code == SQLITE_OK)
        mine->base.pMethods = &methods;
    return code;
}

} // namespace

FailingVfs::FailingVfs()
{
    sqlite3_initialize();
    real = sqlite3_vfs_find(nullptr);
    wrapper = *real;
    wrapper.zName = "failing";
    wrapper.szOsFile = int(sizeof(File)) + real->szOsFile;
    wrapper.xOpen = openFile;
    wrapper.pNext = nullptr;
    work();
    if (sqlite3_vfs_register(&wrapper, 1) != SQLITE_OK)
        throw std::runtime_error("the file system is not registered");
}

FailingVfs::~FailingVfs()
{
    sqlite3_vfs_unregister(&wrapper);
    sqlite3_vfs_register(real, 1);
}

void FailingVfs::failAfter(int allowed, Failure failure) { state = {failure, allowed, 0, 0, {}}; }

void FailingVfs::work() { state = {}; }

int FailingVfs::writes() { return state.writes; }

int FailingVfs::syncs() { return state.syncs; }

int FailingVfs::unsynced()
{
    int all = 0;
    for (const auto& [file, writes] : state.unsynced)
        all += writes;
    return all;
}

} // namespace strandbench::test
