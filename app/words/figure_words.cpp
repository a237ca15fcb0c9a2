// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/figure_words.h"

#include "words/table.h"

#include <QCoreApplication>

#include <cmath>

namespace strandbench {
namespace {

using words::Line;

constexpr Line deviations[] = {
    {"panel_near_dew_point", QT_TRANSLATE_NOOP("FigureWords", "Panel near dew point")},
    {"panel_too_cold", QT_TRANSLATE_NOOP("FigureWords", "Panel too cold")},
    {"panel_too_hot", QT_TRANSLATE_NOOP("FigureWords", "Panel too hot")},
    {"air_too_cold", QT_TRANSLATE_NOOP("FigureWords", "Air too cold")},
    {"air_too_hot", QT_TRANSLATE_NOOP("FigureWords", "Air too hot")},
    {"no_reading", QT_TRANSLATE_NOOP("FigureWords", "No reading")},
    {"reading_old", QT_TRANSLATE_NOOP("FigureWords", "Old reading")},
    {"bare_metal_late", QT_TRANSLATE_NOOP("FigureWords", "Bare metal too long")},
    {"sands_early", QT_TRANSLATE_NOOP("FigureWords", "Sanded early")},
    {"edges_after_predicted_gel", QT_TRANSLATE_NOOP("FigureWords", "Edges after due gel")},
    {"edges_after_gel", QT_TRANSLATE_NOOP("FigureWords", "Edges after gel")},
    {"hardener_low", QT_TRANSLATE_NOOP("FigureWords", "Hardener low")},
    {"hardener_high", QT_TRANSLATE_NOOP("FigureWords", "Hardener high")},
    {"lift_too_thick", QT_TRANSLATE_NOOP("FigureWords", "Lift too thick")},
    {"steps_skimmed", QT_TRANSLATE_NOOP("FigureWords", "Steps skimmed")},
    {"wait_cut_short", QT_TRANSLATE_NOOP("FigureWords", "Wait cut short")},
    {"lot_not_told", QT_TRANSLATE_NOOP("FigureWords", "No filler lot")},
    {"hardener_lot_not_told", QT_TRANSLATE_NOOP("FigureWords", "No hardener lot")},
    {"demo_sheet", QT_TRANSLATE_NOOP("FigureWords", "Demo sheet")},
    {"answer_corrected", QT_TRANSLATE_NOOP("FigureWords", "Answer changed")},
    {"planned_again", QT_TRANSLATE_NOOP("FigureWords", "Planned again")},
    {"overridden", QT_TRANSLATE_NOOP("FigureWords", "Stop overridden")},
    {"parked", QT_TRANSLATE_NOOP("FigureWords", "Parked")},
    {"photo_missing", QT_TRANSLATE_NOOP("FigureWords", "No photo")},
    {"person_not_told", QT_TRANSLATE_NOOP("FigureWords", "No name")},
    {"started_again", QT_TRANSLATE_NOOP("FigureWords", "Bench restarted")},
    {"clock_set_forward", QT_TRANSLATE_NOOP("FigureWords", "Clock set on")},
    {"clock_set_back", QT_TRANSLATE_NOOP("FigureWords", "Clock set back")},
};

constexpr Line parts[] = {
    {"prepare", QT_TRANSLATE_NOOP("FigureWords", "Preparing")}, {"lay", QT_TRANSLATE_NOOP("FigureWords", "Laying")},
    {"wait", QT_TRANSLATE_NOOP("FigureWords", "Curing")},       {"sand", QT_TRANSLATE_NOOP("FigureWords", "Sanding")},
    {"finish", QT_TRANSLATE_NOOP("FigureWords", "Finishing")},
};

constexpr Line runs[] = {
    //: %1 is the number of a gel, so in all of these
    {"beyond_three_sigma", QT_TRANSLATE_NOOP("FigureWords", "gel %1 lies outside the limits")},
    {"two_of_three_beyond_two", QT_TRANSLATE_NOOP("FigureWords", "gel %1: two of three lie far off to one side")},
    {"four_of_five_beyond_one", QT_TRANSLATE_NOOP("FigureWords", "gel %1: four of five lie off to one side")},
    {"eight_on_one_side", QT_TRANSLATE_NOOP("FigureWords", "gel %1: eight in a row lie on one side of the mean")},
    {"six_trending", QT_TRANSLATE_NOOP("FigureWords", "gel %1: six in a row go the same way")},
    {"fourteen_alternating", QT_TRANSLATE_NOOP("FigureWords", "gel %1: fourteen go up and down by turns")},
};

} // namespace

QString deviationName(DeviationKind kind) { return words::lookUp("FigureWords", deviations, codeOf(kind)); }

QString jobPartName(JobPart part) { return words::lookUp("FigureWords", parts, codeOf(part)); }

QString runText(const RunSignal& signal)
{
    return words::fillIn(words::lookUp("FigureWords", runs, codeOf(signal.rule)), {QString::number(signal.at + 1)});
}

QString againstSheet(double ratio, const Words& words)
{
    const auto percent = static_cast<int>(std::lround((ratio - 1) * 100));
    const QStringList share{words.percent(Fraction::ofHundred(std::abs(percent)))};
    const auto say = [&share](const char* text) {
        return words::fillIn(words::inLanguage("FigureWords", text), share);
    };
    if (percent == 0)
        return say(QT_TRANSLATE_NOOP("FigureWords", "as fast as the sheet"));
    return percent > 0 ? say(QT_TRANSLATE_NOOP("FigureWords", "%1 slower than the sheet"))
                       : say(QT_TRANSLATE_NOOP("FigureWords", "%1 faster than the sheet"));
}

} // namespace strandbench
