// SPDX-License-Identifier: GPL-3.0-or-later
// The same pages on a printer as in the PDF, from any thread, and none once asked to stop.
#include "pdf_reader.h"
#include "sample_record.h"

#include "report/recall_list.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>

#include <mutex>
#include <thread>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Words& metric()
{
    static const Words words(UnitSystem::Metric, QLocale::c());
    return words;
}

/// What Qt remarks while it lives: a class used in a thread where it may not be is a warning, not a failure.
class Remarks {
public:
    Remarks()
    {
        s_all.clear();
        m_before = qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString& text) {
            const std::lock_guard lock(s_mutex);
            s_all << text;
        });
    }
    ~Remarks() { qInstallMessageHandler(m_before); }
    Remarks(const Remarks&) = delete;
    Remarks& operator=(const Remarks&) = delete;
    [[nodiscard]] std::string all() const { return s_all.join(u'\n').toStdString(); }

private:
    static inline std::mutex s_mutex;
    static inline QStringList s_all;
    QtMessageHandler m_before;
};

QByteArray printed(Paper paper, int dotsPerInch)
{
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(u"printed.pdf"_s));
    printer.setResolution(dotsPerInch);
    printer.setFullPage(true);
    printer.setPageSize(pageSizeOf(paper));
    EXPECT_EQ(printJobSheet(printer, sampleRecord(), sampleFacts(paper), metric()), PrintEnd::Whole);
    QFile file(printer.outputFileName());
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

TEST(Print, ThePrintersPagesAreThePdfs)
{
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PdfReader pdf(jobSheetPdf(sampleRecord(), sampleFacts(paper), metric()));
        const PdfReader paged(printed(paper, sheetDotsPerInch));
        EXPECT_EQ(paged.pages(), pdf.pages());
        EXPECT_NEAR(paged.pageSizePoints().width(), pdf.pageSizePoints().width(), 1);
        EXPECT_NEAR(paged.pageSizePoints().height(), pdf.pageSizePoints().height(), 1);
    }
}

TEST(Print, AFinerPrinterGetsNoSmallerPages)
{
    const PdfReader pdf(jobSheetPdf(sampleRecord(), sampleFacts(Paper::A4), metric()));
    const PdfReader fine(printed(Paper::A4, 1200));
    EXPECT_EQ(fine.pages().size(), pdf.pages().size());
    const auto height = [](const PdfReader& of) { return of.placesOf(u"Sign-off"_s).at(0).height(); };
    EXPECT_NEAR(height(fine), height(pdf), 0.5) << "points";
}

TEST(Print, APrinterThatTakesNothingIsNoSuccess)
{
    const QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(u"no/such/folder/printed.pdf"_s));
    EXPECT_EQ(printJobSheet(printer, sampleRecord(), sampleFacts(Paper::A4), metric()), PrintEnd::Failed);
}

TEST(Print, TheSheetIsTheSameFromAThreadOfItsOwn)
{
    const JobRecord record = sampleRecord();
    const SheetFacts facts = sampleFacts(Paper::A4);
    const PdfReader here(jobSheetPdf(record, facts, metric()));
    QByteArray made[2];
    std::string remarks;
    {
        const Remarks heard;
        std::thread one([&] { made[0] = jobSheetPdf(record, facts, metric()); });
        std::thread two([&] { made[1] = jobSheetPdf(record, facts, metric()); });
        one.join();
        two.join();
        remarks = heard.all();
    }
    EXPECT_EQ(remarks, "");
    for (const QByteArray& each : made)
        EXPECT_EQ(PdfReader(each).pages(), here.pages());
}

TEST(Print, StopsWhenItIsAskedTo)
{
    std::stop_source stop;
    SheetFacts facts = sampleFacts(Paper::A4);
    facts.stop = stop.get_token();
    EXPECT_FALSE(jobSheetPdf(sampleRecord(), facts, metric()).isEmpty());
    facts.picture = [&stop](const QByteArray&) {
        stop.request_stop(); // midway
        return samplePicture();
    };
    EXPECT_TRUE(jobSheetPdf(sampleRecord(), facts, metric()).isEmpty());
    EXPECT_TRUE(dayPdf(u"2026-09-14"_s, {sampleRecord()}, facts, metric()).isEmpty());
    EXPECT_TRUE(recallPdf({}, {}, {}, Paper::A4, metric(), stop.get_token()).isEmpty());
}

} // namespace
} // namespace strandbench::test
