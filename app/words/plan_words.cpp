// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/plan_words.h"

#include "words/event_words.h"
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

/// What was answered, as it stands; empty when it was not. The bevel is the panel's own affair, not its size.
std::optional<AnswerValue> answerOf(const Assessment& assessment, Question question)
{
    const std::optional<Damage>& damage = assessment.damage;
    const auto maybe = [](const auto& given) { return given ? std::optional<AnswerValue>(*given) : std::nullopt; };
    switch (question) {
    case Question::Substrate:
        return maybe(assessment.substrate);
    case Question::DamageKind:
        return damage ? std::optional<AnswerValue>(damage->kind) : std::nullopt;
    case Question::Weld:
        return damage ? maybe(damage->weld) : std::nullopt;
    case Question::AdhesiveCured:
        return damage ? maybe(damage->adhesiveCured) : std::nullopt;
    case Question::Size:
        if (!damage || !damage->measured())
            return std::nullopt;
        return DamageSize{damage->length, damage->width, damage->depth, damage->panelThickness, 0};
    case Question::RearAccess:
        return maybe(assessment.rearAccess);
    case Question::Surface:
        return maybe(assessment.surface);
    case Question::Zone:
        return maybe(assessment.zone);
    case Question::Moisture:
        return maybe(assessment.moisture);
    case Question::Core:
        return assessment.core;
    case Question::Reading:
        return maybe(assessment.reading);
    }
    Q_UNREACHABLE();
}

} // namespace

QString answerValue(const Assessment& assessment, Question question, const Words& words)
{
    const std::optional<AnswerValue> answer = answerOf(assessment, question);
    return answer ? answerText(question, *answer, words) : QString();
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
