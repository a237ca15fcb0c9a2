// SPDX-License-Identifier: GPL-3.0-or-later
#include "csv_readers.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString reading = u"import csv,io,json,sys\n"
                        "rows=list(csv.reader(io.TextIOWrapper(sys.stdin.buffer,'utf-8',newline=''),strict=True))\n"_s;

QByteArray run(const QString& program, const QStringList& arguments, const QByteArray& input)
{
    QProcess process;
    process.start(program, arguments);
    process.write(input);
    process.closeWriteChannel();
    const bool ended = process.waitForFinished(60000) && process.exitStatus() == QProcess::NormalExit;
    const QByteArray remarks = process.readAllStandardError();
    if (!ended || process.exitCode() != 0 || !remarks.isEmpty())
        throw std::runtime_error(program.toStdString() + ": " + process.errorString().toStdString() + ' ' +
                                 remarks.toStdString());
    return process.readAllStandardOutput();
}

} // namespace

QJsonArray pythonRows(const QByteArray& csv)
{
    return QJsonDocument::fromJson(run(u"python3"_s, {u"-c"_s, reading + u"print(json.dumps(rows))"_s}, csv)).array();
}

QByteArray pythonWrites(const QByteArray& csv)
{
    const QString writing = u"out=io.StringIO(newline='')\n"
                            "csv.writer(out,lineterminator='\\r\\n',quoting=csv.QUOTE_MINIMAL).writerows(rows)\n"
                            "sys.stdout.buffer.write(out.getvalue().encode('utf-8'))"_s;
    return run(u"python3"_s, {u"-c"_s, reading + writing}, csv);
}

QJsonArray sqliteRows(const QByteArray& csv)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(u"rows.csv"_s));
    if (!file.open(QIODevice::WriteOnly) || file.write(csv) != csv.size())
        throw std::runtime_error("the temporary folder cannot be written");
    file.close();
    QStringList columns;
    const qsizetype width = pythonRows(csv)[0].toArray().size();
    for (qsizetype i = 0; i < width; ++i)
        columns << u"c%1 TEXT"_s.arg(i);
    const QString script = u"CREATE TABLE t(%1);\n.import --csv --skip 1 '%2' t\n.mode json\nSELECT * FROM t;\n"_s.arg(
        columns.join(u','), file.fileName());
    const QByteArray out = run(u"sqlite3"_s, {u"-batch"_s, u"-bail"_s, u":memory:"_s}, script.toUtf8());
    QJsonArray rows;
    const QJsonArray read = QJsonDocument::fromJson(out).array();
    for (const QJsonValue& each : read) {
        QJsonArray row;
        for (qsizetype i = 0; i < width; ++i)
            row << each.toObject().value(u"c%1"_s.arg(i));
        rows << row;
    }
    return rows;
}

bool isIso(const QString& text)
{
    QProcess python;
    python.start(u"python3"_s, {u"-c"_s, u"import datetime,sys\ndatetime.datetime.fromisoformat(sys.argv[1])"_s, text});
    return python.waitForFinished(60000) && python.exitStatus() == QProcess::NormalExit && python.exitCode() == 0;
}

} // namespace strandbench
