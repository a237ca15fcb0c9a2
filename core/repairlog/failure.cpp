// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/failure.h"

#include <QSqlError>

#include <cerrno>
#include <cstring>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// SQLite's result codes (sqlite.org/rescode.html); the low byte is the primary one.
LogTrouble troubleOf(int code)
{
    constexpr int shmSize = 4874; // SQLITE_IOERR_SHMSIZE: no room to grow the shared index of the WAL
    if (code == shmSize)
        return LogTrouble::DiskFull;
    constexpr int readOnlyRollback = 776; // SQLITE_READONLY_ROLLBACK: cut off while it was made; a writer mends it
    if (code == readOnlyRollback)
        return LogTrouble::CannotOpen;
    switch (code & 0xff) {
    case 5: // SQLITE_BUSY
    case 6:
        return LogTrouble::Locked; // SQLITE_LOCKED
    case 8:
        return LogTrouble::ReadOnly; // SQLITE_READONLY
    case 11:
        return LogTrouble::Damaged; // SQLITE_CORRUPT
    case 13:
        return LogTrouble::DiskFull; // SQLITE_FULL
    case 3:                          // SQLITE_PERM
    case 14:                         // SQLITE_CANTOPEN
    case 23:
        return LogTrouble::CannotOpen; // SQLITE_AUTH
    case 19:
        return LogTrouble::DoesNotFollow; // SQLITE_CONSTRAINT: a CHECK or a guard of the schema
    case 26:
        return LogTrouble::NotADatabase; // SQLITE_NOTADB
    default:
        return LogTrouble::IoError;
    }
}

} // namespace

tl::unexpected<LogFailure> failed(LogTrouble trouble, const QString& detail)
{
    return tl::unexpected(LogFailure{trouble, detail});
}

tl::unexpected<LogFailure> failed(const QSqlError& error)
{
    bool numeric = false;
    const int code = error.nativeErrorCode().toInt(&numeric);
    return failed(numeric ? troubleOf(code) : LogTrouble::IoError,
                  u"%1 (%2)"_s.arg(error.databaseText(), error.nativeErrorCode()));
}

tl::unexpected<LogFailure> failedBySystem(LogTrouble trouble, const QString& what)
{
    const int reason = errno;
    if (reason == ENOSPC || reason == EDQUOT)
        trouble = LogTrouble::DiskFull;
    return failed(trouble, u"%1: %2"_s.arg(what, QString::fromLocal8Bit(std::strerror(reason))));
}

QString inWords(const Fault& fault)
{
    QString words = fault.field;
    if (!fault.value.isEmpty())
        words += u": "_s + fault.value;
    if (!fault.allowed.isEmpty())
        words += u"; "_s + fault.allowed.join(u' ');
    return words;
}

} // namespace strandbench
