// SPDX-License-Identifier: GPL-3.0-or-later
// A day's repairs as a PDF, from their records to its bytes: the day's page with its code, and behind it the sheet of
// each repair with its tables and its drawn section. Its referee is Qt putting the same words on as many pages of plain
// text, which has no table, no drawing and no code to make. The repairs are the first ones of the demo depot's years,
// mixed as they come through its door. Prints a table; judges nothing.
//
// bench_paper [--rows FILE]
#include "plain_pages.h"
#include "registered.h"
#include "rows.h"

#include "exchange/sheets.h"
#include "report/job_sheet.h"
#include "years/years.h"

#include <QDate>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <cstdio>
#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::paperbench {
namespace {

constexpr std::array sizes{10, 40, 160}; ///< repairs of a day; forty is what the depot has

template <class T> T orEnd(Logged<T> made)
{
    if (!made)
        qFatal("%s", qPrintable(made.error().detail));
    return *std::move(made);
}

/// The depot's first repairs, as a log has them.
class Depot {
public:
    explicit Depot(const QString& path)
    {
        const auto told = orEnd(years::writeYears({path, sizes.back(), 1}));
        m_log = orEnd(RepairLog::open(path, LogMode::ReadOnly));
        m_head = orEnd(m_log->head());
        m_day = told.firstDay;
        std::set<QUuid> seen;
        const QDate last = QDate::fromString(told.lastDay, Qt::ISODate);
        for (QDate day = QDate::fromString(m_day, Qt::ISODate); day <= last; day = day.addDays(1)) {
            const auto summaries = orEnd(m_log->repairsOfDay(day.toString(Qt::ISODate)));
            for (const RepairSummary& each : summaries)
                if (seen.insert(each.repair).second)
                    m_records.push_back(recordOf(orEnd(m_log->events(each.repair)), demoCatalogue()).value());
        }
    }
    [[nodiscard]] QByteArray pdf(int repairs) const
    {
        static const Assumptions assumptions;
        static const Words words(UnitSystem::Metric, QLocale(u"en"_s));
        const std::vector<JobRecord> day(m_records.begin(), m_records.begin() + repairs);
        return dayPdf(m_day, day,
                      {m_head, demoCatalogue(), assumptions,
                       [this](const QByteArray& hash) { return m_log->blob(hash).value_or(QByteArray()); }},
                      words);
    }

private:
    std::unique_ptr<RepairLog> m_log;
    ChainHead m_head;
    QString m_day;
    std::vector<JobRecord> m_records;
};

void run(const bench::Rows& rows)
{
    const QTemporaryDir folder;
    const Depot depot(folder.filePath(u"depot.sqlite"_s));
    std::map<int, QStringList> pages;
    bench::Works works;
    for (const int size : sizes) {
        pages[size] = wordsOfPages(depot.pdf(size));
        works["day of " + std::to_string(size)] = [&depot, size] { static_cast<void>(depot.pdf(size)); };
        works["plain " + std::to_string(size)] = [&words = pages[size]] { static_cast<void>(plainPdf(words)); };
    }
    const auto medians = bench::medianMilliseconds(works);
    for (const int size : sizes) {
        const double ours = medians.at("day of " + std::to_string(size));
        const double theirs = medians.at("plain " + std::to_string(size));
        std::printf("%3d repairs, %4lld pages   the day's PDF %9.1f ms   plain text %9.1f ms   ratio %.2f\n", size,
                    static_cast<long long>(pages[size].size()), ours, theirs, ours / theirs);
        rows.add({u"paper"_s, u"a day as PDF"_s, ours, u"ms"_s, u"Qt, plain text on as many pages"_s, theirs,
                  std::nullopt, size, u"repairs"_s});
    }
}

} // namespace
} // namespace strandbench::paperbench

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (!given.isEmpty()) {
        std::fputs("Usage: bench_paper [--rows FILE]\n", stderr);
        return 2;
    }
    strandbench::paperbench::run(rows);
    return 0;
}
