// SPDX-License-Identifier: GPL-3.0-or-later
// Gels told on the glass, batch after batch of one lot: what the next clock says, how wide its edges are, and what the
// lot's page shows of it. What is expected is worked out here, apart from core/learning.
#include "bench_fixture.h"
#include "shown.h"

#include "cure/solve.h"
#include "pictures/phase_ribbon.h"
#include "screens/job/in_hand.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Of learning_rules.h: from batch to batch; and z of a 90 % interval, from any table of the normal distribution.
constexpr double batchSpread = 0.08;
constexpr double z90 = 1.644853626951;

Settings withLot(const QString& lot)
{
    Settings settings = demoSettings();
    settings.lots[hardenerKey] = {lot};
    return settings;
}

class LotLearning : public BenchTest {
protected:
    [[nodiscard]] const ProductSheet& sheet()
    {
        return *bench().bench().planning().catalogue.byId(run().mixed.sheetId);
    }
    [[nodiscard]] const BatchRun& run() { return bench().repair(m_job)->runs.front(); }
    [[nodiscard]] QString text(const QString& name) { return shown(window(), name); }

    /// Walks a new job until its first batch is being spread.
    void mixAnother()
    {
        if (screen() != u"screen_home"_s) {
            window().showHome();
            bench().thumb().settle();
        }
        DemoJob job = skirtPanel();
        job.job = m_job = QString::number(4500 + ++m_jobs);
        walkTo(job, Station::Spread);
    }
    /// When this batch gels on the panel at so many times the sheet's rate, solved anew.
    [[nodiscard]] CureResult solvedAt(double logRate)
    {
        const Repair& repair = *bench().repair(m_job);
        const CureCase& layer = *repair.plan->lifts.front().cureCase;
        std::vector<StackLayer> stack = layer.stack;
        for (StackLayer& each : stack)
            each.temperature = repair.lastReading->panel;
        const CureEngine engine;
        CureCase anew =
            *engine.layerCase({sheet(), *repair.lastReading, run().mixed.cureCase->hardener, layer.thickness, stack});
        anew.kinetics.k1 = anew.kinetics.k1 * std::exp(logRate);
        anew.kinetics.k2 = anew.kinetics.k2 * std::exp(logRate);
        return *solveCure(anew);
    }
    /// Waits until that moment since the hardener went in.
    void waitUntil(Duration sinceHardener)
    {
        bench().clock().advance(sinceHardener - elapsed(run().hardenerIn, bench().clock().now()));
        window().tick();
        bench().thumb().settle();
    }
    /// The present batch is told to have gelled on the panel at this log rate against its sheet.
    void tellGel(double logRate)
    {
        const Duration bySheet = run().howSure()->sheet.gel;
        waitUntil(seconds(std::round(inSeconds(bySheet) / std::exp(logRate))));
        m_told.push_back(std::log(bySheet / elapsed(run().hardenerIn, bench().clock().now())));
        tap(u"it_has_gelled"_s);
        tap(u"gelled_panel"_s);
    }
    /// Mean and spread of the next batch by the textbook: normal, known spread, prior from the sheet's range as four
    /// spreads about its nominal time.
    [[nodiscard]] std::pair<double, double> next()
    {
        const double prior = std::log(sheet().working.late / sheet().working.early) / 4;
        const double precision = 1 / (prior * prior) + static_cast<double>(m_told.size()) / (batchSpread * batchSpread);
        double sum = 0;
        for (const double each : m_told)
            sum += each / (batchSpread * batchSpread);
        return {sum / precision, std::sqrt(1 / precision + batchSpread * batchSpread)};
    }
    /// Compares the present clock with what was told so far.
    void checkClock(const QString& source)
    {
        const auto [mean, spread] = next();
        const CureResult early = solvedAt(mean + z90 * spread);
        const CureResult late = solvedAt(mean - z90 * spread);
        const Words words(UnitSystem::Metric, QLocale(u"en"_s));
        EXPECT_NEAR(inSeconds(run().times().gel), inSeconds(*solvedAt(mean).gel), 0.2);
        EXPECT_NEAR(inSeconds(run().howSure()->early.gel), inSeconds(*early.gel), 0.2);
        EXPECT_NEAR(inSeconds(run().howSure()->late.gel), inSeconds(*late.gel), 0.2);
        EXPECT_NEAR(inSeconds(run().howSure()->early.sand), inSeconds(*early.sand), 0.2);
        EXPECT_NEAR(inSeconds(run().howSure()->late.sand), inSeconds(*late.sand), 0.2);
        const QString told = text(u"clock_source"_s);
        EXPECT_TRUE(told.endsWith(source)) << told.toStdString();
        EXPECT_TRUE(told.contains(words.duration(run().howSure()->early.gel)) &&
                    told.contains(words.duration(run().howSure()->late.gel)))
            << told.toStdString();
        checkEdges(*early.sand, *late.sand);
    }
    /// The soft edge between hands off and sanding, as painted, against the ends; sanding ends where it ends easily.
    void checkEdges(Duration early, Duration late)
    {
        const auto* ribbon = window().findChild<PhaseRibbon*>(u"phases"_s);
        ASSERT_NE(ribbon, nullptr);
        const std::vector<QRectF> edges = ribbon->softEdges();
        ASSERT_EQ(edges.size(), 5U);
        const double all =
            inSeconds(run().times().sand + run().times().easySanding) * 1.15; // 'harder' is drawn so long
        const double margin = window().theme().px(2);
        const auto x = [&](Duration at) { return margin + (ribbon->width() - 2 * margin) * inSeconds(at) / all; };
        const double gel = x(run().times().gel);
        const double sand = x(run().times().sand);
        EXPECT_NEAR(edges[3].left(), std::max(x(early), (gel + sand) / 2), 1.5);
        EXPECT_NEAR(edges[3].right(), x(late), 1.5);
    }

    QString m_job;
    std::vector<double> m_told; ///< log rates

private:
    int m_jobs = 0;
};

TEST_F(LotLearning, TheNextClockSaysWhatItLearntFromAndHowSureItIs)
{
    open(withLot(u"H7"_s));
    mixAnother();
    checkClock(u"from the sheet"_s);
    const double firstWidth = std::log(run().howSure()->late.gel / run().howSure()->early.gel);
    tellGel(0.12);
    mixAnother();
    checkClock(u"from 1 batch of this lot"_s);
    tellGel(0.05);
    mixAnother();
    checkClock(u"from 2 batches of this lot"_s);
    tellGel(0.16);
    close(); // and it is all in the log
    open(withLot(u"H7"_s));
    mixAnother();
    checkClock(u"from 3 batches of this lot"_s);
    EXPECT_LT(std::log(run().howSure()->late.gel / run().howSure()->early.gel), 0.85 * firstWidth);
    EXPECT_LT(run().times().gel, run().howSure()->sheet.gel) << "the lot is faster than its sheet";
}

/// Edges and gel go by the early end. From the early end on it may be tested whether it sands; until the late end the
/// figure counts to that, and only then the way on is green.
TEST_F(LotLearning, FiguresCountToTheEndsThatTheActsGoBy)
{
    open(withLot(u"H7"_s));
    mixAnother();
    const HowSure howSure = *run().howSure();
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    waitUntil(minutes(1));
    EXPECT_EQ(text(u"clock_figure"_s), words.duration(howSure.early.gel * 0.75 - minutes(1)));
    waitUntil(howSure.early.gel * 0.75 + seconds(1));
    EXPECT_EQ(text(u"clock_figure"_s), words.duration(howSure.early.gel * 0.25 - seconds(1)));
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_wait"_s);
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
    waitUntil(howSure.early.sand + seconds(1));
    auto* wayOn = qobject_cast<TapButton*>(bench().thumb().find(u"answer_way_on"_s));
    EXPECT_TRUE(wayOn->isEnabled());
    EXPECT_EQ(text(u"clock_figure"_s), words.duration(howSure.late.sand - howSure.early.sand - seconds(1)));
    EXPECT_EQ(wayOn->kind(), TapButton::Kind::Way);
    waitUntil(howSure.late.sand + seconds(1));
    EXPECT_EQ(wayOn->kind(), TapButton::Kind::Go);
}

/// Another lot knows nothing of this one but that it is of the same product.
TEST_F(LotLearning, AnotherLotBeginsWithItsProduct)
{
    open(withLot(u"H7"_s));
    mixAnother();
    tellGel(0.12);
    close();
    open(withLot(u"H8"_s));
    mixAnother();
    EXPECT_TRUE(text(u"clock_source"_s).endsWith(u"from 1 other lot of this product"_s))
        << text(u"clock_source"_s).toStdString();
    EXPECT_LT(run().times().gel, run().howSure()->sheet.gel);
    close();
    Settings untold = demoSettings();
    untold.lots.clear();
    open(untold);
    mixAnother();
    tellGel(0.3);
    mixAnother();
    EXPECT_EQ(run().howSure()->batches, 0);
    EXPECT_EQ(run().howSure()->otherLots, 1) << "of a lot that nobody told nothing is learnt";
}

class LotPage : public LotLearning {
protected:
    void toThePage()
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"today"_s);
        tap(u"answer_way_on"_s);
        ASSERT_EQ(screen(), u"screen_lot_list"_s);
        tap(u"lot_row_0"_s);
        ASSERT_EQ(screen(), u"screen_lot_page"_s);
    }
    [[nodiscard]] QString lesson(int batch) { return text(u"lot_batch_%1_lesson"_s.arg(batch)); }
};

TEST_F(LotPage, ShowsPredictedAgainstToldAndWhatEachTaught)
{
    open(withLot(u"H7"_s));
    mixAnother();
    tellGel(0.12);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    const QString observed = words.duration(elapsed(run().hardenerIn, *run().panelGelled));
    const QString bySheet = words.duration(run().howSure()->sheet.gel);
    mixAnother();
    tellGel(-1.1); // a forgotten bead: a third of the rate
    mixAnother();  // and one of which nothing is told
    toThePage();
    EXPECT_TRUE(text(u"context"_s).contains(u"H7"_s));
    EXPECT_TRUE(lesson(1).contains(u"held"_s)) << lesson(1).toStdString();
    EXPECT_TRUE(lesson(2).contains(u"No gel told"_s)) << lesson(2).toStdString();
    EXPECT_EQ(text(u"lot_source"_s), u"From 1 batch of this lot"_s);
    m_told.pop_back();
    const auto [mean, spread] = next();
    const auto share = [&](double logRate) {
        return words.percent(Fraction::ofHundred(std::round(std::abs(std::exp(logRate) - 1) * 100)));
    };
    const QString range = words.percent(Fraction::ofHundred(90)) + u" of batches: "_s + share(mean - z90 * spread) +
                          u" slower to "_s + share(mean + z90 * spread) + u" faster"_s;
    EXPECT_EQ(text(u"lot_range"_s), range);
    tap(u"rows_more"_s); // the newest stood first
    EXPECT_TRUE(text(u"lot_batch_0_told"_s).contains(observed) && text(u"lot_batch_0_told"_s).contains(bySheet))
        << text(u"lot_batch_0_told"_s).toStdString();
    EXPECT_TRUE(text(u"lot_batch_0_what"_s).contains(u"4501"_s));
    EXPECT_TRUE(lesson(0).contains(words.percent(Fraction::ofHundred(13)) + u" faster"_s) &&
                lesson(0).endsWith(u"counts"_s))
        << lesson(0).toStdString();
}

TEST_F(LotPage, ForgettingNeedsAReasonAndTheNextClockIsTheSheets)
{
    open(withLot(u"H7"_s));
    mixAnother();
    tellGel(0.12);
    toThePage();
    ASSERT_TRUE(bench().thumb().hold(u"forget_lot"_s));
    ASSERT_EQ(screen(), u"screen_forget_lot"_s);
    tap(u"answer_back"_s);
    EXPECT_TRUE(lesson(0).endsWith(u"counts"_s)) << "looked at and left";
    ASSERT_TRUE(bench().door().set(u"271828"_s).empty());
    ASSERT_TRUE(bench().thumb().hold(u"forget_lot"_s));
    tap(u"forget_told_wrong"_s);
    ASSERT_EQ(screen(), u"screen_pin"_s);
    for (const QChar digit : u"271828"_s)
        tap(u"key_"_s + digit);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_lot_page"_s);
    EXPECT_TRUE(lesson(0).endsWith(u"forgotten"_s)) << lesson(0).toStdString();
    EXPECT_TRUE(text(u"lot_forgotten"_s).contains(demoSettings().person)) << text(u"lot_forgotten"_s).toStdString();
    EXPECT_EQ(bench().thumb().find(u"forget_lot"_s), nullptr) << "nothing is left to forget";
    m_told.clear();
    close();
    open(withLot(u"H7"_s));
    mixAnother();
    checkClock(u"from the sheet"_s);
    EXPECT_TRUE(verifyLog(log())->clean) << verifyLog(log())->where.toStdString();
}

/// A new lot is tried on the board before a panel hangs on it.
TEST_F(LotPage, ATestPatTeachesTheLot)
{
    open(withLot(u"H9"_s));
    walkTo(skirtPanel(), Station::Mix);
    tap(u"in_hand"_s);
    tap(u"lot_page"_s);
    ASSERT_EQ(screen(), u"screen_lot_page"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pat"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pat"_s);
    const LotOfProduct lot = bench().bench().lots().lots().front();
    EXPECT_EQ(lot.hardenerLot, u"H9"_s);
    const RunningPat pat = *bench().bench().lots().patOf(lot);
    const Duration gelled = pat.mixed.bySheet / std::exp(0.1);
    bench().clock().advance(gelled);
    window().tick();
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_EQ(text(u"pat_figure"_s), words.duration(gelled));
    close(); // it runs on
    open(withLot(u"H9"_s));
    tap(u"job_card_0"_s);
    tap(u"in_hand"_s);
    tap(u"lot_page"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pat"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_lot_page"_s);
    EXPECT_TRUE(lesson(0).contains(words.percent(Fraction::ofHundred(11)) + u" faster"_s)) << lesson(0).toStdString();
    tap(u"answer_back"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_mix"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(text(u"clock_source"_s).endsWith(u"from 1 batch of this lot"_s))
        << text(u"clock_source"_s).toStdString();
    EXPECT_TRUE(verifyLog(log())->clean) << verifyLog(log())->where.toStdString();
}

class ReadWhileCuring : public LotLearning {
protected:
    void read(const QString& air, const QString& panel)
    {
        tap(u"read_while_curing"_s);
        ASSERT_EQ(screen(), u"screen_read_while_curing"_s);
        for (const auto& [name, keys] : std::vector<std::pair<QString, QString>>{
                 {u"air_c"_s, air}, {u"panel_c"_s, panel}, {u"humidity_percent"_s, u"50"_s}}) {
            tap(name + u"_figure"_s);
            for (const QChar key : keys)
                tap(u"key_"_s + key);
            tap(u"answer_way_on"_s);
        }
    }
};

/// The shop's door is opened, the panel cools: the clock goes on from the state reached, says what changed, and the
/// curve bends there.
TEST_F(ReadWhileCuring, TheClockSaysWhatChanged)
{
    open(withLot(u"H7"_s));
    mixAnother();
    waitUntil(minutes(2));
    const BatchTimes before = run().times();
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    read(u"12"_s, u"15"_s);
    const QString outlook = text(u"outlook"_s);
    EXPECT_TRUE(outlook.contains(words.duration(before.sand))) << outlook.toStdString();
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_spread"_s);
    ASSERT_TRUE(run().readAgain);
    EXPECT_GT(run().times().gel, before.gel);
    EXPECT_TRUE(outlook.contains(words.duration(run().times().sand))) << outlook.toStdString();
    const QString source = text(u"clock_source"_s);
    EXPECT_TRUE(source.contains(words.duration(before.gel)) &&
                source.contains(words.duration(run().howSure()->early.gel)))
        << source.toStdString();
    EXPECT_EQ(text(u"clock_figure"_s), words.duration(run().howSure()->early.gel * 0.75 - minutes(2)));
    tap(u"curve_key"_s);
    EXPECT_EQ(text(u"curve_gel"_s), words.duration(run().times().gel));
    close();
    open(withLot(u"H7"_s));
    EXPECT_GT(run().times().gel, before.gel) << "it is in the log";
    EXPECT_TRUE(verifyLog(log())->clean) << verifyLog(log())->where.toStdString();
}

} // namespace
} // namespace strandbench::test
