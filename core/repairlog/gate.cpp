// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/gate.h"

#include "repairlog/checks.h"
#include "repairlog/damage_mark.h"
#include "repairlog/failure.h"
#include "repairlog/probe.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int newestEvents = 200;

/// What makes a log last: every commit is on the disk before it is acknowledged.
Logged<void> makeDurable(const SqlConnection& connection)
{
    return connection.set(u"synchronous"_s, u"FULL"_s, u"2"_s);
}

/// The tables come before the WAL, in one transaction of the rollback journal, so that a log that was cut
/// off while it was made is either nothing or whole, and says whose it is in its first page.
Logged<void> makeLog(const SqlConnection& connection)
{
    return makeDurable(connection).and_then([&] { return migrate(connection, migrations()); }).and_then([&] {
        return connection.set(u"journal_mode"_s, u"WAL"_s, u"wal"_s);
    });
}

/// The newest events of this bench, each against its hash and the one before it.
Logged<void> checkNewest(const SqlConnection& connection)
{
    const auto own = metaValue(connection, u"origin"_s);
    if (!own)
        return tl::unexpected(own.error());
    std::optional<EventRecord> next; // newest first: the one that came after
    return connection.each(
        u"SELECT %1 FROM event WHERE origin = ? ORDER BY seq DESC LIMIT %2"_s.arg(recordColumns()).arg(newestEvents),
        {*own}, [&](const Row& row) -> Logged<void> {
            const EventRecord record = readRecord(row);
            const bool follows = !next || (next->seq == record.seq + 1 && next->previousHash == record.hash);
            if (!follows || chainHash(record) != record.hash)
                return failed(LogTrouble::Damaged, u"origin %1, seq %2"_s.arg(record.origin).arg(record.seq));
            next = record;
            return {};
        });
}

qint64 sizeOf(const QString& path) { return QFileInfo(path).size() + QFileInfo(path + u"-wal"_s).size(); }

/// A log that was found damaged once is verified whole before it is written again.
Logged<void> clearUp(const QString& path)
{
    return verifiedLog(path).map([&](const VerifyReport&) { clearDamageMark(path); });
}

Logged<void> check(const Probe& found)
{
    if (const QString earlier = restoreCutOff(found.path); !earlier.isEmpty())
        return failed(LogTrouble::Damaged, u"a restore was cut off; the log before it: %1"_s.arg(earlier));
    if (isMarkedDamaged(found.path))
        return clearUp(found.path);
    const auto connection = openToRead(found);
    if (!connection)
        return tl::unexpected(connection.error());
    if (sizeOf(found.path) <= wholeCheckBytes) {
        const auto said = checkIntegrity(**connection);
        if (!said)
            return tl::unexpected(said.error());
        if (*said)
            return failed(LogTrouble::Damaged, (*said)->where);
    }
    return checkNewest(**connection);
}

Logged<Probe> soundAt(const QString& path)
{
    const auto found = probe(path);
    if (!found || found->found != Found::Log || found->cutOff)
        return found;
    if (auto sound = check(*found); !sound)
        return tl::unexpected(sound.error());
    return found;
}

/// How large an SQLite file is by its own header; 0 where that cannot be read. Opens and closes the file itself, so it
/// is asked only of one that no connection of this process has open. The size of a page is at byte 16, their count at
/// byte 28 (sqlite.org/fileformat2.html).
qint64 sizeByHeader(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return 0;
    const QByteArray header = file.read(32);
    if (header.size() < 32 || !header.startsWith("SQLite format 3"))
        return 0;
    const quint16 said = qFromBigEndian<quint16>(header.constData() + 16);
    const qint64 page = said == 1 ? 65536 : said;
    return page * qint64(qFromBigEndian<quint32>(header.constData() + 28));
}

} // namespace

Logged<std::unique_ptr<SqlConnection>> openToWrite(const QString& path)
{
    const auto found = soundAt(path);
    if (!found && found.error().trouble == LogTrouble::Damaged && QFileInfo(path).size() < sizeByHeader(path))
        return failed(LogTrouble::CutShort, found.error().detail);
    if (!found)
        return tl::unexpected(found.error());
    if (auto may = mayWrite(*found); !may)
        return tl::unexpected(may.error());
    auto connection = SqlConnection::open(found->path, Access::ReadWrite);
    if (!connection)
        return connection;
    if (auto made = makeLog(**connection); !made)
        return tl::unexpected(made.error());
    return connection;
}

Logged<int> logVersion(const QString& path)
{
    const auto found = probe(path);
    if (!found)
        return tl::unexpected(found.error());
    if (found->found != Found::Log)
        return 0;
    const auto connection = openToRead(*found);
    if (!connection)
        return tl::unexpected(connection.error());
    return (*connection)->value(u"PRAGMA user_version"_s).map([](const QVariant& held) { return held.toInt(); });
}

int programLogVersion() { return currentVersion(); }

} // namespace strandbench
