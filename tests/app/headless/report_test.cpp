// SPDX-License-Identifier: GPL-3.0-or-later
// The day's report: JSON read back beside the record, CSV read back by Python's own reader, the PDF by poppler.
#include "report_fixture.h"

#include "bench/assumptions_file.h"
#include "review/deviations.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

TEST_F(Report, JsonHoldsTheRecord)
{
    const Ran ran = report({u"--json"_s});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty());
    const QJsonObject json = ran.json();
    EXPECT_EQ(json[u"day"_s].toString(), m_day);
    EXPECT_EQ(json[u"chain_head"_s][u"hash"_s].toString(), QString::fromLatin1(m_head.hash.toHex()));
    EXPECT_EQ(json[u"chain_head"_s][u"count"_s].toInteger(), m_head.count);
    ASSERT_EQ(json[u"repairs"_s].toArray().size(), 1);
    const QJsonObject repair = json[u"repairs"_s][0].toObject();
    EXPECT_EQ(repair[u"repair"_s].toString(), m_repair.toString(QUuid::WithoutBraces));
    EXPECT_EQ(repair[u"job"_s].toString(), m_record.repair.job);
    EXPECT_EQ(repair[u"panel"_s].toString(), m_record.repair.panel);
    EXPECT_EQ(repair[u"state"_s].toString(), u"done"_s);
    EXPECT_EQ(repair[u"people"_s].toArray(), QJsonArray::fromStringList(m_record.people));
    EXPECT_EQ(repair[u"lasted_s"_s].toDouble(), inSeconds(m_record.lasted));
    EXPECT_EQ(repair[u"answers"_s].toArray().size(), qsizetype(m_record.answers.size()));
    EXPECT_EQ(repair[u"plans"_s].toArray().size(), qsizetype(m_record.plans.size()));
    EXPECT_EQ(repair[u"steps"_s].toArray().size(), qsizetype(m_record.steps.size()));
    EXPECT_EQ(repair[u"layers"_s].toArray().size(), qsizetype(m_record.layers.size()));
    EXPECT_EQ(repair[u"photos_missing"_s].toArray().size(), 4);
    EXPECT_EQ(repair[u"taken_in"_s][u"seq"_s].toInt(), 1);
}

TEST_F(Report, JsonHoldsEveryBatchAndReading)
{
    const QJsonObject repair = report({u"--json"_s}).json()[u"repairs"_s][0].toObject();
    const QJsonArray batches = repair[u"batches"_s].toArray();
    ASSERT_EQ(batches.size(), qsizetype(m_record.batches.size()));
    for (qsizetype i = 0; i < batches.size(); ++i) {
        const BatchRecord& expected = m_record.batches[std::size_t(i)];
        const QJsonObject batch = batches[i].toObject();
        EXPECT_EQ(batch[u"batch"_s][u"index"_s].toInt(), expected.batch.index);
        EXPECT_EQ(batch[u"batch"_s][u"finishing"_s].toBool(), expected.batch.finishing);
        EXPECT_NEAR(batch[u"filler_g"_s].toDouble(), inGrams(expected.mixed.filler), 1e-9);
        EXPECT_NEAR(batch[u"hardener_g"_s].toDouble(), inGrams(expected.mixed.hardener), 1e-9);
        EXPECT_NEAR(batch[u"hardener_percent"_s].toDouble(), expected.hardenerShare.percent(), 1e-9);
        EXPECT_NEAR(batch[u"planned"_s][u"filler_g"_s].toDouble(), inGrams(expected.planned.filler), 1e-9);
        EXPECT_NEAR(batch[u"predicted"_s][u"gel_s"_s].toDouble(), inSeconds(expected.mixed.times.gel), 1e-9);
        EXPECT_EQ(batch[u"sheet"_s].toString(), expected.mixed.sheetId);
        EXPECT_NEAR(batch[u"edges_clear"_s][u"after_s"_s].toDouble(), inSeconds(expected.since(*expected.edgesClear)),
                    1e-9);
        EXPECT_TRUE(batch[u"filler_lot"_s].isNull()) << "not told is null, not an empty text";
        EXPECT_TRUE(batch[u"panel_gelled"_s].isNull());
    }
    const QJsonArray readings = repair[u"readings"_s].toArray();
    ASSERT_EQ(readings.size(), qsizetype(m_record.readings.size()));
    for (qsizetype i = 0; i < readings.size(); ++i) {
        const ReadingRecord& expected = m_record.readings[std::size_t(i)];
        EXPECT_NEAR(readings[i][u"panel_c"_s].toDouble(), inCelsius(expected.reading.panel), 1e-9);
        EXPECT_NEAR(readings[i][u"margin_k"_s].toDouble(), inKelvinStep(expected.margin), 1e-9);
    }
}

TEST_F(Report, JsonHoldsEveryDeviationWithItsFigures)
{
    const QJsonArray found = report({u"--json"_s}).json()[u"repairs"_s][0][u"deviations"_s].toArray();
    const auto expected = deviationsOf(m_record, demoCatalogue());
    ASSERT_FALSE(expected.empty());
    ASSERT_EQ(found.size(), qsizetype(expected.size()));
    for (qsizetype i = 0; i < found.size(); ++i) {
        const Deviation& each = expected[std::size_t(i)];
        EXPECT_EQ(found[i][u"code"_s].toString(), codeOf(each.kind));
        EXPECT_EQ(found[i][u"seq"_s].toInteger(), each.told.seq);
        EXPECT_EQ(found[i][u"arguments"_s].toArray().size(), qsizetype(each.arguments.size()));
        EXPECT_FALSE(found[i][u"text"_s].toString().isEmpty());
    }
}

/// A bench that goes by narrower limits keeps them beside its log; its report goes by them too.
TEST_F(Report, GoesByTheBenchsOwnLimits)
{
    const auto codes = [](const Ran& ran) {
        QStringList found;
        for (const QJsonValue& each : ran.json()[u"repairs"_s][0][u"deviations"_s].toArray())
            found << each[u"code"_s].toString();
        return found;
    };
    ASSERT_LT(inCelsius(m_record.readings.front().reading.panel), 20) << "the script's panel";
    EXPECT_FALSE(codes(report({u"--json"_s})).contains(u"panel_too_cold"_s));
    AssumptionBook book;
    book.now.decision.filling.panelLow = celsius(20);
    book.now.decision.filling.panelCautionBelow = celsius(21);
    ASSERT_TRUE(AssumptionsFile::besideLog(path()).save(book));
    EXPECT_TRUE(codes(report({u"--json"_s})).contains(u"panel_too_cold"_s));

    QFile damaged(m_folder.filePath(u"assumptions.json"_s));
    ASSERT_TRUE(damaged.open(QIODevice::WriteOnly));
    damaged.write(R"({"format":1,"changed":{"panel_low_c":45}})");
    damaged.close();
    expectRefused(report({u"--json"_s}), {u"panel_low_c"_s, u"45"_s, u"20"_s});
}

TEST_F(Report, MomentsCarryTheBenchsOwnOffset)
{
    const QString at = report({u"--json"_s}).json()[u"repairs"_s][0][u"taken_in"_s][u"at"_s].toString();
    EXPECT_TRUE(at.endsWith(u"+01:00"_s)) << at.toStdString();
    EXPECT_TRUE(at.startsWith(m_day)) << at.toStdString();
    EXPECT_EQ(QDateTime::fromString(at, Qt::ISODateWithMs).toMSecsSinceEpoch(), m_record.repair.takenInAt.utcMs);
}

TEST_F(Report, CsvReadsBackByAnotherReader)
{
    const Ran ran = report({u"--csv"_s});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty());
    QProcess python;
    python.start(u"python3"_s, {u"-c"_s, u"import csv,io,json,sys\n"
                                         "t=io.TextIOWrapper(sys.stdin.buffer,'utf-8',newline='')\n"
                                         "print(json.dumps(list(csv.DictReader(t,strict=True))))"_s});
    python.write(ran.out);
    python.closeWriteChannel();
    ASSERT_TRUE(python.waitForFinished(30000));
    ASSERT_EQ(python.exitCode(), 0) << python.readAllStandardError().toStdString();
    const QJsonArray rows = QJsonDocument::fromJson(python.readAllStandardOutput()).array();
    ASSERT_EQ(rows.size(), 1);
    EXPECT_EQ(rows[0][u"day"_s].toString(), m_day);
    EXPECT_EQ(rows[0][u"panel"_s].toString(), m_record.repair.panel) << "a comma, quotes and a line end in it";
    EXPECT_EQ(rows[0][u"batches"_s].toString(), QString::number(m_record.batches.size()));
    EXPECT_EQ(rows[0][u"mixed_filler_g"_s].toString().toDouble(), 240);
    EXPECT_EQ(rows[0][u"mixed_finishing_g"_s].toString().toDouble(), 120);
    EXPECT_EQ(rows[0][u"deviations"_s].toString(), QString::number(deviationsOf(m_record, demoCatalogue()).size()));
    // RFC 4180, 2.1: each record ends with CRLF.
    EXPECT_TRUE(ran.out.endsWith("\r\n"));
}

TEST_F(Report, PdfIsWrittenWithoutADisplay)
{
    const QString out = m_folder.filePath(u"day.pdf"_s);
    const Ran ran = report({u"--pdf"_s, out, u"--paper"_s, u"letter"_s});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty()) << ran.err.toStdString();
    EXPECT_EQ(ran.json()[u"pdf"_s].toString(), out);
    QProcess poppler;
    poppler.start(u"pdfinfo"_s, {out});
    ASSERT_TRUE(poppler.waitForFinished(30000));
    EXPECT_TRUE(poppler.readAllStandardOutput().contains("612 x 792 pts"));

    const Ran again = report({u"--pdf="_s + out});
    expectRefused(again, {u"--pdf"_s, out, u"no file has yet"_s});
}

TEST_F(Report, PdfThatCannotBeWrittenSaysWhy)
{
    const Ran ran = report({u"--pdf"_s, m_folder.filePath(u"no/such/folder/day.pdf"_s)});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.out.isEmpty());
    ASSERT_EQ(ran.messages().size(), 1) << ran.err.toStdString();
    EXPECT_TRUE(ran.messages()[0].contains(u"day.pdf"_s));
}

TEST_F(Report, RefusesWhatItCannotDoByName)
{
    expectRefused(report({u"--json"_s, u"--csv"_s}), {u"--json"_s, u"--csv"_s});
    expectRefused(report({}), {u"--json"_s, u"--csv"_s, u"--pdf"_s, u"--into"_s});
    expectRefused(report({u"--json"_s, u"--paper"_s, u"a4"_s}), {u"--paper"_s, u"--pdf"_s});
    expectRefused(report({u"--pdf"_s, m_folder.filePath(u"x.pdf"_s), u"--paper"_s, u"a5"_s}),
                  {u"--paper"_s, u"a5"_s, u"a4"_s, u"letter"_s});
    expectRefused(report({u"--json"_s, u"--json"_s}), {u"--json"_s, u"2"_s});
    for (const QString& day : {u"2026-02-30"_s, u"26-11-25"_s, u"tomorrow"_s, u"Today"_s, u"2026-1-1"_s})
        expectRefused(program({u"report"_s, u"--log"_s, path(), u"--day"_s, day, u"--json"_s}), {u"--day"_s, day});
    expectRefused(program({u"report"_s, u"--log"_s, path(), u"--json"_s}), {u"--day"_s});
    EXPECT_FALSE(QFile::exists(m_folder.filePath(u"x.pdf"_s)));
}

TEST_F(Report, ADayWithoutWorkIsEmptyNotWrong)
{
    const Ran json = program({u"report"_s, u"--log"_s, path(), u"--day"_s, u"1999-12-31"_s, u"--json"_s});
    ASSERT_EQ(json.status, 0);
    EXPECT_TRUE(json.json()[u"repairs"_s].isArray());
    EXPECT_TRUE(json.json()[u"repairs"_s].toArray().isEmpty());
    const Ran csv = program({u"report"_s, u"--log"_s, path(), u"--day"_s, u"1999-12-31"_s, u"--csv"_s});
    EXPECT_EQ(csv.out.count('\n'), 1) << "the heading alone";
}

TEST_F(Report, ALogThatIsMissingOrDamagedIsStatusThree)
{
    EXPECT_EQ(program({u"report"_s, u"--log"_s, path() + u".not"_s, u"--day"_s, m_day, u"--json"_s}).status, 3);
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const qsizetype at = file.readAll().indexOf("R. Quist");
    ASSERT_GE(at, 0);
    file.seek(at);
    file.write("Q. Quist");
    file.close();
    const QString out = m_folder.filePath(u"day.pdf"_s);
    for (const QStringList& way : {QStringList{u"--json"_s}, QStringList{u"--csv"_s}, QStringList{u"--pdf"_s, out}}) {
        const Ran ran = report(way);
        EXPECT_EQ(ran.status, 3) << way.first().toStdString();
        EXPECT_TRUE(ran.out.isEmpty());
        EXPECT_FALSE(ran.err.isEmpty());
    }
    EXPECT_FALSE(QFile::exists(out));
}

} // namespace
} // namespace strandbench
