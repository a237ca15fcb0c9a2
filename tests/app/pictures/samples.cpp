// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

using namespace Qt::StringLiterals;

namespace strandbench::samples {
namespace {

SectionDrawing drawn(DamageKind kind, Substrate substrate, Damage damage, std::vector<Lift> lifts, bool rearAccess)
{
    damage.kind = kind;
    Assessment found;
    found.substrate = substrate;
    found.damage = damage;
    found.rearAccess = rearAccess;
    RepairPlan plan;
    plan.fill = true;
    plan.lifts = std::move(lifts);
    plan.finish.thickness = millimetres(0.5);
    SectionDrawing drawing = SectionDrawing::of(found, plan, Assumptions{});
    drawing.progress = {true, 9, false, true};
    return drawing;
}

Damage sized(double length, double width, double depth, double thickness, double bevel)
{
    Damage damage;
    damage.length = millimetres(length);
    damage.width = millimetres(width);
    damage.depth = millimetres(depth);
    damage.panelThickness = millimetres(thickness);
    damage.bevelRatio = bevel;
    return damage;
}

Lift lift(Face face, double thickness) { return {face, millimetres(thickness), FillerClass::MixedStrand, {}, {}}; }

} // namespace

SectionDrawing smcHole()
{
    return drawn(DamageKind::Hole, Substrate::Smc, sized(60, 40, 3.5, 3.5, 4),
                 {lift(Face::Front, 1.75), lift(Face::Back, 1.75)}, true);
}

std::vector<SectionDrawing> everyKind()
{
    return {
        smcHole(),
        drawn(DamageKind::Hole, Substrate::Laminate, sized(20, 20, 8, 8, 3),
              {lift(Face::Front, 4), lift(Face::Front, 4)}, false),
        drawn(DamageKind::Crack, Substrate::Laminate, sized(90, 0, 3, 4, 3), {lift(Face::Front, 3)}, true),
        drawn(DamageKind::Dent, Substrate::Steel, sized(120, 80, 5, 0.8, 0), {lift(Face::Front, 5)}, true),
        drawn(DamageKind::Gouge, Substrate::Smc, sized(60, 14, 2, 3, 0), {lift(Face::Front, 2)}, true),
        drawn(DamageKind::WeldSeam, Substrate::Galvanised, sized(400, 40, 2, 1.2, 0), {lift(Face::Front, 2)}, true),
        drawn(DamageKind::BondSeam, Substrate::Laminate, sized(400, 30, 1.5, 3, 0), {lift(Face::Front, 1.5)}, true),
    };
}

SectionLabels labels(const SectionDrawing& drawing)
{
    SectionLabels labels;
    for (std::size_t i = 0; i < drawing.lifts.size(); ++i)
        labels.lifts << u"front: mixed strand, 1.8 mm"_s;
    labels.finish = u"finish 0.5 mm (limit 6 mm)"_s;
    labels.opening = u"74 mm over the bevel, 4 : 1"_s;
    labels.exaggeration = [](double times) {
        return u"3.5 mm panel; depth drawn %1 times as large as width"_s.arg(times);
    };
    return labels;
}

SectionLabels longLabels(const SectionDrawing& drawing)
{
    SectionLabels labels;
    for (std::size_t i = 0; i < drawing.lifts.size(); ++i)
        labels.lifts << u"Vorderseite: Mischfaserspachtel, 1,8 mm"_s;
    labels.finish = u"Feinspachtel 0,5 mm (Grenze 6 mm)"_s;
    labels.opening = u"74 mm über der Schäftung, 4 : 1"_s;
    labels.exaggeration = [](double times) {
        return u"Platte 3,5 mm; Tiefe %1-mal so groß wie die Breite gezeichnet"_s.arg(times);
    };
    return labels;
}

Theme themeFor(const rules::Glass& glass, DayNight dayNight)
{
    return Theme(Metrics(glass.pixelsPerMillimetre()), dayNight, Hand::Right);
}

} // namespace strandbench::samples
