// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/paced_walk.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration tapTime = seconds(2);
/// Work shorter than this is not left for another job.
const Duration notWorthLeaving = seconds(20);

Instant later(Instant at, Duration by) { return before(at, seconds(-inSeconds(by))); }

} // namespace

const Repair* PacedBench::repairOf(const DemoJob& job) const
{
    if (const Repair* open = m_bench.repair(job.job))
        return open;
    const auto taken = m_taken.find(job.job);
    return taken == m_taken.end() ? nullptr : m_bench.bench().repair(taken->second);
}

bool PacedBench::reached(const Stretch& stretch) const
{
    const Repair* repair = repairOf(stretch.job);
    if (!repair)
        return false;
    const NextStep next = nextStep(*repair);
    if (next.station != stretch.to)
        return false;
    return (next.batch ? next.batch->index : next.index) >= stretch.index || stretch.to == Station::HandOver ||
           stretch.to == Station::Done || stretch.to == Station::Parked;
}

Duration PacedBench::timeFor(const DemoJob& job, const Touch& touch) const
{
    const Repair* repair = repairOf(job);
    if (!repair || touch.control != u"answer_way_on"_s)
        return tapTime;
    const NextStep next = nextStep(*repair);
    const auto index = static_cast<std::size_t>(next.index);
    switch (next.station) {
    case Station::Prepare:
        return repair->plan->prep[index].handsOn + repair->plan->prep[index].waiting;
    case Station::Finish:
        return repair->plan->finishing[index].handsOn + repair->plan->finishing[index].waiting;
    case Station::Mix:
        return m_bench.bench().assumptions().layPuddle;
    case Station::Sand:
        return m_bench.bench().assumptions().sandLift;
    case Station::Turn:
        return m_bench.bench().assumptions().turnPanel;
    case Station::HandOver:
        return seconds(40);
    default:
        return seconds(5);
    }
}

bool PacedBench::bringUp(const DemoJob& job)
{
    constexpr int most = 12; // touches: the rail, the person, a few pages of cards
    Walk walk(m_bench, job);
    for (int i = 0; i < most; ++i) {
        const Repair* repair = repairOf(job);
        const std::optional<QUuid> shown = m_bench.window().presentRepair();
        const bool person = m_bench.window().settings().person == job.person;
        if (person && (repair ? shown && *shown == repair->id : !shown))
            return true;
        const QString screen = m_bench.window().screen()->objectName();
        if (screen != u"screen_home"_s && screen != u"screen_person"_s) {
            m_bench.window().showHome();
            m_bench.thumb().settle();
        } else if (screen == u"screen_home"_s && !person) {
            if (!m_bench.thumb().tap(u"person"_s))
                break;
        } else if (!walk.step()) {
            break;
        }
    }
    m_why = job.job + u": its screen does not come up: "_s + walk.why();
    return false;
}

bool PacedBench::touch(Hand& hand)
{
    const DemoJob& job = hand.stretch().job;
    if (!bringUp(job))
        return false;
    Walk walk(m_bench, job);
    const std::optional<Touch> next = walk.next();
    if (!next) {
        m_why = job.job + u": the walk is over at "_s + m_bench.window().screen()->objectName();
        return false;
    }
    if (!hand.waited) {
        Duration wait = timeFor(job, *next);
        if (next->sinceHardener) {
            const BatchRun& run = repairOf(job)->runs.back();
            const Duration gone = elapsed(run.hardenerIn, m_bench.clock().now());
            wait = std::max(tapTime, Duration(*next->sinceHardener - gone));
        }
        hand.ready = later(m_bench.clock().now(), wait);
        hand.waited = true;
        if (wait > notWorthLeaving)
            return true;
        m_bench.clock().set(hand.ready);
    }
    hand.waited = false;
    if (!walk.step()) {
        m_why = job.job + u": "_s + walk.why();
        return false;
    }
    if (const Repair* repair = m_bench.repair(job.job))
        m_taken[job.job] = repair->id;
    hand.ready = m_bench.clock().now();
    return true;
}

bool PacedBench::turn(Hand& hand)
{
    if (m_bench.clock().now().utcMs < hand.ready.utcMs)
        m_bench.clock().set(hand.ready);
    do {
        if (!touch(hand))
            return false;
        if (reached(hand.stretch())) {
            ++hand.at;
            hand.waited = false;
            return true;
        }
    } while (!hand.waited);
    return true;
}

std::optional<std::vector<Instant>> PacedBench::work(const std::vector<Shift>& shifts)
{
    std::vector<Hand> hands;
    for (const Shift& each : shifts)
        hands.push_back({&each, 0, each.from});
    constexpr int most = 20'000; // turns: no day is longer
    for (int i = 0; i < most; ++i) {
        Hand* next = nullptr;
        for (Hand& each : hands)
            if (!each.done() && (!next || each.ready.utcMs < next->ready.utcMs))
                next = &each;
        if (!next) {
            std::vector<Instant> ends;
            for (const Hand& each : hands)
                ends.push_back(each.ready);
            return ends;
        }
        if (!turn(*next))
            return std::nullopt;
    }
    m_why = u"the work does not end"_s;
    return std::nullopt;
}

} // namespace strandbench
