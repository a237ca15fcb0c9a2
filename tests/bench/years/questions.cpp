// SPDX-License-Identifier: GPL-3.0-or-later
// The questions, through the program and through plain SQL.
#include "makers.h"
#include "years_log.h"

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {
namespace {

constexpr int mostRepairs = 30; ///< that a search gives
constexpr int mostUses = 200;   ///< that a trace gives

const char* const summariesOfDay =
    "SELECT repair, job, panel, substrate, damage_kind, station, person, open, first_utc_ms, last_utc_ms, last_seq "
    "FROM summary WHERE repair IN (SELECT repair FROM event WHERE local_day = ?) ORDER BY first_utc_ms, repair";

constexpr auto toSummary = [](const auto& row) { return summaryIn(row); };
constexpr auto toEvent = [](const auto& row) { return eventIn(row); };
constexpr auto toDigest = [](const auto& row) { return digestIn(row); };
constexpr auto toFound = [](const auto& row) { return foundIn(row); };

/// Digests of which none is missing.
std::vector<RepairDigest> whole(Logged<FindIndex::Digests> digests)
{
    auto found = orEnd(std::move(digests));
    if (!found)
        qFatal("a digest is missing");
    return *std::move(found);
}

QString textOf(const QUuid& id) { return id.toString(QUuid::WithoutBraces); }

/// Every word as FTS5 is asked for what begins with it.
QString matchOf(const QString& text)
{
    QStringList phrases;
    for (const QString& word : text.split(u' '))
        phrases << u'"' + word + u"\"*"_s;
    return phrases.join(u" AND "_s);
}

} // namespace

Question YearsLog::dayOfRepairs() const
{
    return questionOf(
        "a day: its repairs", days(), Prepared(*m_plainLog, {summariesOfDay}),
        [this](const QString& day) { return orEnd(m_log->repairsOfDay(day)); },
        [](auto& ask, const QString& day) { return valuesOf<RepairSummary>(ask[0], toSummary, day); });
}

Question YearsLog::dayWithEvents() const
{
    using Events = std::vector<std::vector<Event>>;
    const auto program = [this](const QString& day) {
        Events all;
        const auto repairs = orEnd(m_log->repairsOfDay(day));
        for (const RepairSummary& each : repairs)
            all.push_back(orEnd(m_log->events(each.repair)));
        return all;
    };
    const auto plain = [](auto& ask, const QString& day) {
        Events all;
        for (const RepairSummary& each : valuesOf<RepairSummary>(ask[0], toSummary, day))
            all.push_back(valuesOf<Event>(ask[1], toEvent, textOf(each.repair)));
        return all;
    };
    return questionOf("a day: repairs and every event", days(),
                      Prepared(*m_plainLog, {summariesOfDay,
                                             "SELECT origin, seq, repair, person, kind, kind_version, payload, utc_ms, "
                                             "boottime_ms, boot_id, utc_offset_s, hash FROM event WHERE repair = ? "
                                             "ORDER BY seq"}),
                      program, plain);
}

Question YearsLog::dayReview() const
{
    return questionOf(
        "a day: its review", days(),
        Prepared(*m_plainIndex,
                 {"SELECT bytes FROM repair_day JOIN digest USING (id) WHERE local_day = ? ORDER BY id"}),
        [this](const QString& day) { return whole(m_index->digests(day, day, m_mark)); },
        [](auto& ask, const QString& day) { return valuesOf<RepairDigest>(ask[0], toDigest, day); });
}

Question YearsLog::lotReview(const std::string& name, const char* which) const
{
    return questionOf(
        name, lots(which),
        Prepared(*m_plainIndex,
                 {"SELECT bytes FROM (SELECT DISTINCT found.id FROM lot_use JOIN found USING (repair) WHERE lot = ? "
                  "AND product = ?) AS asked JOIN digest ON digest.id = asked.id ORDER BY asked.id"}),
        [this](const StockLot& lot) { return whole(m_index->digests(lot, m_mark)); },
        [](auto& ask, const StockLot& lot) { return valuesOf<RepairDigest>(ask[0], toDigest, lot.lot, lot.product); });
}

Question YearsLog::search(const std::string& name, const std::vector<QString>& texts) const
{
    return questionOf(
        name, texts,
        Prepared(*m_plainIndex,
                 {"SELECT id, repair, job, panel, people, lots FROM found WHERE id IN (SELECT rowid FROM found_words "
                  "WHERE found_words MATCH ? ORDER BY rowid DESC LIMIT ?) ORDER BY id DESC"}),
        [this](const QString& text) { return orEnd(m_index->search(text, mostRepairs)); },
        [](auto& ask, const QString& text) {
            return valuesOf<FoundRepair>(ask[0], toFound, matchOf(text), qint64(mostRepairs));
        });
}

Question YearsLog::uses(const std::string& name, const char* which) const
{
    return questionOf(
        name, lots(which),
        Prepared(*m_plainIndex,
                 {"SELECT lot_use.repair, job, panel, person, local_day, utc_ms, amount_ug, finishing, batch FROM "
                  "lot_use LEFT JOIN found ON found.repair = lot_use.repair WHERE lot = ? AND product = ? "
                  "ORDER BY utc_ms DESC, origin DESC, seq DESC LIMIT ?"}),
        [this](const StockLot& lot) { return orEnd(m_index->usesOf(lot, mostUses)); },
        [](auto& ask, const StockLot& lot) {
            const auto toUse = [&lot](const auto& row) { return useIn(lot, row); };
            return valuesOf<LotUse>(ask[0], toUse, lot.lot, lot.product, qint64(mostUses));
        });
}

Question YearsLog::products() const
{
    std::vector<QString> names;
    for (const StockLot& each : lots(filler))
        names.push_back(each.lot);
    return questionOf(
        "a lot's name: its products", names,
        Prepared(*m_plainIndex,
                 {"WITH RECURSIVE named (product) AS (SELECT min(product) FROM lot_use WHERE lot = ? UNION ALL SELECT "
                  "(SELECT min(product) FROM lot_use WHERE lot = ? AND product > named.product) FROM named WHERE "
                  "product IS NOT NULL) SELECT product FROM named WHERE product IS NOT NULL"}),
        [this](const QString& name) { return orEnd(m_index->lotsNamed(name)); },
        [](auto& ask, const QString& name) {
            const auto toLot = [&name](const auto& row) { return StockLot{row.text(0), name}; };
            return valuesOf<StockLot>(ask[0], toLot, name, name);
        });
}

std::vector<Question> YearsLog::questions() const
{
    return {dayOfRepairs(),
            dayWithEvents(),
            dayReview(),
            search("search: a job", jobs()),
            search("search: a person", {u"Ada"_s, u"Ravi"_s, u"Odile"_s, u"jorge"_s, u"Wanda"_s}),
            search("search: two words",
                   {u"pinholes upper"_s, u"hairline hinge"_s, u"rust supervisor"_s, u"delamination corner"_s}),
            search("search: a long word", {u"photographed"_s, u"delamination"_s, u"supervisor"_s, u"reflector"_s}),
            search("search: a word and a bus", {u"pinholes 3071"_s, u"rust 3345"_s, u"white 3800"_s, u"ridge 3111"_s}),
            uses("a lot of filler: its batches", filler),
            uses("a lot of hardener: its batches", hardener),
            lotReview("a lot of filler: its review", filler),
            lotReview("a lot of hardener: its review", hardener),
            products()};
}

} // namespace strandbench::yearsbench
