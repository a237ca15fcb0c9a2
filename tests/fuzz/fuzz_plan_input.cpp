// SPDX-License-Identifier: GPL-3.0-or-later
// A repair description: within its ranges, the same in another layout, and decided one way or the other. It is planned
// only where it is refused: a plan asks the cure engine, which takes too long for this.
#include "exchange/plan_json.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "fuzz.h"
#include "plan/planner.h"

#include <QJsonDocument>

namespace strandbench::fuzz {
namespace {

void checkDamage(const Damage& damage)
{
    requireWithin(inMillimetres(damage.length), 1, 3000, "length");
    requireWithin(inMillimetres(damage.width), damage.kind == DamageKind::Crack ? 0 : 0.5, 1000, "width");
    requireWithin(inMillimetres(damage.depth), 0.1, 60, "depth");
    requireWithin(inMillimetres(damage.panelThickness), 0.3, 60, "panel");
    requireWithin(damage.bevelRatio, damage.kind == DamageKind::Crack ? 0.5 : 0, 100, "bevel");
    require(!damage.weld || damage.kind == DamageKind::WeldSeam, "only a weld seam has a weld");
    require(!damage.adhesiveCured || damage.kind == DamageKind::BondSeam, "only a bond seam has an adhesive");
}

void check(const Assessment& assessment)
{
    require(!assessment.job.isEmpty() && assessment.job.size() <= 24, "job");
    require(!assessment.panel.isEmpty() && assessment.panel.size() <= 60, "panel");
    require(assessment.substrate && assessment.damage && assessment.reading, "what must be there is there");
    checkDamage(*assessment.damage);
    requireWithin(inCelsius(assessment.reading->air), -30, 200, "air");
    requireWithin(inCelsius(assessment.reading->panel), -30, 200, "panel's temperature");
    requireWithin(assessment.reading->humidity.percent(), 0.01, 100, "humidity");
}

void checkDecision(const Assessment& assessment)
{
    const Decision decision = decide(assessment, builtInTable(), demoCatalogue());
    require(decision.fill == decision.stops.empty(), "fill, or a stop that says why not");
    require(decision.fill == (decision.filler && decision.sheet), "a filler to fill with");
    for (const Stop& each : decision.stops)
        require(!each.reason.code.isEmpty(), "a stop has its reason");
    if (decision.fill)
        return;
    static const CureEngine engine;
    const RepairPlan plan = planRepair(assessment, {builtInTable(), demoCatalogue(), builtInSteps(), {}, engine});
    require(!plan.fill && plan.stops == decision.stops && plan.batches.empty(), "a plan that stops mixes nothing");
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const QByteArray json = fuzz::bytesOf(data, size);
    const Checked<Assessment> assessment = readAssessment(json);
    if (!assessment) {
        fuzz::requireTold(assessment.error());
        return 0;
    }
    fuzz::check(*assessment);
    const Checked<Assessment> again = readAssessment(QJsonDocument::fromJson(json).toJson());
    fuzz::require(again.has_value() && *again == *assessment, "it reads the same in another layout");
    fuzz::checkDecision(*assessment);
    return 0;
}
