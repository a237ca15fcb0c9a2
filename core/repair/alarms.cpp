// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/alarms.h"

#include "repair/run_clock.h"

#include <algorithm>

namespace strandbench {
namespace {

/// True when another batch of the same lift comes after this one: the lift is sanded by that one's times.
bool goesOn(const Repair& repair, BatchRef ref)
{
    if (!repair.plan)
        return false;
    const auto& batches = ref.finishing ? repair.plan->finish.batches : repair.plan->batches;
    const auto at = static_cast<std::size_t>(ref.index);
    return at + 1 < batches.size() && batches[at + 1].lift == batches[at].lift;
}

/// What an alarm calls for was done, or can no longer be.
bool isDone(const BatchRun& run, AlarmKind kind)
{
    switch (kind) {
    case AlarmKind::EdgesSoon:
        return run.edgesClear || run.panelGelled || run.sands;
    case AlarmKind::Gels:
        return run.panelGelled || run.sands;
    case AlarmKind::SandFrom:
        return run.sands.has_value();
    case AlarmKind::SandUntil:
        break;
    }
    return !run.running();
}

} // namespace

std::optional<DueAlarm> alarmOf(const Repair& repair, const BatchRun& run, const Assumptions& assumptions,
                                const Instant& now)
{
    if (!run.running())
        return std::nullopt;
    const ActTimes times = alarmsOf(earlyTimes(run), lateTimes(run), assumptions);
    const Duration since = elapsed(run.hardenerIn, now);
    const Duration warned = std::max(Duration(times.edges - edgesWarning), seconds(0));
    std::vector<DueAlarm> all{{repair.id, run.batch, AlarmKind::EdgesSoon, warned, {}, {}},
                              {repair.id, run.batch, AlarmKind::Gels, times.gel, {}, {}}};
    if (!goesOn(repair, run.batch)) {
        all.push_back({repair.id, run.batch, AlarmKind::SandFrom, times.sandFrom, {}, {}});
        all.push_back({repair.id, run.batch, AlarmKind::SandUntil, times.sandUntil, {}, {}});
    }
    std::erase_if(all, [&](const DueAlarm& each) { return since < each.at; });
    if (all.empty())
        return std::nullopt;
    DueAlarm newest = all.back();
    if (isDone(run, newest.kind) || std::ranges::count(run.answered, newest.kind))
        return std::nullopt;
    newest.rings = since - newest.at;
    if (newest.kind == AlarmKind::EdgesSoon)
        newest.toAct = std::max(Duration(times.edges - since), seconds(0));
    return newest;
}

void mostUrgentFirst(std::vector<DueAlarm>& alarms)
{
    std::ranges::stable_sort(alarms, [](const DueAlarm& a, const DueAlarm& b) {
        return std::pair(urgencyOf(a.kind), -a.rings.value()) < std::pair(urgencyOf(b.kind), -b.rings.value());
    });
}

} // namespace strandbench
