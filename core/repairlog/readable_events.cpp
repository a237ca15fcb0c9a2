// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/readable_events.h"

#include "repairlog/failure.h"
#include "repairlog/rows.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Where the end cannot be read, this many places without a row are taken for it.
constexpr qint64 gapAtTheEnd = 20'000;

/// The event at a place of the table, without any index; empty where there is none, or none that can be read.
std::optional<EventRecord> at(const SqlConnection& log, qint64 place)
{
    std::optional<EventRecord> found;
    const auto take = [&](const Row& row) -> Logged<void> {
        found = readRecord(row);
        return {};
    };
    const auto read =
        log.each(u"SELECT %1 FROM event NOT INDEXED WHERE rowid = ?"_s.arg(recordColumns()), {place}, take);
    return read ? found : std::nullopt;
}

/// No event is shorter than this many bytes: ids and hashes alone are longer.
constexpr qint64 shortestEvent = 128;

/// The last place of the table; empty where that cannot be read, or where it cannot be true.
std::optional<qint64> lastPlace(const SqlConnection& log)
{
    const auto last = log.value(u"SELECT max(rowid) FROM event NOT INDEXED"_s);
    const auto pages = log.value(u"PRAGMA page_count"_s);
    const auto size = log.value(u"PRAGMA page_size"_s);
    if (!last || !pages || !size)
        return std::nullopt;
    const qint64 most = pages->toLongLong() * size->toLongLong() / shortestEvent;
    return last->toLongLong() <= most ? std::optional(last->toLongLong()) : std::nullopt;
}

} // namespace

Logged<void> eachReadable(const SqlConnection& log, const std::function<Logged<void>(const EventRecord&)>& take)
{
    // The damaged file's own CHECKs and triggers are not asked: only reading is done. The tables must be known, though.
    const auto known = log.value(u"SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = 'event'"_s);
    if (!known)
        return tl::unexpected(known.error());
    if (known->toInt() != 1)
        return failed(LogTrouble::Damaged, u"there is no table of events"_s);
    const auto last = lastPlace(log);
    qint64 empty = 0;
    for (qint64 place = 1; last ? place <= *last : empty < gapAtTheEnd; ++place) {
        const auto record = at(log, place);
        empty = record ? 0 : empty + 1;
        if (!record)
            continue;
        if (auto done = take(*record); !done)
            return done;
    }
    return {};
}

QString firstOrigin(const SqlConnection& log)
{
    const qint64 last = std::min<qint64>(lastPlace(log).value_or(gapAtTheEnd), gapAtTheEnd);
    for (qint64 place = 1; place <= last; ++place)
        if (const auto record = at(log, place))
            return record->origin;
    return {};
}

} // namespace strandbench
