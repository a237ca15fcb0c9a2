// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/event_words.h"

#include "words/found_words.h"
#include "words/notes.h"
#include "words/role_words.h"
#include "words/table.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString say(const char* text, const QStringList& arguments = {})
{
    return words::fillIn(words::inLanguage("Events", text), arguments);
}

QString readingText(const Reading& reading, const Words& words)
{
    return say(QT_TRANSLATE_NOOP("Events", "air %1, panel %2, humidity %3"),
               {words.temperature(reading.air), words.temperature(reading.panel), words.percent(reading.humidity)});
}

class AnswerReader {
public:
    AnswerReader(Question question, const Words& words) : m_question(question), m_words(words) {}

    QString operator()(Substrate value) const { return m_words.substrate(value); }
    QString operator()(DamageKind value) const { return m_words.damage(value); }
    QString operator()(WeldKind value) const { return m_words.weld(value); }
    QString operator()(bool value) const { return m_words.answer(m_question, value); }
    QString operator()(SurfaceState value) const { return m_words.surface(value); }
    QString operator()(Zone value) const { return m_words.zone(value); }
    QString operator()(Moisture value) const { return m_words.moisture(value); }
    QString operator()(CoreMaterial value) const { return m_words.core(value); }
    QString operator()(const Reading& value) const { return readingText(value, m_words); }
    QString operator()(const DamageSize& size) const
    {
        QStringList parts{size.width.value() > 0 ? m_words.lengthPair(size.length, size.width)
                                                 : m_words.length(size.length)};
        if (size.depth.value() > 0)
            parts << say(QT_TRANSLATE_NOOP("Events", "%1 deep"), {m_words.fineLength(size.depth)});
        if (size.panelThickness.value() > 0)
            parts << say(QT_TRANSLATE_NOOP("Events", "panel %1"), {m_words.fineLength(size.panelThickness)});
        if (size.bevelRatio > 0)
            parts << say(QT_TRANSLATE_NOOP("Events", "bevel %1 : 1"), {m_words.number(size.bevelRatio, 1)});
        return parts.join(u", "_s);
    }

private:
    Question m_question;
    const Words& m_words;
};

/// Says each event; told the repair as it was before and as it is after.
class Teller {
public:
    Teller(const Event& event, const Repair& before, const Repair& after, const Words& words)
        : m_event(event), m_before(before), m_after(after), m_words(words)
    {}

    QString operator()(const TakenIn& taken) const
    {
        if (!taken.reworkOf.isNull())
            return say(QT_TRANSLATE_NOOP("Events", "Taken in as rework of what was returned: %1, %2"),
                       {m_words.jobLabel(taken.job), taken.panel});
        return say(QT_TRANSLATE_NOOP("Events", "Taken in: %1, %2"), {m_words.jobLabel(taken.job), taken.panel});
    }

    QString operator()(const Answered& answered) const
    {
        const QString answer = withFoundBy(answerText(answered.question, answered.value, m_words), answered.foundBy);
        const QString said =
            say(QT_TRANSLATE_NOOP("Events", "%1: %2"), {Words::title(m_words.questionName(answered.question)), answer});
        if (answered.by == EnteredBy::Instrument)
            return answered.corrects ? say(QT_TRANSLATE_NOOP("Events", "Changed. %1 (air by the instrument)"), {said})
                                     : say(QT_TRANSLATE_NOOP("Events", "%1 (air by the instrument)"), {said});
        //: %1 is an answer: "Dry or damp: damp"
        return answered.corrects ? say(QT_TRANSLATE_NOOP("Events", "Changed. %1"), {said}) : said;
    }

    QString operator()(const PlanAccepted& accepted) const
    {
        const RepairPlan& plan = accepted.plan;
        const QStringList what{plan.filler ? m_words.filler(*plan.filler) : QString(), m_words.mass(plan.fillerTotal),
                               m_words.batches(int(plan.batches.size() + plan.finish.batches.size()))};
        return m_before.plan ? say(QT_TRANSLATE_NOOP("Events", "Planned again: %1, %2, %3"), what)
                             : say(QT_TRANSLATE_NOOP("Events", "Plan accepted: %1, %2, %3"), what);
    }

    QString operator()(const StepDone& done) const
    {
        if (done.stage == Stage::HandOver)
            return m_words.handOverTest(done.code).wayOn;
        const auto& steps = done.stage == Stage::Prepare ? m_before.plan->prep : m_before.plan->finishing;
        return m_words.step(steps[std::size_t(done.index)]).wayOn;
    }

    QString operator()(const ReadingTaken& taken) const
    {
        if (taken.by == EnteredBy::Instrument)
            return say(QT_TRANSLATE_NOOP("Events", "Read, air by the instrument: %1; panel %2 above dew point"),
                       {readingText(taken.reading, m_words), m_words.temperatureStep(judgeAir(taken.reading).margin)});
        return say(QT_TRANSLATE_NOOP("Events", "Read: %1; panel %2 above dew point"),
                   {readingText(taken.reading, m_words), m_words.temperatureStep(judgeAir(taken.reading).margin)});
    }

    QString operator()(const HardenerIn& mixed) const
    {
        if (mixed.by == EnteredBy::Instrument)
            return say(QT_TRANSLATE_NOOP("Events", "%1: hardener in, %2 + %3 by the scale"),
                       {batchName(mixed.batch), m_words.mass(mixed.filler), m_words.hardener(mixed.hardener)});
        return say(QT_TRANSLATE_NOOP("Events", "%1: hardener in, %2 + %3"),
                   {batchName(mixed.batch), m_words.mass(mixed.filler), m_words.hardener(mixed.hardener)});
    }

    QString operator()(const PredictedAgain& again) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "%1: by this reading sands from %2, before from %3"),
                   {batchName(again.batch), m_words.duration(again.times.sand),
                    m_words.duration(m_before.run(again.batch)->times().sand)});
    }

    QString operator()(const EdgesClear& clear) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "%1: edges clear after %2"),
                   {batchName(clear.batch), since(clear.batch)});
    }

    QString operator()(const Gelled& gelled) const
    {
        const QStringList what{batchName(gelled.batch), since(gelled.batch)};
        return gelled.place == GelPlace::Board
                   ? say(QT_TRANSLATE_NOOP("Events", "%1: set on the board after %2"), what)
                   : say(QT_TRANSLATE_NOOP("Events", "%1: set on the panel after %2"), what);
    }

    QString operator()(const Sands& sands) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "%1: sands after %2"), {batchName(sands.batch), since(sands.batch)});
    }

    QString operator()(const Sanded& sanded) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "%1: sanded and dusted off"), {batchName(sanded.batch)});
    }

    QString operator()(const Turned&) const { return say(QT_TRANSLATE_NOOP("Events", "Panel turned")); }

    QString operator()(const Parked& parked) const
    {
        QStringList why;
        for (const QString& each : parked.because)
            why << m_words.stopHeadline(each);
        if (!parked.reason.isEmpty())
            why << parkReason(parked.reason);
        const QString where = parkedWhere(parked.to);
        return why.isEmpty()
                   ? say(QT_TRANSLATE_NOOP("Events", "Parked: %1"), {where})
                   : say(QT_TRANSLATE_NOOP("Events", "Parked: %1. %2"), {where, Words::title(why.join(u", "_s))});
    }

    QString operator()(const AssessAgain&) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "Assessed again from the first question"));
    }
    QString operator()(const TakenUpAgain&) const { return say(QT_TRANSLATE_NOOP("Events", "Taken up again")); }
    QString operator()(const HandedOver&) const { return say(QT_TRANSLATE_NOOP("Events", "Handed over")); }
    QString operator()(const PhotoTaken& photo) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "Photo: %1"), {photoMomentInList(photo.moment)});
    }
    QString operator()(const Noted& note) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "Note: %1"), {noteText(note)});
    }

    QString operator()(const AlarmAnswered& answered) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "%1: alarm answered: %2"),
                   {batchName(answered.batch), alarmName(answered.alarm)});
    }
    QString operator()(const Overridden& over) const
    {
        QStringList stops;
        for (const QString& each : over.stops)
            stops << m_words.stopHeadline(each);
        return say(QT_TRANSLATE_NOOP("Events", "Overridden by the supervisor: %1. Reason: %2"),
                   {stops.join(u", "_s), overrideReason(over.reason)});
    }
    QString operator()(const SignedOff&) const
    {
        return say(QT_TRANSLATE_NOOP("Events", "Signed off by the supervisor"));
    }
    QString operator()(const Returned& returned) const
    {
        //: %1 is the reason
        return say(QT_TRANSLATE_NOOP("Events", "Returned by the supervisor: %1"), {returnText(returned)});
    }
    QString operator()(const ReworkBegun&) const { return say(QT_TRANSLATE_NOOP("Events", "Its rework is taken in")); }
    QString operator()(const Corrected& correction) const
    {
        //: %1 is the number of the event that is put right, %2 what the supervisor wrote
        return say(QT_TRANSLATE_NOOP("Events", "Correction of no. %1: %2"),
                   {QString::number(correction.seq), correction.text});
    }

    /// Of a lot or of the bench: no record of a repair holds one.
    template <class Other> QString operator()(const Other&) const { return {}; }

private:
    [[nodiscard]] QString since(BatchRef batch) const
    {
        return m_words.duration(elapsed(m_after.run(batch)->hardenerIn, m_event.at));
    }

    const Event& m_event;
    const Repair& m_before;
    const Repair& m_after;
    const Words& m_words;
};

} // namespace

QString answerText(Question question, const AnswerValue& value, const Words& words)
{
    return std::visit(AnswerReader(question, words), value);
}

QString batchName(BatchRef batch)
{
    return say(batch.finishing ? QT_TRANSLATE_NOOP("Events", "Finishing batch %1")
                               : QT_TRANSLATE_NOOP("Events", "Batch %1"),
               {QString::number(batch.index + 1)});
}

QString personText(const QString& person)
{
    return person.isEmpty() ? say(QT_TRANSLATE_NOOP("Events", "not told")) : person;
}

std::vector<EventLine> eventLines(const JobRecord& record, const Words& words)
{
    std::vector<EventLine> lines;
    Repair after;
    for (const Event& each : record.events) {
        const Repair before = after;
        if (apply(after, each))
            break; // a record has folded already: this does not come
        lines.push_back({each.at, each.seq, each.person, std::visit(Teller(each, before, after, words), each.payload)});
    }
    return lines;
}

} // namespace strandbench
