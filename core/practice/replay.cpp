// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/replay.h"

#include "practice/laid_lift.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration moment = seconds(0);

class Line {
public:
    Line(const Attempt& attempt, const ModelAnswer& hand, const PlanningSet& shop)
        : m_attempt(attempt), m_hand(hand), m_shop(shop)
    {}

    std::vector<ReplayEntry> draw()
    {
        for (const QString& each : m_attempt.steps)
            addStep(each);
        const std::vector<PlacedLift> placed = placeLifts(m_attempt, m_hand, m_shop);
        const Lift* before = nullptr;
        for (const PlacedLift& each : placed) {
            if (each.planned->face == Face::Back && !m_attempt.turned)
                break;
            if (before && before->face != each.planned->face)
                go(u"turn"_s, {}, m_shop.assumptions.turnPanel);
            before = each.planned;
            addLift(each);
        }
        if (m_attempt.finish)
            addFinish(*m_attempt.finish);
        return std::move(m_entries);
    }

private:
    /// From now on, and now is then over.
    void go(const QString& code, std::optional<int> lift, Duration length)
    {
        const Duration taken = std::max(moment, length);
        m_entries.push_back({code, lift, m_now, taken});
        m_now += taken;
    }

    void addStep(const QString& code)
    {
        const auto rule = std::ranges::find(m_shop.steps.prepare, code, &StepRule::code);
        go(code, {}, rule == m_shop.steps.prepare.end() ? moment : Duration(rule->handsOn + rule->waiting));
    }

    /// A batch from laying the puddle to its edges; the hands are free when these are clear.
    void addBatch(const PlacedLift& lift, const MixedBatch& batch, int index)
    {
        const Assumptions& assumptions = m_shop.assumptions;
        const Mix mix = mixOf(batch, sheetOf(lift, m_hand, m_shop));
        go(u"mix"_s, index, assumptions.layPuddle + assumptions.kneading);
        m_hardenerIn = m_now - assumptions.kneading;
        const Duration spread = mix.filler / assumptions.spreading;
        go(u"spread"_s, index, spread);
        if (const auto cure = cureOf(lift, mix.hardenerShare, m_shop))
            m_entries.push_back({u"gel"_s, index, m_hardenerIn + cure->gel, moment});
        if (batch.edgesCleared) {
            m_entries.push_back({u"clear_edges"_s, index, m_hardenerIn + *batch.edgesCleared, moment});
            m_now = std::max(m_now, Duration(m_hardenerIn + *batch.edgesCleared));
        }
    }

    void addLift(const PlacedLift& lift)
    {
        const AttemptedLift& attempted = m_attempt.lifts[lift.index];
        const int index = static_cast<int>(lift.index);
        for (const MixedBatch& each : attempted.batches)
            addBatch(lift, each, index);
        if (!attempted.sanded || attempted.batches.empty())
            return;
        m_now = std::max(m_now, Duration(m_hardenerIn + *attempted.sanded));
        go(u"sand"_s, index, m_shop.assumptions.sandLift);
    }

    /// Coats are mixed, spread and left to harden as they were planned.
    void addFinish(const AttemptedFinish& finish)
    {
        const Assumptions& assumptions = m_shop.assumptions;
        const std::vector<Batch>& planned = m_hand.plan.finish.batches;
        for (int i = 0; i < finish.coats && !planned.empty(); ++i)
            go(u"coat"_s, {}, assumptions.layPuddle + planned.front().times.sand + assumptions.sandLift);
        for (const Step& each : m_hand.plan.finishing)
            if (each.code != u"cure_before_primer"_s)
                go(each.code, {}, each.handsOn + each.waiting);
        go(u"before_primer"_s, {}, finish.beforePrimer);
    }

    const Attempt& m_attempt;
    const ModelAnswer& m_hand;
    const PlanningSet& m_shop;
    std::vector<ReplayEntry> m_entries;
    Duration m_now = moment;
    Duration m_hardenerIn = moment;
};

Duration endOf(const std::vector<ReplayEntry>& entries)
{
    Duration end = moment;
    for (const ReplayEntry& each : entries)
        end = std::max(end, Duration(each.start + each.length));
    return end;
}

} // namespace

std::vector<ReplayEntry> replayOf(const Attempt& attempt, const ModelAnswer& hand, const PlanningSet& shop)
{
    if (!hand.fill() || !attempt.fill.value_or(false))
        return {};
    return Line(attempt, hand, shop).draw();
}

Replay replayBeside(const Attempt& attempt, const ModelAnswer& hand, const ModelAnswer& truth, const PlanningSet& shop)
{
    Replay replay{replayOf(attempt, hand, shop), replayOf(perfectAttempt(truth, shop), truth, shop), {}};
    replay.end = std::max(endOf(replay.pupil), endOf(replay.model));
    return replay;
}

} // namespace strandbench
