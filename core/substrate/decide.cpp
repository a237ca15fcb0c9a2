// SPDX-License-Identifier: GPL-3.0-or-later
#include "substrate/choose_filler.h"
#include "substrate/decision.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

void stop(Decision& decision, const QString& code, std::vector<Argument> arguments = {})
{
    decision.stops.push_back(stopOf({code, std::move(arguments)}));
}

void notAssessed(Decision& decision, const QString& question) { stop(decision, notAssessedCode, {question}); }

void judgeSubstrate(Decision& decision, const Assessment& assessment)
{
    if (!assessment.substrate)
        return notAssessed(decision, u"substrate"_s);
    if (!isFibreComposite(*assessment.substrate) && !isMetal(*assessment.substrate))
        stop(decision, u"substrate_"_s + codeOf(*assessment.substrate));
}

void judgeZone(Decision& decision, const Assessment& assessment)
{
    if (!assessment.zone)
        return notAssessed(decision, u"zone"_s);
    if (*assessment.zone != Zone::Cosmetic)
        stop(decision, u"zone_"_s + codeOf(*assessment.zone));
}

void judgeSurface(Decision& decision, const Assessment& assessment)
{
    if (!assessment.surface)
        return notAssessed(decision, u"surface"_s);
    if (*assessment.surface != SurfaceState::Bare && *assessment.surface != SurfaceState::AbradedEpoxy)
        stop(decision, u"surface_"_s + codeOf(*assessment.surface));
}

void judgeMoisture(Decision& decision, const Assessment& assessment)
{
    if (!assessment.moisture)
        notAssessed(decision, u"moisture"_s);
    else if (*assessment.moisture == Moisture::Damp)
        stop(decision, u"moisture_damp"_s);
    if (assessment.core == CoreMaterial::Foam || assessment.core == CoreMaterial::WetWood)
        stop(decision, u"core_"_s + codeOf(assessment.core));
}

void judgeHole(Decision& decision, const Assessment& assessment, const DecisionLimits& limits)
{
    const Damage& damage = *assessment.damage;
    if (assessment.substrate && isMetal(*assessment.substrate))
        stop(decision, u"metal_hole"_s);
    if (!assessment.rearAccess)
        notAssessed(decision, u"rear_access"_s);
    if (across(damage) > limits.holeGreatest)
        stop(decision, u"hole_too_large"_s, {across(damage), limits.holeGreatest});
}

void judgeWeldSeam(Decision& decision, const Assessment& assessment)
{
    if (assessment.substrate && !isMetal(*assessment.substrate))
        stop(decision, u"weld_seam_not_on_metal"_s, {codeOf(*assessment.substrate)});
    if (!assessment.damage->weld)
        notAssessed(decision, u"weld"_s);
    else if (*assessment.damage->weld != WeldKind::Solid)
        stop(decision, u"weld_"_s + codeOf(*assessment.damage->weld));
}

void judgeDamage(Decision& decision, const Assessment& assessment, const DecisionLimits& limits)
{
    if (!assessment.damage)
        return notAssessed(decision, u"damage_kind"_s);
    const Damage& damage = *assessment.damage;
    const bool metal = assessment.substrate && isMetal(*assessment.substrate);
    switch (damage.kind) {
    case DamageKind::Hole:
        judgeHole(decision, assessment, limits);
        break;
    case DamageKind::WeldSeam:
        judgeWeldSeam(decision, assessment);
        break;
    case DamageKind::RustHole:
        if (assessment.substrate && !metal)
            stop(decision, u"rust_hole_not_on_metal"_s, {codeOf(*assessment.substrate)});
        else
            stop(decision, u"rust_hole"_s);
        break;
    case DamageKind::BondSeam:
        if (!damage.adhesiveCured)
            notAssessed(decision, u"adhesive_cured"_s);
        else if (!*damage.adhesiveCured)
            stop(decision, u"bond_seam_not_cured"_s);
        break;
    case DamageKind::Crack:
        if (metal)
            stop(decision, u"metal_crack"_s);
        break;
    case DamageKind::Dent:
        if (metal && damage.depth > limits.dentDeepest)
            stop(decision, u"dent_too_deep"_s, {damage.depth, limits.dentDeepest});
        break;
    case DamageKind::Gouge:
        break;
    }
    if (!damage.measured())
        notAssessed(decision, u"size"_s);
}

void judgeReading(Decision& decision, const Assessment& assessment, const DecisionLimits& limits)
{
    if (!assessment.reading)
        return notAssessed(decision, u"reading"_s);
    const FillingLimits own = decision.sheet ? narrowed(limits.filling, *decision.sheet) : limits.filling;
    const AirVerdict air = judgeAir(*assessment.reading, own);
    for (const Reason& each : air.stops)
        decision.stops.push_back(stopOf(each));
    if (decision.filler)
        decision.reasons.insert(decision.reasons.end(), air.cautions.begin(), air.cautions.end());
}

/// A filler can be chosen once the panel is one that is ever filled and the damage has its size.
bool canChoose(const Assessment& assessment)
{
    return assessment.substrate && assessment.damage && assessment.damage->measured() &&
           (isFibreComposite(*assessment.substrate) || isMetal(*assessment.substrate));
}

void cautionOnDent(Decision& decision, const Assessment& assessment, const DecisionLimits& limits)
{
    const Damage& damage = *assessment.damage;
    if (damage.kind == DamageKind::Dent && isMetal(*assessment.substrate) && damage.depth > limits.dentAim)
        decision.reasons.push_back({u"dent_deep"_s, {damage.depth, limits.dentAim}});
}

/// Takes away what a supervisor has overridden, as far as it is a supervisor's to override. Without a filler there is
/// nothing to plan, whoever decides.
void dropOverridden(Decision& decision, const Assessment& assessment)
{
    Reasons dropped;
    std::erase_if(decision.stops, [&](const Stop& each) {
        const bool drop =
            each.overridable == Override::Supervisor && std::ranges::count(assessment.overridden, each.reason.code) > 0;
        if (drop)
            dropped.push_back({u"overridden"_s, {each.reason.code}});
        return drop;
    });
    if (decision.stops.empty() && !decision.filler)
        stop(decision, u"no_filler_fits"_s, {codeOf(*assessment.substrate), codeOf(assessment.damage->kind)});
    decision.reasons.insert(decision.reasons.end(), dropped.begin(), dropped.end());
}

} // namespace

Length across(const Damage& damage) { return std::max(damage.length, damage.width); }

FillingLimits narrowed(const FillingLimits& limits, const ProductSheet& sheet)
{
    FillingLimits own = limits;
    own.panelLow = std::max(limits.panelLow, sheet.panelLowCaution);
    own.panelHigh = std::min(limits.panelHigh, sheet.panelHigh);
    own.panelCautionBelow = std::max(limits.panelCautionBelow, sheet.panelLow);
    return own;
}

Decision decide(const Assessment& assessment, const DecisionTable& table, const Catalogue& catalogue,
                const DecisionLimits& limits)
{
    Decision decision;
    judgeSubstrate(decision, assessment);
    judgeZone(decision, assessment);
    judgeDamage(decision, assessment, limits);
    judgeSurface(decision, assessment);
    judgeMoisture(decision, assessment);
    if (canChoose(assessment)) {
        chooseFiller(decision, assessment, table, catalogue, limits);
        if (!decision.filler && decision.stops.empty())
            stop(decision, u"no_filler_fits"_s, {codeOf(*assessment.substrate), codeOf(assessment.damage->kind)});
        if (decision.filler)
            cautionOnDent(decision, assessment, limits);
    }
    judgeReading(decision, assessment, limits);
    if (!assessment.overridden.empty())
        dropOverridden(decision, assessment);

    // What refuses goes before what is only not known yet.
    std::stable_partition(decision.stops.begin(), decision.stops.end(),
                          [](const Stop& each) { return each.reason.code != notAssessedCode; });
    decision.fill = decision.stops.empty();
    if (!decision.fill) {
        decision.filler.reset();
        decision.sheet = nullptr;
        decision.bridge = nullptr;
        decision.reasons.clear();
        decision.rejected.clear();
    }
    return decision;
}

} // namespace strandbench
