// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench keep, merge, restore and rescue: backups in a folder, logs brought together, a backup in the place of the
// log, and what is left of a damaged one.
#include "headless/command.h"
#include "headless/input.h"
#include "headless/log_lines.h"
#include "report/day_json.h"
#include "headless/number_option.h"
#include "repairlog/backup_folder.h"
#include "repairlog/recorded.h"
#include "repairlog/rescue.h"
#include "repairlog/writer_lock.h"
#include "roles/pin_door.h"
#include "words/role_words.h"

#include <QFileInfo>
#include <QJsonArray>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

constexpr double usualCopies = 14;
constexpr double mostCopies = 1000;

QString optionOf(const Arguments& arguments, const char* name)
{
    return arguments.options.value(QLatin1StringView(name));
}

QJsonArray headsToJson(const VerifyReport& report)
{
    QJsonArray heads;
    for (const ChainHead& head : report.heads)
        heads << headToJson(head);
    return heads;
}

QJsonArray chainsToJson(const std::vector<MergedChain>& chains)
{
    QJsonArray list;
    for (const MergedChain& each : chains)
        list << QJsonObject{{u"origin"_s, each.origin},
                            {u"own"_s, each.own},
                            {u"here"_s, each.here},
                            {u"there"_s, each.there},
                            {u"added"_s, each.added},
                            {u"parts_at"_s, each.partsAt == 0 ? QJsonValue() : QJsonValue(each.partsAt)},
                            {u"head"_s, QString::fromLatin1(each.head.toHex())}};
    return list;
}

QStringList conflictLines(const std::vector<MergedChain>& chains)
{
    QStringList lines;
    for (const MergedChain& each : chains)
        if (each.partsAt != 0)
            lines << say(QT_TRANSLATE_NOOP("Headless", "bench %1: the two logs tell different things from entry %2 on; "
                                                       "its entries were left as they are here"),
                         {each.origin, QString::number(each.partsAt)});
    return lines;
}

/// Either what was asked for, or how it failed: the log's own troubles, or those of another file, named.
Outcome failedFor(const QString& path, const LogFailure& failure)
{
    return ended(failure.trouble == LogTrouble::DiskFull ? Status::Trouble : Status::LogDamaged,
                 troubleLine(path, failure));
}

Outcome runKeep(const Arguments& arguments, const Words& words)
{
    Faults faults;
    const auto copies = numberOption(arguments, u"copies"_s, {double(fewestBackups), mostCopies, {}, false}, faults);
    if (!faults.empty())
        return refused(faults, words);
    const QString log = optionOf(arguments, "log");
    const QString folder = optionOf(arguments, "folder");
    if (const auto source = RepairLog::open(log, LogMode::ReadOnly); !source)
        return ended(Status::LogDamaged, troubleLine(log, source.error()));
    const auto done = backupIntoFolder(log, folder, int(copies.value_or(usualCopies)), SystemClock().now());
    if (!done && done.error().trouble == LogTrouble::Damaged)
        return ended(Status::LogDamaged, troubleLine(log, done.error()));
    if (!done)
        return ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "--folder: '%1' cannot be written: %2"),
                                          {folder, done.error().detail.simplified()}));
    return {Status::Done,
            QJsonObject{{u"file"_s, done->file.path},
                        {u"heads"_s, headsToJson(done->report)},
                        {u"given_up"_s, QJsonArray::fromStringList(done->givenUp)}},
            {}};
}

/// The lock of a log that is to be changed, or what keeps it.
struct Held {
    std::unique_ptr<WriterLock> lock;
    std::optional<Outcome> refusal;
};

Held hold(const QString& log)
{
    auto lock = WriterLock::take(log);
    if (!lock)
        return {nullptr, ended(Status::LogDamaged, troubleLine(log, inUseBy(lock.error())))};
    return {*std::move(lock), std::nullopt};
}

Outcome runMerge(const Arguments& arguments, const Words&)
{
    const QString log = optionOf(arguments, "log");
    const QString from = optionOf(arguments, "from");
    const bool dry = arguments.options.contains(u"dry-run"_s);
    for (const QString& each : {log, from}) // each told by its own name
        if (const auto there = RepairLog::open(each, LogMode::ReadOnly); !there)
            return ended(Status::LogDamaged, troubleLine(each, there.error()));
    const Held held = dry ? Held{} : hold(log);
    if (held.refusal)
        return *held.refusal;
    const auto report = mergeLog(log, from, dry ? MergeMode::DryRun : MergeMode::Write,
                                 MergedBy{optionOf(arguments, "person"), SystemClock().now()});
    if (!report)
        return failedFor(from, report.error());
    QJsonArray twice;
    for (const OpenTwice& each : report->openTwice)
        twice << QJsonObject{{u"job"_s, each.job}, {u"panel"_s, each.panel}};
    return {report->conflicts() ? Status::Trouble : Status::Done,
            QJsonObject{{u"dry_run"_s, dry},
                        {u"added"_s, report->added},
                        {u"repairs"_s, report->repairs},
                        {u"chains"_s, chainsToJson(report->chains)},
                        {u"open_twice"_s, twice}},
            conflictLines(report->chains)};
}

/// Whoever takes a log's place away from it needs the PIN, where one is set.
std::optional<Outcome> refusedByDoor(const QString& log, const Words& words)
{
    const SystemClock clock;
    PinDoor door(pinPathOf(log), clock);
    if (!QFileInfo::exists(log) || !door.isSet())
        return std::nullopt;
    const Input input = readInput(u"-"_s, words);
    const QString pin = QString::fromUtf8(input.bytes.value_or(QByteArray()).split('\n').constFirst()).trimmed();
    const auto opened = door.open(pin);
    if (opened)
        return std::nullopt;
    return ended(Status::Refused, say(QT_TRANSLATE_NOOP("Headless", "%1: refused, %2"),
                                      {supervisorActName(SupervisorAct::Restore), actRefusalText(opened.error().why)}));
}

QJsonObject restoredToJson(const RestoreReport& report, bool dry)
{
    return {{u"dry_run"_s, dry},
            {u"backup_events"_s, report.backup.events},
            {u"log_was_there"_s, report.logThere},
            {u"log_was_whole"_s, report.logWhole},
            {u"fetched"_s, report.fetched},
            {u"loose"_s, report.loose},
            {u"parted"_s, chainsToJson(report.parted)},
            {u"complete"_s, report.complete()},
            {u"earlier_log"_s, report.earlier.isEmpty() ? QJsonValue() : QJsonValue(report.earlier)},
            {u"events"_s, report.after.events},
            {u"heads"_s, headsToJson(report.after)}};
}

Outcome runRestore(const Arguments& arguments, const Words& words)
{
    const QString log = optionOf(arguments, "log");
    const QString from = optionOf(arguments, "from");
    const bool dry = arguments.options.contains(u"dry-run"_s);
    if (const auto backup = RepairLog::open(from, LogMode::ReadOnly); !backup)
        return ended(Status::LogDamaged, troubleLine(from, backup.error()));
    const Held held = dry ? Held{} : hold(log);
    if (held.refusal)
        return *held.refusal;
    if (!dry)
        if (auto shut = refusedByDoor(log, words))
            return *shut;
    const auto report = dry ? restoreLog(log, from, MergeMode::DryRun)
                            : restoreAndRecord(log, from, optionOf(arguments, "person"), SystemClock().now());
    if (!report)
        return failedFor(from, report.error());
    QStringList messages = conflictLines(report->parted);
    if (!report->complete())
        messages << say(QT_TRANSLATE_NOOP("Headless", "not all of the log that was there could be taken along"));
    return {Status::Done, restoredToJson(*report, dry), messages};
}

Outcome runRescue(const Arguments& arguments, const Words& words)
{
    const QString log = optionOf(arguments, "log");
    const QString to = optionOf(arguments, "to");
    if (const auto taken = nameTaken(u"--to"_s, to))
        return refused({*taken}, words);
    const auto report = rescueLog(log, to);
    if (!report)
        return failedFor(log, report.error());
    QStringList messages;
    if (report->loose > 0)
        messages << say(QT_TRANSLATE_NOOP("Headless", "%1 entries do not follow on the rest; they are in %2"),
                        {QString::number(report->loose), report->looseFile});
    return {Status::Done,
            QJsonObject{{u"to"_s, to},
                        {u"events"_s, report->rescued.events},
                        {u"repairs"_s, report->rescued.repairs},
                        {u"heads"_s, headsToJson(report->rescued)},
                        {u"loose"_s, report->loose},
                        {u"loose_file"_s, report->looseFile.isEmpty() ? QJsonValue() : QJsonValue(report->looseFile)},
                        {u"unread_bytes"_s, report->unreadBytes},
                        {u"blobs_missing"_s, report->blobsMissing},
                        {u"origin_guessed"_s, report->originGuessed}},
            messages};
}

} // namespace

Command keepCommand()
{
    return {"keep",
            QT_TRANSLATE_NOOP("Headless", "A verified backup into a folder; the oldest there are given up."),
            false,
            {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log; the program may be running on it."), true},
             {"folder", "FOLDER", QT_TRANSLATE_NOOP("Headless", "The folder: a stick, a share."), true},
             {"copies", "N", QT_TRANSLATE_NOOP("Headless", "How many backups stay: 2 to 1000, 14 if not told.")}},
            runKeep};
}

Command mergeCommand()
{
    return {"merge",
            QT_TRANSLATE_NOOP("Headless", "Brings another bench’s log in; a second time adds nothing."),
            false,
            {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log that takes in; no bench has it open."), true},
             {"from", "FILE", QT_TRANSLATE_NOOP("Headless", "The log that is brought in; it is only read."), true},
             {"person", "NAME", QT_TRANSLATE_NOOP("Headless", "Who does it."), true},
             {"dry-run", nullptr, QT_TRANSLATE_NOOP("Headless", "Only says what would be.")}},
            runMerge};
}

Command restoreCommand()
{
    return {
        "restore",
        QT_TRANSLATE_NOOP("Headless", "A backup in the place of the log; the PIN on standard input, if one is set."),
        false,
        {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log; it is kept in a folder beside."), true},
         {"from", "FILE", QT_TRANSLATE_NOOP("Headless", "The backup."), true},
         {"person", "NAME", QT_TRANSLATE_NOOP("Headless", "Who does it."), true},
         {"dry-run", nullptr, QT_TRANSLATE_NOOP("Headless", "Only says what would be.")}},
        runRestore};
}

Command rescueCommand()
{
    return {"rescue",
            QT_TRANSLATE_NOOP("Headless", "What can be read of a damaged log, as a new one."),
            false,
            {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The damaged log; it is only read."), true},
             {"to", "FILE", QT_TRANSLATE_NOOP("Headless", "The new log; a file that is there is never overwritten."),
              true}},
            runRescue};
}

} // namespace strandbench::headless
