// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/plan_fault.h"

#include "repair/replan.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Fault conflict(const QString& value, const QString& field, const QString& held)
{
    return {kindOf(PlanAccepted{}), value, FaultKind::Conflicts, {field, held}};
}

/// Batches must name layers that exist, in the order of the layers.
std::optional<Fault> layerFault(const std::vector<Batch>& batches, int layers, const QString& field)
{
    int before = 0;
    for (const Batch& batch : batches) {
        if (batch.lift < before || batch.lift >= layers)
            return conflict(QString::number(batch.lift), field, QString::number(layers));
        before = batch.lift;
    }
    return std::nullopt;
}

} // namespace

std::optional<Fault> planFault(const Repair& repair, const PlanAccepted& accepted)
{
    const RepairPlan& plan = accepted.plan;
    if (!plan.fill)
        return conflict(u"stop"_s, u"plan.fill"_s, u"false"_s);
    if (accepted.assessment != repair.assessment)
        return conflict(QString(), u"assessment"_s, u"other answers than the record's"_s);
    if (auto fault = layerFault(plan.batches, int(plan.lifts.size()), u"plan.batches"_s))
        return fault;
    if (auto fault = layerFault(plan.finish.batches, std::max(plan.finish.coats, 0), u"plan.finish.batches"_s))
        return fault;
    if (const QString lost = replan::lostBy(repair, plan); !lost.isEmpty())
        return conflict(lost, u"frozen"_s, QString::number(frozenBatches(repair)));
    return std::nullopt;
}

} // namespace strandbench
