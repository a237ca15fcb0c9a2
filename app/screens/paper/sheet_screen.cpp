// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/paper/sheet_screen.h"

#include "report/day_json.h"
#include "report/write_new.h"
#include "words/stock_words.h"

#include <QDate>
#include <QJsonDocument>
#include <QPointer>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Everything that sheets are made of, their own: the bench may change meanwhile.
struct Sheets {
    std::vector<JobRecord> records;
    std::map<QByteArray, QByteArray> pictures;
    ChainHead head;
    Catalogue catalogue;
    Assumptions assumptions;
    Words words;

    [[nodiscard]] SheetFacts facts(Paper paper, const std::stop_token& stop) const
    {
        const auto picture = [this](const QByteArray& hash) {
            const auto found = pictures.find(hash);
            return found == pictures.end() ? QByteArray() : found->second;
        };
        return {head, catalogue, assumptions, picture, paper, stop};
    }

    [[nodiscard]] std::vector<DayEntry> entries() const
    {
        std::vector<DayEntry> all;
        for (const JobRecord& each : records)
            all.push_back({each, deviationsOf(each, catalogue, limitsFrom(assumptions))});
        return all;
    }
};

std::shared_ptr<Sheets> sheetsOf(const Surroundings& around, const ChainHead& head)
{
    return std::make_shared<Sheets>(
        Sheets{{}, {}, head, around.bench.planning().catalogue, around.bench.assumptions(), around.words});
}

} // namespace

SheetScreen::SheetScreen(const Surroundings& around, const QUuid& repair, QWidget* parent, Printing printing)
    : PaperScreen(around, u"screen_sheet"_s, tr("Choose where the job sheet goes"), parent, std::move(printing))
{
    around.bench.recorder().readRepair(repair, [screen = QPointer<SheetScreen>(this)](const Logged<RepairFile>& file) {
        if (screen)
            screen->keep(file);
    });
}

void SheetScreen::keep(const Logged<RepairFile>& file)
{
    if (!file)
        return showTrouble(file.error());
    const auto record = recordOf(file->events, around().bench.planning().catalogue);
    if (!record)
        return showTrouble(tr("This record cannot be read."), words().fault(record.error().front()));
    setContext(contextOf(record->repair, words()));
    const auto sheets = sheetsOf(around(), file->head);
    sheets->records = {*record};
    sheets->pictures = file->pictures;
    Papers papers;
    papers.stem = u"job-%1-%2"_s.arg(asFileName(record->repair.job), localDay(around().bench.clock().now()));
    papers.pdf = [sheets](Paper paper, const std::stop_token& stop) {
        return jobSheetPdf(sheets->records.front(), sheets->facts(paper, stop), sheets->words);
    };
    papers.print = [sheets](QPagedPaintDevice& device, Paper paper, const std::stop_token& stop) {
        return printJobSheet(device, sheets->records.front(), sheets->facts(paper, stop), sheets->words);
    };
    ready(std::move(papers));
}

DaySheetsScreen::DaySheetsScreen(const Surroundings& around, const QString& day, QWidget* parent, Printing printing)
    : PaperScreen(around, u"screen_day_sheets"_s, tr("Choose where the day’s sheets go"), parent, std::move(printing)),
      m_day(day)
{
    setContext(stockDay(QDate::fromString(day, Qt::ISODate), words()));
    around.bench.recorder().readSheets(day,
                                       [screen = QPointer<DaySheetsScreen>(this)](const Logged<DaySheets>& sheets) {
                                           if (screen)
                                               screen->keep(sheets);
                                       });
}

void DaySheetsScreen::keep(const Logged<DaySheets>& read)
{
    if (!read)
        return showTrouble(read.error());
    const auto sheets = sheetsOf(around(), read->head);
    for (const RepairFile& each : read->repairs) {
        auto record = recordOf(each.events, sheets->catalogue);
        if (!record)
            return showTrouble(tr("A record of this day cannot be read."), words().fault(record.error().front()));
        sheets->records.push_back(*std::move(record));
        sheets->pictures.insert(each.pictures.begin(), each.pictures.end());
    }
    Papers papers;
    papers.stem = u"day-"_s + m_day;
    papers.pdf = [sheets, day = m_day](Paper paper, const std::stop_token& stop) {
        return dayPdf(day, sheets->records, sheets->facts(paper, stop), sheets->words);
    };
    papers.print = [sheets, day = m_day](QPagedPaintDevice& device, Paper paper, const std::stop_token& stop) {
        return printDay(device, day, sheets->records, sheets->facts(paper, stop), sheets->words);
    };
    papers.beside.emplace_back(u"csv"_s, [sheets, day = m_day] { return dayToCsv(day, sheets->entries()); });
    papers.beside.emplace_back(u"json"_s, [sheets, day = m_day] {
        return QJsonDocument(dayToJson(day, sheets->entries(), sheets->head, sheets->words)).toJson();
    });
    ready(std::move(papers));
}

} // namespace strandbench
