// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair_script.h"

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

Step step(const QString& code)
{
    Step made;
    made.code = code;
    made.handsOn = seconds(60);
    return made;
}

Batch batch(int lift)
{
    Batch made;
    made.lift = lift;
    made.mix.filler = grams(60);
    made.mix.hardener = grams(1.2);
    made.mix.hardenerShare = Fraction::ofHundred(2);
    made.times = {seconds(240), seconds(280), seconds(480), seconds(600)};
    return made;
}

Lift lift(Face face)
{
    Lift made;
    made.face = face;
    made.thickness = millimetres(3);
    return made;
}

} // namespace

RepairPlan samplePlan()
{
    RepairPlan plan;
    plan.fill = true;
    plan.filler = FillerClass::MixedStrand;
    plan.sheetId = u"demo_mixed"_s;
    plan.lifts = {lift(Face::Front), lift(Face::Front), lift(Face::Back)};
    plan.batches = {batch(0), batch(0), batch(1), batch(2)};
    plan.prep = {step(u"gear_on"_s), step(u"wash"_s), step(u"read_air"_s)};
    plan.finish.coats = 2;
    plan.finish.batches = {batch(0), batch(1)};
    plan.finishing = {step(u"guide_coat"_s), step(u"inspect"_s)};
    return plan;
}

std::vector<Answered> sampleAnswers()
{
    const DamageSize size{millimetres(60), millimetres(40), millimetres(3.5), millimetres(3.5), 4.0};
    const Reading reading{celsius(18.5), celsius(17), Fraction::ofHundred(52)};
    return {{Question::Substrate, Substrate::Smc, {}},
            {Question::DamageKind, DamageKind::Hole, {}},
            {Question::Size, size, {}},
            {Question::RearAccess, true, {}},
            {Question::Surface, SurfaceState::Bare, {}},
            {Question::Zone, Zone::Cosmetic, {}},
            {Question::Moisture, Moisture::Dry, {}},
            {Question::Reading, reading, {}}};
}

Payload actAt(const Repair& repair)
{
    const NextStep next = nextStep(repair);
    const auto index = std::size_t(next.index);
    switch (next.station) {
    case Station::Assess:
        for (const Answered& answer : sampleAnswers())
            if (answer.question == next.question)
                return answer;
        break;
    case Station::Decide:
        return PlanAccepted{repair.assessment, samplePlan()};
    case Station::Prepare:
        return StepDone{Stage::Prepare, next.index, repair.plan->prep[index].code};
    case Station::Mix: {
        HardenerIn mixed;
        mixed.batch = *next.batch;
        mixed.filler = grams(60);
        mixed.hardener = grams(1.2);
        mixed.sheetId = u"demo_mixed"_s;
        mixed.times = {seconds(240), seconds(280), seconds(480), seconds(600)};
        return mixed;
    }
    case Station::Spread:
        return EdgesClear{*next.batch};
    case Station::Wait:
        return Sands{*next.batch};
    case Station::Sand:
        return Sanded{*next.batch};
    case Station::Turn:
        return Turned{};
    case Station::Finish:
        return StepDone{Stage::Finish, next.index, repair.plan->finishing[index].code};
    case Station::HandOver:
        if (index == handOverTests().size())
            return HandedOver{};
        return StepDone{Stage::HandOver, next.index, handOverTests()[index]};
    case Station::Done:
    case Station::Parked:
    case Station::Returned:
        break;
    }
    throw std::logic_error("no act is due");
}

Instant moment(int seconds)
{
    return {1'768'000'000'000 + qint64(seconds) * 1000, 5'000'000 + qint64(seconds) * 1000,
            u"0f7c1b52-8f0e-4c53-9a55-6d3f3b1f0a11"_s, 3600};
}

RepairScript::RepairScript() : m_id(QUuid::createUuid())
{
    if (put(TakenIn{u"4421"_s, u"skirt panel, right rear"_s}))
        throw std::logic_error("the sample is not taken in");
}

Event RepairScript::eventOf(const Payload& payload) const
{
    Event event;
    event.origin = u"5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5"_s;
    event.seq = m_repair.lastSeq + 1;
    event.repair = m_id;
    event.person = u"R. Quist"_s;
    event.payload = payload;
    event.at = moment(int(event.seq) * 30);
    return event;
}

std::optional<Fault> RepairScript::put(const Payload& payload)
{
    const Event event = eventOf(payload);
    if (auto fault = apply(m_repair, event))
        return fault;
    m_events.push_back(event);
    return std::nullopt;
}

void RepairScript::toPlan() { walkTo(Station::Prepare); }

void RepairScript::walkTo(Station station)
{
    while (next().station != station && next().station != Station::Done)
        if (put(actAt(m_repair)))
            throw std::logic_error("what is due was refused");
}

} // namespace strandbench::test
