// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/hands.h"

#include "repair/run_clock.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Below this two times are the same: what converting from milliseconds leaves.
const Duration hair = seconds(1e-6);
/// More sandings than one bench ever waits for; the order of these many is still searched at once.
constexpr std::size_t mostSandings = 10;

/// An act and whose it is.
using Needed = HandsNeeded;

bool overlap(const HandSpan& a, const HandSpan& b) { return a.from + hair < b.to && b.from + hair < a.to; }

/// The acts of some batches, those that may not be late apart from the sandings.
struct Acts {
    std::vector<Needed> fixed; ///< by time
    std::vector<Needed> sandings;

    void add(const HandsOf& batch, Duration delay)
    {
        for (HandSpan span : batch.acts) {
            span.from += delay;
            span.to += delay;
            (span.act == HandAct::Sand ? sandings : fixed).push_back({batch.repair, batch.batch, span});
        }
        std::ranges::stable_sort(fixed, {}, [](const Needed& each) { return each.span.from; });
        std::ranges::stable_sort(sandings, {}, [](const Needed& each) { return each.span.to; });
    }
};

/// When a sanding ends that starts as early as it can, not before `from` and not into a fixed act; empty when it does
/// not end in its time.
std::optional<Duration> endOf(const HandSpan& sanding, Duration from, const std::vector<Needed>& fixed)
{
    Duration start = std::max(from, sanding.from);
    for (const Needed& each : fixed)
        if (each.span.from + hair < start + sanding.takes && start + hair < each.span.to)
            start = each.span.to;
    const Duration end = start + sanding.takes;
    return end > sanding.to + hair ? std::nullopt : std::optional(end);
}

/// True when some order of the sandings leaves each its place. To end a set of them as early as possible is best for
/// whatever comes after, so each set is looked at once.
bool canAllBeSanded(const std::vector<Needed>& sandings, const std::vector<Needed>& fixed)
{
    const std::size_t count = std::min(sandings.size(), mostSandings);
    std::vector<std::optional<Duration>> ends(std::size_t{1} << count);
    ends[0] = seconds(0);
    for (std::size_t done = 0; done < ends.size(); ++done) {
        if (!ends[done])
            continue;
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t with = done | (std::size_t{1} << i);
            if (with == done)
                continue;
            const auto end = endOf(sandings[i].span, *ends[done], fixed);
            if (end && (!ends[with] || *end < *ends[with]))
                ends[with] = end;
        }
    }
    return ends.back().has_value();
}

/// The first sanding, by the end of its time, that finds no place beside those before it; the end when all do.
std::size_t firstLeftOut(const std::vector<Needed>& sandings, const std::vector<Needed>& fixed)
{
    for (std::size_t i = 0; i < sandings.size(); ++i)
        if (!canAllBeSanded({sandings.begin(), sandings.begin() + static_cast<std::ptrdiff_t>(i) + 1}, fixed))
            return i;
    return sandings.size();
}

/// What runs, without the sandings that find no place as it is.
Acts actsOf(const std::vector<HandsOf>& running)
{
    Acts acts;
    for (const HandsOf& each : running)
        acts.add(each, seconds(0));
    while (true) {
        const std::size_t out = firstLeftOut(acts.sandings, acts.fixed);
        if (out == acts.sandings.size())
            return acts;
        acts.sandings.erase(acts.sandings.begin() + static_cast<std::ptrdiff_t>(out));
    }
}

HandsCollide collisionOf(const Needed& a, const Needed& b)
{
    const bool aFirst = (a.span.act == HandAct::Sand) != (b.span.act == HandAct::Sand) ? b.span.act == HandAct::Sand
                                                                                       : a.span.to < b.span.to + hair;
    const Duration at = std::max({a.span.from, b.span.from, seconds(0)});
    return aFirst ? HandsCollide{a, b, at} : HandsCollide{b, a, at};
}

/// The earliest overlap of one of `ours` with one of `theirs`, told as `tell` says.
std::optional<HandsCollide> firstOverlap(const std::vector<Needed>& ours, const std::vector<Needed>& theirs,
                                         HandsCollide (*tell)(const Needed&, const Needed&))
{
    std::optional<HandsCollide> first;
    for (const Needed& a : ours)
        for (const Needed& b : theirs) {
            if (!overlap(a.span, b.span))
                continue;
            const HandsCollide each = tell(a, b);
            if (!first || each.at < first->at)
                first = each;
        }
    return first;
}

/// What runs goes before what is not mixed yet.
HandsCollide runningFirst(const Needed& ours, const Needed& theirs)
{
    return {theirs, ours, std::max({ours.span.from, theirs.span.from, seconds(0)})};
}

/// Who takes a sanding's place: the first act within its time; empty when none is.
std::optional<HandsCollide> pushedOut(const Needed& sanding, const std::vector<Needed>& by)
{
    std::optional<HandsCollide> first;
    for (const Needed& each : by) {
        const bool itself = each.repair == sanding.repair && each.batch == sanding.batch;
        if (itself || !overlap(each.span, sanding.span))
            continue;
        HandsCollide collision = collisionOf(each, sanding);
        if (!first || collision.at < first->at)
            first = collision;
    }
    return first;
}

/// What mixing after a delay brings.
std::optional<HandsCollide> collisionAfter(const Acts& running, const HandsOf& next, Duration delay)
{
    Acts ours;
    ours.add(next, delay);
    if (auto hard = firstOverlap(ours.fixed, running.fixed, runningFirst))
        return hard;
    Acts all = running;
    all.add(next, delay);
    const std::size_t out = firstLeftOut(all.sandings, all.fixed);
    if (out == all.sandings.size())
        return std::nullopt;
    const Needed& left = all.sandings[out];
    const bool isOurs = left.repair == next.repair && left.batch == next.batch;
    std::vector<Needed> by = isOurs ? running.fixed : ours.fixed;
    if (auto told = pushedOut(left, by))
        return told;
    by = isOurs ? running.sandings : ours.sandings;
    if (auto told = pushedOut(left, by))
        return told;
    return collisionOf(by.empty() ? left : by.front(), left);
}

} // namespace

Reason HandsCollide::reason() const
{
    return {u"hands_"_s + codeOf(second.span.act), {codeOf(first.span.act), first.span.from}};
}

std::vector<HandSpan> handActs(Mass filler, const BatchTimes& times, const Assumptions& assumptions)
{
    const Duration edges = times.gel * assumptions.edgesAtGel.value();
    const Duration spread = std::min(edges, Duration(assumptions.kneading + filler / assumptions.spreading));
    const Duration sanding = std::min(assumptions.sandLift, times.easySanding);
    return {{HandAct::Spread, seconds(0), spread, spread},
            {HandAct::Edges, edges, times.gel, times.gel - edges},
            {HandAct::Sand, times.sand, times.sand + times.easySanding, sanding}};
}

HandsOf handsOf(const QUuid& repair, const BatchRun& run, const Assumptions& assumptions, const Instant& now)
{
    HandsOf hands{repair, run.batch, {}};
    if (!run.running())
        return hands;
    const Duration since = elapsed(run.hardenerIn, now);
    const bool handsOff = run.edgesClear || run.panelGelled || run.sands;
    for (HandSpan span : handActs(run.mixed.filler, earlyTimes(run), assumptions)) {
        const bool sanding = span.act == HandAct::Sand;
        if (!sanding && handsOff)
            continue;
        span.from = std::max(seconds(0), Duration(span.from - since));
        span.to -= since;
        if (sanding && run.sands) {
            span.takes -= elapsed(*run.sands, now);
            span.from = seconds(0);
            span.to = std::max(span.to, span.takes); // told early or late: it is being sanded
        }
        if (!sanding)
            span.takes = span.to - span.from;
        if (span.takes > hair && span.from + span.takes <= span.to + hair)
            hands.acts.push_back(span);
    }
    return hands;
}

std::vector<HandsOf> handsOf(const Repair& repair, const Assumptions& assumptions, const Instant& now)
{
    std::vector<HandsOf> all;
    for (const BatchRun& run : repair.runs)
        if (run.running())
            all.push_back(handsOf(repair.id, run, assumptions, now));
    for (std::size_t i = 0; i + 1 < all.size(); ++i)
        std::erase_if(all[i].acts, [](const HandSpan& span) { return span.act == HandAct::Sand; });
    return all;
}

std::optional<HoldBack> judgeHands(const std::vector<HandsOf>& running, const HandsOf& next)
{
    std::vector<HandsOf> others = running;
    for (HandsOf& each : others) // the lift of the same repair is sanded when its last batch sands
        if (each.repair == next.repair)
            std::erase_if(each.acts, [](const HandSpan& span) { return span.act == HandAct::Sand; });
    const Acts acts = actsOf(others);
    const auto now = collisionAfter(acts, next, seconds(0));
    if (!now)
        return std::nullopt;
    Duration last = seconds(0); // when all else is done, nothing is left to collide with
    for (const HandsOf& each : others)
        for (const HandSpan& span : each.acts)
            last = std::max(last, span.to);
    const double end = std::ceil(inSeconds(last));
    for (double delay = 1; delay < end; ++delay)
        if (!collisionAfter(acts, next, seconds(delay)))
            return HoldBack{*now, seconds(delay)};
    return HoldBack{*now, seconds(end)};
}

std::optional<HandsCollide> nextCollision(const std::vector<HandsOf>& running)
{
    Acts acts;
    for (const HandsOf& each : running)
        acts.add(each, seconds(0));
    std::optional<HandsCollide> first;
    for (std::size_t i = 0; i < acts.fixed.size(); ++i) {
        const std::vector<Needed> later(acts.fixed.begin() + static_cast<std::ptrdiff_t>(i) + 1, acts.fixed.end());
        const auto each = firstOverlap({acts.fixed[i]}, later, collisionOf);
        if (each && (!first || each->at < first->at))
            first = each;
    }
    const std::size_t out = firstLeftOut(acts.sandings, acts.fixed);
    if (out == acts.sandings.size())
        return first;
    std::vector<Needed> by = acts.fixed;
    by.insert(by.end(), acts.sandings.begin(), acts.sandings.begin() + static_cast<std::ptrdiff_t>(out));
    const auto soft = pushedOut(acts.sandings[out], by);
    return !first || (soft && soft->at < first->at) ? soft : first;
}

} // namespace strandbench
