// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/find_documents.h"

#include "repairlog/rows.h"
#include "stock/ledger.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Puts a line at the end, once.
void addTo(QStringList& lines, const QString& text)
{
    const QString line = text.simplified();
    if (!line.isEmpty() && !lines.contains(line))
        lines << line;
}

QString joined(const QStringList& lines) { return lines.join(u'\n'); }
QStringList apart(const QString& column) { return column.split(u'\n', Qt::SkipEmptyParts); }

} // namespace

Logged<FindDocuments::Held*> FindDocuments::of(const QUuid& repair)
{
    const auto held = m_held.find(repair);
    if (held != m_held.end())
        return &held->second;
    Document document;
    const auto take = [&](const Row& row) -> Logged<void> {
        document = {row.integer(0),     row.integer(0) / placesInAMillisecond,
                    row.text(1),        row.text(2),
                    apart(row.text(3)), apart(row.text(4)),
                    apart(row.text(5))};
        return {};
    };
    if (auto done = m_sql.each(u"SELECT id, job, panel, people, lots, notes FROM found WHERE repair = ?"_s,
                               {textOf(repair)}, take);
        !done)
        return tl::unexpected(done.error());
    return &m_held.emplace(repair, Held{document, document, {}}).first->second;
}

Logged<void> FindDocuments::takeUse(const Event& event, const QString& product, const QString& lot, Mass amount,
                                    BatchRef batch)
{
    if (lot.isEmpty())
        return {};
    return m_sql.run(u"INSERT OR REPLACE INTO lot_use (lot, product, utc_ms, origin, seq, repair, person, local_day, "
                     "amount_ug, finishing, batch) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_s,
                     {lot, product, event.at.utcMs, event.origin, event.seq, textOf(event.repair), event.person,
                      localDay(event.at), inMicrograms(amount), batch.finishing ? 1 : 0, batch.index});
}

Logged<void> FindDocuments::take(const Event& event)
{
    if (subjectOf(event.payload) != Subject::Repair)
        return {};
    const auto found = of(event.repair);
    if (!found)
        return tl::unexpected(found.error());
    Document& document = (*found)->now;
    addTo((*found)->days, localDay(event.at));
    addTo(document.people, event.person);
    if (const auto* taken = std::get_if<TakenIn>(&event.payload)) {
        document.job = taken->job.simplified();
        document.panel = taken->panel.simplified();
        document.takenInUtcMs = event.at.utcMs;
    } else if (const auto* noted = std::get_if<Noted>(&event.payload)) {
        addTo(document.notes, noted->text);
    } else if (const auto* returned = std::get_if<Returned>(&event.payload)) {
        addTo(document.notes, returned->text);
    } else if (const auto* corrected = std::get_if<Corrected>(&event.payload)) {
        addTo(document.notes, corrected->text);
    } else if (const auto* mixed = std::get_if<HardenerIn>(&event.payload)) {
        addTo(document.lots, mixed->lot);
        addTo(document.lots, mixed->hardenerLot);
        if (auto done = takeUse(event, mixed->sheetId, mixed->lot, mixed->filler, mixed->batch); !done)
            return done;
        return takeUse(event, hardenerProduct, mixed->hardenerLot, mixed->hardener, mixed->batch);
    }
    return {};
}

Logged<qint64> FindDocuments::nextPlace(qint64 utcMs) const
{
    const qint64 first = utcMs * placesInAMillisecond;
    const auto last =
        m_sql.value(u"SELECT max(id) FROM found WHERE id BETWEEN ? AND ?"_s, {first, first + placesInAMillisecond - 1});
    return last.map([first](const QVariant& id) { return id.isNull() ? first : id.toLongLong() + 1; });
}

Logged<void> FindDocuments::putDocument(const QUuid& repair, Held& held) const
{
    Document& now = held.now;
    const QVariantList columns{now.job,          now.panel,         joined(now.people),
                               joined(now.lots), joined(now.notes), textOf(repair)};
    if (now.id != 0)
        return now == held.before ? Logged<void>()
                                  : m_sql.run(u"UPDATE found SET job = ?, panel = ?, people = ?, lots = ?, notes = ? "
                                              "WHERE repair = ?"_s,
                                              columns);
    const auto place = nextPlace(now.takenInUtcMs);
    if (!place)
        return tl::unexpected(place.error());
    now.id = *place;
    return m_sql.run(u"INSERT INTO found (id, job, panel, people, lots, notes, repair) VALUES (?, ?, ?, ?, ?, ?, ?)"_s,
                     QVariantList{*place} + columns);
}

Logged<void> FindDocuments::putDays(const Held& held) const
{
    for (const QString& day : held.days)
        if (auto done =
                m_sql.run(u"INSERT OR IGNORE INTO repair_day (local_day, id) VALUES (?, ?)"_s, {day, held.now.id});
            !done)
            return done;
    return held.before.id == 0 ? Logged<void>() : m_sql.run(u"DELETE FROM digest WHERE id = ?"_s, {held.now.id});
}

Logged<void> FindDocuments::put()
{
    for (auto& [repair, held] : m_held)
        if (auto done = putDocument(repair, held).and_then([this, &it = held] { return putDays(it); }); !done)
            return done;
    m_held.clear();
    return {};
}

} // namespace strandbench
