// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/rescue.h"

#include "repairlog/disk.h"
#include "repairlog/failure.h"
#include "repairlog/gate.h"
#include "repairlog/readable_events.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"
#include "repairlog/transaction.h"
#include "repairlog/transfer.h"

#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QJsonObject looseToJson(const EventRecord& record)
{
    return {{u"origin"_s, record.origin},
            {u"seq"_s, record.seq},
            {u"repair"_s, record.repair},
            {u"kind"_s, record.kind},
            {u"kind_version"_s, record.kindVersion},
            {u"utc_ms"_s, record.at.utcMs},
            {u"boottime_ms"_s, record.at.boottimeMs},
            {u"boot_id"_s, record.at.bootId},
            {u"utc_offset_s"_s, record.at.utcOffsetSeconds},
            {u"person"_s, record.person},
            {u"payload_base64"_s, QString::fromLatin1(record.payload.toBase64())},
            {u"previous_hash"_s, QString::fromLatin1(record.previousHash.toHex())},
            {u"hash"_s, QString::fromLatin1(record.hash.toHex())},
            {u"hash_holds"_s, chainHash(record) == record.hash}};
}

/// Puts what holds into a new log, and the rest into a text.
class Rescuing {
public:
    Rescuing(const SqlConnection& from, const SqlConnection& to) : m_transfer(from, to) {}

    Logged<void> take(const EventRecord& record)
    {
        ChainHead& head = m_heads[record.origin];
        if (head.hash.isEmpty())
            head.hash = emptyChainHash();
        const bool follows = record.seq == head.count + 1 && record.previousHash == head.hash &&
                             chainHash(record) == record.hash && record.localDay == localDay(record.at) &&
                             readEvent(record).has_value();
        if (!follows) {
            m_loose += QJsonDocument(looseToJson(record)).toJson(QJsonDocument::Compact) + '\n';
            ++m_looseCount;
            return {};
        }
        head.count = record.seq;
        head.hash = record.hash;
        return m_transfer.take(record);
    }

    Logged<void> finish() { return m_transfer.finish(); }
    [[nodiscard]] qint64 looseCount() const { return m_looseCount; }
    [[nodiscard]] const QByteArray& loose() const { return m_loose; }
    [[nodiscard]] qint64 blobsMissing() const { return m_transfer.blobsMissing(); }

private:
    Transfer m_transfer;
    std::map<QString, ChainHead> m_heads;
    QByteArray m_loose;
    qint64 m_looseCount = 0;
};

Logged<void> writeLoose(const QByteArray& lines, const QString& to)
{
    QSaveFile file(to);
    if (!file.open(QIODevice::WriteOnly) || file.write(lines) != lines.size() || !file.commit())
        return failed(LogTrouble::IoError, u"%1: %2"_s.arg(to, file.errorString()));
    return {};
}

/// The new log gets the damaged one's name among benches.
Logged<bool> giveOrigin(const SqlConnection& from, const SqlConnection& to)
{
    const auto said = metaValue(from, u"origin"_s);
    bool guessed = false;
    QString origin = said.value_or(QString());
    if (QUuid::fromString(origin).isNull()) {
        const auto first = firstOrigin(from);
        if (first.isEmpty())
            return true; // nothing of it can be read: it keeps the new one
        origin = first;
        guessed = true;
    }
    return to.run(u"UPDATE meta SET value = ? WHERE key = 'origin'"_s, {origin}).map([&] { return guessed; });
}

Logged<RescueReport> rescueInto(const SqlConnection& from, const SqlConnection& to, const QString& looseFile)
{
    RescueReport report;
    auto transaction = Transaction::begin(to, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    const auto guessed = giveOrigin(from, to);
    if (!guessed)
        return tl::unexpected(guessed.error());
    report.originGuessed = *guessed;
    Rescuing rescuing(from, to);
    auto done = eachReadable(from, [&](const EventRecord& record) {
                    return rescuing.take(record);
                }).and_then([&] {
                      return rescuing.finish();
                  }).and_then([&] { return transaction->commit(); });
    if (!done)
        return tl::unexpected(done.error());
    report.loose = rescuing.looseCount();
    report.blobsMissing = rescuing.blobsMissing();
    if (report.loose == 0)
        return report;
    report.looseFile = looseFile;
    return writeLoose(rescuing.loose(), looseFile).map([&] { return report; });
}

/// The damaged file and its WAL, where SQLite may do with them what it likes.
Logged<qint64> copyToLook(const QString& path, const QString& to)
{
    auto unread = disk::copyWhatReads(path, to);
    if (!unread || !QFileInfo::exists(path + u"-wal"_s))
        return unread;
    return disk::copyWhatReads(path + u"-wal"_s, to + u"-wal"_s).map([&](qint64 ofTheWal) {
        return *unread + ofTheWal;
    });
}

} // namespace

Logged<RescueReport> rescueLog(const QString& path, const QString& to)
{
    const QString target = QFileInfo(to).absoluteFilePath();
    const QString looseFile = target + u".loose.jsonl"_s;
    for (const QString& each : {target, looseFile})
        if (auto free = disk::checkTarget(each); !free)
            return tl::unexpected(free.error());
    const disk::Temporary damaged(disk::partNameFor(target));
    const disk::Temporary part(disk::partNameFor(target));
    const auto unread = copyToLook(path, damaged.path());
    if (!unread)
        return tl::unexpected(unread.error());
    const auto from = SqlConnection::open(damaged.path(), Access::ReadWrite);
    if (!from)
        return tl::unexpected(from.error());
    Logged<RescueReport> report;
    {
        const auto log = openToWrite(part.path());
        if (!log)
            return tl::unexpected(log.error());
        report = rescueInto(**from, **log, looseFile);
    }
    if (!report)
        return report;
    report->unreadBytes = *unread;
    const auto verified = backupLog(part.path(), target);
    if (!verified)
        return tl::unexpected(verified.error());
    report->rescued = *verified;
    return report;
}

} // namespace strandbench
