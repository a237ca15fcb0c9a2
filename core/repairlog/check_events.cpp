// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/checks.h"
#include "repairlog/failure.h"
#include "repairlog/kept_sheets.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Break at(const EventRecord& record, const QString& code, const QString& what)
{
    return {code, u"origin %1, seq %2: %3"_s.arg(record.origin).arg(record.seq).arg(what)};
}

/// Why a record does not follow on what its chain holds so far.
std::optional<Break> breakAfter(const ChainHead& head, const EventRecord& record, bool readsAsStored)
{
    if (record.seq != head.count + 1)
        return at(record, u"chain"_s, u"seq %1 is not there"_s.arg(head.count + 1));
    if (record.previousHash != head.hash)
        return at(record, u"chain"_s, u"it does not follow on the hash before it"_s);
    if (!readsAsStored || record.hash != chainHash(record))
        return at(record, u"chain"_s, u"its hash is not that of what it holds"_s);
    if (record.localDay != localDay(record.at))
        return at(record, u"event"_s, u"its day is %1, by its time %2"_s.arg(record.localDay, localDay(record.at)));
    return std::nullopt;
}

class ChainWalk {
public:
    ChainWalk(const QByteArray& expected, VerifyReport& report)
        : m_expected(expected), m_met(expected.isEmpty() || expected == emptyChainHash()), m_report(report)
    {}

    void take(const EventRecord& record, bool readsAsStored)
    {
        if (m_break)
            return;
        if (m_report.heads.empty() || m_report.heads.back().origin != record.origin)
            m_report.heads.push_back({record.origin, 0, emptyChainHash()});
        ChainHead& head = m_report.heads.back();
        m_break = breakAfter(head, record, readsAsStored);
        if (m_break)
            return;
        ++head.count;
        head.hash = record.hash;
        ++m_report.events;
        m_met = m_met || record.hash == m_expected;
    }

    [[nodiscard]] std::optional<Break> result() const
    {
        if (m_break || m_met)
            return m_break;
        return Break{u"expected_head"_s, u"no event has the hash "_s + QString::fromLatin1(m_expected.toHex())};
    }

private:
    QByteArray m_expected;
    bool m_met;
    VerifyReport& m_report;
    std::optional<Break> m_break;
};

/// What is wrong with the bytes that an event names and is linked to; empty for nothing.
Logged<QString> wrongWith(const SqlConnection& connection, const Payload& payload)
{
    const auto* kept = std::get_if<SheetKept>(&payload);
    if (!kept)
        return QString();
    const auto bytes = connection.value(u"SELECT bytes FROM blob WHERE hash = ?"_s, {kept->hash});
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto sheet = sheetFrom(*kept, bytes->toByteArray());
    return sheet ? QString() : u"its sheet: "_s + inWords(sheet.error().front());
}

/// A photo and a sheet that was kept name their bytes. Sheets and tables of a plan are named, too, but a plan may name
/// one that came with an earlier plan.
Finding checkNamedBytes(const SqlConnection& connection)
{
    std::optional<Break> found;
    const auto lost = metaValue(connection, photosLostKey());
    if (!lost)
        return tl::unexpected(lost.error());
    qint64 known = lost->toLongLong(); // when the log was rescued
    const auto take = [&](const Row& row) -> Logged<void> {
        const EventRecord record = readRecord(row);
        const auto event = readEvent(record);
        const auto named = event ? bytesNamedBy(event->payload) : std::nullopt;
        if (found || !named)
            return {};
        const auto linked = connection.value(u"SELECT 1 FROM event_blob WHERE origin = ? AND seq = ? AND hash = ?"_s,
                                             {record.origin, record.seq, *named});
        if (!linked)
            return tl::unexpected(linked.error());
        if (!linked->isValid()) {
            if (--known < 0)
                found = at(record, u"blob"_s, u"the bytes that it names are not there"_s);
            return {};
        }
        return wrongWith(connection, event->payload).map([&](const QString& wrong) {
            if (!wrong.isEmpty())
                found = at(record, u"blob"_s, wrong);
        });
    };
    return connection
        .each(u"SELECT %1 FROM event WHERE kind IN (?, ?) ORDER BY origin, seq"_s.arg(recordColumns()),
              {kindOf(PhotoTaken{}), kindOf(SheetKept{})}, take)
        .map([&] {
            if (!found && known > 0)
                found =
                    Break{u"blob"_s, u"meta: %1 is %2, of which %3 are there"_s.arg(photosLostKey(), *lost).arg(known)};
            return found;
        });
}

} // namespace

Finding checkChains(const SqlConnection& connection, const QByteArray& expected, VerifyReport& report)
{
    ChainWalk walk(expected, report);
    const auto take = [&](const Row& row) -> Logged<void> {
        const EventRecord record = readRecord(row);
        walk.take(record, readsAsStored(record, row, int(recordColumns().count(u',')) + 1));
        return {};
    };
    return connection
        .each(u"SELECT %1, %2 FROM event ORDER BY origin, seq"_s.arg(recordColumns(), storedTexts(recordTexts())), {},
              take)
        .map([&] { return walk.result(); });
}

Finding checkBlobs(const SqlConnection& connection)
{
    std::optional<Break> found;
    const auto take = [&](const Row& row) -> Logged<void> {
        const QByteArray hash = row.bytes(0);
        if (!found && QCryptographicHash::hash(row.bytes(1), QCryptographicHash::Sha256) != hash)
            found = Break{u"blob"_s, u"blob %1: its bytes have another hash"_s.arg(QString::fromLatin1(hash.toHex()))};
        return {};
    };
    if (auto done = connection.each(u"SELECT hash, bytes FROM blob ORDER BY hash"_s, {}, take); !done)
        return tl::unexpected(done.error());
    if (found)
        return found;
    const auto missing = [&](const Row& row) -> Logged<void> {
        if (!found)
            found =
                Break{u"blob"_s, u"a row of %1 names a row of %2 that is not there"_s.arg(row.text(0), row.text(2))};
        return {};
    };
    if (auto done = connection.each(u"PRAGMA foreign_key_check"_s, {}, missing); !done || found)
        return done.map([&] { return found; });
    const auto stray = connection.value(u"SELECT hash FROM blob WHERE hash NOT IN (SELECT hash FROM event_blob)"_s);
    if (!stray)
        return tl::unexpected(stray.error());
    if (stray->isValid())
        return Break{u"blob"_s, u"blob %1: no event has it"_s.arg(QString::fromLatin1(stray->toByteArray().toHex()))};
    return checkNamedBytes(connection);
}

} // namespace strandbench
