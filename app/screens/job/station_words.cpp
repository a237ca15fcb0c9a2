// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/station_words.h"

#include "screens/frame/phrases.h"
#include "words/notes.h"
#include "words/role_words.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(StationWords)
};

NextWords ofClock(const RunningMix& running, const Words& words)
{
    const bool open = running.face.phase == Phase::Harder;
    const QString time = words.duration(open ? running.face.sinceHardener : running.face.toNextPhase);
    return {Words::title(words.phase(running.face.phase)),
            open ? Says::tr("%1 since hardener").arg(time) : Says::tr("%1 left").arg(time), signOf(running.face.phase)};
}

NextWords ofSteps(const NextStep& next, std::size_t all, const Words& words)
{
    return {Words::title(words.station(next.station)), phrases::stepOf(next.index + 1, static_cast<int>(all)),
            signOf(next.station)};
}

/// Why and where: a refusal tells both.
QString whyParked(const Parked& parked, const Words& words)
{
    if (!parked.because.empty())
        return words.stopHeadline(parked.because.front());
    if (parked.reason.isEmpty() && parked.to.isEmpty())
        return Says::tr("by choice");
    QStringList parts{parkReason(parked.reason), parkedWhere(parked.to)};
    parts.removeAll(QString());
    return parts.join(u" · "_s);
}

} // namespace

NextWords nextWords(const Repair& repair, const std::optional<RunningMix>& running, const Words& words)
{
    const NextStep next = nextStep(repair);
    if (running)
        return ofClock(*running, words);
    switch (next.station) {
    case Station::Parked: {
        return {Words::title(words.station(next.station)), whyParked(*repair.parked, words), Pictogram::Parked};
    }
    case Station::Assess:
        return {Words::title(words.station(next.station)), words.questionName(*next.question), signOf(next.station)};
    case Station::Prepare:
        return ofSteps(next, repair.plan->prep.size(), words);
    case Station::Finish:
        return ofSteps(next, repair.plan->finishing.size(), words);
    case Station::HandOver:
        return ofSteps({next.station, {}, std::min(next.index, static_cast<int>(handOverTests().size()) - 1), {}},
                       handOverTests().size(), words);
    case Station::Mix:
        return {Words::title(words.station(next.station)),
                phrases::batchOf(next.batch->index + 1,
                                 static_cast<int>(next.batch->finishing ? repair.plan->finish.batches.size()
                                                                        : repair.plan->batches.size())),
                signOf(next.station)};
    case Station::Returned:
        return {Words::title(words.station(next.station)), returnText(repair.returned->what), signOf(next.station)};
    case Station::Decide:
    case Station::Spread:
    case Station::Wait:
    case Station::Sand:
    case Station::Turn:
    case Station::Done:
        break;
    }
    return {Words::title(words.station(next.station)), {}, signOf(next.station)};
}

SectionProgress progressOf(const Repair& repair)
{
    SectionProgress progress;
    if (!repair.plan)
        return progress;
    progress.prepared = repair.prepDone == static_cast<int>(repair.plan->prep.size());
    progress.turned = false;
    progress.finished = !repair.plan->finish.batches.empty() &&
                        repair.run({true, static_cast<int>(repair.plan->finish.batches.size()) - 1}) != nullptr;
    for (const BatchRun& run : repair.runs) {
        if (run.batch.finishing || !run.edgesClear)
            continue;
        const Batch& batch = repair.plan->batches.at(static_cast<std::size_t>(run.batch.index));
        progress.liftsLaid = std::max(progress.liftsLaid, batch.lift + 1);
    }
    return progress;
}

} // namespace strandbench
