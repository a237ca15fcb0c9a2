// SPDX-License-Identifier: GPL-3.0-or-later
// What a bench answers after years, beside plain SQL for the same values from the same files: a day's repairs, a
// search, a lot's trace. Plain SQL is asked twice: through SQLite's own C library, which is as quick as SQLite can be
// asked, and through Qt SQL, by which the program asks too. The logs are asked by turns, and so are the three, each as
// often first, so that what else the machine does meets all alike. Ends where they find other values. Prints tables;
// judges nothing.
//
// bench_years LOG LOG... [--rows FILE]    made by strandbench_demo_years, the smallest first; nobody may have them open
#include "rows.h"
#include "years_log.h"

#include <QCoreApplication>

#include <chrono>
#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {
namespace {

using bench::medianOf;

constexpr double aim = 1.3; ///< of Qt SQL, the program's own way to SQLite
constexpr int rounds = 30;  ///< after one that warms; of each of the three as many first

using Times = std::array<std::vector<double>, allAsked>; ///< microseconds

void ask(const Question& question, int round, Times& times)
{
    for (std::size_t which = 0; which < question.count; ++which) {
        const Turn turn = question.ask(which, round % allAsked);
        if (!turn.alike)
            qFatal("%s, the %zuth: plain SQL finds other values", question.name.c_str(), which);
        if (turn.empty && round == 0)
            std::fprintf(stderr, "%s, the %zuth: nothing found\n", question.name.c_str(), which);
        for (std::size_t asked = 0; asked < allAsked && round > 0; ++asked)
            times[asked].push_back(turn.microseconds[asked]);
    }
}

void printLogs(const std::vector<std::unique_ptr<YearsLog>>& logs)
{
    std::printf("SQLite %s\n\n%12s %12s %12s %14s %14s %16s %14s\n", sqlite3_libversion(), "repairs", "events",
                "log, MiB", "index, MiB", "made in, s", "digests made", "in, s");
    for (const auto& each : logs)
        std::printf("%12lld %12lld %12.1f %14.1f %14.1f %16d %14.2f\n", static_cast<long long>(each->repairs()),
                    static_cast<long long>(each->events()), each->mebibytes(), each->indexMade().mebibytes,
                    each->indexMade().seconds, each->digestsMade().repairs, each->digestsMade().seconds);
}

/// Medians of one log, and what plain SQL takes beside.
void tellTimes(const YearsLog& log, const std::vector<Question>& questions, const std::vector<Times>& times,
               const bench::Rows& rows)
{
    std::printf("\n%lld repairs; warm, median, microseconds\n%-32s %9s %9s %9s %9s %9s\n",
                static_cast<long long>(log.repairs()), "", "ours", "plain, C", "plain, Qt", "ours:C", "ours:Qt");
    for (std::size_t i = 0; i < questions.size(); ++i) {
        const double ours = medianOf(times[i][Ours]);
        const double c = medianOf(times[i][ByC]);
        const double qt = medianOf(times[i][ByQt]);
        std::printf("%-32s %9.0f %9.0f %9.0f %9.2f %9.2f\n", questions[i].name.c_str(), ours, c, qt, ours / c,
                    ours / qt);
        rows.add({u"years"_s, QString::fromStdString(questions[i].name), ours, u"µs"_s, u"Qt SQL by hand"_s, qt, aim,
                  log.repairs(), u"repairs"_s});
        rows.add({u"years"_s, QString::fromStdString(questions[i].name), ours, u"µs"_s, u"SQLite's C library"_s, c,
                  std::nullopt, log.repairs(), u"repairs"_s});
    }
}

/// Our medians, a column a log, and how much longer the last takes than the first; the same of plain SQL.
void printGrowth(const std::vector<std::unique_ptr<YearsLog>>& logs, const std::vector<Question>& questions,
                 const std::vector<std::vector<Times>>& times)
{
    std::printf("\n%-32s", "ours, from log to log");
    for (const auto& each : logs)
        std::printf(" %9lld", static_cast<long long>(each->repairs()));
    std::printf(" %11s %11s\n", "last:first", "C's");
    for (std::size_t i = 0; i < questions.size(); ++i) {
        std::printf("%-32s", questions[i].name.c_str());
        for (const auto& log : times)
            std::printf(" %9.0f", medianOf(log[i][Ours]));
        for (const Asked who : {Ours, ByC})
            std::printf(" %11.2f", medianOf(times.back()[i][who]) / medianOf(times.front()[i][who]));
        std::printf("\n");
    }
}

void run(const QStringList& paths, const bench::Rows& rows)
{
    std::vector<std::unique_ptr<YearsLog>> logs;
    std::vector<std::vector<Question>> questions;
    for (const QString& each : paths) {
        logs.push_back(std::make_unique<YearsLog>(each));
        questions.push_back(logs.back()->questions());
    }
    printLogs(logs);
    std::fflush(stdout);
    std::vector<std::vector<Times>> times(logs.size(), std::vector<Times>(questions.front().size()));
    for (std::size_t question = 0; question < questions.front().size(); ++question)
        for (int round = 0; round <= rounds; ++round)
            for (std::size_t log = 0; log < logs.size(); ++log)
                ask(questions[log][question], round, times[log][question]);
    for (std::size_t log = 0; log < logs.size(); ++log)
        tellTimes(*logs[log], questions[log], times[log], rows);
    if (logs.size() > 1)
        printGrowth(logs, questions.front(), times);
}

} // namespace
} // namespace strandbench::yearsbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (given.isEmpty()) {
        std::fputs("Usage: bench_years LOG LOG... [--rows FILE], the logs made by strandbench_demo_years, the smallest "
                   "first\n",
                   stderr);
        return 2;
    }
    strandbench::yearsbench::run(given, rows);
    return 0;
}
