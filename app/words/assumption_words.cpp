// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/assumption_words.h"

#include "words/customary.h"
#include "words/faults.h"
#include "words/table.h"

#include <QtGlobal>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr const char* context = "Assumptions";

constexpr words::Line names[] = {
    {"kneading_s", QT_TRANSLATE_NOOP("Assumptions", "Kneading, until spreading begins")},
    {"spreading_g_per_min", QT_TRANSLATE_NOOP("Assumptions", "Spreading rate")},
    {"edges_at_gel_percent", QT_TRANSLATE_NOOP("Assumptions", "Clear the edges from, share of gel time")},
    {"lay_puddle_s", QT_TRANSLATE_NOOP("Assumptions", "Laying puddle and bead")},
    {"sand_lift_min", QT_TRANSLATE_NOOP("Assumptions", "Sanding one lift")},
    {"turn_panel_min", QT_TRANSLATE_NOOP("Assumptions", "Turning the panel")},
    {"before_primer_min", QT_TRANSLATE_NOOP("Assumptions", "Cure before primer, at 20 °C")},
    {"filler_over_air_k", QT_TRANSLATE_NOOP("Assumptions", "Filler at the start, warmer than air by")},
    {"board_mm", QT_TRANSLATE_NOOP("Assumptions", "Mixing board, side")},
    {"board_thickness_mm", QT_TRANSLATE_NOOP("Assumptions", "Mixing board, thickness")},
    {"board_kg_per_m3", QT_TRANSLATE_NOOP("Assumptions", "Mixing board, density")},
    {"board_j_per_kg_k", QT_TRANSLATE_NOOP("Assumptions", "Mixing board, specific heat")},
    {"board_w_per_m_k", QT_TRANSLATE_NOOP("Assumptions", "Mixing board, conductivity")},
    {"board_loss_percent", QT_TRANSLATE_NOOP("Assumptions", "Left on the board, share")},
    {"board_loss_g", QT_TRANSLATE_NOOP("Assumptions", "Left on the board, each batch")},
    {"bridge_share_percent", QT_TRANSLATE_NOOP("Assumptions", "Bridged first, share of a hole’s height")},
    {"proud_mm", QT_TRANSLATE_NOOP("Assumptions", "Built proud of the surface")},
    {"left_low_mm", QT_TRANSLATE_NOOP("Assumptions", "Fibre filler left low")},
    {"skim_beyond_mm", QT_TRANSLATE_NOOP("Assumptions", "Skim beyond the opening")},
    {"backing_lap_mm", QT_TRANSLATE_NOOP("Assumptions", "Backing laps by")},
    {"backing_mm", QT_TRANSLATE_NOOP("Assumptions", "Backing, thickness")},
    {"least_under_mm", QT_TRANSLATE_NOOP("Assumptions", "Panel below the cavity counts from")},
    {"hole_both_faces_mm", QT_TRANSLATE_NOOP("Assumptions", "Hole filled without backing, up to")},
    {"hole_no_rear_access_mm", QT_TRANSLATE_NOOP("Assumptions", "The same without reach from behind")},
    {"hole_greatest_mm", QT_TRANSLATE_NOOP("Assumptions", "Greatest hole filled")},
    {"dense_hole_mm", QT_TRANSLATE_NOOP("Assumptions", "Greatest hole for dense short strand")},
    {"dent_deepest_mm", QT_TRANSLATE_NOOP("Assumptions", "Deepest dent filled in metal")},
    {"dent_aim_mm", QT_TRANSLATE_NOOP("Assumptions", "Dent to aim at in metal")},
    {"panel_low_c", QT_TRANSLATE_NOOP("Assumptions", "Panel, coldest")},
    {"panel_caution_below_c", QT_TRANSLATE_NOOP("Assumptions", "Panel, caution below")},
    {"panel_high_c", QT_TRANSLATE_NOOP("Assumptions", "Panel, hottest")},
    {"air_low_c", QT_TRANSLATE_NOOP("Assumptions", "Air, coldest")},
    {"air_high_c", QT_TRANSLATE_NOOP("Assumptions", "Air, hottest")},
    {"dew_margin_k", QT_TRANSLATE_NOOP("Assumptions", "Panel above dew point by")},
    {"laminate_peak_c", QT_TRANSLATE_NOOP("Assumptions", "Peak on laminate and SMC")},
    {"bond_seam_peak_c", QT_TRANSLATE_NOOP("Assumptions", "Peak on a bond seam")},
    {"face_front_w_per_m2_k", QT_TRANSLATE_NOOP("Assumptions", "Heat to the air in front")},
    {"face_back_w_per_m2_k", QT_TRANSLATE_NOOP("Assumptions", "Heat to the air behind")},
    {"laminate_kg_per_m3", QT_TRANSLATE_NOOP("Assumptions", "Laminate and SMC, density")},
    {"laminate_j_per_kg_k", QT_TRANSLATE_NOOP("Assumptions", "Laminate and SMC, specific heat")},
    {"laminate_w_per_m_k", QT_TRANSLATE_NOOP("Assumptions", "Laminate and SMC, conductivity")},
    {"steel_kg_per_m3", QT_TRANSLATE_NOOP("Assumptions", "Steel, density")},
    {"steel_j_per_kg_k", QT_TRANSLATE_NOOP("Assumptions", "Steel, specific heat")},
    {"steel_w_per_m_k", QT_TRANSLATE_NOOP("Assumptions", "Steel, conductivity")},
    {"aluminium_kg_per_m3", QT_TRANSLATE_NOOP("Assumptions", "Aluminium, density")},
    {"aluminium_j_per_kg_k", QT_TRANSLATE_NOOP("Assumptions", "Aluminium, specific heat")},
    {"aluminium_w_per_m_k", QT_TRANSLATE_NOOP("Assumptions", "Aluminium, conductivity")},
    {"room_m3", QT_TRANSLATE_NOOP("Assumptions", "Air of the room")},
    {"room_changes_per_h", QT_TRANSLATE_NOOP("Assumptions", "Air of the room, changes an hour")},
    {"solvent_wipe_g", QT_TRANSLATE_NOOP("Assumptions", "Solvent, each wiping down")},
    {"solvent_gone_min", QT_TRANSLATE_NOOP("Assumptions", "Solvent, gone after")},
};

// NIST SP 811 (2008), appendix B.8; the British thermal unit is the International Table one, 1055.055 852 62 J.
constexpr double btu = 1055.05585262; // J
constexpr double pound = 0.45359237;  // kg
constexpr double foot = 0.3048;       // m
constexpr double ounceGrams = 28.349523125;
constexpr words::Customary customary[] = {
    {"mm", "in", 1 / 25.4, 0},
    {"g", "oz", 1 / ounceGrams, 0},
    {"g/min", "oz/min", 1 / ounceGrams, 0},
    {"°C", "°F", 1.8, 32},
    {"K", "°F", 1.8, 0},
    {"m³", "ft³", 1 / (foot * foot * foot), 0},
    {"kg/m³", "lb/ft³", foot* foot* foot / pound, 0},
    {"J/(kg K)", "Btu/(lb °F)", pound / (1.8 * btu), 0},
    {"W/(m K)", "Btu/(h ft °F)", 3600 * foot / (1.8 * btu), 0},
    {"W/(m² K)", "Btu/(h ft² °F)", 3600 * foot* foot / (1.8 * btu), 0},
};

const words::Customary* customaryOf(const AssumptionEntry& entry, UnitSystem system)
{
    return words::customaryOf(customary, entry.unit, system);
}

int decimalsFor(double number, int digits)
{
    if (number == 0)
        return 0;
    return std::clamp(digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(number)))), 0, 6);
}

} // namespace

QString AssumptionWords::name(const QString& code) { return words::lookUp(context, names, code); }

QString AssumptionWords::unit(const AssumptionEntry& entry) const
{
    const words::Customary* other = customaryOf(entry, m_words.units());
    return other ? QString::fromUtf8(other->unit) : entry.unit;
}

double AssumptionWords::shownNumber(const AssumptionEntry& entry, double number) const
{
    const words::Customary* other = customaryOf(entry, m_words.units());
    return other ? number * other->factor + other->offset : number;
}

double AssumptionWords::storedNumber(const AssumptionEntry& entry, double shown) const
{
    const words::Customary* other = customaryOf(entry, m_words.units());
    return other ? (shown - other->offset) / other->factor : shown;
}

QString AssumptionWords::plain(const AssumptionEntry& entry, double number) const
{
    const int digits = customaryOf(entry, m_words.units()) ? 3 : 4;
    const double shown = shownNumber(entry, number);
    return words::plainFigure(shown, decimalsFor(shown, digits));
}

Printed AssumptionWords::printed(const AssumptionEntry& entry, double number) const
{
    return {words::localFigure(plain(entry, number), m_words.locale()), unit(entry)};
}

QString AssumptionWords::figure(const AssumptionEntry& entry, double number) const
{
    return printed(entry, number).joined();
}

QString AssumptionWords::range(const AssumptionEntry& entry) const
{
    const QString least = printed(entry, entry.number(entry.least)).figure;
    const QString most = figure(entry, entry.number(entry.most));
    //: a range: "10 to 180 s"
    return words::fillIn(words::inLanguage(context, QT_TRANSLATE_NOOP("Assumptions", "%1 to %2")), {least, most});
}

double AssumptionWords::step(const AssumptionEntry& entry) const
{
    constexpr double steps = 40;
    const double least = shownNumber(entry, entry.number(entry.least));
    const double most = shownNumber(entry, entry.number(entry.most));
    const double wanted = (most - least) / steps;
    const double place = std::pow(10.0, std::floor(std::log10(wanted)));
    for (const double times : {1.0, 2.0, 5.0})
        if (times * place >= wanted * (1 - 1e-9))
            return times * place;
    return 10 * place;
}

Checked<double> AssumptionWords::parse(const AssumptionEntry& entry, const QString& text) const
{
    const Checked<double> shown = parseNumber(text, entry.code);
    if (!shown)
        return shown;
    const double least = entry.number(entry.least);
    const double most = entry.number(entry.most);
    double number = storedNumber(entry, *shown);
    // An end as it is shown is the end itself, though it was rounded for showing; what reads like the default is it.
    for (const double exact : {least, most, entry.number(entry.byDefault())})
        if (plain(entry, number) == plain(entry, exact))
            number = exact;
    if (number >= least && number <= most)
        return number;
    return tl::unexpected(Faults{{entry.code,
                                  text,
                                  FaultKind::OutOfRange,
                                  {printed(entry, least).figure, printed(entry, most).figure, unit(entry)}}});
}

QString AssumptionWords::fault(const Fault& fault) const
{
    const AssumptionEntry* entry = findAssumption(fault.field.section(u'.', -1));
    if (!entry)
        return m_words.fault(fault);
    Fault shown = fault;
    if (fault.kind == FaultKind::Conflicts) {
        const AssumptionEntry* other = findAssumption(fault.allowed.value(0).section(u'.', -1));
        shown.value = figure(*entry, fault.value.toDouble());
        shown.allowed = {name(other->code), figure(*other, fault.allowed.value(1).toDouble())};
    } else if (fault.kind == FaultKind::OutOfRange) {
        shown.allowed = {printed(*entry, entry->number(entry->least)).figure,
                         printed(*entry, entry->number(entry->most)).figure, unit(*entry)};
        if (fault.field != entry->code) // a file's number, in the entry's own unit
            shown.value = printed(*entry, fault.value.toDouble()).figure;
    }
    return words::faultLine(shown, name(entry->code));
}

} // namespace strandbench
