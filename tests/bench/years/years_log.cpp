// SPDX-License-Identifier: GPL-3.0-or-later
#include "makers.h"
#include "years_log.h"

#include "exchange/sheets.h"

#include <QDate>
#include <QElapsedTimer>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {
namespace {

constexpr int asked = 16;          ///< days, jobs and lots of each log, spread over all its years
constexpr int eventsAtOnce = 2000; ///< as the program takes in

/// The first column of every row, asked once.
template <class... Bound> std::vector<QString> texts(const PlainFile& file, const char* asking, const Bound&... bound)
{
    auto statement = file.c.prepare(asking);
    return valuesOf<QString>(
        statement, [](const auto& row) { return row.text(0); }, bound...);
}

qint64 number(const PlainFile& file, const char* asking) { return texts(file, asking).at(0).toLongLong(); }

} // namespace

YearsLog::YearsLog(const QString& path)
    : m_path(path),
      m_log(orEnd(RepairLog::open(path, LogMode::ReadOnly))),
      m_plainLog(std::make_unique<PlainFile>(path, Reading::Still)),
      m_mark(digestMark(demoCatalogue(), {}))
{
    makeIndex();
    m_plainIndex = std::make_unique<PlainFile>(findIndexPath(path), Reading::Beside);
    m_repairs = number(*m_plainLog, "SELECT count(*) FROM summary");
    m_events = number(*m_plainLog, "SELECT sum(last) FROM (SELECT max(seq) AS last FROM event GROUP BY origin)");
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
    for (const QString& day : days())
        digest(orEnd(m_index->undigested(day, day, m_mark, allOfThem)));
    for (const char* which : {filler, hardener})
        for (const StockLot& lot : lots(which))
            digest(orEnd(m_index->undigested(lot, m_mark, allOfThem)));
}

double YearsLog::mebibytes() const { return double(QFileInfo(m_path).size()) / 1048576; }

std::vector<QString> YearsLog::days() const
{
    const auto end = [this](const char* asking) {
        return QDate::fromString(texts(*m_plainLog, asking).at(0), Qt::ISODate);
    };
    const QDate first = end("SELECT min(local_day) FROM event");
    const qint64 all = first.daysTo(end("SELECT max(local_day) FROM event"));
    std::vector<QString> days;
    for (int i = 0; i < asked; ++i) // the very ends are of fewer repairs
        days.push_back(first.addDays((2 * i + 1) * all / (2 * asked)).toString(Qt::ISODate));
    return days;
}

std::vector<QString> YearsLog::jobs() const
{
    const qint64 first = number(*m_plainIndex, "SELECT min(id) FROM found");
    const qint64 step = (number(*m_plainIndex, "SELECT max(id) FROM found") - first) / asked;
    std::vector<QString> jobs;
    for (int i = 0; i < asked; ++i)
        jobs.push_back(texts(*m_plainIndex, "SELECT job FROM found WHERE id >= ? ORDER BY id LIMIT 1",
                             qint64(first + i * step + step / 2))
                           .at(0));
    return jobs;
}

std::vector<StockLot> YearsLog::lots(const char* which) const
{
    auto statement = m_plainIndex->c.prepare("SELECT DISTINCT product, lot FROM lot_use WHERE product GLOB ? "
                                             "ORDER BY lot, product");
    const auto all = valuesOf<StockLot>(
        statement,
        [](const auto& row) {
            return StockLot{row.text(0), row.text(1)};
        },
        QString::fromLatin1(which));
    std::vector<StockLot> some;
    for (std::size_t i = 0; i < asked; ++i)
        some.push_back(all.at((2 * i + 1) * all.size() / (2 * asked)));
    return some;
}

} // namespace strandbench::yearsbench
