// SPDX-License-Identifier: GPL-3.0-or-later
// What a bench answers after years, beside plain SQL for the same answer on the same files: a day's repairs, a search,
// a lot's trace. The logs are asked by turns, and so are the program and plain SQL, so that what else the machine does
// meets all alike. Prints tables; judges nothing.
//
// bench_years LOG LOG...    made by strandbench_demo_years, the smallest first
#include "years_log.h"

#include <QCoreApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace strandbench::yearsbench {
namespace {

constexpr int rounds = 31; ///< after one that warms

struct Times {
    std::vector<double> ours; ///< microseconds
    std::vector<double> plain;
};

double medianOf(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.at(values.size() / 2);
}

/// The time of a call in microseconds; what it found goes to `found`.
double timeOf(const std::function<Answer(const std::string&)>& ask, const std::string& of, Answer& found)
{
    const auto start = std::chrono::steady_clock::now();
    found = ask(of);
    return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - start).count();
}

void ask(const Question& question, int round, Times& times)
{
    for (const std::string& of : question.of) {
        Answer ours;
        Answer plain;
        double theirTime = round % 2 == 0 ? timeOf(question.plain, of, plain) : 0;
        const double ourTime = timeOf(question.ours, of, ours);
        if (round % 2 == 1)
            theirTime = timeOf(question.plain, of, plain);
        const std::string keys = ours();
        if (keys != plain())
            qFatal("%s of %s: plain SQL finds other rows", question.name.c_str(), of.c_str());
        if (keys.empty() && round == 0)
            std::fprintf(stderr, "%s of %s: nothing found\n", question.name.c_str(), of.c_str());
        if (round == 0)
            continue;
        times.ours.push_back(ourTime);
        times.plain.push_back(theirTime);
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

/// Medians, a column a log; then the last log beside the first, and beside plain SQL.
void printTimes(const std::vector<std::unique_ptr<YearsLog>>& logs, const std::vector<Question>& names,
                const std::vector<std::vector<Times>>& times)
{
    std::printf("\n%-32s", "warm, median, microseconds");
    for (const auto& each : logs)
        std::printf(" %11lld", static_cast<long long>(each->repairs()));
    std::printf(" %11s %11s %11s\n", "plain SQL", "last:first", "ours:plain");
    for (std::size_t i = 0; i < names.size(); ++i) {
        std::printf("%-32s", names[i].name.c_str());
        for (const auto& log : times)
            std::printf(" %11.0f", medianOf(log[i].ours));
        const double last = medianOf(times.back()[i].ours);
        const double plain = medianOf(times.back()[i].plain);
        std::printf(" %11.0f %11.2f %11.2f\n", plain, last / medianOf(times.front()[i].ours), last / plain);
    }
}

void run(const QStringList& paths)
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
    printTimes(logs, questions.front(), times);
}

} // namespace
} // namespace strandbench::yearsbench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments().mid(1);
    if (given.isEmpty()) {
        std::fputs("Usage: bench_years LOG LOG..., made by strandbench_demo_years, the smallest first\n", stderr);
        return 2;
    }
    strandbench::yearsbench::run(given);
    return 0;
}
