// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/weigh_screen.h"

#include "gear/instruments.h"
#include "screens/job/bead_screen.h"
#include "screens/figures/figure_wiring.h"
#include "screens/job/hands_words.h"
#include "screens/job/in_hand.h"
#include "screens/set_up/instrument_words.h"
#include "screens/job/mix_screen.h"
#include "screens/job/outlooks.h"
#include "screens/frame/phrases.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(WeighScreen)
};

/// What the screen works with, copied: the worker's thread reads it too.
struct Weighed {
    Repair repair;
    BatchInHand batch;
    const PlanningSet& planning;
    LotBelief lot;

    /// The batch with this much filler: as much is mixed, and its puddle is as large.
    [[nodiscard]] BatchInHand with(Mass filler) const
    {
        BatchInHand made = batch;
        made.batch.mix = mixForFiller(filler, *batch.sheet);
        return made;
    }
    [[nodiscard]] std::optional<BatchForecast> forecast(Mass filler, Mass hardener) const
    {
        return forecastOf(repair, with(filler), Fraction::ofOne(hardener / filler), planning, lot);
    }
    /// What it leads to, and whether the hardener may go in.
    [[nodiscard]] FiguresScreen::Spec::Verdict outlook(Mass filler, Mass hardener, const Words& words) const
    {
        const auto found = forecast(filler, hardener);
        const auto hold = holdOf(repair, with(filler), found, planning);
        QString text = outlooks::ofForecast(found, words);
        if (hold)
            text += u' ' + hands::mixHold(*hold, words);
        return {text, !hold};
    }
};

FigureSpec massFigure(const QString& name, const QString& caption, const QString& sentence, Mass planned, bool fine,
                      const Words& words)
{
    FigureSpec figure;
    figure.name = name;
    figure.caption = caption;
    figure.keyPadSentence = sentence;
    figure.start = planned.value();
    inMasses(figure, words, fine);
    wire<Mass>(figure, {planned * leastWeighed, planned * mostWeighed}, words, fine ? printHardener : printMass,
               parseMass);
    return figure;
}

FiguresScreen::Spec::TakeOver fromScale(InstrumentFeed& scale, std::size_t figure, const QString& name,
                                        const QString& caption)
{
    return {name, caption, &scale, [figure](const LineReading& line) -> std::vector<std::pair<std::size_t, double>> {
                if (!line.weight)
                    return {};
                return {{figure, line.weight->value()}};
            }};
}

FiguresScreen::Spec::Verdict judge(const Weighed& weighed, const std::vector<std::optional<double>>& values,
                                   const Words& words)
{
    if (!values[0] || !values[1])
        return {
            Says::tr("Planned: %1. Tare the scale before each.").arg(phrases::massPair(weighed.batch.batch.mix, words)),
            true};
    return judgedHardener(Fraction::ofOne(*values[1] / *values[0]), *weighed.batch.sheet, words);
}

} // namespace

Screen* makeWeighScreen(const Surroundings& around, const Repair& repair, BatchRef batch,
                        const std::optional<Mass>& filler, QWidget* parent, std::function<void()> changeUnits)
{
    const BatchInHand inHand = inhand::batchInUse(repair, batch, around);
    const Weighed weighed{repair, inHand, around.bench.planning(), inhand::lotBelief(inHand, around)};
    const Words& words = around.words;
    const Mix& mix = inHand.batch.mix;
    FiguresScreen::Spec spec;
    spec.name = u"screen_weigh"_s;
    spec.context = contextOf(repair, words) + u" · "_s + batchContext(repair, batch, words);
    spec.sentence = Says::tr("How much was weighed of each?");
    spec.wayOn = Says::tr("Hardener in: start");
    spec.changeUnits = std::move(changeUnits);
    spec.figures = {
        massFigure(u"filler_g"_s, Says::tr("Filler"), Says::tr("Key in the filler weighed"), mix.filler, false, words),
        massFigure(u"hardener_g"_s, Says::tr("Hardener"), Says::tr("Key in the hardener weighed"), mix.hardener, true,
                   words)};
    if (around.instruments && around.instruments->scale().isOn()) {
        InstrumentFeed& scale = around.instruments->scale();
        spec.takeOvers = {fromScale(scale, 0, u"take_filler"_s, Says::tr("Filler")),
                          fromScale(scale, 1, u"take_hardener"_s, Says::tr("Hardener"))};
    }
    spec.verdict = [weighed, words](const auto& values) { return judge(weighed, values, words); };
    spec.outlook = [weighed, words](const auto& values) -> std::function<FiguresScreen::Spec::Verdict()> {
        if (!values[0] || !values[1])
            return {};
        return [weighed, words, of = Mass::from_value(*values[0]), with = Mass::from_value(*values[1])] {
            return weighed.outlook(of, with, words);
        };
    };
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, weighed, words, &settings = around.settings](const std::vector<double>& values) {
        const Mass of = Mass::from_value(values[0]);
        const Mass with = Mass::from_value(values[1]);
        const auto verdict = weighed.outlook(of, with, words);
        if (!verdict.allowed) // the worker may not have told yet
            return (*screen)->showTrouble(verdict.text, {});
        HardenerIn act = hardenerIn(weighed.repair, weighed.with(of), with, weighed.forecast(of, with), settings);
        const bool scale = (*screen)->takenOver(0) && (*screen)->takenOver(1);
        act.by = scale ? EnteredBy::Instrument : EnteredBy::Typed;
        Q_EMIT(*screen)->acts({act});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    if (filler)
        (*screen)->putTaken(0, filler->value());
    return *screen;
}

} // namespace strandbench
