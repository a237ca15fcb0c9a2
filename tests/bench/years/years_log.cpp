// SPDX-License-Identifier: GPL-3.0-or-later
#include "years_log.h"

#include "exchange/sheets.h"

#include <QDate>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {
namespace {

constexpr int asked = 16;          ///< days, jobs and lots of each log, spread over all its years
constexpr int mostRepairs = 30;    ///< that a search gives
constexpr int mostUses = 200;      ///< that a trace gives
constexpr int eventsAtOnce = 2000; ///< as the program takes in
constexpr int allOfThem = 10'000'000;
const char* const filler = "demo*"; ///< products
const char* const hardener = "hardener";

template <class T> T orEnd(Logged<T> made)
{
    if (!made)
        qFatal("%s", qPrintable(made.error().detail));
    return *std::move(made);
}

std::string keyOf(const QUuid& id) { return id.toString(QUuid::WithoutBraces).toStdString(); }

/// The first column of every row.
std::string keysOf(const std::vector<Line>& lines)
{
    std::string keys;
    for (const Line& each : lines)
        keys += each.front();
    return keys;
}

/// Every word as FTS5 is asked for what begins with it.
std::string matchOf(const std::string& text)
{
    QStringList phrases;
    for (const QString& word : QString::fromStdString(text).split(u' '))
        phrases << u'"' + word + u"\"*"_s;
    return phrases.join(u" AND "_s).toStdString();
}

/// From "lot, tabulator, product".
StockLot lotOf(const std::string& both)
{
    const QStringList parts = QString::fromStdString(both).split(u'\t');
    return {parts.at(1), parts.at(0)};
}

qint64 numberAt(const PlainSql& sql, const char* asking) { return std::stoll(sql.rows(asking).at(0).at(0)); }

} // namespace

YearsLog::YearsLog(const QString& path)
    : m_path(path),
      m_log(orEnd(RepairLog::open(path, LogMode::ReadOnly))),
      m_plainLog(std::make_unique<PlainSql>(path.toStdString())),
      m_mark(digestMark(demoCatalogue(), {}))
{
    makeIndex();
    m_plainIndex = std::make_unique<PlainSql>(findIndexPath(path).toStdString());
    m_repairs = numberAt(*m_plainLog, "SELECT count(*) FROM summary");
    m_events = numberAt(*m_plainLog, "SELECT sum(last) FROM (SELECT max(seq) AS last FROM event GROUP BY origin)");
    digestAll();
}

void YearsLog::makeIndex()
{
    const QString where = findIndexPath(m_path);
    QElapsedTimer timer;
    timer.start();
    m_index = orEnd(FindIndex::open(where));
    int slices = 1;
    while (!orEnd(m_index->catchUp(*m_log, eventsAtOnce)))
        ++slices;
    m_made.seconds = slices > 1 ? double(timer.elapsed()) / 1000 : 0;
    m_made.mebibytes = double(QFileInfo(where).size()) / 1048576;
}

/// As the program does before it shows a review.
void YearsLog::digest(const std::vector<QUuid>& repairs)
{
    QElapsedTimer timer;
    timer.start();
    std::vector<RepairDigest> made;
    for (const QUuid& each : repairs)
        made.push_back(digestOf(orEnd(m_log->events(each)), demoCatalogue(), {}));
    if (const auto done = m_index->keep(made, m_mark); !done)
        qFatal("%s", qPrintable(done.error().detail));
    m_digested.repairs += int(repairs.size());
    m_digested.seconds += double(timer.nsecsElapsed()) / 1e9;
}

void YearsLog::digestAll()
{
    for (const std::string& each : days()) {
        const QString day = QString::fromStdString(each);
        digest(orEnd(m_index->undigested(day, day, m_mark, allOfThem)));
    }
    for (const char* which : {filler, hardener})
        for (const std::string& each : lots(which))
            digest(orEnd(m_index->undigested(lotOf(each), m_mark, allOfThem)));
}

double YearsLog::mebibytes() const { return double(QFileInfo(m_path).size()) / 1048576; }

std::vector<std::string> YearsLog::days() const
{
    const Line ends = m_plainLog->rows("SELECT min(local_day), (SELECT max(local_day) FROM event) FROM event").at(0);
    const QDate first = QDate::fromString(QString::fromStdString(ends[0]), Qt::ISODate);
    const qint64 all = first.daysTo(QDate::fromString(QString::fromStdString(ends[1]), Qt::ISODate));
    std::vector<std::string> days;
    for (int i = 0; i < asked; ++i) // the very ends are of fewer repairs
        days.push_back(first.addDays((2 * i + 1) * all / (2 * asked)).toString(Qt::ISODate).toStdString());
    return days;
}

std::vector<std::string> YearsLog::jobs() const
{
    std::vector<std::string> jobs;
    const auto rows = m_plainIndex->prepare("SELECT job FROM found WHERE id >= ? ORDER BY id LIMIT 1");
    const Line ends = m_plainIndex->rows("SELECT min(id), max(id) FROM found").at(0);
    const qint64 first = std::stoll(ends[0]);
    const qint64 step = (std::stoll(ends[1]) - first) / asked;
    for (int i = 0; i < asked; ++i)
        jobs.push_back(rows.rows({first + i * step + step / 2}).at(0).at(0));
    return jobs;
}

std::vector<std::string> YearsLog::lots(const char* which) const
{
    const auto all = m_plainIndex->rows("SELECT DISTINCT lot || char(9) || product FROM lot_use "
                                        "WHERE product GLOB ? ORDER BY 1",
                                        {std::string(which)});
    std::vector<std::string> some;
    for (std::size_t i = 0; i < asked; ++i)
        some.push_back(all.at((2 * i + 1) * all.size() / (2 * asked)).front());
    return some;
}

Question YearsLog::dayOfRepairs() const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(
        "SELECT repair, job, panel, substrate, damage_kind, station, person, open, first_utc_ms, last_utc_ms, last_seq "
        "FROM summary WHERE repair IN (SELECT repair FROM event WHERE local_day = ?) ORDER BY first_utc_ms, repair"));
    return {"a day: its repairs", days(),
            [this](const std::string& day) {
                std::string keys;
                const auto repairs = orEnd(m_log->repairsOfDay(QString::fromStdString(day)));
                for (const RepairSummary& each : repairs)
                    keys += keyOf(each.repair);
                return keys;
            },
            [plain](const std::string& day) { return keysOf(plain->rows({day})); }};
}

Question YearsLog::dayWithEvents() const
{
    const auto repairsOf = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(
        "SELECT repair, job, panel, substrate, damage_kind, station, person, open, first_utc_ms, last_utc_ms, last_seq "
        "FROM summary WHERE repair IN (SELECT repair FROM event WHERE local_day = ?) ORDER BY first_utc_ms, repair"));
    const auto eventsOf = std::make_shared<PlainSql::Statement>(m_plainLog->prepare(
        "SELECT seq, prev_hash, origin, repair, kind, kind_version, utc_ms, boottime_ms, boot_id, utc_offset_s, "
        "person, payload, hash, local_day FROM event WHERE repair = ? ORDER BY seq"));
    return {"a day: repairs and every event", days(),
            [this](const std::string& day) {
                std::string keys;
                const auto repairs = orEnd(m_log->repairsOfDay(QString::fromStdString(day)));
                for (const RepairSummary& repair : repairs) {
                    const auto events = orEnd(m_log->events(repair.repair));
                    for (const Event& each : events)
                        keys += std::to_string(each.seq);
                }
                return keys;
            },
            [repairsOf, eventsOf](const std::string& day) {
                std::string keys;
                for (const Line& repair : repairsOf->rows({day}))
                    keys += keysOf(eventsOf->rows({repair.front()}));
                return keys;
            }};
}

/// What is asked is whether all are kept, and then for them; both give how many there are.
Question YearsLog::dayReview() const
{
    const auto plain = std::make_shared<PlainSql::Statement>(
        m_plainIndex->prepare("SELECT bytes FROM repair_day JOIN digest USING (id) WHERE local_day = ? ORDER BY id"));
    return {"a day: its review", days(),
            [this](const std::string& asked) {
                const QString day = QString::fromStdString(asked);
                if (!orEnd(m_index->undigested(day, day, m_mark, allOfThem)).empty())
                    qFatal("a digest is missing");
                return std::to_string(orEnd(m_index->digests(day, day)).size());
            },
            [plain](const std::string& day) { return std::to_string(plain->rows({day}).size()); }};
}

Question YearsLog::lotReview(const std::string& name, const char* which) const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "SELECT bytes FROM (SELECT DISTINCT found.id FROM lot_use JOIN found USING (repair) WHERE lot = ? AND "
        "product = ?) AS asked JOIN digest ON digest.id = asked.id ORDER BY asked.id"));
    return {name, lots(which),
            [this](const std::string& both) {
                if (!orEnd(m_index->undigested(lotOf(both), m_mark, allOfThem)).empty())
                    qFatal("a digest is missing");
                return std::to_string(orEnd(m_index->digests(lotOf(both))).size());
            },
            [plain](const std::string& both) {
                const std::size_t cut = both.find('\t');
                return std::to_string(plain->rows({both.substr(0, cut), both.substr(cut + 1)}).size());
            }};
}

Question YearsLog::search(const std::string& name, const std::vector<std::string>& texts) const
{
    const auto plain = std::make_shared<PlainSql::Statement>(m_plainIndex->prepare(
        "SELECT repair, id, job, panel, people, lots FROM found WHERE id IN (SELECT rowid FROM found_words WHERE "
        "found_words MATCH ? ORDER BY rowid DESC LIMIT ?) ORDER BY id DESC"));
    return {name, texts,
            [this](const std::string& text) {
                std::string keys;
                const auto found = orEnd(m_index->search(QString::fromStdString(text), mostRepairs));
                for (const FoundRepair& each : found)
                    keys += keyOf(each.repair);
                return keys;
            },
            [plain](const std::string& text) {
                return keysOf(plain->rows({matchOf(text), sqlite3_int64(mostRepairs)}));
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
                std::string keys;
                const auto found = orEnd(m_index->usesOf(lotOf(both), mostUses));
                for (const LotUse& each : found)
                    keys += keyOf(each.repair);
                return keys;
            },
            [plain](const std::string& both) {
                const std::size_t cut = both.find('\t');
                return keysOf(plain->rows({both.substr(0, cut), both.substr(cut + 1), sqlite3_int64(mostUses)}));
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
                std::string keys;
                const auto found = orEnd(m_index->lotsNamed(QString::fromStdString(name)));
                for (const StockLot& each : found)
                    keys += each.product.toStdString();
                return keys;
            },
            [plain](const std::string& name) { return keysOf(plain->rows({name})); }};
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
