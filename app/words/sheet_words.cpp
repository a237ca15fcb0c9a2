// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/sheet_words.h"

#include "exchange/sheets.h"
#include "words/customary.h"
#include "words/faults.h"
#include "words/table.h"

#include <QtGlobal>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr const char* context = "ProductSheets";

// Short: a name stands below its figure on a key.
constexpr words::Line names[] = {
    {"id", QT_TRANSLATE_NOOP("ProductSheets", "Short name in files")},
    {"name", QT_TRANSLATE_NOOP("ProductSheets", "Name")},
    {"demo", QT_TRANSLATE_NOOP("ProductSheets", "Demo sheet")},
    {"filler_class", QT_TRANSLATE_NOOP("ProductSheets", "Kind of filler")},
    {"density_g_per_ml", QT_TRANSLATE_NOOP("ProductSheets", "Density")},
    {"working_min.nominal", QT_TRANSLATE_NOOP("ProductSheets", "Working time")},
    {"working_min.early", QT_TRANSLATE_NOOP("ProductSheets", "Working time, at least")},
    {"working_min.late", QT_TRANSLATE_NOOP("ProductSheets", "Working time, at most")},
    {"sanding_min.nominal", QT_TRANSLATE_NOOP("ProductSheets", "Sands after")},
    {"sanding_min.early", QT_TRANSLATE_NOOP("ProductSheets", "Sands after, at least")},
    {"sanding_min.late", QT_TRANSLATE_NOOP("ProductSheets", "Sands after, at most")},
    {"easy_sanding_min", QT_TRANSLATE_NOOP("ProductSheets", "Sands easily for")},
    {"sanding_test_mm", QT_TRANSLATE_NOOP("ProductSheets", "Layer that was sanded")},
    {"reference_c", QT_TRANSLATE_NOOP("ProductSheets", "Times stated at")},
    {"heat_kj_per_kg", QT_TRANSLATE_NOOP("ProductSheets", "Heat of cure")},
    {"specific_heat_j_per_kg_k", QT_TRANSLATE_NOOP("ProductSheets", "Specific heat")},
    {"conductivity_w_per_m_k", QT_TRANSLATE_NOOP("ProductSheets", "Conductivity")},
    {"greatest_lift_mm", QT_TRANSLATE_NOOP("ProductSheets", "Greatest lift")},
    {"finish_in_all_mm", QT_TRANSLATE_NOOP("ProductSheets", "Greatest in all coats")},
    {"shrinkage_percent", QT_TRANSLATE_NOOP("ProductSheets", "Shrinkage")},
    {"styrene_percent", QT_TRANSLATE_NOOP("ProductSheets", "Styrene")},
    {"hardener_percent.nominal", QT_TRANSLATE_NOOP("ProductSheets", "Hardener share")},
    {"hardener_percent.low", QT_TRANSLATE_NOOP("ProductSheets", "Hardener, lowest")},
    {"hardener_percent.high", QT_TRANSLATE_NOOP("ProductSheets", "Hardener, highest")},
    {"hardener_percent.low_caution", QT_TRANSLATE_NOOP("ProductSheets", "With a caution from")},
    {"hardener_percent.high_caution", QT_TRANSLATE_NOOP("ProductSheets", "With a caution up to")},
    {"peroxide_percent", QT_TRANSLATE_NOOP("ProductSheets", "Peroxide in hardener")},
    {"bead_mg_per_mm", QT_TRANSLATE_NOOP("ProductSheets", "Hardener in a bead")},
    {"panel_c.low", QT_TRANSLATE_NOOP("ProductSheets", "Panel, coldest")},
    {"panel_c.high", QT_TRANSLATE_NOOP("ProductSheets", "Panel, hottest")},
    {"panel_c.low_caution", QT_TRANSLATE_NOOP("ProductSheets", "Panel, with a caution")},
    {"peak_limit_c", QT_TRANSLATE_NOOP("ProductSheets", "Peak in the filler")},
    {"store_c.low", QT_TRANSLATE_NOOP("ProductSheets", "Store from")},
    {"store_c.high", QT_TRANSLATE_NOOP("ProductSheets", "Store up to")},
    {"months_sealed", QT_TRANSLATE_NOOP("ProductSheets", "Months sealed")},
    {"months_opened", QT_TRANSLATE_NOOP("ProductSheets", "Months opened")},
    {"names_zinc", QT_TRANSLATE_NOOP("ProductSheets", "Names zinc")},
    {"cure.activation_energy_j_per_mol", QT_TRANSLATE_NOOP("ProductSheets", "Activation energy")},
    {"cure.m", QT_TRANSLATE_NOOP("ProductSheets", "Exponent m")},
    {"cure.n", QT_TRANSLATE_NOOP("ProductSheets", "Exponent n")},
    {"cure.hardener_exponent", QT_TRANSLATE_NOOP("ProductSheets", "Hardener exponent")},
    {"cure.max_conversion_at_reference", QT_TRANSLATE_NOOP("ProductSheets", "Cures to at most")},
    {"cure.max_conversion_per_k", QT_TRANSLATE_NOOP("ProductSheets", "And for each kelvin")},
};

constexpr words::Line groups[] = {
    {"product", QT_TRANSLATE_NOOP("ProductSheets", "Product")},
    {"times", QT_TRANSLATE_NOOP("ProductSheets", "Times")},
    {"hardener", QT_TRANSLATE_NOOP("ProductSheets", "Hardener")},
    {"limits", QT_TRANSLATE_NOOP("ProductSheets", "Limits and store")},
    {"heat", QT_TRANSLATE_NOOP("ProductSheets", "Heat and make-up")},
    {"law", QT_TRANSLATE_NOOP("ProductSheets", "Law of cure")},
};

// NIST SP 811 (2008), appendix B.8: the pound and the US gallon, 3.785 411 784 l.
constexpr words::Customary customary[] = {
    {"mm", "in", 1 / 25.4, 0},
    {"°C", "°F", 1.8, 32},
    {"g/ml", "lb/gal", 3785.411784 / 453.59237, 0},
};

const words::Customary* customaryOf(const SheetField& field, UnitSystem system)
{
    return words::customaryOf(customary, field.unit, system);
}

/// Digits of a figure that was turned into another unit; one in its own unit is shown whole.
constexpr int digitsTurned = 4;

} // namespace

QString SheetWords::name(const QString& path)
{
    // An object of several figures goes by the one that matters most.
    for (const QString& each : {path, path + u".nominal"_s, path + u".low"_s})
        if (words::holds(names, each))
            return words::lookUp(context, names, each);
    return u'[' + path + u']'; // the cells of the decision table, and what else a file may hold
}

QString SheetWords::group(SheetGroup group) { return words::lookUp(context, groups, codeOf(group)); }

QString SheetWords::unit(const SheetField& field) const
{
    const words::Customary* other = customaryOf(field, m_words.units());
    return other ? QString::fromUtf8(other->unit) : field.unit;
}

QString SheetWords::plain(const SheetField& field, double number) const
{
    const words::Customary* other = customaryOf(field, m_words.units());
    if (!other)
        return words::plainFigure(number, 6);
    const double shown = number * other->factor + other->offset;
    const int whole = shown == 0 ? 1 : static_cast<int>(std::floor(std::log10(std::abs(shown)))) + 1;
    return words::plainFigure(shown, std::clamp(digitsTurned - whole, 0, 6));
}

QString SheetWords::keyed(const SheetField& field, const QJsonValue& value) const
{
    return value.isDouble() ? plain(field, value.toDouble()) : QString();
}

QString SheetWords::figure(const SheetField& field, const QJsonValue& value) const
{
    switch (field.kind) {
    case SheetFieldKind::Text:
        return value.toString();
    case SheetFieldKind::Filler:
        if (const auto filler = fromCode<FillerClass>(value.toString()))
            return Words::title(m_words.filler(*filler));
        return value.toString();
    case SheetFieldKind::Flag:
        return !value.isBool()  ? QString()
               : value.toBool() ? words::inLanguage(context, QT_TRANSLATE_NOOP("ProductSheets", "yes"))
                                : words::inLanguage(context, QT_TRANSLATE_NOOP("ProductSheets", "no"));
    case SheetFieldKind::Number:
    case SheetFieldKind::Whole:
        break;
    }
    if (!value.isDouble())
        return {};
    const QString figure = words::localFigure(plain(field, value.toDouble()), m_words.locale());
    const QString in = unit(field);
    return in.isEmpty() ? figure : figure + QChar(0x00a0) + in;
}

Checked<double> SheetWords::parse(const SheetField& field, const QString& text) const
{
    const Checked<double> shown = parseNumber(text, field.path);
    if (!shown)
        return shown;
    const words::Customary* other = customaryOf(field, m_words.units());
    const double number = other ? (*shown - other->offset) / other->factor : *shown;
    return std::round(number * 1e6) / 1e6;
}

QString SheetWords::fault(const Fault& fault) const
{
    const SheetField* field = findSheetField(fault.field);
    Fault shown = fault;
    const auto turned = [&](const SheetField& of, const QString& number) {
        bool read = false;
        const double value = number.toDouble(&read);
        return read ? figure(of, value) : number;
    };
    if (!field)
        return words::faultLine(shown, name(fault.field));
    if (fault.kind == FaultKind::OutOfRange) {
        shown.value = turned(*field, fault.value);
        shown.allowed = {
            plain(*field, fault.allowed.value(0).toDouble()).replace(u'.', m_words.locale().decimalPoint()),
            turned(*field, fault.allowed.value(1))};
    } else if (fault.kind == FaultKind::Missing) {
        shown.allowed = {};
    } else if (fault.kind == FaultKind::Conflicts) {
        shown.value = turned(*field, fault.value);
        if (const SheetField* other = findSheetField(fault.allowed.value(0)))
            shown.allowed = {name(other->path), turned(*other, fault.allowed.value(1))};
    }
    return words::faultLine(shown, name(fault.field));
}

QString SheetWords::sheetName(const ProductSheet& sheet)
{
    // The names of the sheets that the program carries say it themselves.
    if (!sheet.demo || demoCatalogue().byId(sheet.id))
        return sheet.name;
    return sheet.name + u" ("_s + words::inLanguage(context, QT_TRANSLATE_NOOP("ProductSheets", "demo sheet")) + u')';
}

} // namespace strandbench
