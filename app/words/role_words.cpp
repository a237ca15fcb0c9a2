// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/role_words.h"

#include "words/table.h"

#include <QCoreApplication>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line alarms[] = {
    {"edges_soon", QT_TRANSLATE_NOOP("Roles", "edges due soon")},
    {"gels", QT_TRANSLATE_NOOP("Roles", "it gels")},
    {"sand_from", QT_TRANSLATE_NOOP("Roles", "it sands")},
    {"sand_until", QT_TRANSLATE_NOOP("Roles", "sanding time over")},
};

constexpr Line calls[] = {
    {"gels", QT_TRANSLATE_NOOP("Roles", "Hands off: it gels")},
    {"sand_from", QT_TRANSLATE_NOOP("Roles", "Sand: it is ready")},
    {"sand_until", QT_TRANSLATE_NOOP("Roles", "Sand now: it hardens")},
};

constexpr Line acts[] = {
    {"sign_off", QT_TRANSLATE_NOOP("Roles", "sign-off")},
    {"return", QT_TRANSLATE_NOOP("Roles", "return")},
    {"override", QT_TRANSLATE_NOOP("Roles", "override of a stop")},
    {"sheets", QT_TRANSLATE_NOOP("Roles", "change of a product sheet")},
    {"restore", QT_TRANSLATE_NOOP("Roles", "restoring a backup")},
    {"forget", QT_TRANSLATE_NOOP("Roles", "forgetting a lot")},
    {"correct", QT_TRANSLATE_NOOP("Roles", "correction of a record")},
    {"change_pin", QT_TRANSLATE_NOOP("Roles", "change of the PIN")},
};

constexpr Line refusals[] = {
    {"no_pin", QT_TRANSLATE_NOOP("Roles", "without a PIN")},
    {"wrong_pin", QT_TRANSLATE_NOOP("Roles", "wrong PIN")},
    {"must_wait", QT_TRANSLATE_NOOP("Roles", "within the wait after wrong PINs")},
    {"not_set", QT_TRANSLATE_NOOP("Roles", "no PIN is set")},
    {"not_counted", QT_TRANSLATE_NOOP("Roles", "the try could not be counted")},
};

constexpr Line overrides[] = {
    {"proved_otherwise", QT_TRANSLATE_NOOP("Roles", "Proved by another test")},
    {"maker_allows", QT_TRANSLATE_NOOP("Roles", "The vehicle maker’s manual allows it")},
    {"trial_piece", QT_TRANSLATE_NOOP("Roles", "A trial piece, not for a vehicle")},
};

constexpr Line returns[] = {
    {"contour", QT_TRANSLATE_NOOP("Roles", "The contour is not true")},
    {"pinholes", QT_TRANSLATE_NOOP("Roles", "Pinholes")},
    {"edge_shows", QT_TRANSLATE_NOOP("Roles", "An edge shows or maps")},
    {"soft", QT_TRANSLATE_NOOP("Roles", "Filler is soft")},
    {"sounds_hollow", QT_TRANSLATE_NOOP("Roles", "Sounds hollow: it does not hold")},
    {"strayed", QT_TRANSLATE_NOOP("Roles", "Strayed too far from plan or sheet")},
    {"record_lacks", QT_TRANSLATE_NOOP("Roles", "The record lacks what it must hold")},
    {"other", QT_TRANSLATE_NOOP("Roles", "Something else: in words")},
};

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Roles", text), arguments);
}

} // namespace

QString alarmName(AlarmKind kind) { return words::lookUp("Roles", alarms, codeOf(kind)); }

QString alarmHeadline(const DueAlarm& alarm, const Words& words)
{
    if (alarm.kind != AlarmKind::EdgesSoon)
        return words::lookUp("Roles", calls, codeOf(alarm.kind));
    if (alarm.toAct.value() > 0)
        //: %1 is a time left: "0:20"
        return say(QT_TRANSLATE_NOOP("Roles", "Clear the edges: %1"), {words.duration(alarm.toAct)});
    return say(QT_TRANSLATE_NOOP("Roles", "Clear the edges now"));
}

QString moreAlarms(int count) { return QCoreApplication::translate("Roles", "+%n more", nullptr, count); }

QString jumpText(const ClockJumped& jump, const Words& words)
{
    const bool forward = jump.by.value() >= 0;
    const Duration length = seconds(std::abs(inSeconds(jump.by)));
    const QStringList by{length < minutes(60) ? words.duration(length) : words.longDuration(length)};
    switch (jump.kind) {
    case ClockJump::WallStepped:
        return forward ? say(QT_TRANSLATE_NOOP("Roles", "Clock set on by %1. Mixes run on."), by)
                       : say(QT_TRANSLATE_NOOP("Roles", "Clock set back by %1. Mixes run on."), by);
    case ClockJump::Slept:
        return say(QT_TRANSLATE_NOOP("Roles", "The machine slept %1. Mixes ran on."), by);
    case ClockJump::OffsetChanged:
        return forward ? say(QT_TRANSLATE_NOOP("Roles", "Local time goes on by %1. Mixes run on."), by)
                       : say(QT_TRANSLATE_NOOP("Roles", "Local time goes back by %1. Mixes run on."), by);
    case ClockJump::Restarted:
        break;
    }
    return forward ? say(QT_TRANSLATE_NOOP("Roles", "The machine restarted after %1. Mixes ran on."), by)
                   : say(QT_TRANSLATE_NOOP("Roles", "The clock stands %1 behind the log: set it."), by);
}

QString beadMassText(LinearDensity mass, const Words& words)
{
    return words.number(inMilligramsPerMillimetre(mass), 1) + QChar(0x00a0) + u"mg/mm"_s;
}

QString supervisorActName(SupervisorAct act) { return words::lookUp("Roles", acts, codeOf(act)); }
QString actRefusalText(ActRefusal why) { return words::lookUp("Roles", refusals, codeOf(why)); }
QString returnReason(const QString& code) { return words::lookUp("Roles", returns, code); }
QString returnText(const Returned& returned)
{
    if (returned.reason == u"other"_s)
        return returned.text;
    const QString why = returnReason(returned.reason);
    return returned.text.isEmpty() ? why : why + u". "_s + returned.text;
}

QString overrideReason(const QString& code) { return words::lookUp("Roles", overrides, code); }

QString benchEventText(const Payload& payload, const Words& words)
{
    if (const auto* jump = std::get_if<ClockJumped>(&payload))
        return jumpText(*jump, words);
    if (const auto* refused = std::get_if<ActRefused>(&payload))
        //: %1 is an act, %2 why: "sign-off", "wrong PIN"
        return say(QT_TRANSLATE_NOOP("Roles", "Refused: %1, %2"),
                   {supervisorActName(refused->act), actRefusalText(refused->why)});
    if (const auto* restored = std::get_if<LogRestored>(&payload))
        return restored->complete
                   ? say(QT_TRANSLATE_NOOP("Roles", "Log restored from a backup, whole: %1 entries"),
                         {QString::number(restored->count)})
                   : say(QT_TRANSLATE_NOOP("Roles",
                                           "Log restored from a backup, as far as it could be read: %1 entries"),
                         {QString::number(restored->count)});
    if (const auto* merged = std::get_if<LogMerged>(&payload))
        //: %1 is a bench's name, %2 a number
        return say(QT_TRANSLATE_NOOP("Roles", "Log of bench %1 brought in: %2 entries"),
                   {merged->bench.left(8), QString::number(merged->added)});
    if (const auto* bead = std::get_if<BeadCalibrated>(&payload))
        //: %1 is a lot, %2 a mass per length, %3 a percentage
        return say(QT_TRANSLATE_NOOP("Roles", "Bead of hardener %1 calibrated: %2, scatter %3"),
                   {bead->hardenerLot, beadMassText(bead->mean, words), words.percent(bead->spread)});
    if (const auto* kept = std::get_if<SheetKept>(&payload))
        //: %1 is the sheet's id
        return say(QT_TRANSLATE_NOOP("Roles", "Product sheet kept: %1"), {kept->sheetId});
    if (const auto* aside = std::get_if<SheetLaidAside>(&payload))
        return say(QT_TRANSLATE_NOOP("Roles", "Product sheet laid aside: %1"), {aside->sheetId});
    if (const auto* set = std::get_if<PinSet>(&payload))
        return set->atTheMachine ? say(QT_TRANSLATE_NOOP("Roles", "Supervisor’s PIN set at the machine"))
                                 : say(QT_TRANSLATE_NOOP("Roles", "Supervisor’s PIN set"));
    return {};
}

} // namespace strandbench
