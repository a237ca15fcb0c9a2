// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/transfer.h"

#include "repairlog/failure.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"

#include <QCryptographicHash>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Logged<void> summarise(const SqlConnection& log, const QString& repair)
{
    const auto events = eventsOf(log, QUuid::fromString(repair));
    if (!events)
        return tl::unexpected(events.error());
    const auto folded = foldRepair(*events);
    if (!folded)
        return failed(LogTrouble::Damaged, u"repair %1: %2"_s.arg(repair, inWords(folded.error().front())));
    return putSummary(log, summaryOf(*folded, events->back().person));
}

} // namespace

std::vector<QByteArray> Transfer::blobsOf(const EventRecord& record)
{
    std::vector<QByteArray> hashes;
    const auto take = [&](const Row& row) -> Logged<void> {
        hashes.push_back(row.bytes(0));
        return {};
    };
    if (!m_from.each(u"SELECT hash FROM event_blob WHERE origin = ? AND seq = ?"_s, {record.origin, record.seq}, take))
        ++m_blobsMissing; // it cannot be told which
    return hashes;
}

Logged<void> Transfer::takeBlob(const EventRecord& record, const QByteArray& hash)
{
    const auto bytes = m_from.value(u"SELECT bytes FROM blob WHERE hash = ?"_s, {hash});
    const bool holds =
        bytes && bytes->isValid() && QCryptographicHash::hash(bytes->toByteArray(), QCryptographicHash::Sha256) == hash;
    if (holds)
        return insertBlob(m_to, record, bytes->toByteArray());
    ++m_blobsMissing;
    return {};
}

Logged<void> Transfer::take(const EventRecord& record)
{
    const auto event = readEvent(record);
    if (!event)
        return tl::unexpected(event.error());
    if (auto done = insertRecord(m_to, record); !done)
        return done;
    for (const QByteArray& hash : blobsOf(record))
        if (auto done = takeBlob(record, hash); !done)
            return done;
    if (const auto named = bytesNamedBy(event->payload)) {
        const auto linked = m_to.value(u"SELECT 1 FROM event_blob WHERE origin = ? AND seq = ? AND hash = ?"_s,
                                       {record.origin, record.seq, *named});
        if (!linked)
            return tl::unexpected(linked.error());
        m_photosLost += linked->isValid() ? 0 : 1;
    }
    if (subjectOf(event->payload) == Subject::Repair)
        m_changed.insert(record.repair);
    ++m_events;
    return {};
}

Logged<void> Transfer::finish()
{
    for (const QString& repair : m_changed)
        if (auto done = summarise(m_to, repair); !done)
            return done;
    return m_photosLost > 0 ? noteLostPhotos() : Logged<void>();
}

Logged<void> Transfer::noteLostPhotos()
{
    const auto before = metaValue(m_to, photosLostKey());
    if (!before)
        return tl::unexpected(before.error());
    return setMeta(m_to, photosLostKey(), QString::number(before->toLongLong() + m_photosLost));
}

} // namespace strandbench
