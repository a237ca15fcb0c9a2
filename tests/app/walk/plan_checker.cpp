// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_checker.h"

#include "learning/product.h"

#include "air/gate.h"
#include "pictures/section_picture.h"
#include "pictures/step_picture.h"
#include "words/role_words.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {

Length openingOf(const Damage& damage, bool rearAccess)
{
    switch (damage.kind) {
    case DamageKind::Hole: {
        const double face = rearAccess ? 0.5 : 1.0;
        return damage.length + damage.panelThickness * (face * 2 * damage.bevelRatio);
    }
    case DamageKind::Crack:
        return damage.depth * (2 * damage.bevelRatio);
    case DamageKind::Dent:
        return damage.length;
    default:
        return damage.width;
    }
}

PlanChecker::PlanChecker(ScriptedBench& bench, DemoJob job)
    : m_bench(bench),
      m_job(std::move(job)),
      m_words(bench.window().settings().units, QLocale(bench.window().settings().language))
{}

int PlanChecker::timesOf(const QString& screen) const
{
    const auto found = m_checked.find(screen);
    return found == m_checked.end() ? 0 : found->second;
}

const Batch& PlanChecker::batch(BatchRef ref) const
{
    const RepairPlan& plan = *repair().plan;
    return (ref.finishing ? plan.finish.batches : plan.batches).at(static_cast<std::size_t>(ref.index));
}

const ProductSheet& PlanChecker::sheetOf(BatchRef ref) const
{
    const RepairPlan& plan = *repair().plan;
    QString id = plan.finishSheetId;
    if (!ref.finishing) {
        const QString own = plan.lifts.at(static_cast<std::size_t>(batch(ref).lift)).sheetId;
        id = own.isEmpty() ? plan.sheetId : own;
    }
    return *m_bench.bench().planning().catalogue.byId(id);
}

BatchForecast PlanChecker::forecast(BatchRef ref, double shareOfPlanned) const
{
    const RepairPlan& plan = *repair().plan;
    const Batch& planned = batch(ref);
    const CureCase& layer =
        ref.finishing ? *plan.finish.cureCase : *plan.lifts.at(static_cast<std::size_t>(planned.lift)).cureCase;
    const Fraction hardener = Fraction::ofOne(planned.mix.hardenerShare.value() * shareOfPlanned);
    return *forecastBatch({planned, layer, sheetOf(ref)}, *repair().lastReading, hardener, m_engine,
                          LotBelief{priorOf(sheetOf(ref))});
}

void PlanChecker::expectOnly(const QStringList& expected)
{
    QStringList allowed;
    for (const QString& each : expected)
        allowed << figuresOf(each);
    for (const QString& line : allShown(m_bench.window()))
        for (const QString& figure : figuresOf(line))
            EXPECT_TRUE(allowed.contains(figure))
                << figure.toStdString() << " in '" << line.toStdString() << "' on " << screen().toStdString();
}

Length PlanChecker::length(const QString& field) const
{
    const auto found = m_job.figures.find(field);
    return millimetres(found == m_job.figures.end() ? 0.0 : found->second.toDouble());
}

QString PlanChecker::sizeShown() const
{
    const Length width = repair().assessment.damage->kind == DamageKind::Crack ? Length() : length(u"width_mm"_s);
    return width.value() > 0 ? words().lengthPair(length(u"length_mm"_s), width)
                             : words().length(length(u"length_mm"_s));
}

void PlanChecker::checkSection(const RepairPlan& plan)
{
    const auto* section = m_bench.window().findChild<SectionPicture*>(u"section"_s);
    ASSERT_NE(section, nullptr);
    EXPECT_EQ(section->drawing().lifts, plan.lifts);
    EXPECT_TRUE(section->textFits());
    ASSERT_EQ(section->labels().lifts.size(), static_cast<qsizetype>(plan.lifts.size()));
    for (std::size_t i = 0; i < plan.lifts.size(); ++i) {
        const QString label = section->labels().lifts[static_cast<qsizetype>(i)];
        EXPECT_TRUE(label.endsWith(words().fineLength(plan.lifts[i].thickness))) << label.toStdString();
        EXPECT_TRUE(label.contains(words().filler(plan.lifts[i].filler))) << label.toStdString();
    }
    EXPECT_TRUE(section->labels().finish.contains(words().fineLength(plan.finish.thickness)));
    EXPECT_TRUE(section->labels().finish.contains(words().fineLength(plan.finish.limitInAll)));
    const Assessment& found = repair().assessment;
    const Length opening = openingOf(*found.damage, found.rearAccess.value_or(false));
    EXPECT_TRUE(section->labels().opening.startsWith(words().length(opening)))
        << section->labels().opening.toStdString() << " for " << words().length(opening).toStdString();
    EXPECT_NEAR(inMillimetres(section->drawing().drawnOpening()), inMillimetres(opening), 0.01);
}

void PlanChecker::checkPlan()
{
    const RepairPlan plan = m_bench.bench().plan(repair().assessment);
    ASSERT_TRUE(plan.fill);
    Mass finishing = grams(0);
    for (const Batch& each : plan.finish.batches)
        finishing += each.mix.filler;
    const QString fibre = text(u"plan_mix"_s);
    const QString all = words().batches(static_cast<int>(plan.batches.size() + plan.finish.batches.size()));
    EXPECT_TRUE(fibre.startsWith(words().mass(plan.fillerTotal))) << fibre.toStdString();
    EXPECT_TRUE(fibre.contains(words().mass(finishing))) << fibre.toStdString();
    EXPECT_TRUE(fibre.endsWith(all)) << fibre.toStdString();
    const QString ready = words().clockTime(m_bench.clock().now(), plan.readyForPrimer);
    EXPECT_TRUE(text(u"plan_ready"_s).contains(ready)) << text(u"plan_ready"_s).toStdString();
    EXPECT_EQ(text(u"why"_s), words().filler(*plan.filler));
    checkSection(plan);
    Temperature hottest = celsius(0);
    for (const Lift& each : plan.lifts)
        hottest = std::max(hottest, *each.peak);
    EXPECT_LE(hottest, *plan.peakLimit);
    QString heat = words().temperature(hottest);
    for (const Reason& each : plan.reasons)
        if (each.code == u"one_go_too_hot"_s)
            heat = words().reason(each);
    EXPECT_TRUE(text(u"plan_heat"_s).contains(heat)) << text(u"plan_heat"_s).toStdString();
    EXPECT_TRUE(text(u"sentence"_s).contains(sizeShown())) << text(u"sentence"_s).toStdString();
    expectOnly({words().jobLabel(repair().job), sizeShown(), words().mass(plan.fillerTotal), words().mass(finishing),
                ready, all, heat, words().temperature(*plan.peakLimit)});
}

void PlanChecker::checkMix(BatchRef ref)
{
    const Batch& planned = batch(ref);
    EXPECT_EQ(text(u"mix_puddle"_s), words().length(planned.mix.puddle));
    const QString pair = words().mass(planned.mix.filler) + u" + "_s + words().hardener(planned.mix.hardener);
    EXPECT_EQ(text(u"mix_weigh"_s), pair);
    const Mass smallest = smallestBeadMix(sheetOf(ref));
    if (planned.mix.filler < smallest)
        EXPECT_TRUE(text(u"mix_bead"_s).isEmpty()) << "too little for a bead: it is weighed";
    else
        EXPECT_EQ(text(u"mix_bead"_s), words().length(planned.mix.bead));
    EXPECT_TRUE(text(u"mix_gel"_s).contains(words().longDuration(forecast(ref).times.boardGel)))
        << text(u"mix_gel"_s).toStdString();
    EXPECT_TRUE(text(u"mix_how"_s).contains(words().fineLength(planned.mix.puddleHeight)));
    const RepairPlan& plan = *repair().plan;
    const QString of = text(u"context"_s);
    const auto all = (ref.finishing ? plan.finish.batches : plan.batches).size();
    EXPECT_TRUE(figuresOf(of).contains(QString::number(ref.index + 1))) << of.toStdString();
    EXPECT_TRUE(figuresOf(of).contains(QString::number(all))) << of.toStdString();
    if (!ref.finishing) {
        const Lift& lift = plan.lifts.at(static_cast<std::size_t>(planned.lift));
        EXPECT_TRUE(of.contains(words().filler(lift.filler))) << of.toStdString();
        EXPECT_TRUE(of.contains(words().face(lift.face))) << of.toStdString();
    }
    expectOnly({of, text(u"mix_puddle"_s), pair, text(u"mix_gel"_s), text(u"mix_how"_s), words().mass(smallest),
                text(u"mix_bead"_s), text(u"mix_bead_caption"_s), beadMassText(sheetOf(ref).beadMass, words()),
                words().duration(forecast(ref, 0.75).times.gel), words().duration(forecast(ref, 1.25).times.gel)});
}

/// The phases (common practice, no source): kneading 45 s, edges at 0.75 of the gel, hands off from gel to sanding. All
/// count to the early end of what the sheet alone makes likely: nothing was told of the lot.
void PlanChecker::checkClock(BatchRef ref, bool spreading)
{
    const BatchTimes& times = repair().run(ref)->mixed.times;
    const BatchTimes expected = forecast(ref).times;
    EXPECT_NEAR(inSeconds(times.boardGel), inSeconds(expected.boardGel), 0.002);
    EXPECT_NEAR(inSeconds(times.gel), inSeconds(expected.gel), 0.002);
    EXPECT_NEAR(inSeconds(times.sand), inSeconds(expected.sand), 0.002);
    const HowSure& howSure = *repair().run(ref)->howSure(); // as stored, to the millisecond
    for (const auto& [stored, computed] :
         {std::pair{howSure.early, forecast(ref).howSure.early}, std::pair{howSure.late, forecast(ref).howSure.late}}) {
        EXPECT_NEAR(inSeconds(stored.gel), inSeconds(computed.gel), 0.002);
        EXPECT_NEAR(inSeconds(stored.sand), inSeconds(computed.sand), 0.002);
    }
    const BatchTimes& early = howSure.early;
    const Duration since = elapsed(repair().run(ref)->hardenerIn, m_bench.clock().now());
    const Duration edges = early.gel * 0.75;
    Duration to = early.sand;
    if (spreading)
        to = since < seconds(45) ? seconds(45) : since < edges ? edges : early.gel;
    else if (since >= howSure.late.sand)
        to = early.sand + early.easySanding;
    else if (since >= early.sand)
        to = howSure.late.sand;
    EXPECT_EQ(text(u"clock_figure"_s), words().duration(to - since));
    if (since < early.boardGel) {
        EXPECT_TRUE(text(u"clock_board"_s).endsWith(words().duration(early.boardGel - since)))
            << text(u"clock_board"_s).toStdString();
    }
    const auto of = [&](const BatchTimes& each) { return words().duration(spreading ? each.gel : each.sand); };
    const QString source = text(u"clock_source"_s);
    EXPECT_TRUE(source.contains(of(early)) && source.contains(of(howSure.late))) << source.toStdString();
    expectOnly({text(u"context"_s), words().duration(to - since), words().duration(early.boardGel - since), u"1"_s,
                of(early), of(howSure.late)});
}

void PlanChecker::checkStep(const std::vector<Step>& steps, int index)
{
    const Step& step = steps.at(static_cast<std::size_t>(index));
    const StepText expected = words().step(step);
    EXPECT_EQ(text(u"sentence"_s), expected.sentence);
    EXPECT_EQ(text(u"answer_way_on"_s), expected.wayOn);
    const QString detail = text(u"detail"_s);
    EXPECT_EQ(detail, expected.detail);
    for (const Argument& each : step.arguments)
        if (const auto* length = std::get_if<Length>(&each)) {
            const QString whole = text(u"sentence"_s) + detail;
            EXPECT_TRUE(whole.contains(words().fineLength(*length)) || whole.contains(words().length(*length)))
                << whole.toStdString();
        }
    for (std::size_t i = 0; i < step.cautions.size(); ++i)
        EXPECT_EQ(text(u"caution_%1"_s.arg(i)), words().caution(step.cautions[i]).lead);
    const auto* picture = m_bench.window().findChild<StepPicture*>(u"step_picture"_s);
    ASSERT_NE(picture, nullptr);
    EXPECT_EQ(picture->step(), step.code);
    EXPECT_TRUE(hasStepPicture(step.code)) << step.code.toStdString();
    const QStringList of = figuresOf(text(u"context"_s));
    EXPECT_TRUE(of.contains(QString::number(index + 1)) && of.contains(QString::number(steps.size())));
}

Reading PlanChecker::readingOf(const std::map<QString, QString>& figures) const
{
    const bool us = words().units() == UnitSystem::UsCustomary; // keyed in to a tenth of a degree Fahrenheit
    const auto temperature = [&](const QString& field) {
        const Temperature asked = celsius(figures.at(field).toDouble());
        return us ? fahrenheit(std::round(10 * inFahrenheit(asked)) / 10) : asked;
    };
    return {temperature(u"air_c"_s), temperature(u"panel_c"_s),
            Fraction::ofHundred(figures.at(u"humidity_percent"_s).toDouble())};
}

void PlanChecker::checkReading()
{
    const QString verdict = text(u"verdict"_s);
    if (figuresOf(verdict).isEmpty())
        return; // not all three keyed in yet
    const bool again = screen().startsWith(u"screen_prepare"_s);
    const AirVerdict air = judgeAir(readingOf(again ? m_job.readAgain : m_job.figures));
    EXPECT_TRUE(verdict.contains(words().temperature(air.dewPoint))) << verdict.toStdString();
    EXPECT_TRUE(verdict.contains(words().temperatureStep(air.margin))) << verdict.toStdString();
    ++m_checked[u"dew"_s];
}

void PlanChecker::checkHandOver()
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

void PlanChecker::check()
{
    const Repair* found = m_bench.repair(m_job.job);
    if (!found)
        return;
    if (found->plan)
        m_plan = found->plan;
    const NextStep next = nextStep(*found);
    const QString name = screen();
    ++m_checked[name];
    // The order is told by the glass, not by the plan.
    const auto follow = [&name](QStringList& codes, const QString& stage) {
        if (name.startsWith(stage) && (codes.isEmpty() || codes.last() != name.mid(stage.size())))
            codes << name.mid(stage.size());
    };
    follow(m_prepared, u"screen_prepare_"_s);
    follow(m_finished, u"screen_finish_"_s);
    if (name == u"screen_plan"_s)
        checkPlan();
    else if (name == u"screen_mix"_s)
        checkMix(*next.batch);
    else if (name == u"screen_spread"_s || name == u"screen_wait"_s)
        checkClock(*next.batch, name == u"screen_spread"_s);
    else if (name == u"screen_assess_reading"_s || name.startsWith(u"screen_prepare_read_panel"_s))
        checkReading();
    else if (next.station == Station::Prepare)
        checkStep(found->plan->prep, next.index);
    else if (next.station == Station::Finish)
        checkStep(found->plan->finishing, next.index);
    else if (name == u"screen_hand_over"_s)
        checkHandOver();
}

} // namespace strandbench::test
