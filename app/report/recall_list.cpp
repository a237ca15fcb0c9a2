// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/recall_list.h"

#include "exchange/csv.h"
#include "words/event_words.h"
#include "words/stock_words.h"

#include <QCoreApplication>
#include <QDateTime>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(RecallList)
};

QString utcTime(qint64 utcMs) { return QDateTime::fromMSecsSinceEpoch(utcMs, Qt::UTC).toString(Qt::ISODate); }

} // namespace

QByteArray recallCsv(const std::vector<LotUse>& uses)
{
    QString csv = csvRow({u"product"_s, u"lot"_s, u"mixed_utc"_s, u"local_day"_s, u"repair"_s, u"job"_s, u"panel"_s,
                          u"batch"_s, u"amount_g"_s, u"person"_s});
    for (const LotUse& each : uses)
        csv += csvRow({each.of.product, each.of.lot, utcTime(each.utcMs), each.localDay,
                       each.repair.toString(QUuid::WithoutBraces), each.job, each.panel,
                       (each.finishing ? u"finishing "_s : u"filler "_s) + QString::number(each.batch + 1),
                       QString::number(inGrams(each.amount), 'f', 6), each.person});
    return csv.toUtf8();
}

QByteArray recallPdf(const StockLot& lot, const QString& product, const std::vector<LotUse>& uses, Paper paper,
                     const Words& words, const std::stop_token& stop)
{
    PageFrame frame;
    //: %1 is a product, %2 a lot
    frame.title = frame.head = Says::tr("Recall list · %1 · lot %2").arg(product, lot.lot);
    frame.foot =
        Says::tr("Every batch that this bench’s log names with this lot; batches whose lot was not told are not "
                 "among them.");
    //: a page of a list: "1 of 3"
    frame.number = [](int page, int of) { return Says::tr("%1 of %2").arg(page).arg(of); };
    const auto write = [&](PaperDocument& document) {
        document.title(frame.title);
        document.line(Says::tr("%n batch(es)", nullptr, static_cast<int>(uses.size())));
        std::vector<QStringList> rows;
        for (const LotUse& each : uses)
            rows.push_back({each.localDay, each.job, each.panel, batchName({each.finishing, each.batch}),
                            stockMass(each.amount, words), personText(each.person)});
        document.table({{Says::tr("Day"), 2},
                        {Says::tr("Job"), 2},
                        {Says::tr("Panel"), 4},
                        {Says::tr("Batch"), 2.5},
                        {Says::tr("Amount"), 1.8},
                        {Says::tr("Who"), 2}},
                       rows);
    };
    return printPdf(paper, frame, write, stop);
}

} // namespace strandbench
