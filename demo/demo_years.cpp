// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a log of many years of the depot's repairs, and verifies it: for trying out and measuring what a bench does
// when it has been at work for long.
#include "years/years.h"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFileInfo>

#include <cstdio>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

constexpr qint64 most = 10'000'000; ///< repairs

struct Asked {
    years::YearsWanted wanted;
    bool verify = true;
};

/// A whole number in its range; what is wrong is said, and then there is none.
std::optional<qint64> numberOf(const QCommandLineParser& parser, const QString& option, qint64 least, qint64 greatest)
{
    bool isNumber = false;
    const qint64 value = parser.value(option).toLongLong(&isNumber);
    if (isNumber && value >= least && value <= greatest)
        return value;
    std::fprintf(stderr, "--%s '%s': a whole number from %lld to %lld is allowed\n", qPrintable(option),
                 qPrintable(parser.value(option)), static_cast<long long>(least), static_cast<long long>(greatest));
    return std::nullopt;
}

std::optional<Asked> read(const QCoreApplication& application)
{
    QCommandLineParser parser;
    parser.addOptions({{u"log"_s, u"A file that is not there yet."_s, u"path"_s},
                       {u"repairs"_s, u"How many."_s, u"number"_s},
                       {u"seed"_s, u"The same seed gives the same log."_s, u"number"_s, u"1"_s},
                       {u"benches"_s, u"Whose chains it holds."_s, u"number"_s, u"1"_s},
                       {u"unverified"_s, u"Do not verify it: reading all of it back takes as long as writing."_s}});
    parser.addHelpOption();
    parser.process(application);
    const QString log = parser.value(u"log"_s);
    if (log.isEmpty() || QFileInfo::exists(log)) {
        std::fprintf(stderr, "--log '%s': a file that is not there yet is allowed\n", qPrintable(log));
        return std::nullopt;
    }
    const auto repairs = numberOf(parser, u"repairs"_s, 1, most);
    const auto seed = numberOf(parser, u"seed"_s, 0, std::numeric_limits<qint64>::max());
    const auto benches = numberOf(parser, u"benches"_s, 1, 9);
    if (!repairs || !seed || !benches)
        return std::nullopt;
    return Asked{{log, *repairs, quint64(*seed), int(*benches)}, !parser.isSet(u"unverified"_s)};
}

int failedWith(const QString& log, const QString& why)
{
    std::fprintf(stderr, "%s: %s\n", qPrintable(log), qPrintable(why));
    return 1;
}

void print(const years::YearsReport& report, const QString& log, double seconds)
{
    std::printf("%lld repairs, %lld handed over, %lld reworks, %lld open; %s to %s\n",
                static_cast<long long>(report.repairs), static_cast<long long>(report.handedOver),
                static_cast<long long>(report.reworks), static_cast<long long>(report.open),
                qPrintable(report.firstDay), qPrintable(report.lastDay));
    std::printf("%lld events, %.2f a repair; %.2f repairs a day\n", static_cast<long long>(report.events),
                report.eventsARepair(), report.repairsADay());
    std::printf("%.1f MiB, written in %.1f s\n", double(QFileInfo(log).size()) / 1048576, seconds);
}

int verify(const QString& log)
{
    QElapsedTimer timer;
    timer.start();
    const auto report = verifyLog(log);
    if (!report)
        return failedWith(log, report.error().detail);
    for (const ChainHead& head : report->heads)
        std::printf("%s: %lld events, head %s\n", qPrintable(head.origin), static_cast<long long>(head.count),
                    head.hash.toHex().constData());
    std::printf("verified in %.1f s: %s\n", double(timer.elapsed()) / 1000, report->clean ? "clean" : "NOT CLEAN");
    return report->clean ? 0 : failedWith(log, report->breaksAt + u": "_s + report->where);
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const auto asked = read(application);
    if (!asked)
        return 2;
    QElapsedTimer timer;
    timer.start();
    qint64 told = 0;
    const auto progress = [&](qint64 repairs) {
        if (repairs / 50'000 > told / 50'000)
            std::fprintf(stderr, "%lld repairs, %.0f s\n", static_cast<long long>(repairs),
                         double(timer.elapsed()) / 1000);
        told = repairs;
    };
    const auto report = years::writeYears(asked->wanted, progress);
    if (!report)
        return failedWith(asked->wanted.log, report.error().detail);
    print(*report, asked->wanted.log, double(timer.elapsed()) / 1000);
    std::fflush(stdout);
    return asked->verify ? verify(asked->wanted.log) : 0;
}
