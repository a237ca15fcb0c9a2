// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench report: one day's repairs with their whole records, as JSON, CSV or on paper, or as a file of each.
#include "bench/assumptions_file.h"
#include "clock/local_days.h"
#include "exchange/sheets.h"
#include "headless/command.h"
#include "headless/day_files.h"
#include "headless/log_lines.h"
#include "report/day_json.h"
#include "report/job_sheet.h"
#include "report/write_new.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

struct Day {
    std::vector<DayEntry> entries;
    ChainHead head;
    Catalogue catalogue; ///< with the sheets that the log keeps
};

/// Exactly one of the four ways out must be asked for.
void judgeWay(const Arguments& arguments, Faults& faults)
{
    QStringList asked;
    for (const QString& each : {u"json"_s, u"csv"_s, u"pdf"_s, u"into"_s})
        if (arguments.options.contains(each))
            asked << u"--"_s + each;
    if (asked.isEmpty())
        faults.push_back({u"--json | --csv | --pdf | --into"_s,
                          {},
                          FaultKind::Missing,
                          {u"--json"_s, u"--csv"_s, u"--pdf"_s, u"--into"_s}});
    for (qsizetype i = 1; i < asked.size(); ++i)
        faults.push_back({asked[0], asked[0], FaultKind::Conflicts, {asked[i], asked[i]}});
}

/// The day that is asked for: one by its date, or by this machine's clock; empty of what is none.
QString dayMeant(const Arguments& arguments, Faults& faults)
{
    const QString day = arguments.options.value(u"day"_s);
    const QString today = localDay(SystemClock().now());
    if (day == u"today"_s)
        return today;
    if (day == u"yesterday"_s)
        return daysFrom(today, -1);
    static const QRegularExpression shape(u"\\A[0-9]{4}-[0-9]{2}-[0-9]{2}\\z"_s);
    if (shape.match(day).hasMatch() && QDate::fromString(day, Qt::ISODate).isValid())
        return day;
    faults.push_back({u"--day"_s, day, FaultKind::NotReadable, {u"2026-11-25"_s, u"today"_s, u"yesterday"_s}});
    return {};
}

void judgeOut(const Arguments& arguments, const QString& day, Faults& faults)
{
    const QString out = arguments.options.value(u"pdf"_s);
    if (const auto taken = out.isEmpty() ? std::nullopt : nameTaken(u"--pdf"_s, out))
        faults.push_back(*taken);
    if (!arguments.options.contains(u"into"_s))
        return;
    const Faults folder = judgeDayFolder(u"--into"_s, arguments.options.value(u"into"_s), day);
    faults.insert(faults.end(), folder.begin(), folder.end());
}

/// An option that is one of the codes of E; the first of them when it was not given.
template <class E> E oneOf(const Arguments& arguments, const QString& name, Faults& faults)
{
    const QString text = arguments.options.value(name, allCodes<E>().constFirst());
    const auto value = fromCode<E>(text);
    if (!value)
        faults.push_back({u"--"_s + name, text, FaultKind::NotOneOf, allCodes<E>()});
    return value.value_or(*fromCode<E>(allCodes<E>().constFirst()));
}

/// What belongs to paper alone is refused without it.
void judgePaperOnly(const Arguments& arguments, Faults& faults)
{
    for (const QString& each : {u"paper"_s, u"units"_s})
        if (arguments.options.contains(each) && !arguments.options.contains(u"pdf"_s) &&
            !arguments.options.contains(u"into"_s))
            faults.push_back(
                {u"--"_s + each, arguments.options.value(each), FaultKind::Conflicts, {u"--pdf, --into"_s, {}}});
}

Logged<Day> readDay(const RepairLog& log, const QString& day, const Assumptions& assumptions)
{
    const auto summaries = log.repairsOfDay(day);
    const auto head = log.head();
    if (!summaries || !head)
        return tl::unexpected(!summaries ? summaries.error() : head.error());
    const auto sheets = log.sheets();
    if (!sheets)
        return tl::unexpected(sheets.error());
    Day found{{}, *head, sheets->catalogue(demoCatalogue())};
    for (const RepairSummary& each : *summaries) {
        const auto events = log.events(each.repair);
        if (!events)
            return tl::unexpected(events.error());
        auto record = recordOf(*events, found.catalogue);
        if (!record)
            return tl::unexpected(
                LogFailure{LogTrouble::Damaged, record.error().front().field + u": "_s + record.error().front().value});
        auto deviations = deviationsOf(*record, found.catalogue, limitsFrom(assumptions));
        found.entries.push_back({std::move(*record), std::move(deviations)});
    }
    return found;
}

/// How a day goes on paper.
struct OnPaper {
    const RepairLog& log;
    const Assumptions& assumptions;
    Paper paper;
    Words words;
};

QByteArray pdfOf(const QString& day, const Day& found, const OnPaper& on)
{
    std::vector<JobRecord> records;
    for (const DayEntry& each : found.entries)
        records.push_back(each.record);
    const SheetFacts facts{found.head, found.catalogue, on.assumptions,
                           [&on](const QByteArray& hash) { return on.log.blob(hash).value_or(QByteArray()); },
                           on.paper};
    return dayPdf(day, records, facts, on.words);
}

/// What is printed of a day whose files are written.
QJsonObject doneOf(const QString& day, const Day& found)
{
    return {{u"day"_s, day},
            {u"chain_head"_s, headToJson(found.head)},
            {u"repairs"_s, static_cast<int>(found.entries.size())}};
}

Outcome print(const QString& out, const QString& day, const Day& found, const OnPaper& on)
{
    if (const auto written = writeNew(out, pdfOf(day, found, on)); !written)
        return ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "--pdf: '%1' cannot be written: %2"),
                                          {out, written.error().simplified()}));
    QJsonObject done = doneOf(day, found);
    done[u"pdf"_s] = out;
    return {Status::Done, done, {}};
}

/// The way out that was asked for.
Outcome giveOut(const Arguments& arguments, const QString& day, const Day& found, const OnPaper& on, const Words& words)
{
    if (arguments.options.contains(u"pdf"_s))
        return print(arguments.options.value(u"pdf"_s), day, found, on);
    if (arguments.options.contains(u"csv"_s))
        return {Status::Done, std::nullopt, {}, dayToCsv(day, found.entries)};
    const QJsonObject json = dayToJson(day, found.entries, found.head, words);
    if (arguments.options.contains(u"json"_s))
        return {Status::Done, json, {}};
    return writeDayFiles(u"--into"_s, arguments.options.value(u"into"_s), day,
                         {{u"pdf"_s, pdfOf(day, found, on)},
                          {u"csv"_s, dayToCsv(day, found.entries)},
                          {u"json"_s, QJsonDocument(json).toJson(QJsonDocument::Indented)}},
                         doneOf(day, found));
}

Outcome runReport(const Arguments& arguments, const Words& words)
{
    Faults faults;
    const QString path = arguments.options.value(u"log"_s);
    const QString day = dayMeant(arguments, faults);
    judgeWay(arguments, faults);
    judgeOut(arguments, day, faults);
    judgePaperOnly(arguments, faults);
    const Paper paper = oneOf<Paper>(arguments, u"paper"_s, faults);
    const UnitSystem units = oneOf<UnitSystem>(arguments, u"units"_s, faults);
    if (!faults.empty())
        return refused(faults, words);

    const ReadAssumptions bench = AssumptionsFile::besideLog(path).load(); // the bench's own, where it has some
    if (!bench.faults.empty())
        return refused(bench.faults, words);
    const Assumptions& assumptions = bench.book.now;
    const auto verified = verifyLog(path); // a report is of a log that holds
    if (!verified)
        return ended(Status::LogDamaged, troubleLine(path, verified.error()));
    if (!verified->clean)
        return {Status::LogDamaged, std::nullopt, breakLine(path, *verified)};
    const auto log = RepairLog::open(path, LogMode::ReadOnly);
    if (!log)
        return ended(Status::LogDamaged, troubleLine(path, log.error()));
    const auto found = readDay(**log, day, assumptions);
    if (!found)
        return ended(Status::LogDamaged, troubleLine(path, found.error()));
    return giveOut(arguments, day, *found, {**log, assumptions, paper, Words(units, words.locale())}, words);
}

} // namespace

Command reportCommand()
{
    return {
        "report",
        QT_TRANSLATE_NOOP("Headless", "One day's repairs with their records, as JSON, CSV or on paper."),
        false,
        {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log; the program may be running on it."), true},
         {"day", "YYYY-MM-DD",
          QT_TRANSLATE_NOOP("Headless", "The day, by the bench's own clock; or today or yesterday, by this machine's."),
          true},
         {"json", nullptr, QT_TRANSLATE_NOOP("Headless", "JSON on standard output: the whole records.")},
         {"csv", nullptr, QT_TRANSLATE_NOOP("Headless", "CSV on standard output: one row a repair.")},
         {"pdf", "OUT", QT_TRANSLATE_NOOP("Headless", "A PDF; a file that is there is never overwritten.")},
         {"into", "DIR",
          QT_TRANSLATE_NOOP("Headless", "All three as day-YYYY-MM-DD.pdf, .csv and .json in a folder; none where one "
                                        "of them is there already.")},
         {"paper", "SIZE", QT_TRANSLATE_NOOP("Headless", "Of the PDF: a4 or letter; otherwise a4.")},
         {"units", "SYSTEM", QT_TRANSLATE_NOOP("Headless", "Of the PDF: metric or us; otherwise metric.")}},
        runReport,
        {"pdf", "into"}};
}

} // namespace strandbench::headless
