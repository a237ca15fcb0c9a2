// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/faults.h"

#include "words/table.h"

#include <QtGlobal>

using namespace Qt::StringLiterals;

namespace strandbench::words {
namespace {

constexpr const char* context = "Faults";

/// The kinds of value as core names them in Fault::allowed.
constexpr Line kinds[] = {
    {"number", QT_TRANSLATE_NOOP("Faults", "a number")},
    {"whole number", QT_TRANSLATE_NOOP("Faults", "a whole number")},
    {"text", QT_TRANSLATE_NOOP("Faults", "a text")},
    {"object", QT_TRANSLATE_NOOP("Faults", "an object")},
    {"list", QT_TRANSLATE_NOOP("Faults", "a list")},
    {"true or false", QT_TRANSLATE_NOOP("Faults", "true or false")},
    {"file", QT_TRANSLATE_NOOP("Faults", "a file")},
};

constexpr Line fields[] = {
    {"job", QT_TRANSLATE_NOOP("Faults", "Job number")},
    {"panel", QT_TRANSLATE_NOOP("Faults", "Panel")},
    {"person", QT_TRANSLATE_NOOP("Faults", "Who")},
    {"substrate", QT_TRANSLATE_NOOP("Faults", "Panel’s material")},
    {"damage", QT_TRANSLATE_NOOP("Faults", "Damage")},
    {"kind", QT_TRANSLATE_NOOP("Faults", "Kind of damage")},
    {"weld", QT_TRANSLATE_NOOP("Faults", "Kind of weld")},
    {"adhesive_cured", QT_TRANSLATE_NOOP("Faults", "Adhesive cured")},
    {"length_mm", QT_TRANSLATE_NOOP("Faults", "Length")},
    {"width_mm", QT_TRANSLATE_NOOP("Faults", "Width")},
    {"depth_mm", QT_TRANSLATE_NOOP("Faults", "Depth")},
    {"panel_thickness_mm", QT_TRANSLATE_NOOP("Faults", "Panel thickness")},
    {"bevel_ratio", QT_TRANSLATE_NOOP("Faults", "Bevel")},
    {"rear_access", QT_TRANSLATE_NOOP("Faults", "Reach from behind")},
    {"surface", QT_TRANSLATE_NOOP("Faults", "Surface")},
    {"zone", QT_TRANSLATE_NOOP("Faults", "Zone")},
    {"moisture", QT_TRANSLATE_NOOP("Faults", "Moisture")},
    {"core", QT_TRANSLATE_NOOP("Faults", "Core")},
    {"air_c", QT_TRANSLATE_NOOP("Faults", "Air temperature")},
    {"panel_c", QT_TRANSLATE_NOOP("Faults", "Panel temperature")},
    {"humidity_percent", QT_TRANSLATE_NOOP("Faults", "Humidity")},
    {"filler_g", QT_TRANSLATE_NOOP("Faults", "Filler")},
    {"hardener_g", QT_TRANSLATE_NOOP("Faults", "Hardener")},
    {"bead_mm", QT_TRANSLATE_NOOP("Faults", "Bead")},
    {"puddle_mm", QT_TRANSLATE_NOOP("Faults", "Puddle")},
    {"lot", QT_TRANSLATE_NOOP("Faults", "Lot")},
    {"card_mm", QT_TRANSLATE_NOOP("Faults", "Card")},
};

QString quoted(const QString& value) { return u'\'' + oneLine(value).trimmed() + u'\''; }

QString say(const char* text, const QStringList& arguments) { return fillIn(inLanguage(context, text), arguments); }

QString kindName(const QString& kind) { return holds(kinds, kind) ? lookUp(context, kinds, kind) : kind; }

QString missing(const Fault& fault, const QString& field)
{
    // allowed is a kind, perhaps with a unit after it, or the words that it may be.
    if (fault.allowed.isEmpty())
        return say(QT_TRANSLATE_NOOP("Faults", "%1: missing"), {field});
    if (!holds(kinds, fault.allowed.constFirst()))
        return say(QT_TRANSLATE_NOOP("Faults", "%1: missing; it must be one of: %2"),
                   {field, fault.allowed.join(u", "_s)});
    const QString unit = fault.allowed.size() > 1 ? u" ("_s + fault.allowed.at(1) + u')' : QString();
    return say(QT_TRANSLATE_NOOP("Faults", "%1: missing; it must be %2"),
               {field, kindName(fault.allowed.constFirst()) + unit});
}

QString outOfRange(const Fault& fault, const QString& field)
{
    const QString unit = fault.allowed.value(2);
    return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 is out of range; allowed is %3 to %4"),
               {field, fault.value, fault.allowed.value(0),
                unit.isEmpty() ? fault.allowed.value(1) : fault.allowed.value(1) + u' ' + unit});
}

} // namespace

QString faultLine(const Fault& fault, const QString& shownField)
{
    const QString field = oneLine(shownField);
    const QString allowed = fault.allowed.join(u", "_s);
    const QString value = quoted(fault.value);
    switch (fault.kind) {
    case FaultKind::Missing:
        return missing(fault, field);
    case FaultKind::UnknownKey:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: not known; known here: %2"), {field, allowed});
    case FaultKind::WrongKind:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 does not fit; it must be %3"),
                   {field, value, kindName(fault.allowed.value(0))});
    case FaultKind::OutOfRange:
        return outOfRange(fault, field);
    case FaultKind::NotOneOf:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 is not one of: %3"), {field, value, allowed});
    case FaultKind::NotReadable:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 cannot be read; it looks like: %3"), {field, value, allowed});
    case FaultKind::Empty:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: must not be empty"), {field});
    case FaultKind::TooLong:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 is too long; at most %3 characters"), {field, value, allowed});
    case FaultKind::Conflicts:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 does not agree with %3: %4"),
                   {field, value, fault.allowed.value(0), quoted(fault.allowed.value(1))});
    case FaultKind::NotFound:
        return say(QT_TRANSLATE_NOOP("Faults", "%1: %2 is not there; there is: %3"), {field, value, allowed});
    }
    Q_UNREACHABLE();
}

QString fieldName(const QString& field)
{
    const QString last = field.section(u'.', -1);
    return holds(fields, last) ? lookUp(context, fields, last) : field;
}

} // namespace strandbench::words
