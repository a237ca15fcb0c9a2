// SPDX-License-Identifier: GPL-3.0-or-later
// The report that a timer of the system asks for: three files a night, all of them or none; and what a log says of the
// signing, in JSON and CSV.
#include "report_fixture.h"

#include "csv_readers.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("cannot be read");
}

class Night : public Report {
protected:
    void SetUp() override
    {
        Report::SetUp();
        ASSERT_TRUE(m_into.isValid());
    }
    [[nodiscard]] QString into() const { return m_into.path(); }
    [[nodiscard]] QString file(const QString& ending) const
    {
        return m_into.filePath(u"day-"_s + m_day + u'.' + ending);
    }
    [[nodiscard]] QStringList there() const { return QDir(into()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot); }

private:
    QTemporaryDir m_into;
};

TEST_F(Night, WritesWhatTheOtherWaysPrint)
{
    const Ran ran = report({u"--into"_s, into(), u"--paper"_s, u"letter"_s});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.err.isEmpty()) << ran.err.toStdString();
    EXPECT_EQ(there().size(), 3);
    for (const QString& each : {u"pdf"_s, u"csv"_s, u"json"_s})
        EXPECT_EQ(ran.json()[each].toString(), file(each));
    EXPECT_EQ(ran.json()[u"day"_s].toString(), m_day);
    EXPECT_EQ(ran.json()[u"repairs"_s].toInt(), 1);
    EXPECT_EQ(bytesOf(file(u"json"_s)), report({u"--json"_s}).out);
    EXPECT_EQ(bytesOf(file(u"csv"_s)), report({u"--csv"_s}).out);
    QProcess poppler;
    poppler.start(u"pdfinfo"_s, {file(u"pdf"_s)});
    ASSERT_TRUE(poppler.waitForFinished(30000));
    EXPECT_EQ(poppler.exitCode(), 0);
    EXPECT_TRUE(poppler.readAllStandardOutput().contains("612 x 792 pts"));
}

/// A second run of the night is told so, by every name, and leaves what is there.
TEST_F(Night, ASecondRunIsRefusedByName)
{
    ASSERT_EQ(report({u"--into"_s, into()}).status, 0);
    const QByteArray before = bytesOf(file(u"pdf"_s));
    const Ran again = report({u"--into"_s, into()});
    EXPECT_EQ(again.status, 2);
    EXPECT_TRUE(again.out.isEmpty());
    ASSERT_EQ(again.messages().size(), 3) << again.err.toStdString();
    for (const QString& each : {u"pdf"_s, u"csv"_s, u"json"_s})
        EXPECT_TRUE(again.err.contains(file(each).toUtf8())) << again.err.toStdString();
    EXPECT_EQ(bytesOf(file(u"pdf"_s)), before);
    EXPECT_EQ(there().size(), 3);
}

TEST_F(Night, OneNameThatIsTakenKeepsAllFromBeingWritten)
{
    QFile own(file(u"csv"_s));
    ASSERT_TRUE(own.open(QIODevice::WriteOnly));
    own.write("somebody's own");
    own.close();
    expectRefused(report({u"--into"_s, into()}), {u"--into"_s, file(u"csv"_s), u"no file has yet"_s});
    EXPECT_EQ(there().size(), 1);
    EXPECT_EQ(bytesOf(file(u"csv"_s)), "somebody's own");
}

TEST_F(Night, AFolderIsNeverMade)
{
    const QString away = inFolder(u"stick"_s);
    expectRefused(report({u"--into"_s, away}), {u"--into"_s, away, u"a folder that is there"_s});
    EXPECT_FALSE(QFile::exists(away));
    expectRefused(report({u"--into"_s, path()}), {u"--into"_s, path(), u"a folder that is there"_s});
}

TEST_F(Night, WhatCannotBeWrittenIsSaid)
{
    const Ran ran = report({u"--into"_s, u"/proc"_s}); // where nobody may make a file
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.out.isEmpty());
    ASSERT_EQ(ran.messages().size(), 1) << ran.err.toStdString();
    EXPECT_TRUE(ran.messages()[0].contains(u"day-"_s + m_day)) << ran.messages()[0].toStdString();
}

TEST_F(Night, IsOneWayOutAmongFour)
{
    expectRefused(report({u"--into"_s, into(), u"--json"_s}), {u"--json"_s, u"--into"_s});
    expectRefused(program({u"report"_s, u"--log"_s, path(), u"--day"_s, u"2026-02-30"_s, u"--into"_s, into()}),
                  {u"--day"_s, u"2026-02-30"_s, u"yesterday"_s});
    EXPECT_TRUE(there().isEmpty());
}

TEST_F(Night, ADamagedLogWritesNothing)
{
    QFile log(path());
    ASSERT_TRUE(log.open(QIODevice::ReadWrite));
    const qsizetype at = log.readAll().indexOf("R. Quist");
    ASSERT_GE(at, 0);
    log.seek(at);
    log.write("Q. Quist");
    log.close();
    EXPECT_EQ(report({u"--into"_s, into()}).status, 3);
    EXPECT_TRUE(there().isEmpty());
}

/// The day by the machine's own clock, as coreutils' date has it: in two zones that never share one.
TEST_F(Night, TodayAndYesterdayAreTheMachinesOwn)
{
    const QByteArray before = qgetenv("TZ");
    QStringList days;
    for (const char* zone : {"Pacific/Kiritimati", "Etc/GMT+12"}) {
        qputenv("TZ", zone);
        for (const QString& word : {u"today"_s, u"yesterday"_s}) {
            const auto dated = [&word] {
                QProcess date;
                date.start(u"date"_s, {u"--date="_s + word, u"+%F"_s});
                EXPECT_TRUE(date.waitForFinished(30000));
                return QString::fromLatin1(date.readAllStandardOutput().trimmed());
            };
            const QString first = dated();
            const Ran ran = program({u"report"_s, u"--log"_s, path(), u"--day"_s, word, u"--json"_s});
            ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
            const QString day = ran.json()[u"day"_s].toString();
            EXPECT_TRUE(day == first || day == dated()) << day.toStdString() << " is not " << first.toStdString();
            days << day;
        }
    }
    if (before.isNull())
        qunsetenv("TZ");
    else
        qputenv("TZ", before);
    EXPECT_NE(days[0], days[2]) << "14 h ahead and 12 h behind";
    const Ran ran = program({u"report"_s, u"--log"_s, path(), u"--day"_s, u"yesterday"_s, u"--into"_s, into()});
    ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(there().filter(ran.json()[u"day"_s].toString()).size(), 3) << "the file has the day, not the word";
}

/// The row of the day's CSV, as Python reads it.
QJsonObject rowOf(const Ran& ran)
{
    const QJsonArray rows = pythonRows(ran.out);
    QJsonObject row;
    for (qsizetype i = 0; i < rows[0].toArray().size(); ++i)
        row[rows[0][i].toString()] = rows[1][i];
    return row;
}

TEST_F(Report, SaysThatNobodySigned)
{
    const QJsonObject repair = report({u"--json"_s}).json()[u"repairs"_s][0].toObject();
    for (const QString& each : {u"signed_off"_s, u"returned"_s, u"rework"_s, u"rework_of"_s})
        EXPECT_TRUE(repair.contains(each) && repair[each].isNull()) << each.toStdString();
    const QJsonObject row = rowOf(report({u"--csv"_s}));
    for (const QString& each : {u"signed_off"_s, u"signed_off_by"_s, u"returned"_s, u"returned_by"_s,
                                u"return_reason"_s, u"return_text"_s, u"rework"_s, u"rework_of"_s})
        EXPECT_EQ(row[each], QJsonValue(QString())) << each.toStdString();
}

class SignedReport : public Report {
protected:
    void goOn(test::RepairScript& script) override { ASSERT_FALSE(script.put(SignedOff{})); }
};

TEST_F(SignedReport, SaysByWhomAndWhen)
{
    const QJsonObject told = report({u"--json"_s}).json()[u"repairs"_s][0][u"signed_off"_s].toObject();
    const Event& event = m_record.events.back();
    EXPECT_EQ(told[u"person"_s].toString(), event.person);
    EXPECT_EQ(told[u"seq"_s].toInteger(), event.seq);
    EXPECT_EQ(QDateTime::fromString(told[u"at"_s].toString(), Qt::ISODateWithMs).toMSecsSinceEpoch(), event.at.utcMs);
    const QJsonObject row = rowOf(report({u"--csv"_s}));
    EXPECT_EQ(row[u"signed_off"_s], told[u"at"_s]);
    EXPECT_EQ(row[u"signed_off_by"_s].toString(), event.person);
    EXPECT_EQ(row[u"returned"_s].toString(), QString());
}

class ReturnedReport : public Report {
protected:
    void goOn(test::RepairScript& script) override
    {
        ASSERT_FALSE(script.put(Returned{u"pinholes"_s, u"left, \"below\" the lamp"_s}));
        ASSERT_FALSE(script.put(ReworkBegun{m_rework}));
    }
    const QUuid m_rework = QUuid::fromString(u"0f7c1b52-8f0e-4c53-9a55-d3fc3b1f0a11"_s);
};

TEST_F(ReturnedReport, SaysWhyAndWhatDoesItAgain)
{
    const QJsonObject repair = report({u"--json"_s}).json()[u"repairs"_s][0].toObject();
    const QJsonObject told = repair[u"returned"_s].toObject();
    EXPECT_EQ(told[u"code"_s].toString(), u"pinholes"_s);
    EXPECT_EQ(told[u"remark"_s].toString(), u"left, \"below\" the lamp"_s);
    EXPECT_TRUE(told[u"text"_s].toString().contains(u"Pinholes"_s));
    EXPECT_FALSE(told[u"person"_s].toString().isEmpty());
    EXPECT_TRUE(repair[u"signed_off"_s].isNull());
    EXPECT_EQ(repair[u"rework"_s].toString(), m_rework.toString(QUuid::WithoutBraces));
    const QJsonObject row = rowOf(report({u"--csv"_s}));
    EXPECT_EQ(row[u"returned"_s], told[u"at"_s]);
    EXPECT_EQ(row[u"returned_by"_s], told[u"person"_s]);
    EXPECT_EQ(row[u"return_reason"_s].toString(), u"pinholes"_s);
    EXPECT_EQ(row[u"return_text"_s].toString(), u"left, \"below\" the lamp"_s);
    EXPECT_EQ(row[u"rework"_s].toString(), m_rework.toString(QUuid::WithoutBraces));
    EXPECT_EQ(row[u"signed_off"_s].toString(), QString());
}

} // namespace
} // namespace strandbench
