// SPDX-License-Identifier: GPL-3.0-or-later
// Hazard statements as CLP Annex III prints them and precautionary statements as Annex IV does, in four languages; what
// is to be filled in there is left out or closed. Written from memory: the annexes could not be looked at here. The
// label and the safety data sheet of a product have the words that count.
#include "words/harm_words.h"

#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench::words {
namespace {

constexpr Line statements[] = {
    {"H222", QT_TRANSLATE_NOOP("Statements", "Extremely flammable aerosol.")},
    {"H225", QT_TRANSLATE_NOOP("Statements", "Highly flammable liquid and vapour.")},
    {"H226", QT_TRANSLATE_NOOP("Statements", "Flammable liquid and vapour.")},
    {"H228", QT_TRANSLATE_NOOP("Statements", "Flammable solid.")},
    {"H229", QT_TRANSLATE_NOOP("Statements", "Pressurised container: may burst if heated.")},
    {"H241", QT_TRANSLATE_NOOP("Statements", "Heating may cause a fire or explosion.")},
    {"H242", QT_TRANSLATE_NOOP("Statements", "Heating may cause a fire.")},
    {"H261", QT_TRANSLATE_NOOP("Statements", "In contact with water releases flammable gases.")},
    {"H290", QT_TRANSLATE_NOOP("Statements", "May be corrosive to metals.")},
    {"H301", QT_TRANSLATE_NOOP("Statements", "Toxic if swallowed.")},
    {"H302", QT_TRANSLATE_NOOP("Statements", "Harmful if swallowed.")},
    {"H304", QT_TRANSLATE_NOOP("Statements", "May be fatal if swallowed and enters airways.")},
    {"H312", QT_TRANSLATE_NOOP("Statements", "Harmful in contact with skin.")},
    {"H314", QT_TRANSLATE_NOOP("Statements", "Causes severe skin burns and eye damage.")},
    {"H315", QT_TRANSLATE_NOOP("Statements", "Causes skin irritation.")},
    {"H317", QT_TRANSLATE_NOOP("Statements", "May cause an allergic skin reaction.")},
    {"H318", QT_TRANSLATE_NOOP("Statements", "Causes serious eye damage.")},
    {"H319", QT_TRANSLATE_NOOP("Statements", "Causes serious eye irritation.")},
    {"H332", QT_TRANSLATE_NOOP("Statements", "Harmful if inhaled.")},
    {"H334",
     QT_TRANSLATE_NOOP("Statements", "May cause allergy or asthma symptoms or breathing difficulties if inhaled.")},
    {"H335", QT_TRANSLATE_NOOP("Statements", "May cause respiratory irritation.")},
    {"H336", QT_TRANSLATE_NOOP("Statements", "May cause drowsiness or dizziness.")},
    {"H350", QT_TRANSLATE_NOOP("Statements", "May cause cancer.")},
    {"H351", QT_TRANSLATE_NOOP("Statements", "Suspected of causing cancer.")},
    {"H360", QT_TRANSLATE_NOOP("Statements", "May damage fertility or the unborn child.")},
    {"H361", QT_TRANSLATE_NOOP("Statements", "Suspected of damaging fertility or the unborn child.")},
    {"H361d", QT_TRANSLATE_NOOP("Statements", "Suspected of damaging the unborn child.")},
    {"H372", QT_TRANSLATE_NOOP("Statements", "Causes damage to organs through prolonged or repeated exposure.")},
    {"H373", QT_TRANSLATE_NOOP("Statements", "May cause damage to organs through prolonged or repeated exposure.")},
    {"H400", QT_TRANSLATE_NOOP("Statements", "Very toxic to aquatic life.")},
    {"H410", QT_TRANSLATE_NOOP("Statements", "Very toxic to aquatic life with long lasting effects.")},
    {"H411", QT_TRANSLATE_NOOP("Statements", "Toxic to aquatic life with long lasting effects.")},
    {"H412", QT_TRANSLATE_NOOP("Statements", "Harmful to aquatic life with long lasting effects.")},
    {"EUH066", QT_TRANSLATE_NOOP("Statements", "Repeated exposure may cause skin dryness or cracking.")},
    {"P201", QT_TRANSLATE_NOOP("Statements", "Obtain special instructions before use.")},
    {"P202",
     QT_TRANSLATE_NOOP("Statements", "Do not handle until all safety precautions have been read and understood.")},
    {"P210", QT_TRANSLATE_NOOP(
                 "Statements",
                 "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.")},
    {"P223", QT_TRANSLATE_NOOP("Statements", "Do not allow contact with water.")},
    {"P233", QT_TRANSLATE_NOOP("Statements", "Keep container tightly closed.")},
    {"P234", QT_TRANSLATE_NOOP("Statements", "Keep only in original packaging.")},
    {"P235", QT_TRANSLATE_NOOP("Statements", "Keep cool.")},
    {"P260", QT_TRANSLATE_NOOP("Statements", "Do not breathe dust/fume/gas/mist/vapours/spray.")},
    {"P261", QT_TRANSLATE_NOOP("Statements", "Avoid breathing dust/fume/gas/mist/vapours/spray.")},
    {"P271", QT_TRANSLATE_NOOP("Statements", "Use only outdoors or in a well-ventilated area.")},
    {"P273", QT_TRANSLATE_NOOP("Statements", "Avoid release to the environment.")},
    {"P280",
     QT_TRANSLATE_NOOP("Statements", "Wear protective gloves/protective clothing/eye protection/face protection.")},
    {"P301+P310", QT_TRANSLATE_NOOP("Statements", "IF SWALLOWED: Immediately call a POISON CENTER/doctor.")},
    {"P302+P352", QT_TRANSLATE_NOOP("Statements", "IF ON SKIN: Wash with plenty of water.")},
    {"P304+P340",
     QT_TRANSLATE_NOOP("Statements", "IF INHALED: Remove person to fresh air and keep comfortable for breathing.")},
    {"P305+P351+P338",
     QT_TRANSLATE_NOOP("Statements", "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact "
                                     "lenses, if present and easy to do. Continue rinsing.")},
    {"P308+P313", QT_TRANSLATE_NOOP("Statements", "IF exposed or concerned: Get medical advice/attention.")},
    {"P331", QT_TRANSLATE_NOOP("Statements", "Do NOT induce vomiting.")},
    {"P333+P313", QT_TRANSLATE_NOOP("Statements", "If skin irritation or rash occurs: Get medical advice/attention.")},
    {"P337+P313", QT_TRANSLATE_NOOP("Statements", "If eye irritation persists: Get medical advice/attention.")},
    {"P403+P235", QT_TRANSLATE_NOOP("Statements", "Store in a well-ventilated place. Keep cool.")},
    {"P410+P412",
     QT_TRANSLATE_NOOP("Statements", "Protect from sunlight. Do not expose to temperatures exceeding 50 °C/122 °F.")},
    {"P420", QT_TRANSLATE_NOOP("Statements", "Store separately.")},
    {"P501", QT_TRANSLATE_NOOP("Statements", "Dispose of contents/container in accordance with local regulations.")},
};

/// Text of one code; empty when there is none.
QString textOf(const QString& code)
{
    return holds(statements, code) ? lookUp("Statements", statements, code) : QString();
}

} // namespace

bool hasStatement(const QString& code) { return holds(statements, code); }

QString statement(const QString& code)
{
    QStringList texts{textOf(code)};
    if (texts.front().isEmpty()) {
        texts.clear();
        for (const QString& part : code.split(u'+'))
            if (const QString text = textOf(part); !text.isEmpty())
                texts << text;
    }
    return texts.isEmpty() ? code : code + u' ' + texts.join(u' ');
}

} // namespace strandbench::words
