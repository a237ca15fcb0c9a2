// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/job_sheet.h"

#include "report/job_tables.h"
#include "report/qr_code.h"
#include "report/sheet_code.h"
#include "report/sign_block.h"
#include "words/deviation_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int shownDigits = 16; // of the head, on every page
constexpr double codeSize = 44; // mm: modules of 0.6 mm and more, which a phone and a plain scanner read

struct Says {
    Q_DECLARE_TR_FUNCTIONS(JobSheet)
};

PageFrame frameOf(const QString& head, const ChainHead& log)
{
    PageFrame frame;
    frame.title = head;
    frame.head = head;
    frame.foot = Says::tr("The safety data sheet, the vehicle maker’s repair manual, local codes and licensed practice "
                          "come first.");
    //: %1 is the beginning of a hash, %2 how many entries the log had
    frame.mark = Says::tr("Log %1…, entries: %2")
                     .arg(QString::fromLatin1(log.hash.toHex().left(shownDigits)), QString::number(log.count));
    //: a page of a sheet: "1 of 3"
    frame.number = [](int page, int of) { return Says::tr("%1 of %2").arg(page).arg(of); };
    return frame;
}

/// code: what the square below holds.
void logEnd(PaperDocument& paper, const ChainHead& log, const QString& code)
{
    paper.heading(Says::tr("Log"), codeSize + 36);
    paper.pairs({{Says::tr("End of the chain"), QString::fromLatin1(log.hash.toHex())},
                 {Says::tr("Entries"), QString::number(log.count)},
                 {Says::tr("Bench"), log.origin}});
    const auto square = QrCode::of(code);
    if (!square)
        return paper.line(Says::tr("No code: what it would hold is too long for one."));
    paper.drawing(codeSize, codeSize,
                  [square](QPainter& painter, const QRectF& room) { square->paint(painter, room); });
    paper.small(Says::tr("In the code: what this sheet is of, and the end of the log’s chain when it was printed."));
}

QString jobHead(const JobRecord& record, const Words& words)
{
    return Says::tr("Job sheet · %1 · %2 · %3")
        .arg(words.jobLabel(record.repair.job), record.repair.panel,
             QStringList(record.days.begin(), record.days.end()).join(u", "_s));
}

void writeJob(PaperDocument& paper, const JobRecord& record, const SheetFacts& facts, const Words& words)
{
    JobTables tables(paper, record, facts, words);
    tables.identity();
    tables.deviations();
    tables.section();
    tables.found();
    tables.plans();
    tables.readings();
    tables.batches();
    tables.layers();
    tables.steps();
    tables.parkings();
    tables.notes();
    tables.photos();
    tables.handOverTests();
    writeSignBlock(paper, record);
}

/// What a job sheet holds; all given outlive it.
WritePaper jobPaper(const JobRecord& record, const SheetFacts& facts, const Words& words)
{
    return [&record, &facts, &words](PaperDocument& paper) {
        writeJob(paper, record, facts, words);
        logEnd(paper, facts.head, jobSheetCode(record.repair, facts.head));
    };
}

void writeDay(PaperDocument& paper, const QString& day, const std::vector<JobRecord>& records, const SheetFacts& facts,
              const Words& words)
{
    //: %1 is a day, "2026-11-25"
    paper.title(Says::tr("Work of %1").arg(day));
    if (records.empty())
        return paper.line(Says::tr("Nothing was recorded on this day."));
    std::vector<QStringList> rows;
    for (const JobRecord& each : records) {
        QStringList deviations;
        for (const Deviation& one : deviationsOf(each, facts.catalogue, limitsFrom(facts.assumptions)))
            deviations << deviationText(one, words);
        rows.push_back({each.repair.job, each.repair.panel, JobTables::partOf(each, words),
                        Words::title(words.station(nextStep(each.repair).station)), each.people.join(u", "_s),
                        deviations.isEmpty() ? Words::title(deviationCount(0)) : deviations.join(u'\n')});
    }
    paper.table({{Says::tr("Job"), 0.8},
                 {Says::tr("Panel"), 1.8},
                 {Says::tr("What"), 1.6},
                 {Says::tr("State"), 1.2},
                 {Says::tr("Who"), 1.2},
                 {Says::tr("Deviations"), 4}},
                rows);
    writeSignBlock(paper, records);
}

/// What the day's pages hold; everything it is given outlives it.
std::function<void(PaperDocument&)> dayPaper(const QString& day, const std::vector<JobRecord>& records,
                                             const SheetFacts& facts, const Words& words)
{
    return [&](PaperDocument& paper) {
        writeDay(paper, day, records, facts, words);
        logEnd(paper, facts.head, daySheetCode(day, facts.head));
        for (const JobRecord& each : records) {
            paper.startPage();
            writeJob(paper, each, facts, words);
        }
    };
}

} // namespace

QByteArray jobSheetPdf(const JobRecord& record, const SheetFacts& facts, const Words& words)
{
    return printPdf(facts.paper, frameOf(jobHead(record, words), facts.head), jobPaper(record, facts, words),
                    facts.stop);
}

PrintEnd printJobSheet(QPagedPaintDevice& device, const JobRecord& record, const SheetFacts& facts, const Words& words)
{
    return printPages(device, frameOf(jobHead(record, words), facts.head), jobPaper(record, facts, words), facts.stop);
}

QByteArray dayPdf(const QString& day, const std::vector<JobRecord>& records, const SheetFacts& facts,
                  const Words& words)
{
    return printPdf(facts.paper, frameOf(Says::tr("Day sheet · %1").arg(day), facts.head),
                    dayPaper(day, records, facts, words), facts.stop);
}

PrintEnd printDay(QPagedPaintDevice& device, const QString& day, const std::vector<JobRecord>& records,
                  const SheetFacts& facts, const Words& words)
{
    return printPages(device, frameOf(Says::tr("Day sheet · %1").arg(day), facts.head),
                      dayPaper(day, records, facts, words), facts.stop);
}

} // namespace strandbench
