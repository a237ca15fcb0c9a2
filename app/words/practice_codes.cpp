// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/practice_codes.h"

#include "words/names.h"
#include "words/practice_words.h"
#include "words/reasons.h"
#include "words/steps.h"
#include "words/stops.h"
#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using words::Line;

/// Steps that belong nowhere.
constexpr Line harmful[] = {
    {"water_on_open_fibre", QT_TRANSLATE_NOOP("Practice", "Rinse the open fibre with water")},
    {"solvent_on_ground_fibre", QT_TRANSLATE_NOOP("Practice", "Wipe the ground fibre with solvent")},
    {"blow_at_line_pressure", QT_TRANSLATE_NOOP("Practice", "Blow it off at full line pressure")},
    {"lamp_on_wet_filler", QT_TRANSLATE_NOOP("Practice", "Put the lamp on the wet filler")},
    {"steel_disc_on_aluminium", QT_TRANSLATE_NOOP("Practice", "Grind it with the disc used on steel")},
    {"fill_over_paint", QT_TRANSLATE_NOOP("Practice", "Fill over the paint where it holds")},
};

/// Stops whose sentence at the bench holds figures.
constexpr Line stops[] = {
    {"weld_seam_not_on_metal", QT_TRANSLATE_NOOP("Practice", "A weld seam cannot be on this material.")},
    {"rust_hole_not_on_metal", QT_TRANSLATE_NOOP("Practice", "A rust hole cannot be in this material.")},
    {"bond_seam_not_cured", QT_TRANSLATE_NOOP("Practice", "The adhesive has not cured.")},
    {"metal_crack", QT_TRANSLATE_NOOP("Practice", "It is a crack in metal.")},
    {"dent_too_deep", QT_TRANSLATE_NOOP("Practice", "The dent is too deep for filler.")},
    {"hole_too_large", QT_TRANSLATE_NOOP("Practice", "The hole is too large for filler.")},
    {"moisture_damp", QT_TRANSLATE_NOOP("Practice", "It is damp.")},
    {"no_filler_fits", QT_TRANSLATE_NOOP("Practice", "No filler fits here.")},
    {"panel_near_dew_point", QT_TRANSLATE_NOOP("Practice", "The panel is too near its dew point.")},
    {"panel_too_cold", QT_TRANSLATE_NOOP("Practice", "The panel is too cold.")},
    {"panel_too_hot", QT_TRANSLATE_NOOP("Practice", "The panel is too hot.")},
    {"air_too_cold", QT_TRANSLATE_NOOP("Practice", "The air is too cold.")},
    {"air_too_hot", QT_TRANSLATE_NOOP("Practice", "The air is too hot.")},
    {"gels_too_fast", QT_TRANSLATE_NOOP("Practice", "It would gel before it is spread.")},
    {"overheats_in_any_lift", QT_TRANSLATE_NOOP("Practice", "Even a thin lift would overheat.")},
    {"never_sands", QT_TRANSLATE_NOOP("Practice", "It would not sand.")},
    {"not_assessed", QT_TRANSLATE_NOOP("Practice", "Something was not answered.")},
};

constexpr Line others[] = {
    {"yes", QT_TRANSLATE_NOOP("Practice", "yes")},
    {"no", QT_TRANSLATE_NOOP("Practice", "no")},
    {"fill", QT_TRANSLATE_NOOP("Practice", "fill")},
    {"stop", QT_TRANSLATE_NOOP("Practice", "stop")},
    {"front_only", QT_TRANSLATE_NOOP("Practice", "front face alone")},
    {"both_faces", QT_TRANSLATE_NOOP("Practice", "both faces")},
    // what speaks against a material
    {"zinc", QT_TRANSLATE_NOOP("Practice", "zinc gauge")},
    {"conducts", QT_TRANSLATE_NOOP("Practice", "ohmmeter")},
    {"edge", QT_TRANSLATE_NOOP("Practice", "broken edge")},
    {"back", QT_TRANSLATE_NOOP("Practice", "back")},
    {"tap", QT_TRANSLATE_NOOP("Practice", "tap sound")},
    {"sanded", QT_TRANSLATE_NOOP("Practice", "80 grit")},
    {"bends", QT_TRANSLATE_NOOP("Practice", "bending")},
    {"fizzes", QT_TRANSLATE_NOOP("Practice", "vinegar")},
    {"magnet", QT_TRANSLATE_NOOP("Practice", "magnet")},
};

/// Of an inspection.
constexpr Line tests[] = {
    {"guide_coat_gone", QT_TRANSLATE_NOOP("Practice", "Guide coat gone")},
    {"straightedge", QT_TRANSLATE_NOOP("Practice", "Straightedge, both ways")},
    {"no_pinholes", QT_TRANSLATE_NOOP("Practice", "Pinholes in raking light")},
    {"nail_and_paper", QT_TRANSLATE_NOOP("Practice", "Nail and paper test")},
    {"even_sound", QT_TRANSLATE_NOOP("Practice", "Even tap sound")},
    {"no_edge", QT_TRANSLATE_NOOP("Practice", "No edge to be felt")},
};

bool isText(const QString& text) { return !text.startsWith(u'['); }

class ArgumentText {
public:
    explicit ArgumentText(const Words& words) : m_words(words) {}

    QString operator()(Length value) const
    {
        return value < millimetres(30) ? m_words.thickness(value) : m_words.length(value);
    }
    QString operator()(Mass value) const { return m_words.mass(value); }
    QString operator()(Volume value) const { return m_words.volume(value); }
    QString operator()(Duration value) const
    {
        return value < minutes(100) ? m_words.duration(value) : m_words.longDuration(value);
    }
    QString operator()(Temperature value) const { return m_words.fineTemperature(value); }
    QString operator()(TemperatureStep value) const { return m_words.temperatureStep(value); }
    QString operator()(Fraction value) const
    {
        return m_words.number(value.percent(), value.percent() < 10 ? 1 : 0) + QChar(QChar::Nbsp) + u'%';
    }
    QString operator()(Count value) const { return QString::number(value.value); }
    QString operator()(const QString& code) const { return words::markedCode(code); }

private:
    const Words& m_words;
};

} // namespace

QString stopTold(const QString& code)
{
    return words::holds(stops, code) ? words::lookUp("Practice", stops, code) : words::stopWrong(code);
}

QString insteadTold(const QString& code) { return words::insteadLine(code); }

QString stepTold(const QString& code, const RepairPlan& plan, const Words& words)
{
    for (const Step& each : plan.prep)
        if (each.code == code)
            return words.step(each).sentence;
    return words::markedCode(code);
}

QString testTold(InspectionTest test) { return words::lookUp("Practice", tests, codeOf(test)); }

namespace words {

QString markedCode(const QString& code)
{
    if (holds(others, code))
        return lookUp("Practice", others, code);
    if (holds(harmful, code))
        return lookUp("Practice", harmful, code);
    if (holds(tests, code))
        return lookUp("Practice", tests, code);
    if (isStop(code))
        return stopTold(code);
    if (hasReason(code)) { // it stands within a sentence
        const QString text = reasonText(code);
        return text.endsWith(u'.') ? text.chopped(1) : text;
    }
    for (const QString& text : {stepSentence(code), insteadLine(code)})
        if (isText(text))
            return text;
    return nameOfAnyCode(code);
}

QString markedArgument(const Argument& argument, const Words& words)
{
    return std::visit(ArgumentText(words), argument);
}

QString markedList(const std::vector<Argument>& arguments, const Words& words)
{
    QStringList all;
    for (const Argument& each : arguments) {
        QString text = markedArgument(each, words);
        while (text.endsWith(u'.'))
            text.chop(1);
        all << text;
    }
    return all.join(u"; "_s);
}

} // namespace words
} // namespace strandbench
