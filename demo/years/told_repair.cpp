// SPDX-License-Identifier: GPL-3.0-or-later
#include "years/told_repair.h"

#include "exchange/events.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::years {
namespace {

/// What the next morning begins with, seconds of the day.
constexpr double morning = 6.6 * 3600;

Reading readingOf(bool nearDewPoint, Dice& dice)
{
    if (nearDewPoint) // its dew point is within a degree or so of the panel
        return {celsius(24), celsius(17 + double(dice.from(10, 18)) / 10),
                Fraction::ofHundred(double(dice.from(70, 74)))};
    const double air = double(dice.from(160, 270)) / 10;
    return {celsius(air), celsius(air - double(dice.from(0, 20)) / 10), Fraction::ofHundred(double(dice.from(30, 60)))};
}

} // namespace

Quirks quirksOf(Dice& dice)
{
    Quirks quirks;
    quirks.hardener = dice.between(0.93, 1.07);
    if (dice.chance(0.04))
        quirks.hardener = dice.chance(0.7) ? dice.between(0.55, 0.7) : dice.between(1.3, 1.5);
    quirks.edges = dice.chance(0.04) ? dice.between(1.02, 1.15) : dice.between(0.6, 0.95);
    quirks.gel = dice.between(0.96, 1.2);
    quirks.sands = dice.chance(0.05) ? dice.between(0.6, 0.78) : dice.between(1.0, 1.3);
    quirks.hands = dice.between(0.7, 1.4);
    quirks.nearDewPoint = dice.chance(0.03);
    quirks.noLot = dice.chance(0.02);
    quirks.noHardenerLot = dice.chance(0.03);
    quirks.nameless = dice.chance(0.01);
    quirks.helped = dice.chance(0.1);
    quirks.gelTold = dice.chance(0.7);
    quirks.noted = dice.chance(0.4);
    return quirks;
}

Payload ToldRepair::payloadOf(const Act& act, const Instant& at, Dice& dice) const
{
    const qint64 day = Calendar::dayOf(at.utcMs);
    if (std::holds_alternative<TakenIn>(act.event.payload))
        return TakenIn{job, panel, reworkOf ? reworkOf->id : QUuid()};
    if (std::holds_alternative<ReadingTaken>(act.event.payload))
        return ReadingTaken{readingOf(quirks.nearDewPoint, dice)};
    if (std::holds_alternative<Noted>(act.event.payload))
        return Noted{{}, remark(dice)};
    Payload payload = act.event.payload;
    if (auto* accepted = std::get_if<PlanAccepted>(&payload)) {
        accepted->assessment.job = job;
        accepted->assessment.panel = panel;
    } else if (auto* mixed = std::get_if<HardenerIn>(&payload)) {
        const double scale = dice.between(0.95, 1.05); // nobody weighs to the milligram
        mixed->filler *= scale;
        mixed->hardener *= scale * quirks.hardener;
        mixed->lot = quirks.noLot ? QString() : fillerLot(day);
        mixed->hardenerLot = quirks.noHardenerLot ? QString() : hardenerLot(day);
    }
    return payload;
}

std::optional<ToldRepair::Telling> ToldRepair::tell(const Instant& at, Dice& dice) const
{
    const Act& act = script->acts[next];
    if (std::holds_alternative<Noted>(act.event.payload) && !quirks.noted)
        return std::nullopt;
    if (act.pace == Pace::Gelled && !quirks.gelTold)
        return std::nullopt;
    Telling telling;
    telling.event.origin = origin;
    telling.event.repair = id;
    telling.event.at = at;
    telling.event.person = quirks.helped && next * 2 > script->acts.size() ? helper : person;
    if (quirks.nameless && next == 0)
        telling.event.person.clear();
    telling.event.payload = payloadOf(act, at, dice);
    telling.bytes = act.bytes;
    if (telling.bytes.isEmpty())
        telling.bytes = encodePayload(telling.event.payload);
    else if (std::holds_alternative<PlanAccepted>(act.event.payload))
        telling.bytes.replace(scriptJob(), job.toUtf8()).replace(scriptPanel(), panel.toUtf8());
    return telling;
}

qint64 ToldRepair::nextDueMs(Dice& dice) const
{
    const Act& act = script->acts[next];
    const auto since = [&](Duration predicted, double share) {
        return std::max(lastMs + dice.from(4'000, 20'000), mixedMs + qint64(inSeconds(predicted) * share * 1000));
    };
    switch (act.pace) {
    case Pace::After:
        return lastMs + qint64(inSeconds(act.after) * quirks.hands * dice.between(0.8, 1.25) * 1000) + 1500;
    case Pace::NextMorning:
        return Calendar::beginsMs(Calendar::dayOf(lastMs) + 1) + qint64((morning + dice.between(0, 3600)) * 1000);
    case Pace::EdgesClear:
        return since(repair.runs.back().times().gel, quirks.edges);
    case Pace::Gelled:
        return since(repair.runs.back().times().gel, quirks.gel);
    case Pace::Sands:
        return since(repair.runs.back().times().sand, quirks.sands);
    }
    Q_UNREACHABLE();
}

} // namespace strandbench::years
