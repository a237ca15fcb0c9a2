// SPDX-License-Identifier: GPL-3.0-or-later
#include "years/scripts.h"

#include "years/found.h"

#include "exchange/events.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "learning/product.h"
#include "repair/mixing.h"
#include "repairlog/failure.h"

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::years {
namespace {

const PlanningSet& planning()
{
    static const CureEngine engine;
    static const PlanningSet set{builtInTable(), demoCatalogue(), builtInSteps(), {}, engine};
    return set;
}

/// Told anew each time, and so encoded anew.
bool isFixed(const Payload& payload)
{
    return !std::holds_alternative<TakenIn>(payload) && !std::holds_alternative<ReadingTaken>(payload) &&
           !std::holds_alternative<HardenerIn>(payload) && !std::holds_alternative<Noted>(payload);
}

/// The bytes that come with a plan: of the sheets, the table and the steps that it was made with.
std::vector<QByteArray> blobsOf(const PlanAccepted& accepted)
{
    std::vector<QByteArray> blobs{planning().table.source(), planning().steps.source};
    for (const SheetVersion& each : versionsIn(accepted.plan))
        if (const ProductSheet* sheet = planning().catalogue.version(each.id, each.hash))
            blobs.push_back(sheet->source);
    return blobs;
}

/// Does what is due, and keeps it.
class Scribe {
public:
    void put(const Payload& payload, Duration after, Pace pace = Pace::After)
    {
        Act act;
        act.event.seq = m_repair.lastSeq + 1;
        act.event.repair = m_id;
        act.event.payload = stored(payload);
        act.pace = pace;
        act.after = after;
        if (const auto fault = apply(m_repair, act.event))
            throw std::logic_error("a script does not fold: " + inWords(*fault).toStdString());
        if (isFixed(payload))
            act.bytes = encodePayload(payload);
        if (const auto* accepted = std::get_if<PlanAccepted>(&act.event.payload))
            act.blobs = blobsOf(*accepted);
        m_acts.push_back(std::move(act));
    }
    void takeIn() { put(TakenIn{QString::fromLatin1(scriptJob()), QString::fromLatin1(scriptPanel())}, seconds(0)); }
    /// Answers all that is asked; then it is to be decided.
    void answer(const Found& found)
    {
        for (auto question = nextQuestion(m_repair); question; question = nextQuestion(m_repair))
            put(Answered{*question, found.answers.at(*question), {}}, seconds(18));
    }
    void park(const QString& to)
    {
        const RepairPlan plan = planRepair(m_repair.assessment, planning());
        if (plan.fill)
            throw std::logic_error("a stop can be filled");
        put(Noted{{}, u"as found"_s}, seconds(40));
        put(Parked{to, {plan.stops.front().reason.code}}, seconds(25));
    }
    void work(bool overnight);
    [[nodiscard]] Script script(const QString& name) const { return {name, m_acts, m_repair.handedOverAt.has_value()}; }

private:
    void accept();
    void step(Stage stage, const Step& step, int index);
    void mix(BatchRef ref);
    void handOver(int test);

    const QUuid m_id = QUuid::createUuidV5(QUuid(), u"a script"_s);
    Repair m_repair;
    std::vector<Act> m_acts;
};

void Scribe::accept()
{
    const RepairPlan plan = planRepair(m_repair.assessment, planning());
    if (!plan.fill)
        throw std::logic_error("a script is stopped: " + plan.stops.front().reason.code.toStdString());
    put(PlanAccepted{m_repair.assessment, plan}, seconds(70));
    put(Noted{{}, u"as planned"_s}, seconds(20));
}

void Scribe::step(Stage stage, const Step& step, int index)
{
    if (step.code.startsWith(u"read_panel"_s))
        put(ReadingTaken{*m_repair.lastReading}, seconds(30));
    put(StepDone{stage, index, step.code}, step.handsOn + step.waiting);
}

/// As the mix screen makes it, of a lot of which nothing is known yet.
void Scribe::mix(BatchRef ref)
{
    const BatchInHand batch = batchInHand(*m_repair.plan, ref, {}, planning());
    const Mix& mix = batch.batch.mix;
    const auto forecast = forecastOf(m_repair, batch, mix.hardenerShare, planning(), {priorOf(*batch.sheet), 0, 0});
    put(hardenerIn(batch, sheetOf(*m_repair.plan, ref), mix.hardener, forecast), seconds(120));
}

void Scribe::handOver(int test)
{
    if (test == int(handOverTests().size()))
        return put(HandedOver{}, seconds(30));
    put(StepDone{Stage::HandOver, test, handOverTests()[std::size_t(test)]}, seconds(35));
}

/// From the decision to the handing over; overnight: the shift is over before the first mix.
void Scribe::work(bool overnight)
{
    for (;;) {
        const NextStep next = nextStep(m_repair);
        const auto index = std::size_t(next.index);
        switch (next.station) {
        case Station::Decide:
            accept();
            break;
        case Station::Prepare:
            step(Stage::Prepare, m_repair.plan->prep[index], next.index);
            break;
        case Station::Mix:
            if (std::exchange(overnight, false)) {
                put(Parked{{}, {}, u"shift_over"_s}, seconds(30));
                put(TakenUpAgain{}, seconds(0), Pace::NextMorning);
            }
            mix(*next.batch);
            break;
        case Station::Spread:
            put(EdgesClear{*next.batch}, seconds(0), Pace::EdgesClear);
            break;
        case Station::Wait:
            put(Gelled{*next.batch, GelPlace::Panel}, seconds(0), Pace::Gelled);
            put(Sands{*next.batch}, seconds(0), Pace::Sands);
            break;
        case Station::Sand:
            put(Sanded{*next.batch}, seconds(300));
            break;
        case Station::Turn:
            put(Turned{}, seconds(180));
            break;
        case Station::Finish:
            step(Stage::Finish, m_repair.plan->finishing[index], next.index);
            break;
        case Station::HandOver:
            handOver(next.index);
            break;
        case Station::Done:
            return;
        case Station::Assess:
        case Station::Parked:
        case Station::Returned:
            throw std::logic_error("a script goes astray");
        }
    }
}

/// Paint first: parked, stripped, and assessed anew on the next day.
Script strippedFirst(const Found& found)
{
    Found painted = found;
    painted.answers.insert_or_assign(Question::Surface, SurfaceState::Paint);
    Scribe scribe;
    scribe.takeIn();
    scribe.answer(painted);
    scribe.park(u"strip_bay"_s);
    scribe.put(AssessAgain{}, seconds(0), Pace::NextMorning);
    scribe.answer(found);
    scribe.work(false);
    return scribe.script(found.name + u"_stripped_first"_s);
}

Script worked(const Found& found, bool overnight)
{
    Scribe scribe;
    scribe.takeIn();
    scribe.answer(found);
    scribe.work(overnight);
    return scribe.script(overnight ? found.name + u"_overnight"_s : found.name);
}

Script sentOn(const Found& found)
{
    Scribe scribe;
    scribe.takeIn();
    scribe.answer(found);
    scribe.park(u"body_shop"_s);
    return scribe.script(found.name);
}

Scripts made()
{
    Scripts scripts;
    for (const Found& each : fillable())
        scripts.whole.push_back(worked(each, false));
    scripts.whole.push_back(worked(fillable()[0], true));
    scripts.whole.push_back(worked(fillable()[2], true));
    scripts.whole.push_back(strippedFirst(fillable()[2]));
    for (const Found& each : refused())
        scripts.stops.push_back(sentOn(each));
    return scripts;
}

} // namespace

QByteArray scriptJob() { return "@job@"; }
QByteArray scriptPanel() { return "@panel@"; }

const Scripts& everyScript()
{
    static const Scripts all = made();
    return all;
}

} // namespace strandbench::years
