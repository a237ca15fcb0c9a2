// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/job/bead_screen.h"

#include "screens/figures/figure_wiring.h"
#include "screens/job/hands_words.h"
#include "screens/job/in_hand.h"
#include "screens/job/mix_screen.h"
#include "screens/job/outlooks.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(BeadScreen)
};

/// Steps and ends of what may be keyed in, as shares of the planned hardener. Far beyond any band, so that what was
/// laid can be told, and is then refused.
constexpr double leastShare = 0.1;
constexpr double mostShare = 4.0;

/// What one screen works with, copied: the worker's thread reads it too.
struct Laid {
    Repair repair;
    BatchInHand batch;
    const ProductSheet& sheet;
    const PlanningSet& planning;
    LotBelief lot;
    bool byWeight;

    [[nodiscard]] const Mix& mix() const { return batch.batch.mix; }
    [[nodiscard]] Mass hardener(double value) const
    {
        return byWeight ? Mass::from_value(value) : metres(value) * sheet.beadMass;
    }
    [[nodiscard]] Fraction share(double value) const { return Fraction::ofOne(hardener(value) / mix().filler); }
    [[nodiscard]] std::optional<BatchForecast> forecast(double value) const
    {
        return forecastOf(repair, batch, share(value), planning, lot);
    }
    /// What the hardener laid leads to, and whether it may go in.
    [[nodiscard]] FiguresScreen::Spec::Verdict outlook(double value, const Words& words) const
    {
        const auto found = forecast(value);
        const auto hold = holdOf(repair, batch, found, planning);
        QString text = outlooks::ofForecast(found, words);
        if (hold)
            text += u' ' + hands::mixHold(*hold, words);
        return {text, !hold};
    }
};

/// What was laid begins at what was planned, and may be so far from it.
template <class Q> Range<Q> about(FigureSpec& figure, Q planned)
{
    figure.start = planned.value();
    figure.value = planned.value();
    return {planned * leastShare, planned * mostShare};
}

FigureSpec figureOf(const Laid& laid, const Words& words)
{
    FigureSpec figure;
    if (laid.byWeight) {
        figure.name = u"hardener_g"_s;
        figure.caption = Says::tr("weighed");
        figure.keyPadSentence = Says::tr("Key in the hardener weighed");
        inMasses(figure, words, true);
        wire<Mass>(figure, about(figure, laid.mix().hardener), words, printHardener, parseMass);
        return figure;
    }
    figure.name = u"bead_mm"_s;
    figure.caption = Says::tr("laid");
    figure.keyPadSentence = Says::tr("Key in the length of the bead laid");
    inLengths(figure, words);
    wire<Length>(figure, about(figure, laid.mix().bead), words, printLength, parseLength);
    return figure;
}

} // namespace

FiguresScreen::Spec::Verdict judgedHardener(Fraction share, const ProductSheet& sheet, const Words& words)
{
    const QString is = Says::tr("Hardener %1 of filler.").arg(words.percent(share)) + u' ';
    switch (judgeHardener(share, sheet)) {
    case HardenerVerdict::Within:
        return {is + Says::tr("Within the sheet’s %1 to %2.")
                         .arg(words.percent(sheet.hardenerLow), words.percent(sheet.hardenerHigh)),
                true};
    case HardenerVerdict::Caution:
        if (share < sheet.hardenerNominal)
            return {is + Says::tr("Little: it cures slowly and may stay soft at the edges."), true};
        return {is + Says::tr("Much: it gels early, and may bleed and pinhole."), true};
    case HardenerVerdict::Refused:
        break;
    }
    return {is + Says::tr("Outside %1 to %2: do not use this mix. Spread it thin to cure, mix anew.")
                     .arg(words.percent(sheet.hardenerLowCaution), words.percent(sheet.hardenerHighCaution)),
            false};
}

Screen* makeBeadScreen(const Surroundings& around, const Repair& repair, BatchRef batch, QWidget* parent,
                       std::function<void()> changeUnits)
{
    const PlanningSet& planning = around.bench.planning();
    const BatchInHand inHand = inhand::batchInUse(repair, batch, around);
    const ProductSheet& sheet = *inHand.sheet;
    const bool byWeight = inHand.batch.mix.filler < smallestBeadMix(sheet);
    const Laid laid{repair, inHand, sheet, planning, inhand::lotBelief(inHand, around), byWeight};
    const Words& words = around.words;
    FiguresScreen::Spec spec;
    spec.name = u"screen_bead"_s;
    spec.context = contextOf(repair, words) + u" · "_s + batchContext(repair, batch, words);
    spec.sentence = byWeight ? Says::tr("How much hardener was weighed?") : Says::tr("How long is the bead laid?");
    spec.wayOn = Says::tr("Hardener in: start");
    spec.changeUnits = std::move(changeUnits);
    spec.figures = {figureOf(laid, words)};
    spec.verdict = [laid, words](const auto& values) {
        return judgedHardener(laid.share(*values[0]), laid.sheet, words);
    };
    spec.outlook = [laid, words](const auto& values) -> std::function<FiguresScreen::Spec::Verdict()> {
        return [laid, words, value = *values[0]] { return laid.outlook(value, words); };
    };
    auto screen = std::make_shared<FiguresScreen*>(nullptr);
    spec.done = [screen, laid, words, &settings = around.settings](const std::vector<double>& values) {
        const auto verdict = laid.outlook(values[0], words);
        if (!verdict.allowed) // the worker may not have told yet
            return (*screen)->showTrouble(verdict.text, {});
        Q_EMIT(*screen)->acts(
            {hardenerIn(laid.repair, laid.batch, laid.hardener(values[0]), laid.forecast(values[0]), settings)});
    };
    *screen = new FiguresScreen(around, std::move(spec), parent);
    return *screen;
}

} // namespace strandbench
