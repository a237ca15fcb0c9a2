// SPDX-License-Identifier: GPL-3.0-or-later
// The questions, through the program and through plain SQL.
#include "years_log.h"

#include "exchange/events.h"
#include "stock/ledger.h"
#include "repairlog/digest_bytes.h"

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {
namespace {

constexpr int mostRepairs = 30; ///< that a search gives
constexpr int mostUses = 200;   ///< that a trace gives

const char* const summariesOfDay =
    "SELECT repair, job, panel, substrate, damage_kind, station, person, open, first_utc_ms, last_utc_ms, last_seq "
    "FROM summary WHERE repair IN (SELECT repair FROM event WHERE local_day = ?) ORDER BY first_utc_ms, repair";

std::string keyOf(const QUuid& id) { return id.toString(QUuid::WithoutBraces).toStdString(); }

/// The first column of every row.
std::string keysOf(const std::vector<Line>& lines)
{
    std::string keys;
    for (const Line& each : lines)
        keys += each.front();
    return keys;
}

/// Rows of bytes become the digests that they hold: what is asked for is these, whoever reads the rows.
std::vector<RepairDigest> digestsIn(const std::vector<Line>& lines)
{
    std::vector<RepairDigest> digests;
    for (const Line& each : lines)
        digests.push_back(*digestFrom(QByteArray::fromRawData(each.front().data(), qsizetype(each.front().size()))));
    return digests;
}

/// Likewise payloads, of rows with kind, version and bytes in these columns.
std::vector<Payload> payloadsIn(const std::vector<Line>& lines, std::size_t kind)
{
    std::vector<Payload> payloads;
    for (const Line& each : lines)
        payloads.push_back(*decodePayload(QString::fromStdString(each[kind]), std::stoi(each[kind + 1]),
                                          QByteArray::fromStdString(each[kind + 7])));
    return payloads;
}

/// Digests of which none is missing.
std::vector<RepairDigest> whole(Logged<FindIndex::Digests> digests)
{
    auto found = orEnd(std::move(digests));
    if (!found)
        qFatal("a digest is missing");
    return *std::move(found);
}

QString textOf(const std::string& bytes) { return QString::fromUtf8(bytes.data(), qsizetype(bytes.size())); }

/// Likewise what a search finds.
std::vector<FoundRepair> foundIn(const std::vector<Line>& lines)
{
    std::vector<FoundRepair> found;
    for (const Line& each : lines)
        found.push_back({QUuid::fromString(textOf(each[0])), textOf(each[2]), textOf(each[3]),
                         textOf(each[4]).split(u'\n', Qt::SkipEmptyParts),
                         textOf(each[5]).split(u'\n', Qt::SkipEmptyParts), 0, std::stoll(each[1])});
    return found;
}

/// Likewise batches that took of a lot.
std::vector<LotUse> usesIn(const StockLot& lot, const std::vector<Line>& lines)
{
    std::vector<LotUse> uses;
    for (const Line& each : lines)
        uses.push_back({lot, QUuid::fromString(textOf(each[0])), textOf(each[1]), textOf(each[2]), textOf(each[3]),
                        textOf(each[4]), std::stoll(each[5]), fromMicrogramsOfStock(std::stoll(each[6])),
                        each[7] != "0", std::stoi(each[8])});
    return uses;
}

/// Every word as FTS5 is asked for what begins with it.
std::string matchOf(const std::string& text)
{
    QStringList phrases;
    for (const QString& word : QString::fromStdString(text).split(u' '))
        phrases << u'"' + word + u"\"*"_s;
    return phrases.join(u" AND "_s).toStdString();
}

/// The keys of rows: their first column.
Answer answerOf(std::vector<Line> lines)
{
    return [found = std::make_shared<std::vector<Line>>(std::move(lines))] { return keysOf(*found); };
}

/// The keys of values, each by itself.
template <class List, class Key> Answer answerOf(List list, const Key& keyOfOne)
{
    return [found = std::make_shared<List>(std::move(list)), keyOfOne] {
        std::string keys;
        for (const auto& each : *found)
            keys += keyOfOne(each);
        return keys;
    };
}

} // namespace

Question YearsLog::dayOfRepairs() const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(summariesOfDay));
    return {"a day: its repairs", days(),
            [this](const std::string& day) {
                return answerOf(orEnd(m_log->repairsOfDay(QString::fromStdString(day))),
                                [](const RepairSummary& each) { return keyOf(each.repair); });
            },
            [plain](const std::string& day) { return answerOf(plain->rows({day})); }};
}

Question YearsLog::dayWithEvents() const
{
    const auto repairsOf = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(summariesOfDay));
    const auto eventsOf = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(
        "SELECT seq, prev_hash, origin, repair, kind, kind_version, utc_ms, boottime_ms, boot_id, utc_offset_s, "
        "person, payload, hash, local_day FROM event WHERE repair = ? ORDER BY seq"));
    return {"a day: repairs and every event", days(),
            [this](const std::string& day) {
                std::vector<std::vector<Event>> all;
                const auto repairs = orEnd(m_log->repairsOfDay(QString::fromStdString(day)));
                for (const RepairSummary& each : repairs)
                    all.push_back(orEnd(m_log->events(each.repair)));
                return answerOf(std::move(all), [](const std::vector<Event>& events) {
                    std::string keys;
                    for (const Event& each : events)
                        keys += std::to_string(each.seq);
                    return keys;
                });
            },
            [repairsOf, eventsOf](const std::string& day) {
                std::vector<std::pair<std::vector<Line>, std::vector<Payload>>> all;
                for (const Line& repair : repairsOf->rows({day})) {
                    auto rows = eventsOf->rows({repair.front()});
                    auto payloads = payloadsIn(rows, 4);
                    all.emplace_back(std::move(rows), std::move(payloads));
                }
                return answerOf(std::move(all), [](const auto& each) { return keysOf(each.first); });
            }};
}

/// Both answers give one key for each.
Question YearsLog::dayReview() const
{
    const auto plain = std::make_shared<PlainSql::Statement>(
        m_plainIndex->prepare("SELECT bytes FROM repair_day JOIN digest USING (id) WHERE local_day = ? ORDER BY id"));
    return {"a day: its review", days(),
            [this](const std::string& asked) {
                const QString day = QString::fromStdString(asked);
                return answerOf(whole(m_index->digests(day, day, m_mark)), [](const RepairDigest&) { return "+"; });
            },
            [plain](const std::string& day) {
                return answerOf(digestsIn(plain->rows({day})), [](const RepairDigest&) { return "+"; });
            }};
}

Question YearsLog::lotReview(const std::string& name, const char* which) const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "SELECT bytes FROM (SELECT DISTINCT found.id FROM lot_use JOIN found USING (repair) WHERE lot = ? AND "
        "product = ?) AS asked JOIN digest ON digest.id = asked.id ORDER BY asked.id"));
    return {name, lots(which),
            [this](const std::string& both) {
                return answerOf(whole(m_index->digests(lotOf(both), m_mark)), [](const RepairDigest&) { return "+"; });
            },
            [plain](const std::string& both) {
                const std::size_t cut = both.find('\t');
                return answerOf(digestsIn(plain->rows({both.substr(0, cut), both.substr(cut + 1)})),
                                [](const RepairDigest&) { return "+"; });
            }};
}

Question YearsLog::search(const std::string& name, const std::vector<std::string>& texts) const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "SELECT repair, id, job, panel, people, lots FROM found WHERE id IN (SELECT rowid FROM found_words WHERE "
        "found_words MATCH ? ORDER BY rowid DESC LIMIT ?) ORDER BY id DESC"));
    return {name, texts,
            [this](const std::string& text) {
                return answerOf(orEnd(m_index->search(QString::fromStdString(text), mostRepairs)),
                                [](const FoundRepair& each) { return keyOf(each.repair); });
            },
            [plain](const std::string& text) {
                return answerOf(foundIn(plain->rows({matchOf(text), sqlite3_int64(mostRepairs)})),
                                [](const FoundRepair& each) { return keyOf(each.repair); });
            }};
}

Question YearsLog::uses(const std::string& name, const char* which) const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "SELECT lot_use.repair, job, panel, person, local_day, utc_ms, amount_ug, finishing, batch FROM lot_use "
        "LEFT JOIN found ON found.repair = lot_use.repair WHERE lot = ? AND product = ? "
        "ORDER BY utc_ms DESC, origin DESC, seq DESC LIMIT ?"));
    return {name, lots(which),
            [this](const std::string& both) {
                return answerOf(orEnd(m_index->usesOf(lotOf(both), mostUses)),
                                [](const LotUse& each) { return keyOf(each.repair); });
            },
            [plain](const std::string& both) {
                const std::size_t cut = both.find('\t');
                const auto rows = plain->rows({both.substr(0, cut), both.substr(cut + 1), sqlite3_int64(mostUses)});
                return answerOf(usesIn(lotOf(both), rows), [](const LotUse& each) { return keyOf(each.repair); });
            }};
}

Question YearsLog::products() const
{
    std::vector<std::string> names;
    for (const std::string& each : lots(filler))
        names.push_back(each.substr(0, each.find('\t')));
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "WITH RECURSIVE named (product) AS (SELECT min(product) FROM lot_use WHERE lot = ?1 UNION ALL SELECT (SELECT "
        "min(product) FROM lot_use WHERE lot = ?1 AND product > named.product) FROM named WHERE product IS NOT NULL) "
        "SELECT product FROM named WHERE product IS NOT NULL"));
    return {"a lot's name: its products", names,
            [this](const std::string& name) {
                return answerOf(orEnd(m_index->lotsNamed(QString::fromStdString(name))),
                                [](const StockLot& each) { return each.product.toStdString(); });
            },
            [plain](const std::string& name) { return answerOf(plain->rows({name})); }};
}

std::vector<Question> YearsLog::questions() const
{
    return {dayOfRepairs(),
            dayWithEvents(),
            dayReview(),
            search("search: a job", jobs()),
            search("search: a person", {"Ada", "Ravi", "Odile", "jorge", "Wanda"}),
            search("search: two words", {"pinholes upper", "hairline hinge", "rust supervisor", "delamination corner"}),
            search("search: a long word", {"photographed", "delamination", "supervisor", "reflector"}),
            search("search: a word and a bus", {"pinholes 3071", "rust 3345", "white 3800", "ridge 3111"}),
            uses("a lot of filler: its batches", filler),
            uses("a lot of hardener: its batches", hardener),
            lotReview("a lot of filler: its review", filler),
            lotReview("a lot of hardener: its review", hardener),
            products()};
}

} // namespace strandbench::yearsbench
