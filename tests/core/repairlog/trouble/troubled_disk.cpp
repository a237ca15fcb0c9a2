// SPDX-License-Identifier: GPL-3.0-or-later
#include "troubled_disk.h"

#include <sqlite3.h>
#include <unistd.h>

namespace strandbench::test {
namespace {

/// What SQLite's own file system would answer when the system refuses the call; SQLITE_OK when it ignores that.
int ioError(DiskCall call)
{
    switch (call) {
    case DiskCall::Open:
        return SQLITE_CANTOPEN;
    case DiskCall::Close:
        return SQLITE_IOERR_CLOSE;
    case DiskCall::Read:
        return SQLITE_IOERR_READ;
    case DiskCall::Write:
        return SQLITE_IOERR_WRITE;
    case DiskCall::Truncate:
        return SQLITE_IOERR_TRUNCATE;
    case DiskCall::Sync:
        return SQLITE_IOERR_FSYNC;
    case DiskCall::Size:
        return SQLITE_IOERR_FSTAT;
    case DiskCall::Lock:
        return SQLITE_IOERR_LOCK;
    case DiskCall::Unlock:
        return SQLITE_IOERR_UNLOCK;
    case DiskCall::CheckLock:
        return SQLITE_IOERR_CHECKRESERVEDLOCK;
    case DiskCall::ShmMap:
        return SQLITE_IOERR_SHMMAP;
    case DiskCall::ShmLock:
        return SQLITE_IOERR_SHMLOCK;
    case DiskCall::Delete:
        return SQLITE_IOERR_DELETE;
    case DiskCall::Access:
        return SQLITE_IOERR_ACCESS;
    case DiskCall::FullPath:
        return SQLITE_CANTOPEN_FULLPATH;
    case DiskCall::ShmUnlock:
    case DiskCall::SyncFolder:
        return SQLITE_OK;
    }
    return SQLITE_OK;
}

int full(const CallOfDisk& call)
{
    if (call.call == DiskCall::Write)
        return SQLITE_FULL;
    if (call.call == DiskCall::ShmMap && call.size != 0)
        return SQLITE_IOERR_SHMSIZE;
    if (call.call == DiskCall::Open && (call.flags & SQLITE_OPEN_CREATE) && call.file && ::access(call.file, F_OK) != 0)
        return SQLITE_CANTOPEN;
    return SQLITE_OK;
}

} // namespace

TroubledDisk::TroubledDisk() : m_watched([this](const CallOfDisk& call) { return answer(call); }) {}

void TroubledDisk::failAt(int number, Trouble trouble, Lasts lasts)
{
    m_failing = true;
    m_failed = false;
    m_number = number;
    m_met = 0;
    m_trouble = trouble;
    m_lasts = lasts;
}

int TroubledDisk::answer(const CallOfDisk& call)
{
    if (!m_failing)
        return SQLITE_OK;
    const int code = m_trouble == Trouble::Full ? full(call) : ioError(call.call);
    if (code == SQLITE_OK)
        return SQLITE_OK;
    const int number = m_met++;
    if (m_lasts == Lasts::Once ? number != m_number : number < m_number)
        return SQLITE_OK;
    m_failed = true;
    ++m_failures;
    return code;
}

} // namespace strandbench::test
