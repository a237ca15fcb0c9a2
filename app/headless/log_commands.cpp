// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench verify and strandbench backup: whether a log holds, and a copy of it that is proved to hold.
#include "headless/command.h"
#include "headless/log_lines.h"
#include "report/day_json.h"
#include "repairlog/repair_log.h"

#include <QJsonArray>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

QJsonValue textOrNull(const QString& text) { return text.isEmpty() ? QJsonValue() : QJsonValue(text); }

QJsonObject reportToJson(const VerifyReport& report)
{
    QJsonArray heads;
    for (const ChainHead& head : report.heads)
        heads << headToJson(head);
    return {{u"clean"_s, report.clean},
            {u"schema_version"_s, report.schemaVersion},
            {u"events"_s, report.events},
            {u"repairs"_s, report.repairs},
            {u"heads"_s, heads},
            {u"breaks_at"_s, textOrNull(report.breaksAt)},
            {u"where"_s, textOrNull(report.where)}};
}

Outcome runVerify(const Arguments& arguments, const Words& words)
{
    const QString path = arguments.options.value(u"log"_s);
    const QString expected = arguments.options.value(u"expect"_s);
    static const QRegularExpression hash(u"\\A[0-9a-fA-F]{64}\\z"_s);
    if (arguments.options.contains(u"expect"_s) && !hash.match(expected).hasMatch())
        return refused({{u"--expect"_s, expected, FaultKind::NotReadable, {QString(64, u'0')}}}, words);

    const Logged<VerifyReport> report = verifyLog(path, expected.toLower());
    if (!report)
        return ended(Status::LogDamaged, troubleLine(path, report.error()));
    return {report->clean ? Status::Done : Status::LogDamaged, reportToJson(*report), breakLine(path, *report)};
}

/// Whether a failure of the copy, once the log itself has opened, lies with the copy's place.
bool liesWithTheCopy(LogTrouble trouble)
{
    return trouble == LogTrouble::CannotOpen || trouble == LogTrouble::ReadOnly || trouble == LogTrouble::DiskFull ||
           trouble == LogTrouble::IoError;
}

Outcome runBackup(const Arguments& arguments, const Words& words)
{
    const QString path = arguments.options.value(u"log"_s);
    const QString to = arguments.options.value(u"to"_s);
    if (const auto taken = nameTaken(u"--to"_s, to))
        return refused({*taken}, words);
    if (const auto source = RepairLog::open(path, LogMode::ReadOnly); !source)
        return ended(Status::LogDamaged, troubleLine(path, source.error()));

    const Logged<VerifyReport> report = backupLog(path, to);
    if (!report) {
        const bool copy = liesWithTheCopy(report.error().trouble);
        return copy ? ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "--to: '%1' cannot be written: %2"),
                                                 {to, report.error().detail.simplified()}))
                    : ended(Status::LogDamaged, troubleLine(path, report.error()));
    }
    QJsonObject json = reportToJson(*report);
    json[u"to"_s] = to;
    return {report->clean ? Status::Done : Status::LogDamaged, json, breakLine(to, *report)};
}

} // namespace

Command verifyCommand()
{
    return {
        "verify",
        QT_TRANSLATE_NOOP("Headless", "Whether a log holds, and the first place where it breaks."),
        false,
        {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log."), true},
         {"expect", "HEAD", QT_TRANSLATE_NOOP("Headless", "A head that the chain must hold: 64 hexadecimal digits.")}},
        runVerify};
}

Command backupCommand()
{
    return {
        "backup",
        QT_TRANSLATE_NOOP("Headless", "A consistent copy of a log, verified after writing."),
        false,
        {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log; the program may be running on it."), true},
         {"to", "FILE", QT_TRANSLATE_NOOP("Headless", "The copy; a file that is there is never overwritten."), true}},
        runBackup};
}

} // namespace strandbench::headless
