// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/practice_run.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Event eventOf(const Repair& repair, const Payload& payload, const Instant& at)
{
    Event event;
    event.repair = repair.id;
    event.seq = repair.lastSeq + 1;
    event.at = at;
    event.payload = payload;
    return event;
}

} // namespace

PracticeRun::PracticeRun(PracticePanel panel, const PlanningSet& shop, const Instant& at)
    : m_panel(std::move(panel)), m_shop(&shop)
{
    m_repair.id = QUuid::createUuid(); // and no name: the panel's own would tell what it is
    if (apply(m_repair, eventOf(m_repair, TakenIn{u"–"_s, u"–"_s}, at)))
        qFatal("a taking in does not follow on nothing");
}

PracticeAsks PracticeRun::asks() const
{
    return m_asks == PracticeAsks::Question && !question() ? PracticeAsks::FillOrStop : m_asks;
}

std::optional<Question> PracticeRun::question() const
{
    for (const auto& [each, code] : Codes<Question>::table)
        if (each != Question::Reading && asksFor(m_repair.assessment, each) && !m_repair.answeredBy.contains(each))
            return each;
    return std::nullopt;
}

std::optional<Fault> PracticeRun::answer(const Answered& answered, const Instant& at)
{
    if (auto fault = apply(m_repair, eventOf(m_repair, answered, at)))
        return fault;
    m_attempt.found = m_repair.assessment;
    m_attempt.found.reading = m_panel.truth.reading;
    return std::nullopt;
}

void PracticeRun::decide(bool fill)
{
    m_attempt.fill = fill;
    if (!fill) {
        m_asks = PracticeAsks::WhyStop;
        return;
    }
    m_own = modelAnswer(m_attempt.found, *m_shop);
    m_asks = m_own->fill() ? PracticeAsks::Filler : PracticeAsks::Done;
}

void PracticeRun::giveStops(const std::vector<QString>& codes)
{
    m_attempt.stops = codes;
    m_asks = PracticeAsks::Instead;
}

void PracticeRun::giveInstead(const QString& code)
{
    m_attempt.instead = code;
    m_asks = PracticeAsks::Done;
}

void PracticeRun::choose(FillerClass filler)
{
    m_attempt.filler = filler;
    if (m_own->plan.filler != filler)
        m_own = modelAnswerWith(filler, m_attempt.found, *m_shop);
    m_asks = m_own->fill() ? PracticeAsks::Steps : PracticeAsks::Done;
}

void PracticeRun::putSteps(const std::vector<QString>& codes)
{
    m_attempt.steps = codes;
    m_asks = PracticeAsks::Lift;
}

void PracticeRun::beginLift(Length thickness)
{
    m_attempt.lifts.push_back({m_face, thickness, {}, {}});
    m_asks = PracticeAsks::Mix;
}

void PracticeRun::mix(Length puddle, Length bead)
{
    m_attempt.lifts.back().batches.push_back({puddle, bead, {}});
    m_asks = PracticeAsks::Spread;
}

void PracticeRun::clearEdges(Duration since)
{
    m_attempt.lifts.back().batches.back().edgesCleared = since;
    m_asks = PracticeAsks::Sand;
}

void PracticeRun::mixAnother() { m_asks = PracticeAsks::Mix; }

void PracticeRun::sand(Duration since)
{
    m_attempt.lifts.back().sanded = since;
    m_asks = PracticeAsks::AfterSanding;
}

void PracticeRun::nextLift() { m_asks = PracticeAsks::Lift; }

void PracticeRun::turn()
{
    m_attempt.turned = true;
    m_face = Face::Back;
    m_asks = PracticeAsks::Lift;
}

void PracticeRun::beginFinish() { m_asks = PracticeAsks::Coats; }

void PracticeRun::layFinish(int coats, Length coat)
{
    m_attempt.finish = AttemptedFinish{coats, coat, {}, seconds(0)};
    m_asks = PracticeAsks::Tests;
}

void PracticeRun::test(const std::vector<InspectionTest>& tests)
{
    m_attempt.finish->tests = tests;
    m_asks = PracticeAsks::Primer;
}

void PracticeRun::waitForPrimer(Duration wait)
{
    m_attempt.finish->beforePrimer = wait;
    m_asks = PracticeAsks::Done;
}

} // namespace strandbench
