// SPDX-License-Identifier: GPL-3.0-or-later
// One repair, all the way: every figure on the glass is the plan's.
#include "bench_fixture.h"
#include "shown.h"

#include "air/gate.h"
#include "pictures/section_picture.h"
#include "exchange/events.h"
#include "plan/forecast.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// Follows the walk and compares what each screen shows with the plan that the core makes of the answers.
class WholeWalk : public BenchTest, public ::testing::WithParamInterface<std::pair<const char*, UnitSystem>> {
protected:
    void start()
    {
        Settings settings = demoSettings();
        settings.language = QString::fromLatin1(GetParam().first);
        settings.units = GetParam().second;
        open(settings);
        m_words = std::make_unique<Words>(settings.units, QLocale(settings.language));
    }
    void check();
    void checkPlan();
    void checkMix(BatchRef ref);
    void checkClock(BatchRef ref, bool spreading);
    void checkStep(const std::vector<Step>& steps, int index);
    void checkReading();
    void checkHandOver();
    void expectOnly(const QStringList& expected);

    [[nodiscard]] const Repair& repair() { return *bench().repair(u"4421"_s); }
    [[nodiscard]] QString text(const QString& name) { return shown(window(), name); }
    [[nodiscard]] const Words& words() const { return *m_words; }
    const Batch& batch(BatchRef ref)
    {
        const RepairPlan& plan = *repair().plan;
        return (ref.finishing ? plan.finish.batches : plan.batches).at(static_cast<std::size_t>(ref.index));
    }

    /// What the engine says of a batch with the newest reading, apart from the screens.
    BatchForecast forecast(BatchRef ref, double shareOfPlanned = 1.0)
    {
        const RepairPlan& plan = *repair().plan;
        const Batch& planned = batch(ref);
        const CureCase& layer =
            ref.finishing ? *plan.finish.cureCase : *plan.lifts.at(static_cast<std::size_t>(planned.lift)).cureCase;
        const ProductSheet* sheet =
            bench().bench().planning().catalogue.byId(ref.finishing ? plan.finishSheetId : plan.sheetId);
        const Fraction hardener = Fraction::ofOne(planned.mix.hardenerShare.value() * shareOfPlanned);
        return *forecastBatch({planned, layer, *sheet}, *repair().lastReading, hardener, m_engine);
    }

    std::map<QString, int> m_checked;

private:
    CureEngine m_engine;
    std::unique_ptr<Words> m_words;
};

/// No figure stands on the screen that is not expected there.
void WholeWalk::expectOnly(const QStringList& expected)
{
    QStringList allowed;
    for (const QString& each : expected)
        allowed << figuresOf(each);
    for (const QString& line : allShown(window()))
        for (const QString& figure : figuresOf(line))
            EXPECT_TRUE(allowed.contains(figure))
                << figure.toStdString() << " in '" << line.toStdString() << "' on " << screen().toStdString();
}

void WholeWalk::checkPlan()
{
    const RepairPlan plan = bench().bench().plan(repair().assessment);
    ASSERT_TRUE(plan.fill);
    Mass finishing = grams(0);
    for (const Batch& each : plan.finish.batches)
        finishing += each.mix.filler;
    const QString fibre = text(u"plan_mix"_s);
    const QString all = words().batches(static_cast<int>(plan.batches.size() + plan.finish.batches.size()));
    EXPECT_TRUE(fibre.startsWith(words().mass(plan.fillerTotal))) << fibre.toStdString();
    EXPECT_TRUE(fibre.contains(words().mass(finishing))) << fibre.toStdString();
    EXPECT_TRUE(fibre.endsWith(all)) << fibre.toStdString();
    const QString ready = words().clockTime(bench().clock().now(), plan.readyForPrimer);
    EXPECT_TRUE(text(u"plan_ready"_s).contains(ready)) << text(u"plan_ready"_s).toStdString();
    const auto* section = window().findChild<SectionPicture*>(u"section"_s);
    ASSERT_NE(section, nullptr);
    EXPECT_EQ(section->drawing().lifts, plan.lifts);
    ASSERT_EQ(section->labels().lifts.size(), static_cast<qsizetype>(plan.lifts.size()));
    for (std::size_t i = 0; i < plan.lifts.size(); ++i)
        EXPECT_TRUE(
            section->labels().lifts[static_cast<qsizetype>(i)].endsWith(words().fineLength(plan.lifts[i].thickness)));
    EXPECT_TRUE(section->labels().finish.contains(words().fineLength(plan.finish.thickness)));
    EXPECT_TRUE(section->labels().finish.contains(words().fineLength(plan.finish.limitInAll)));
    // 52 mm and a 4 : 1 bevel that runs to half of 4 mm on each face: 52 + 2 * 4 * 2 = 68 mm (common practice).
    EXPECT_TRUE(section->labels().opening.startsWith(words().length(millimetres(68))))
        << section->labels().opening.toStdString();
    Temperature hottest = celsius(0);
    for (const Lift& each : plan.lifts)
        hottest = std::max(hottest, *each.peak);
    expectOnly({words().jobLabel(repair().job), text(u"sentence"_s),
                words().lengthPair(millimetres(52), millimetres(38)), words().mass(plan.fillerTotal),
                words().mass(finishing), ready, all, words().temperature(hottest), words().temperature(celsius(90))});
    EXPECT_TRUE(text(u"plan_heat"_s).contains(words().temperature(hottest))) << text(u"plan_heat"_s).toStdString();
    EXPECT_TRUE(text(u"sentence"_s).contains(words().lengthPair(millimetres(52), millimetres(38))));
}

void WholeWalk::checkMix(BatchRef ref)
{
    const Batch& planned = batch(ref);
    EXPECT_EQ(text(u"mix_puddle"_s), words().length(planned.mix.puddle));
    const QString pair = words().mass(planned.mix.filler) + u" + "_s + words().hardener(planned.mix.hardener);
    EXPECT_EQ(text(u"mix_weigh"_s), pair);
    EXPECT_TRUE(text(u"mix_gel"_s).contains(words().longDuration(forecast(ref).times.boardGel)))
        << text(u"mix_gel"_s).toStdString();
    EXPECT_TRUE(text(u"mix_how"_s).contains(words().fineLength(planned.mix.puddleHeight)));
    const Repair& whole = repair();
    const QString of = text(u"context"_s);
    const auto all = (ref.finishing ? whole.plan->finish.batches : whole.plan->batches).size();
    EXPECT_TRUE(figuresOf(of).contains(QString::number(ref.index + 1))) << of.toStdString();
    EXPECT_TRUE(figuresOf(of).contains(QString::number(all))) << of.toStdString();
    const ProductSheet* sheet =
        bench().bench().planning().catalogue.byId(ref.finishing ? whole.plan->finishSheetId : whole.plan->sheetId);
    expectOnly({of, text(u"mix_puddle"_s), pair, text(u"mix_gel"_s), text(u"mix_how"_s),
                words().mass(smallestBeadMix(*sheet)), text(u"mix_bead"_s), text(u"mix_bead_caption"_s),
                words().duration(forecast(ref, 0.75).times.gel), words().duration(forecast(ref, 1.25).times.gel)});
}

/// The phases (common practice, no source): kneading 45 s, edges at 0.75 of the gel, hands off from gel to sanding.
void WholeWalk::checkClock(BatchRef ref, bool spreading)
{
    const BatchTimes& times = repair().run(ref)->mixed.times;
    const BatchTimes expected = forecast(ref).times;
    EXPECT_NEAR(inSeconds(times.boardGel), inSeconds(expected.boardGel), 0.002);
    EXPECT_NEAR(inSeconds(times.gel), inSeconds(expected.gel), 0.002);
    EXPECT_NEAR(inSeconds(times.sand), inSeconds(expected.sand), 0.002);
    const Duration since = elapsed(repair().run(ref)->hardenerIn, bench().clock().now());
    const Duration edges = times.gel * 0.75;
    Duration to = times.sand;
    if (spreading)
        to = since < seconds(45) ? seconds(45) : since < edges ? edges : times.gel;
    else if (since >= times.sand)
        to = times.sand + times.easySanding;
    EXPECT_EQ(text(u"clock_figure"_s), words().duration(to - since));
    if (since < times.boardGel) {
        EXPECT_TRUE(text(u"clock_board"_s).endsWith(words().duration(times.boardGel - since)))
            << text(u"clock_board"_s).toStdString();
    }
    expectOnly({text(u"context"_s), words().duration(to - since), words().duration(times.boardGel - since), u"1"_s});
}

void WholeWalk::checkStep(const std::vector<Step>& steps, int index)
{
    const Step& step = steps.at(static_cast<std::size_t>(index));
    const StepText expected = words().step(step);
    EXPECT_EQ(text(u"sentence"_s), expected.sentence);
    EXPECT_EQ(text(u"answer_way_on"_s), expected.wayOn);
    const QString detail = text(u"detail"_s);
    for (const Argument& each : step.arguments)
        if (const auto* length = std::get_if<Length>(&each)) {
            const QString whole = text(u"sentence"_s) + detail;
            EXPECT_TRUE(whole.contains(words().fineLength(*length)) || whole.contains(words().length(*length)))
                << whole.toStdString();
        }
    for (std::size_t i = 0; i < step.cautions.size(); ++i)
        EXPECT_EQ(text(u"caution_%1"_s.arg(i)), words().caution(step.cautions[i]).lead);
    const QStringList of = figuresOf(text(u"context"_s));
    EXPECT_TRUE(of.contains(QString::number(index + 1)) && of.contains(QString::number(steps.size())));
}

void WholeWalk::checkReading()
{
    const QString verdict = text(u"verdict"_s);
    if (figuresOf(verdict).isEmpty())
        return; // not all three keyed in yet
    const bool again = screen().startsWith(u"screen_prepare"_s);
    const Reading reading = again ? Reading{celsius(22), celsius(21), Fraction::ofHundred(46)}
                                  : Reading{celsius(21), celsius(20.5), Fraction::ofHundred(48)};
    const AirVerdict air = judgeAir(reading);
    EXPECT_TRUE(verdict.contains(words().temperature(air.dewPoint))) << verdict.toStdString();
    EXPECT_TRUE(verdict.contains(words().temperatureStep(air.margin))) << verdict.toStdString();
    ++m_checked[u"dew"_s];
}

void WholeWalk::checkHandOver()
{
    Mass fibre = grams(0);
    Mass finishing = grams(0);
    for (const Batch& each : repair().plan->batches)
        fibre += each.mix.filler;
    for (const Batch& each : repair().plan->finish.batches)
        finishing += each.mix.filler;
    const QString mixed = text(u"message_text"_s);
    EXPECT_TRUE(mixed.contains(words().mass(fibre))) << mixed.toStdString();
    EXPECT_TRUE(mixed.contains(words().mass(finishing))) << mixed.toStdString();
}

void WholeWalk::check()
{
    if (!bench().repair(u"4421"_s))
        return;
    const NextStep next = nextStep(repair());
    const QString name = screen();
    ++m_checked[name];
    if (name == u"screen_plan"_s)
        checkPlan();
    else if (name == u"screen_mix"_s)
        checkMix(*next.batch);
    else if (name == u"screen_spread"_s || name == u"screen_wait"_s)
        checkClock(*next.batch, name == u"screen_spread"_s);
    else if (name == u"screen_assess_reading"_s || name.startsWith(u"screen_prepare_read_panel"_s))
        checkReading();
    else if (next.station == Station::Prepare)
        checkStep(repair().plan->prep, next.index);
    else if (next.station == Station::Finish)
        checkStep(repair().plan->finishing, next.index);
    else if (name == u"screen_hand_over"_s)
        checkHandOver();
}

TEST_P(WholeWalk, EveryFigureIsThePlans)
{
    start();
    Walk walk(bench(), skirtPanel());
    int touches = 0;
    walk.touched = [&](const Touch&) {
        ++touches;
        check();
    };
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    for (const QString& each : QStringList{u"screen_plan"_s, u"screen_spread"_s, u"screen_wait"_s, u"screen_sand"_s,
                                           u"screen_turn"_s, u"screen_hand_over"_s, u"dew"_s})
        EXPECT_GT(m_checked[each], 0) << each.toStdString() << " never came";
    EXPECT_EQ(m_checked[u"screen_mix"_s], 3) << "two faces and a finishing coat";
    EXPECT_GT(touches, 80);
}

INSTANTIATE_TEST_SUITE_P(InBothUnits, WholeWalk,
                         ::testing::Values(std::pair{"en", UnitSystem::Metric},
                                           std::pair{"de", UnitSystem::UsCustomary}),
                         [](const auto& each) { return std::string(each.param.first); });

class Recorded : public BenchTest {};

TEST_F(Recorded, TheLogHoldsEveryActInOrder)
{
    open();
    QUuid id;
    std::vector<NextStep> steps;
    Walk walk(bench(), skirtPanel());
    walk.touched = [&](const Touch&) {
        if (const Repair* repair = bench().repair(u"4421"_s)) {
            id = repair->id;
            if (steps.empty() || steps.back() != nextStep(*repair))
                steps.push_back(nextStep(*repair));
        }
    };
    ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
    close();
    const auto report = verifyLog(log());
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    ASSERT_TRUE(opened.has_value());
    const auto events = (*opened)->events(id);
    ASSERT_TRUE(events.has_value());
    // Folding the log again passes by the very steps that the glass showed.
    Repair again;
    std::vector<NextStep> replayed;
    for (const Event& each : *events) {
        ASSERT_FALSE(apply(again, each).has_value());
        if (replayed.empty() || replayed.back() != nextStep(again))
            replayed.push_back(nextStep(again));
    }
    EXPECT_FALSE(again.open());
    replayed.pop_back(); // done: the repair is no longer among the open ones
    EXPECT_EQ(replayed.size(), steps.size());
    EXPECT_TRUE(replayed == steps);
}

} // namespace
} // namespace strandbench::test
