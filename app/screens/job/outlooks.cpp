// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/outlooks.h"

#include "repair/read_again.h"

#include "screens/job/hands_words.h"
#include "screens/job/in_hand.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::outlooks {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(Outlooks)
};

std::optional<Reading> readingOf(const std::vector<std::optional<double>>& values)
{
    if (!values[0] || !values[1] || !values[2])
        return std::nullopt;
    return Reading{kelvin(*values[0]), kelvin(*values[1]), Fraction::ofOne(*values[2])};
}

/// Says nothing until air, panel and humidity are all read.
Outlook onceRead(std::function<QString(const Reading&)> say)
{
    return [say = std::move(say)](const auto& values) -> std::function<Verdict()> {
        const std::optional<Reading> reading = readingOf(values);
        if (!reading)
            return {};
        return [say, reading] { return Verdict{say(*reading), true}; };
    };
}

QString ofPlan(const RepairPlan& plan, const Words& words)
{
    if (!plan.fill)
        return {}; // the verdict, or the next screen, says why
    QStringList parts{Says::tr("%n lift(s).", nullptr, static_cast<int>(plan.lifts.size()))};
    const auto hot = std::find_if(plan.reasons.begin(), plan.reasons.end(),
                                  [](const Reason& each) { return each.code == u"one_go_too_hot"_s; });
    if (hot != plan.reasons.end())
        parts[0] = words.reason(*hot);
    const BatchTimes& times = plan.batches.front().times;
    parts << Says::tr("Gels in %1, sands from %2.").arg(words.duration(times.gel), words.duration(times.sand));
    return parts.join(u' ');
}

} // namespace

QString ofForecast(const std::optional<BatchForecast>& forecast, const Words& words)
{
    if (!forecast)
        return Says::tr("Its cure cannot be worked out.");
    return Says::tr("Board sets in %1. Gels on the panel in %2, sands from %3. Hottest %4.")
        .arg(words.duration(forecast->times.boardGel), words.duration(forecast->times.gel),
             words.duration(forecast->times.sand), words.temperature(forecast->peak));
}

Outlook ofReadingForPlan(const Surroundings& around, const Repair& repair)
{
    return onceRead([&planning = around.bench.planning(), words = around.words,
                     assessment = repair.assessment](const Reading& reading) {
        Assessment whole = assessment;
        whole.reading = reading;
        return ofPlan(planRepair(whole, planning), words);
    });
}

Outlook ofReadingForBatch(const Surroundings& around, const Repair& repair, BatchRef ref)
{
    return onceRead([&planning = around.bench.planning(), words = around.words, repair,
                     batch = inhand::batchInUse(repair, ref, around),
                     lot = inhand::lotBelief(inhand::batchInUse(repair, ref, around), around)](const Reading& reading) {
        Repair then = repair;
        then.lastReading = reading;
        const auto forecast = forecastOf(then, batch, batch.batch.mix.hardenerShare, planning, lot);
        const auto hold = holdOf(then, batch, forecast, planning);
        QString text = ofForecast(forecast, words);
        if (hold)
            text += u' ' + hands::mixHold(*hold, words);
        return text;
    });
}

Outlook ofReadingWhileCuring(const Surroundings& around, const BatchRun& run)
{
    return onceRead([&planning = around.bench.planning(), words = around.words, run,
                     &clock = around.bench.clock()](const Reading& reading) {
        const auto again = predictAgain(run, reading, clock.now(), planning);
        if (!again)
            return Says::tr("Its cure cannot be worked out.");
        return Says::tr("Gels in %1, before %2. Sands from %3, before %4.")
            .arg(words.duration(again->times.gel), words.duration(run.times().gel), words.duration(again->times.sand),
                 words.duration(run.times().sand));
    });
}

} // namespace strandbench::outlooks
