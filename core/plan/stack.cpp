// SPDX-License-Identifier: GPL-3.0-or-later
// What a layer is laid on, and how hot it may become there.
#include "plan/planning.h"

#include <algorithm>

namespace strandbench::planning {
namespace {

const ThermalMaterial& panelMaterial(const Job& job)
{
    const Assumptions& assumptions = job.set.assumptions;
    switch (*job.assessment.substrate) {
    case Substrate::Steel:
    case Substrate::Galvanised:
        return assumptions.steel;
    case Substrate::Aluminium:
        return assumptions.aluminium;
    default:
        return assumptions.laminate; // laminate and SMC; nothing else is ever filled
    }
}

bool isLaminate(Substrate substrate) { return substrate == Substrate::Laminate || substrate == Substrate::Smc; }

/// What is left of the panel under the cavity: nothing under a hole, the rest under what is ground away, all of
/// it under a dent and a seam.
Length panelUnder(const Damage& damage)
{
    switch (damage.kind) {
    case DamageKind::Hole:
    case DamageKind::RustHole:
        return millimetres(0);
    case DamageKind::Gouge:
    case DamageKind::Crack:
        return damage.panelThickness - damage.depth;
    default:
        return damage.panelThickness;
    }
}

} // namespace

std::vector<StackLayer> stackUnder(const Job& job, const std::vector<Lift>& below)
{
    const Assumptions& assumptions = job.set.assumptions;
    const Temperature panel = job.assessment.reading->panel;
    std::vector<StackLayer> stack;
    const Length left = panelUnder(*job.assessment.damage);
    if (left > assumptions.leastUnder)
        stack.push_back({left, panelMaterial(job), panel});
    else if (job.backing)
        stack.push_back({assumptions.backing, assumptions.laminate, panel});
    const ProductSheet* before = nullptr;
    for (const Lift& each : below) {
        const ProductSheet& sheet = sheetOf(job, each);
        if (before == &sheet) // lifts of one filler are one layer of heat
            stack.back().thickness += each.thickness;
        else
            stack.push_back({each.thickness, thermalOf(sheet), panel});
        before = &sheet;
    }
    return stack;
}

Temperature peakLimit(const Job& job)
{
    Temperature limit = job.sheet.peakLimit;
    if (job.bridge)
        limit = std::min(limit, job.bridge->peakLimit);
    if (isLaminate(*job.assessment.substrate))
        limit = std::min(limit, job.set.assumptions.laminatePeak);
    if (job.assessment.damage->kind == DamageKind::BondSeam)
        limit = std::min(limit, job.set.assumptions.bondSeamPeak);
    return limit;
}

} // namespace strandbench::planning
