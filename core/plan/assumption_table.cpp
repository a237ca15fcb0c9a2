// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/assumption_table.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// A unit: its sign, and the way from a number to the quantity and back.
template <class Q> struct Unit {
    QString sign;
    Q (*make)(double);
    double (*read)(Q);
};

const Unit<Length> mm{u"mm"_s, millimetres, inMillimetres};
const Unit<Mass> g{u"g"_s, grams, inGrams};
const Unit<Duration> s{u"s"_s, seconds, inSeconds};
const Unit<Duration> min{u"min"_s, minutes, inMinutes};
const Unit<Temperature> degC{u"°C"_s, celsius, inCelsius};
const Unit<TemperatureStep> kelvins{u"K"_s, kelvinStep, inKelvinStep};
const Unit<MassRate> gPerMin{u"g/min"_s, gramsPerMinute, inGramsPerMinute};
const Unit<Density> kgPerM3{u"kg/m³"_s, kilogramsPerCubicMetre, inKilogramsPerCubicMetre};
const Unit<Fraction> percent{u"%"_s, Fraction::ofHundred, [](Fraction share) { return share.percent(); }};
const Unit<SpecificHeat> jPerKgK{u"J/(kg K)"_s, joulesPerKilogramKelvin, [](SpecificHeat q) { return q.value(); }};
const Unit<Conductivity> wPerMK{u"W/(m K)"_s, wattsPerMetreKelvin, [](Conductivity q) { return q.value(); }};
const Unit<HeatTransfer> wPerM2K{u"W/(m² K)"_s, wattsPerSquareMetreKelvin, [](HeatTransfer q) { return q.value(); }};
const Unit<Volume> m3{u"m³"_s, cubicMetres, inCubicMetres};
const Unit<Rate> perHour{u"1/h"_s, changesPerHour, inChangesPerHour};

template <class Q> using Member = Q& (*)(Assumptions&);

template <class Q>
AssumptionEntry entry(const QString& code, const Unit<Q>& unit, Member<Q> member, double least, double most,
                      bool published = false)
{
    AssumptionEntry made;
    made.code = code;
    made.unit = unit.sign;
    made.published = published;
    made.least = unit.make(least);
    made.most = unit.make(most);
    made.get = [member](const Assumptions& from) -> AssumptionValue {
        Assumptions copy = from;
        return member(copy);
    };
    made.put = [member](Assumptions& into, const AssumptionValue& value) { member(into) = std::get<Q>(value); };
    made.rawNumber = [read = unit.read](const AssumptionValue& value) { return read(std::get<Q>(value)); };
    made.value = [make = unit.make](double number) -> AssumptionValue { return make(number); };
    return made;
}

using A = Assumptions;

void addHands(std::vector<AssumptionEntry>& table)
{
    // Below 10 s nothing is kneaded; over 3 min the fastest filler is lost.
    table.push_back(entry<Duration>(
        u"kneading_s"_s, s, [](A & a) -> auto& { return a.kneading; }, 10, 180));
    // From a fine edge by a beginner to a long low spot with a wide spreader.
    table.push_back(entry<MassRate>(
        u"spreading_g_per_min"_s, gPerMin, [](A & a) -> auto& { return a.spreading; }, 5, 300));
    // At 95 % of the gel time there is hardly time left to clear an edge; before 40 % there is none to spread.
    table.push_back(entry<Fraction>(
        u"edges_at_gel_percent"_s, percent, [](A & a) -> auto& { return a.edgesAtGel; }, 40, 95));
    table.push_back(entry<Duration>(
        u"lay_puddle_s"_s, s, [](A & a) -> auto& { return a.layPuddle; }, 10, 600));
    table.push_back(entry<Duration>(
        u"sand_lift_min"_s, min, [](A & a) -> auto& { return a.sandLift; }, 1, 60));
    table.push_back(entry<Duration>(
        u"turn_panel_min"_s, min, [](A & a) -> auto& { return a.turnPanel; }, 1, 60));
    // At least about an hour at 20 degC (common practice, no source): it may be longer, not shorter.
    table.push_back(entry<Duration>(
        u"before_primer_min"_s, min, [](A & a) -> auto& { return a.beforePrimer; }, 60, 1440));
    // A tub is brought to 18-25 degC; beyond 10 K from the air it must even out first.
    table.push_back(entry<TemperatureStep>(
        u"filler_over_air_k"_s, kelvins, [](A & a) -> auto& { return a.fillerOverAir; }, -10, 10));
}

void addBoard(std::vector<AssumptionEntry>& table)
{
    // Two inches of puddle and a rim, up to what lies on a bench.
    table.push_back(entry<Length>(
        u"board_mm"_s, mm, [](A & a) -> auto& { return a.board; }, 100, 600));
    // Card to thick plate; the material from foamed plastic to steel.
    table.push_back(entry<Length>(
        u"board_thickness_mm"_s, mm, [](A & a) -> auto& { return a.boardThickness; }, 0.5, 20));
    table.push_back(entry<Density>(
        u"board_kg_per_m3"_s, kgPerM3, [](A & a) -> auto& { return a.boardMaterial.density; }, 50, 8000));
    table.push_back(entry<SpecificHeat>(
        u"board_j_per_kg_k"_s, jPerKgK, [](A & a) -> auto& { return a.boardMaterial.specificHeat; }, 300, 3000));
    table.push_back(entry<Conductivity>(
        u"board_w_per_m_k"_s, wPerMK, [](A & a) -> auto& { return a.boardMaterial.conductivity; }, 0.03, 250));
    // More than a third left on the board is a fault of the board, not a loss to plan with.
    table.push_back(entry<Fraction>(
        u"board_loss_percent"_s, percent, [](A & a) -> auto& { return a.boardLossShare; }, 0, 35));
    table.push_back(entry<Mass>(
        u"board_loss_g"_s, g, [](A & a) -> auto& { return a.boardLossEach; }, 0, 20));
}

void addBuild(std::vector<AssumptionEntry>& table)
{
    table.push_back(entry<Length>(
        u"proud_mm"_s, mm, [](A & a) -> auto& { return a.proud; }, 0, 3));
    // Left 0.5 to 1 mm low (common practice, no source).
    table.push_back(entry<Length>(
        u"left_low_mm"_s, mm, [](A & a) -> auto& { return a.leftLow; }, 0.5, 1));
    table.push_back(entry<Length>(
        u"skim_beyond_mm"_s, mm, [](A & a) -> auto& { return a.skimBeyond; }, 0, 50));
    // Where another filler bridges: at least a third of the height, or it holds nothing; some must go over it.
    table.push_back(entry<Fraction>(
        u"bridge_share_percent"_s, percent, [](A & a) -> auto& { return a.bridgeShare; }, 33, 75));
    // A backing laps at least 50 mm (common practice, no source).
    table.push_back(entry<Length>(
        u"backing_lap_mm"_s, mm, [](A & a) -> auto& { return a.backingLap; }, 50, 150));
    table.push_back(entry<Length>(
        u"backing_mm"_s, mm, [](A & a) -> auto& { return a.backing; }, 0.5, 10));
    table.push_back(entry<Length>(
        u"least_under_mm"_s, mm, [](A & a) -> auto& { return a.leastUnder; }, 0.1, 2));
}

/// What decides whether a hole or a dent is filled at all: a bench may be stricter than the default, never laxer.
void addHolesAndDents(std::vector<AssumptionEntry>& table)
{
    table.push_back(entry<Length>(
        u"hole_both_faces_mm"_s, mm, [](A & a) -> auto& { return a.holeBothFaces; }, 5, 50));
    table.push_back(entry<Length>(
        u"hole_no_rear_access_mm"_s, mm, [](A & a) -> auto& { return a.holeNoRearAccess; }, 5, 25));
    table.push_back(entry<Length>(
        u"hole_greatest_mm"_s, mm, [](A & a) -> auto& { return a.decision.holeGreatest; }, 10, 75));
    table.push_back(entry<Length>(
        u"dense_hole_mm"_s, mm, [](A & a) -> auto& { return a.decision.denseHole; }, 1, 12));
    table.push_back(entry<Length>(
        u"dent_deepest_mm"_s, mm, [](A & a) -> auto& { return a.decision.dentDeepest; }, 1, 6));
    table.push_back(entry<Length>(
        u"dent_aim_mm"_s, mm, [](A & a) -> auto& { return a.decision.dentAim; }, 0.5, 3));
}

/// The limits for filling and of heat: narrower than the default only, for the same reason.
void addLimits(std::vector<AssumptionEntry>& table)
{
    const auto filling = [&table](const QString& code, Member<Temperature> member, double least, double most) {
        table.push_back(entry<Temperature>(code, degC, member, least, most));
    };
    filling(
        u"panel_low_c"_s, [](A & a) -> auto& { return a.decision.filling.panelLow; }, 10, 20);
    filling(
        u"panel_caution_below_c"_s, [](A & a) -> auto& { return a.decision.filling.panelCautionBelow; }, 15, 22);
    filling(
        u"panel_high_c"_s, [](A & a) -> auto& { return a.decision.filling.panelHigh; }, 24, 30);
    filling(
        u"air_low_c"_s, [](A & a) -> auto& { return a.decision.filling.airLow; }, 10, 20);
    filling(
        u"air_high_c"_s, [](A & a) -> auto& { return a.decision.filling.airHigh; }, 24, 35);
    table.push_back(entry<TemperatureStep>(
        u"dew_margin_k"_s, kelvins, [](A & a) -> auto& { return a.decision.filling.dewMargin; }, 3, 10));
    filling(
        u"laminate_peak_c"_s, [](A & a) -> auto& { return a.laminatePeak; }, 60, 90);
    filling(
        u"bond_seam_peak_c"_s, [](A & a) -> auto& { return a.bondSeamPeak; }, 50, 80);
}

/// What a panel's own heat figures may be: laminates of every glass content, steels to stainless, alloys.
void addHeat(std::vector<AssumptionEntry>& table)
{
    // From air at rest in a box to a fan.
    table.push_back(entry<HeatTransfer>(
        u"face_front_w_per_m2_k"_s, wPerM2K, [](A & a) -> auto& { return a.faceFront; }, 2, 50));
    table.push_back(entry<HeatTransfer>(
        u"face_back_w_per_m2_k"_s, wPerM2K, [](A & a) -> auto& { return a.faceBack; }, 2, 50));
    table.push_back(entry<Density>(
        u"laminate_kg_per_m3"_s, kgPerM3, [](A & a) -> auto& { return a.laminate.density; }, 1200, 2300, true));
    table.push_back(entry<SpecificHeat>(
        u"laminate_j_per_kg_k"_s, jPerKgK, [](A & a) -> auto& { return a.laminate.specificHeat; }, 800, 1800, true));
    table.push_back(entry<Conductivity>(
        u"laminate_w_per_m_k"_s, wPerMK, [](A & a) -> auto& { return a.laminate.conductivity; }, 0.1, 1, true));
    table.push_back(entry<Density>(
        u"steel_kg_per_m3"_s, kgPerM3, [](A & a) -> auto& { return a.steel.density; }, 7000, 8200, true));
    table.push_back(entry<SpecificHeat>(
        u"steel_j_per_kg_k"_s, jPerKgK, [](A & a) -> auto& { return a.steel.specificHeat; }, 400, 550, true));
    table.push_back(entry<Conductivity>(
        u"steel_w_per_m_k"_s, wPerMK, [](A & a) -> auto& { return a.steel.conductivity; }, 10, 85, true));
    table.push_back(entry<Density>(
        u"aluminium_kg_per_m3"_s, kgPerM3, [](A & a) -> auto& { return a.aluminium.density; }, 2500, 2900, true));
    table.push_back(entry<SpecificHeat>(
        u"aluminium_j_per_kg_k"_s, jPerKgK, [](A & a) -> auto& { return a.aluminium.specificHeat; }, 850, 1000, true));
    table.push_back(entry<Conductivity>(
        u"aluminium_w_per_m_k"_s, wPerMK, [](A & a) -> auto& { return a.aluminium.conductivity; }, 90, 240, true));
}

/// What vapours go into. No plan goes by it.
void addRoom(std::vector<AssumptionEntry>& table)
{
    // From a van's load space to a hall.
    table.push_back(entry<Volume>(
        u"room_m3"_s, m3, [](A & a) -> auto& { return a.room.air; }, 10, 20000));
    // From a shut container to a booth with its fans on.
    table.push_back(entry<Rate>(
        u"room_changes_per_h"_s, perHour, [](A & a) -> auto& { return a.room.changes; }, 0.1, 100));
    // From a damp cloth to a soaked one for a whole flank.
    table.push_back(entry<Mass>(
        u"solvent_wipe_g"_s, g, [](A & a) -> auto& { return a.room.wipe; }, 0.5, 500));
    table.push_back(entry<Duration>(
        u"solvent_gone_min"_s, min, [](A & a) -> auto& { return a.room.wipeGone; }, 0.5, 60));
}

/// Each first must not be above its second.
const std::pair<QString, QString> rising[] = {
    {u"panel_low_c"_s, u"panel_caution_below_c"_s},
    {u"dent_aim_mm"_s, u"dent_deepest_mm"_s},
    {u"hole_no_rear_access_mm"_s, u"hole_both_faces_mm"_s},
    {u"hole_both_faces_mm"_s, u"hole_greatest_mm"_s},
    {u"dense_hole_mm"_s, u"hole_greatest_mm"_s},
};

QString plain(double number) { return QString::number(number, 'f', QLocale::FloatingPointShortest); }

} // namespace

double AssumptionEntry::number(const AssumptionValue& of) const { return std::round(rawNumber(of) * 1e6) / 1e6; }

bool AssumptionEntry::isDefault(const Assumptions& assumptions) const
{
    return numberOf(assumptions) == number(byDefault());
}

const std::vector<AssumptionEntry>& assumptionTable()
{
    static const std::vector<AssumptionEntry> table = [] {
        std::vector<AssumptionEntry> all;
        addHands(all);
        addBoard(all);
        addBuild(all);
        addHolesAndDents(all);
        addLimits(all);
        addHeat(all);
        addRoom(all);
        return all;
    }();
    return table;
}

const AssumptionEntry* findAssumption(const QString& code)
{
    const auto& table = assumptionTable();
    const auto found = std::find_if(table.begin(), table.end(), [&](const auto& each) { return each.code == code; });
    return found == table.end() ? nullptr : &*found;
}

Faults contradictions(const Assumptions& assumptions)
{
    Faults faults;
    for (const auto& [low, high] : rising) {
        const double below = findAssumption(low)->numberOf(assumptions);
        const double above = findAssumption(high)->numberOf(assumptions);
        if (below > above)
            faults.push_back({low, plain(below), FaultKind::Conflicts, {high, plain(above)}});
    }
    return faults;
}

Checked<Assumptions> changed(const Assumptions& assumptions, const AssumptionEntry& entry, double number)
{
    const double least = entry.number(entry.least);
    const double most = entry.number(entry.most);
    if (!(number >= least && number <= most)) // NaN too
        return tl::unexpected(
            Faults{{entry.code, plain(number), FaultKind::OutOfRange, {plain(least), plain(most), entry.unit}}});
    Assumptions next = assumptions;
    entry.put(next, entry.value(std::round(number * 1e6) / 1e6));
    if (Faults faults = contradictions(next); !faults.empty())
        return tl::unexpected(std::move(faults));
    return next;
}

bool sameAssumptions(const Assumptions& a, const Assumptions& b)
{
    const auto& table = assumptionTable();
    return std::all_of(table.begin(), table.end(),
                       [&](const AssumptionEntry& each) { return each.numberOf(a) == each.numberOf(b); });
}

} // namespace strandbench
