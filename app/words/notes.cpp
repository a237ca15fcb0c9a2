// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/notes.h"

#include "words/stops.h"
#include "words/table.h"

#include <QtGlobal>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

constexpr Line moments[] = {
    {"as_found", QT_TRANSLATE_NOOP("Notes", "As found")},
    {"bare", QT_TRANSLATE_NOOP("Notes", "Bare")},
    {"filled", QT_TRANSLATE_NOOP("Notes", "Filled")},
    {"guide_coat", QT_TRANSLATE_NOOP("Notes", "Guide coat")},
};

constexpr Line momentsInList[] = {
    //: in a list of photos: "as found, bare, filled"
    {"as_found", QT_TRANSLATE_NOOP("Notes", "as found")},
    {"bare", QT_TRANSLATE_NOOP("Notes", "bare")},
    {"filled", QT_TRANSLATE_NOOP("Notes", "filled")},
    {"guide_coat", QT_TRANSLATE_NOOP("Notes", "guide coat")},
};

constexpr Line notes[] = {
    {"deeper_than_it_looked", QT_TRANSLATE_NOOP("Notes", "Deeper than it looked")},
    {"crack_ran_further", QT_TRANSLATE_NOOP("Notes", "Crack ran further")},
    {"old_repair_below", QT_TRANSLATE_NOOP("Notes", "Old repair found below")},
    {"panel_warmed", QT_TRANSLATE_NOOP("Notes", "Panel warmed first")},
    {"new_tub", QT_TRANSLATE_NOOP("Notes", "Filler from a new tub")},
    {"new_tube", QT_TRANSLATE_NOOP("Notes", "Hardener from a new tube")},
    {"mix_thrown_away", QT_TRANSLATE_NOOP("Notes", "A mix was thrown away")},
    {"edge_lifted", QT_TRANSLATE_NOOP("Notes", "Edge lifted: cut back")},
    {"pinholes_filled", QT_TRANSLATE_NOOP("Notes", "Pinholes opened and filled")},
    {"second_technician", QT_TRANSLATE_NOOP("Notes", "Second technician helped")},
    {"supervisor_looked", QT_TRANSLATE_NOOP("Notes", "Supervisor had a look")},
    {"waits_for_part", QT_TRANSLATE_NOOP("Notes", "Waits for a part")},
};

constexpr Line reasons[] = {
    {"waits_for_part", QT_TRANSLATE_NOOP("Notes", "waits for a part")},
    {"waits_for_answer", QT_TRANSLATE_NOOP("Notes", "waits for an answer")},
    {"too_cold_or_damp", QT_TRANSLATE_NOOP("Notes", "too cold or too damp")},
    {"metal_work_first", QT_TRANSLATE_NOOP("Notes", "metal-work comes first")},
    {"other_work_first", QT_TRANSLATE_NOOP("Notes", "other work comes first")},
    {"shift_over", QT_TRANSLATE_NOOP("Notes", "the shift is over")},
};

/// Where a job goes that is parked for a reason: the likeliest place.
constexpr std::pair<const char*, const char*> likely[] = {
    {"waits_for_part", "parts_counter"},
    {"too_cold_or_damp", "warm_room"},
    {"metal_work_first", "metal_shop"},
};

QStringList codesOf(std::span<const Line> lines)
{
    QStringList codes;
    for (const Line& each : lines)
        codes << QString::fromLatin1(each.code);
    return codes;
}

std::vector<QString> listOf(std::span<const Line> lines)
{
    const QStringList codes = codesOf(lines);
    return {codes.begin(), codes.end()};
}

} // namespace

QString photoMomentName(PhotoMoment moment) { return words::lookUp("Notes", moments, codeOf(moment)); }

QString photoMomentInList(PhotoMoment moment) { return words::lookUp("Notes", momentsInList, codeOf(moment)); }

const std::vector<QString>& commonNotes()
{
    static const std::vector<QString> all = listOf(notes);
    return all;
}

QString noteText(const Noted& note)
{
    return note.code.isEmpty() ? note.text : words::lookUp("Notes", notes, note.code);
}

const std::vector<QString>& parkReasons()
{
    static const std::vector<QString> all = listOf(reasons);
    return all;
}

QString parkReason(const QString& code) { return code.isEmpty() ? QString() : words::lookUp("Notes", reasons, code); }

std::vector<QString> parkPlaces(const QString& reason)
{
    std::vector<QString> places{u"supervisor"_s,    u"metal_shop"_s, u"welding_shop"_s, u"laminate_shop"_s,
                                u"parts_counter"_s, u"body_shop"_s,  u"strip_bay"_s,    u"warm_room"_s};
    for (const auto& [why, where] : likely)
        if (reason == QLatin1StringView(why)) {
            const auto found = std::find(places.begin(), places.end(), QString::fromLatin1(where));
            std::rotate(places.begin(), found, found + 1);
        }
    return places;
}

QString parkedWhere(const QString& to)
{
    if (to.isEmpty())
        return words::inLanguage("Notes", QT_TRANSLATE_NOOP("Notes", "stays at this bench"));
    const QString place = words::placeOf(to);
    if (place != u'[' + to + u']')
        return place;
    //: %1 is a person: goes on after "Parked:"
    return words::fillIn(words::inLanguage("Notes", QT_TRANSLATE_NOOP("Notes", "to %1")), {to});
}

} // namespace strandbench
