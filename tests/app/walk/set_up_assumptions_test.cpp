// SPDX-License-Identifier: GPL-3.0-or-later
// Assumptions changed on the glass: what is planned next goes by them, what runs does not.
#include "bench_fixture.h"
#include "shown.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "words/assumption_words.h"

#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class SetUpAssumptions : public BenchTest {
protected:
    void openRow(const QString& code)
    {
        window().showHome();
        bench().thumb().settle();
        for (const QString& each :
             {u"set_up"_s, u"answer_way_on"_s, u"answer_way_on"_s, u"answer_way_on"_s, u"answer_way_on"_s})
            tap(each);
        for (int i = 0; i < 20 && !bench().thumb().find(u"assumption_"_s + code); ++i)
            tap(u"page_after"_s);
        tap(u"assumption_"_s + code);
        ASSERT_EQ(screen(), u"screen_set_up_assumption"_s);
    }
    void keyIn(const QString& figure)
    {
        tap(u"assumption_figure"_s);
        for (const QChar each : figure)
            tap(each == u'.' ? u"key_point"_s : u"key_"_s + each);
        tap(u"answer_way_on"_s);
    }
    void keep(const QString& figure)
    {
        keyIn(figure);
        tap(u"answer_way_on"_s);
        ASSERT_EQ(screen(), u"screen_set_up_assumptions"_s);
    }
    [[nodiscard]] QString row(const QString& code) { return shown(window(), u"assumption_"_s + code); }
    [[nodiscard]] bool marked(const QString& code) { return row(code).contains(u", was "_s); }
    void write(const QByteArray& json)
    {
        QFile file(folder() + u"/assumptions.json"_s);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(json);
    }
};

TEST_F(SetUpAssumptions, TheNextPlanIsWhatCorePlansWithIt)
{
    open();
    walkTo(skirtPanel(), Station::Decide);
    const Assessment assessment = bench().repair(u"4421"_s)->assessment;
    const auto planWith = [&](const Assumptions& assumptions) {
        const CureEngine engine(assumptions);
        return planRepair(assessment, {builtInTable(), demoCatalogue(), builtInSteps(), assumptions, engine});
    };
    const RepairPlan usual = bench().bench().plan(assessment);
    EXPECT_EQ(usual, planWith({}));
    openRow(u"proud_mm"_s);
    keep(u"2.5"_s);
    openRow(u"face_front_w_per_m2_k"_s); // and one that the engine alone goes by
    keep(u"30"_s);
    Assumptions wanted;
    wanted.proud = millimetres(2.5);
    wanted.faceFront = wattsPerSquareMetreKelvin(30);
    const RepairPlan next = bench().bench().plan(assessment);
    EXPECT_EQ(next, planWith(wanted));
    EXPECT_GT(next.fillerTotal, usual.fillerTotal);
    // What is forecast at the mix goes by them too.
    openRow(u"filler_over_air_k"_s);
    keep(u"5"_s);
    EXPECT_NEAR(inCelsius(bench().bench().planning().engine.fillerStart(celsius(20))), 25, 1e-9);
    openRow(u"filler_over_air_k"_s);
    tap(u"back_to_default"_s);
    tap(u"answer_way_on"_s);
    // The plan screen shows it, and it holds after a restart.
    open();
    EXPECT_EQ(bench().bench().plan(assessment), next);
    window().showRepair(bench().repair(u"4421"_s)->id);
    bench().thumb().settle();
    ASSERT_EQ(screen(), u"screen_plan"_s);
    EXPECT_TRUE(
        allShown(window()).join(u' ').contains(Words(UnitSystem::Metric, QLocale(u"en"_s)).mass(next.fillerTotal)));
}

TEST_F(SetUpAssumptions, IsShownMarkedKeptAndPutBack)
{
    open();
    openRow(u"kneading_s"_s);
    EXPECT_TRUE(shown(window(), u"assumption_range"_s).contains(u"10 to 180"_s));
    EXPECT_TRUE(shown(window(), u"assumption_range"_s).contains(u"Ours: no source"_s));
    EXPECT_FALSE(bench().thumb().find(u"back_to_default"_s)->isEnabled());
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled()); // nothing to keep
    keep(u"60"_s);
    EXPECT_EQ(row(u"kneading_s"_s), u"60\u00a0s, was 45\u00a0s"_s);
    EXPECT_TRUE(marked(u"kneading_s"_s));
    EXPECT_FALSE(marked(u"lay_puddle_s"_s));
    open();
    openRow(u"kneading_s"_s);
    EXPECT_EQ(shown(window(), u"assumption_figure"_s), u"60\u00a0s"_s);
    tap(u"back_to_default"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(row(u"kneading_s"_s), u"45\u00a0s"_s);
    EXPECT_FALSE(marked(u"kneading_s"_s));
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(45));
    open();
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(45));
}

TEST_F(SetUpAssumptions, BeyondTheRangeIsRefusedAndTheRangeNamed)
{
    open();
    openRow(u"kneading_s"_s);
    keyIn(u"500"_s);
    const QString said = window().screen()->troubleShown();
    EXPECT_TRUE(said.contains(u"Kneading"_s) && said.contains(u"500"_s) && said.contains(u"10 to 180 s"_s))
        << said.toStdString();
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(45));
    tap(u"answer_back"_s); // the key pad
    tap(u"answer_back"_s); // and the row
    EXPECT_EQ(screen(), u"screen_set_up_assumptions"_s);
}

TEST_F(SetUpAssumptions, WhatContradictsAnotherIsRefusedByName)
{
    open();
    openRow(u"dent_deepest_mm"_s);
    keyIn(u"2"_s);
    tap(u"answer_way_on"_s);
    const QString said = window().screen()->troubleShown();
    EXPECT_TRUE(said.contains(AssumptionWords::name(u"dent_aim_mm"_s)) &&
                said.contains(AssumptionWords::name(u"dent_deepest_mm"_s)))
        << said.toStdString();
    EXPECT_EQ(bench().bench().assumptions().decision.dentDeepest, millimetres(6));
}

TEST_F(SetUpAssumptions, LargeKeysGoByRoundStepsToTheEndsInBothUnits)
{
    for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::UsCustomary}) {
        Settings settings = demoSettings();
        settings.units = units;
        open(settings);
        openRow(u"proud_mm"_s);
        for (int i = 0; i < 60; ++i)
            tap(u"assumption_plus"_s);
        const bool us = units == UnitSystem::UsCustomary;
        EXPECT_EQ(shown(window(), u"assumption_figure"_s), us ? u"0.118\u00a0in"_s : u"3\u00a0mm"_s);
        tap(u"assumption_minus"_s);
        EXPECT_EQ(shown(window(), u"assumption_figure"_s), us ? u"0.115\u00a0in"_s : u"2.9\u00a0mm"_s);
        for (int i = 0; i < 60; ++i)
            tap(u"assumption_minus"_s);
        EXPECT_EQ(shown(window(), u"assumption_figure"_s), us ? u"0\u00a0in"_s : u"0\u00a0mm"_s);
        keyIn(us ? u"0.118"_s : u"3"_s); // the end as it is shown is within
        EXPECT_EQ(window().screen()->troubleShown(), QString());
        tap(u"answer_way_on"_s);
        EXPECT_EQ(bench().bench().assumptions().proud, millimetres(3));
        openRow(u"proud_mm"_s);
        tap(u"back_to_default"_s);
        tap(u"answer_way_on"_s);
    }
}

TEST_F(SetUpAssumptions, ARunningBatchKeepsItsTimesAlsoOverARestart)
{
    open();
    walkTo(skirtPanel(), Station::Spread);
    bench().clock().advance(seconds(30));
    const auto running = [this] { return bench().bench().runningMixes().front(); };
    const RunningMix before = running();
    EXPECT_EQ(before.face.phase, Phase::Knead);
    EXPECT_NEAR(inSeconds(before.face.toNextPhase), 45 - inSeconds(before.face.sinceHardener), 0.01);
    openRow(u"kneading_s"_s);
    keep(u"120"_s);
    openRow(u"edges_at_gel_percent"_s);
    keep(u"50"_s);
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(120));
    EXPECT_EQ(running().face, before.face);
    open();
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(120));
    EXPECT_EQ(running().face.toNextPhase, before.face.toNextPhase);
    // The plan that was accepted is as it was, and a batch that begins now goes by the new figures.
    BatchRun later = running().run;
    later.hardenerIn = bench().clock().now();
    EXPECT_EQ(bench().bench().assumptionsOf(later).kneading, seconds(120));
}

TEST_F(SetUpAssumptions, ABadFileIsNamedAndNotLost)
{
    const QByteArray given = R"({"format": 1, "changed": {"kneading_s": 900, "proud_mm": 2}})";
    write(given);
    open();
    ASSERT_EQ(bench().assumptionFaults().size(), 1U);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_EQ(AssumptionWords(words).fault(bench().assumptionFaults().front()),
              AssumptionWords::name(u"kneading_s"_s) + u": 900 is out of range; allowed is 10 to 180 s"_s);
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(45));
    EXPECT_EQ(bench().bench().assumptions().proud, millimetres(2));
    openRow(u"board_mm"_s);
    keep(u"300"_s);
    QFile refused(folder() + u"/assumptions.json.refused"_s);
    ASSERT_TRUE(refused.open(QIODevice::ReadOnly));
    EXPECT_EQ(refused.readAll(), given);
    open();
    EXPECT_TRUE(bench().assumptionFaults().empty());
    EXPECT_EQ(bench().bench().assumptions().proud, millimetres(2));
    EXPECT_EQ(bench().bench().assumptions().board, millimetres(300));
}

TEST_F(SetUpAssumptions, EveryRowIsReachedAndNamed)
{
    open();
    openRow(u"kneading_s"_s);
    tap(u"answer_back"_s);
    QSet<QString> seen;
    for (int page = 0; page < 20; ++page) {
        for (const AssumptionEntry& each : assumptionTable())
            if (const QAbstractButton* row = bench().thumb().find(u"assumption_"_s + each.code)) {
                seen.insert(each.code);
                EXPECT_FALSE(row->accessibleName().contains(u'[')) << row->accessibleName().toStdString();
                EXPECT_TRUE(row->accessibleDescription().contains(each.published ? u"published"_s : u"ours"_s));
            }
        tap(u"page_after"_s);
    }
    EXPECT_EQ(seen.size(), static_cast<qsizetype>(assumptionTable().size()));
}

TEST_F(SetUpAssumptions, AFullDiskIsSaid)
{
    open();
    QDir().mkdir(folder() + u"/assumptions.json"_s); // nothing can be written there
    openRow(u"kneading_s"_s);
    keep(u"60"_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"could not be saved"_s));
    EXPECT_EQ(bench().bench().assumptions().kneading, seconds(60)); // it holds until the end
}

} // namespace
} // namespace strandbench::test
