// SPDX-License-Identifier: GPL-3.0-or-later
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

} // namespace strandbench::yearsbench
