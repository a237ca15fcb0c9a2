// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/plan_words.h"

#include "words/table.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench::words {
namespace {

constexpr const char* context = "PlanWords";

constexpr Line changes[] = {
    {"filler", QT_TRANSLATE_NOOP("PlanWords", "Fibre filler")},
    {"faces", QT_TRANSLATE_NOOP("PlanWords", "Faces to fill")},
    {"lifts_to_lay", QT_TRANSLATE_NOOP("PlanWords", "Lifts still to lay")},
    {"batches_to_mix", QT_TRANSLATE_NOOP("PlanWords", "Batches still to mix")},
    {"filler_to_mix", QT_TRANSLATE_NOOP("PlanWords", "Fibre filler still to mix")},
    {"hardener_to_mix", QT_TRANSLATE_NOOP("PlanWords", "Hardener for it")},
    {"finish_thickness", QT_TRANSLATE_NOOP("PlanWords", "Finishing filler, thickness")},
    {"steps_open", QT_TRANSLATE_NOOP("PlanWords", "Steps of preparing to do")},
};

constexpr Line steps[] = {
    //: a step of preparing in two or three words, in a list
    {"gear_on", QT_TRANSLATE_NOOP("PlanWords", "gear on")},
    {"own_tools", QT_TRANSLATE_NOOP("PlanWords", "own tools")},
    {"wash", QT_TRANSLATE_NOOP("PlanWords", "wash")},
    {"degrease", QT_TRANSLATE_NOOP("PlanWords", "degrease")},
    {"degrease_little", QT_TRANSLATE_NOOP("PlanWords", "degrease")},
    {"flash_off", QT_TRANSLATE_NOOP("PlanWords", "flash off")},
    {"strip_paint", QT_TRANSLATE_NOOP("PlanWords", "strip paint")},
    {"cut_to_sound", QT_TRANSLATE_NOOP("PlanWords", "cut to sound")},
    {"find_cracks", QT_TRANSLATE_NOOP("PlanWords", "find cracks")},
    {"stop_drill", QT_TRANSLATE_NOOP("PlanWords", "stop-drill")},
    {"squeeze_out_off", QT_TRANSLATE_NOOP("PlanWords", "squeeze-out off")},
    {"dress_weld", QT_TRANSLATE_NOOP("PlanWords", "dress the weld")},
    {"dry", QT_TRANSLATE_NOOP("PlanWords", "dry")},
    {"bevel", QT_TRANSLATE_NOOP("PlanWords", "bevel")},
    {"bevel_both", QT_TRANSLATE_NOOP("PlanWords", "bevel both faces")},
    {"open_gouge", QT_TRANSLATE_NOOP("PlanWords", "open the gouge")},
    {"bevel_upper_panel", QT_TRANSLATE_NOOP("PlanWords", "bevel the upper panel")},
    {"abrade_back", QT_TRANSLATE_NOOP("PlanWords", "abrade the back")},
    {"backing_behind", QT_TRANSLATE_NOOP("PlanWords", "bond a backing")},
    {"backing_through", QT_TRANSLATE_NOOP("PlanWords", "bond a backing")},
    {"dam", QT_TRANSLATE_NOOP("PlanWords", "dam")},
    {"abrade_80", QT_TRANSLATE_NOOP("PlanWords", "80 grit")},
    {"abrade_80_metal", QT_TRANSLATE_NOOP("PlanWords", "80 grit")},
    {"dust_off", QT_TRANSLATE_NOOP("PlanWords", "dust off")},
    {"wipe_metal", QT_TRANSLATE_NOOP("PlanWords", "wipe")},
    {"flash_off_metal", QT_TRANSLATE_NOOP("PlanWords", "flash off")},
    {"read_panel", QT_TRANSLATE_NOOP("PlanWords", "read the panel")},
    {"read_panel_metal", QT_TRANSLATE_NOOP("PlanWords", "read the panel")},
};

QString sizeOf(const Damage& damage, const Words& words)
{
    QStringList parts{damage.width.value() > 0 ? words.lengthPair(damage.length, damage.width)
                                               : words.length(damage.length)};
    if (damage.depth.value() > 0)
        parts << fillIn(inLanguage(context, QT_TRANSLATE_NOOP("PlanWords", "%1 deep")),
                        {words.fineLength(damage.depth)});
    if (damage.panelThickness.value() > 0)
        parts << fillIn(inLanguage(context, QT_TRANSLATE_NOOP("PlanWords", "panel %1")),
                        {words.fineLength(damage.panelThickness)});
    return parts.join(u", "_s);
}

QString readingOf(const Reading& reading, const Words& words)
{
    return fillIn(inLanguage(context, QT_TRANSLATE_NOOP("PlanWords", "air %1, panel %2, humidity %3")),
                  {words.temperature(reading.air), words.temperature(reading.panel), words.percent(reading.humidity)});
}

} // namespace

QString answerValue(const Assessment& assessment, Question question, const Words& words)
{
    const std::optional<Damage>& damage = assessment.damage;
    switch (question) {
    case Question::Substrate:
        return assessment.substrate ? words.substrate(*assessment.substrate) : QString();
    case Question::DamageKind:
        return damage ? words.damage(damage->kind) : QString();
    case Question::Weld:
        return damage && damage->weld ? words.weld(*damage->weld) : QString();
    case Question::AdhesiveCured:
        return damage && damage->adhesiveCured ? words.answer(question, *damage->adhesiveCured) : QString();
    case Question::Size:
        return damage && damage->measured() ? sizeOf(*damage, words) : QString();
    case Question::RearAccess:
        return assessment.rearAccess ? words.answer(question, *assessment.rearAccess) : QString();
    case Question::Surface:
        return assessment.surface ? words.surface(*assessment.surface) : QString();
    case Question::Zone:
        return assessment.zone ? words.zone(*assessment.zone) : QString();
    case Question::Moisture:
        return assessment.moisture ? words.moisture(*assessment.moisture) : QString();
    case Question::Core:
        return words.core(assessment.core);
    case Question::Reading:
        return assessment.reading ? readingOf(*assessment.reading, words) : QString();
    }
    Q_UNREACHABLE();
}

QString planChangeName(const QString& code) { return lookUp(context, changes, code); }

QString planFigure(const Argument& figure, const Words& words)
{
    if (const auto* code = std::get_if<QString>(&figure))
        return words.nameOfCode(*code);
    if (const auto* count = std::get_if<Count>(&figure))
        return words.locale().toString(count->value);
    if (const auto* mass = std::get_if<Mass>(&figure))
        return words.mass(*mass);
    return words.thickness(std::get<Length>(figure));
}

QString stepName(const QString& code) { return lookUp(context, steps, code); }

} // namespace strandbench::words
