// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/deviation_words.h"

#include "words/event_words.h"
#include "words/notes.h"
#include "words/role_words.h"
#include "words/steps.h"
#include "words/table.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr words::Line lines[] = {
    {"panel_near_dew_point", QT_TRANSLATE_NOOP("Deviations", "panel %1 above dew point; at least %2")},
    {"panel_too_cold", QT_TRANSLATE_NOOP("Deviations", "panel at %1; at least %2")},
    {"panel_too_hot", QT_TRANSLATE_NOOP("Deviations", "panel at %1; at most %2")},
    {"air_too_cold", QT_TRANSLATE_NOOP("Deviations", "air at %1; at least %2")},
    {"air_too_hot", QT_TRANSLATE_NOOP("Deviations", "air at %1; at most %2")},
    {"no_reading", QT_TRANSLATE_NOOP("Deviations", "no reading before the hardener went in")},
    {"reading_old", QT_TRANSLATE_NOOP("Deviations", "last reading %1 old; at most %2")},
    {"bare_metal_late", QT_TRANSLATE_NOOP("Deviations", "bare metal filled after %1; at most %2")},
    {"sands_early", QT_TRANSLATE_NOOP("Deviations", "sands after %1; predicted %2")},
    {"edges_after_predicted_gel", QT_TRANSLATE_NOOP("Deviations", "edges clear after %1; gel predicted at %2")},
    {"edges_after_gel", QT_TRANSLATE_NOOP("Deviations", "edges clear after %1; gel seen at %2")},
    {"hardener_low", QT_TRANSLATE_NOOP("Deviations", "hardener %1; at least %2")},
    {"hardener_high", QT_TRANSLATE_NOOP("Deviations", "hardener %1; at most %2")},
    {"lift_too_thick", QT_TRANSLATE_NOOP("Deviations", "laid %1 thick by its mass; at most %2 in one go")},
    //: %1 is a number of steps, %2 and %3 are times
    {"steps_skimmed", QT_TRANSLATE_NOOP("Deviations", "steps told as done almost at once: %1, in %2; planned %3")},
    //: %1 is a step
    {"wait_cut_short", QT_TRANSLATE_NOOP("Deviations", "wait cut short, %1: %2; it needs %3")},
    {"lot_not_told", QT_TRANSLATE_NOOP("Deviations", "lot of the filler not told")},
    {"hardener_lot_not_told", QT_TRANSLATE_NOOP("Deviations", "lot of the hardener not told")},
    //: %1 is the sheet's id
    {"demo_sheet", QT_TRANSLATE_NOOP("Deviations", "mixed by a demo sheet: %1")},
    //: %1 is a question: "dry or damp"
    {"answer_corrected", QT_TRANSLATE_NOOP("Deviations", "changed after the plan: %1")},
    //: %1 is the number of the plan
    {"planned_again", QT_TRANSLATE_NOOP("Deviations", "planned again: plan %1")},
    //: %1 is where: "to the supervisor"
    {"parked", QT_TRANSLATE_NOOP("Deviations", "parked: %1")},
    //: %1 is a stop, %2 a reason: "Damp", "Proved by another test"
    {"overridden", QT_TRANSLATE_NOOP("Deviations", "overridden: %1. Reason: %2")},
    //: %1 is a moment: "as found"
    {"photo_missing", QT_TRANSLATE_NOOP("Deviations", "no photo: %1")},
    {"person_not_told", QT_TRANSLATE_NOOP("Deviations", "acts without a name: %1")},
    {"started_again", QT_TRANSLATE_NOOP("Deviations", "bench started again while a mix ran; %1 between two acts")},
    {"clock_set_forward", QT_TRANSLATE_NOOP("Deviations", "clock set forward by %1 while a mix ran")},
    {"clock_set_back", QT_TRANSLATE_NOOP("Deviations", "clock set back by %1 while a mix ran")},
};

class ArgumentText {
public:
    ArgumentText(DeviationKind kind, const Words& words) : m_kind(kind), m_words(words) {}

    QString operator()(Length value) const { return m_words.length(value); }
    QString operator()(Mass value) const { return m_words.mass(value); }
    QString operator()(Volume value) const { return m_words.volume(value); }
    /// To the second: beside a limit that it may miss by little.
    QString operator()(Duration value) const
    {
        return value < minutes(100) ? m_words.duration(value) : m_words.longDuration(value);
    }
    QString operator()(Temperature value) const { return m_words.fineTemperature(value); }
    QString operator()(TemperatureStep value) const { return m_words.temperatureStep(value); }
    QString operator()(Fraction value) const { return m_words.number(value.percent(), 2) + QChar(QChar::Nbsp) + u'%'; }
    QString operator()(Count value) const { return QString::number(value.value); }
    QString operator()(const QString& code) const
    {
        if (const auto question = fromCode<Question>(code); question && m_kind == DeviationKind::AnswerCorrected)
            return m_words.questionName(*question);
        if (const auto moment = fromCode<PhotoMoment>(code); moment && m_kind == DeviationKind::PhotoMissing)
            return photoMomentInList(*moment);
        if (m_kind == DeviationKind::WaitCutShort)
            return words::stepWayOn(code);
        if (m_kind == DeviationKind::Overridden)
            return std::ranges::count(overrideReasons(), code) ? overrideReason(code) : m_words.stopHeadline(code);
        return m_kind == DeviationKind::Parked ? parkedWhere(code) : code;
    }

private:
    DeviationKind m_kind;
    const Words& m_words;
};

/// Why it was parked, behind where it went.
QString why(const Deviation& deviation, const Words& words)
{
    if (deviation.kind != DeviationKind::Parked)
        return {};
    const auto& code = std::get<QString>(deviation.arguments.at(1));
    if (code.isEmpty())
        return {};
    const auto reasons = parkReasons();
    const bool chosen = std::find(reasons.begin(), reasons.end(), code) != reasons.end();
    return u". "_s + Words::title(chosen ? parkReason(code) : words.stopHeadline(code));
}

} // namespace

QString deviationText(const Deviation& deviation, const Words& words)
{
    QStringList arguments;
    for (const Argument& each : deviation.arguments)
        arguments << std::visit(ArgumentText(deviation.kind, words), each);
    const QString text =
        words::fillIn(words::lookUp("Deviations", lines, codeOf(deviation.kind)), arguments) + why(deviation, words);
    return deviation.batch ? batchName(*deviation.batch) + u": "_s + text : Words::title(text);
}

QString deviationCount(int count)
{
    return count == 0 ? words::inLanguage("Deviations", QT_TRANSLATE_NOOP("Deviations", "no deviations"))
                      : QCoreApplication::translate("Deviations", "%n deviation(s)", nullptr, count);
}

} // namespace strandbench
