// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/options.h"

#include <QCryptographicHash>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t stopsOffered = 10;
constexpr std::size_t waysOffered = 6;

/// Stops and ways that tempt on many panels.
const std::vector<QString>& commonStops()
{
    static const std::vector<QString> all{u"substrate_thermoplastic"_s,
                                          u"substrate_unknown"_s,
                                          u"zone_structural"_s,
                                          u"zone_sensor"_s,
                                          u"surface_paint"_s,
                                          u"surface_rust"_s,
                                          u"surface_etch_primer"_s,
                                          u"surface_old_filler"_s,
                                          u"moisture_damp"_s,
                                          u"core_foam"_s,
                                          u"weld_spot"_s,
                                          u"bond_seam_not_cured"_s,
                                          u"metal_hole"_s,
                                          u"dent_too_deep"_s,
                                          u"panel_near_dew_point"_s};
    return all;
}
const std::vector<QString>& commonWays()
{
    static const std::vector<QString> all{u"strip_to_bare"_s,  u"cut_back_and_weld"_s, u"maker_structural_method"_s,
                                          u"dry_and_prove"_s,  u"replace_part"_s,      u"clean_prime_seal"_s,
                                          u"warm_the_panel"_s, u"metal_work_first"_s,  u"let_adhesive_cure"_s,
                                          u"sandwich_repair"_s};
    return all;
}

/// An order that is the same for the same panel, and no other's.
QByteArray placeOf(const QString& code, const PracticePanel& panel)
{
    return QCryptographicHash::hash((panel.id + u'/' + code).toUtf8(), QCryptographicHash::Sha256);
}

void shuffle(std::vector<QString>& codes, const PracticePanel& panel)
{
    std::ranges::sort(codes, {}, [&](const QString& each) { return placeOf(each, panel); });
}

/// All that must be there, once each, and of the others as many as there is room for.
std::vector<QString> offered(const std::vector<QString>& must, std::vector<QString> others, std::size_t room,
                             const PracticePanel& panel)
{
    std::vector<QString> all;
    const auto add = [&](const QString& code) {
        if (std::ranges::find(all, code) == all.end())
            all.push_back(code);
    };
    std::ranges::for_each(must, add);
    shuffle(others, panel);
    for (const QString& each : others)
        if (all.size() < room)
            add(each);
    shuffle(all, panel);
    return all;
}

template <class Code> std::vector<QString> ofStops(const PracticeRun& run, const PlanningSet& shop, const Code& code)
{
    std::vector<QString> all;
    for (const Assessment& each : {run.panel().truth, run.attempt().found}) {
        const RepairPlan plan = planRepair(each, shop);
        for (const Stop& stop : plan.stops)
            all.push_back(code(stop));
    }
    return all;
}

} // namespace

std::vector<QString> stopOptions(const PracticeRun& run, const PlanningSet& shop)
{
    return offered(ofStops(run, shop, [](const Stop& stop) { return stop.reason.code; }), commonStops(), stopsOffered,
                   run.panel());
}

std::vector<QString> insteadOptions(const PracticeRun& run, const PlanningSet& shop)
{
    return offered(ofStops(run, shop, [](const Stop& stop) { return stop.instead; }), commonWays(), waysOffered,
                   run.panel());
}

std::vector<QString> stepOptions(const PracticeRun& run)
{
    std::vector<QString> all = run.own().falseSteps;
    for (const Step& each : run.own().plan.prep)
        all.push_back(each.code);
    return offered(all, {}, all.size(), run.panel());
}

} // namespace strandbench
