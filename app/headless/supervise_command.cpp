// SPDX-License-Identifier: GPL-3.0-or-later
// strandbench supervise: a supervisor's act on a log that no bench has open. The PIN comes on the first line of
// standard input, never among the arguments, where others could read it.
#include "headless/command.h"
#include "headless/input.h"
#include "headless/log_lines.h"
#include "repair/lot_book.h"
#include "repairlog/writer_lock.h"
#include "roles/pin_door.h"
#include "words/role_words.h"

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

/// What --act may be. A new PIN is set at the machine, without the old one: whoever may write beside the log is there.
const QStringList& acts()
{
    static const QStringList all{u"sign_off"_s, u"return"_s, u"override"_s, u"correct"_s, u"forget"_s, u"new_pin"_s};
    return all;
}

struct Wanted {
    QUuid subject;
    Payload payload;
};

class Reader {
public:
    Reader(const Arguments& arguments, Faults& faults) : m_arguments(arguments), m_faults(faults) {}

    Wanted read()
    {
        const QString act = m_arguments.options.value(u"act"_s);
        if (act == u"sign_off"_s)
            return {repair(), SignedOff{}};
        if (act == u"return"_s)
            return {repair(),
                    Returned{oneOf(u"reason"_s, returnReasons()), m_arguments.options.value(u"text"_s).trimmed()}};
        if (act == u"override"_s)
            return {repair(), Overridden{{text(u"stop"_s)}, oneOf(u"reason"_s, overrideReasons())}};
        if (act == u"correct"_s)
            return {repair(), Corrected{seq(), text(u"text"_s)}};
        if (act == u"forget"_s) {
            const LotOfProduct lot{text(u"sheet"_s), text(u"lot"_s)};
            return {lotSubject(lot), LotForgotten{lot.sheetId, lot.hardenerLot, oneOf(u"reason"_s, forgetReasons())}};
        }
        if (act != u"new_pin"_s)
            m_faults.push_back({u"--act"_s, act, FaultKind::NotOneOf, acts()});
        return {benchSubject(), PinSet{true}};
    }

private:
    QString text(const QString& name)
    {
        const QString given = m_arguments.options.value(name).trimmed();
        if (given.isEmpty())
            m_faults.push_back({u"--"_s + name, {}, FaultKind::Missing, {u"…"_s}});
        return given;
    }
    QString oneOf(const QString& name, const std::vector<QString>& allowed)
    {
        const QString given = m_arguments.options.value(name);
        const QStringList all(allowed.begin(), allowed.end());
        if (!all.contains(given))
            m_faults.push_back({u"--"_s + name, given, FaultKind::NotOneOf, all});
        return given;
    }
    QUuid repair()
    {
        const QString given = m_arguments.options.value(u"repair"_s);
        const QUuid id = QUuid::fromString(given);
        if (id.isNull())
            m_faults.push_back(
                {u"--repair"_s, given, FaultKind::NotReadable, {benchSubject().toString(QUuid::WithoutBraces)}});
        return id;
    }
    qint64 seq()
    {
        bool number = false;
        const QString given = m_arguments.options.value(u"seq"_s);
        const qint64 value = given.toLongLong(&number);
        if (!number || value < 1)
            m_faults.push_back({u"--seq"_s, given, FaultKind::NotReadable, {u"12"_s}});
        return value;
    }

    const Arguments& m_arguments;
    Faults& m_faults;
};

/// Opens the door, or tells why it stays shut; that is written too.
std::optional<Outcome> refusedBy(PinDoor& door, const QString& pin, SupervisorAct act, RepairLog& log,
                                 const QString& person, const Clock& clock)
{
    const auto opened = door.open(pin);
    if (opened)
        return std::nullopt;
    const PinRefused why = opened.error();
    const auto written = log.append({benchSubject(), person, ActRefused{act, why.why}, clock.now(), {}});
    QString line =
        say(QT_TRANSLATE_NOOP("Headless", "%1: refused, %2"), {supervisorActName(act), actRefusalText(why.why)});
    if (why.wait.value() > 0)
        line += say(QT_TRANSLATE_NOOP("Headless", "; the next PIN is looked at in %1 s"),
                    {QString::number(qRound64(inSeconds(why.wait)))});
    Outcome outcome = ended(Status::Refused, line);
    if (!written)
        outcome.messages << say(QT_TRANSLATE_NOOP("Headless", "the refusal could not be written into the log"));
    return outcome;
}

/// What was given is never repeated.
Outcome pinNotTaken(const Fault& fault, const QString& path)
{
    if (fault.kind == FaultKind::NotFound)
        return ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "%1: cannot be written"), {path}));
    return ended(
        Status::Refused,
        say(QT_TRANSLATE_NOOP("Headless", "pin: allowed are %1 to %2 digits, neither all alike nor in their order"),
            {QString::number(pinShortest), QString::number(pinLongest)}));
}

Outcome runOn(RepairLog& log, const Wanted& wanted, const Arguments& arguments, const QString& pin)
{
    const SystemClock clock;
    const QString path = arguments.options.value(u"log"_s);
    const QString person = arguments.options.value(u"person"_s);
    PinDoor door(pinPathOf(path), clock);
    const bool newPin = std::holds_alternative<PinSet>(wanted.payload);
    if (newPin) {
        if (const Faults faults = door.set(pin); !faults.empty())
            return pinNotTaken(faults.front(), pinPathOf(path));
    } else if (auto shut = refusedBy(door, pin, *supervisorActOf(wanted.payload), log, person, clock)) {
        return *shut;
    }
    const Logged<Event> written = log.append({wanted.subject, person, wanted.payload, clock.now(), {}});
    if (written)
        return {Status::Done,
                QJsonObject{{u"act"_s, arguments.options.value(u"act"_s)},
                            {u"seq"_s, written->seq},
                            {u"hash"_s, QString::fromLatin1(written->hash.toHex())}},
                {}};
    const bool refusedIt = written.error().trouble == LogTrouble::DoesNotFollow;
    return ended(refusedIt ? Status::Refused : Status::LogDamaged, troubleLine(path, written.error()));
}

Outcome runSupervise(const Arguments& arguments, const Words& words)
{
    Faults faults;
    const Wanted wanted = Reader(arguments, faults).read();
    if (!faults.empty())
        return refused(faults, words);
    const Input input = readInput(u"-"_s, words);
    const QString pin = QString::fromUtf8(input.bytes.value_or(QByteArray()).split('\n').constFirst()).trimmed();
    const QString path = arguments.options.value(u"log"_s);
    if (const auto there = RepairLog::open(path, LogMode::ReadOnly); !there)
        return ended(Status::LogDamaged, troubleLine(path, there.error())); // none is made here
    const auto lock = WriterLock::take(path);
    if (!lock)
        return ended(Status::LogDamaged, troubleLine(path, inUseBy(lock.error())));
    const auto log = RepairLog::open(path, LogMode::ReadWrite);
    if (!log)
        return ended(Status::LogDamaged, troubleLine(path, log.error()));
    return runOn(**log, wanted, arguments, pin);
}

} // namespace

Command superviseCommand()
{
    return {
        "supervise",
        QT_TRANSLATE_NOOP("Headless", "A supervisor's act on a log that no bench has open; the PIN on standard input."),
        false,
        {{"log", "DB", QT_TRANSLATE_NOOP("Headless", "The log."), true},
         {"act", "ACT", QT_TRANSLATE_NOOP("Headless", "sign_off, return, override, correct, forget or new_pin."), true},
         {"person", "NAME", QT_TRANSLATE_NOOP("Headless", "Who does it."), true},
         {"repair", "UUID", QT_TRANSLATE_NOOP("Headless", "Of sign_off, return, override, correct: the repair.")},
         {"stop", "CODE", QT_TRANSLATE_NOOP("Headless", "Of override: the stop.")},
         {"seq", "N", QT_TRANSLATE_NOOP("Headless", "Of correct: the entry that is put right.")},
         {"text", "TEXT", QT_TRANSLATE_NOOP("Headless", "Of correct: what is right; of return: what is to be mended.")},
         {"sheet", "ID", QT_TRANSLATE_NOOP("Headless", "Of forget: the product's sheet.")},
         {"lot", "LOT", QT_TRANSLATE_NOOP("Headless", "Of forget: the hardener's lot.")},
         {"reason", "CODE", QT_TRANSLATE_NOOP("Headless", "Of return, override and forget: why.")}},
        runSupervise};
}

} // namespace strandbench::headless
