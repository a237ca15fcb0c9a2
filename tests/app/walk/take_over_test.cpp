// SPDX-License-Identifier: GPL-3.0-or-later
// What an instrument says is taken over by one tap, only while it is steady and of now; the bead's calibration; the
// spreading rate of the person at the bench. Real taps, pseudo-terminals, a real log.
#include "instrument_bench.h"
#include "shown.h"

#include "repair/mixing.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class TakeOver : public ::testing::Test {
protected:
    void open(Settings settings = demoSettings())
    {
        ASSERT_TRUE(m_wires.scale.plugIn());
        ASSERT_TRUE(m_wires.climate.plugIn());
        settings = m_wires.connected(settings);
        if (m_bench)
            m_start = m_bench->clock().now();
        m_bench.reset();
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = m_start;
        spec.settings = settings;
        spec.ports = m_wires.ports();
        m_bench = std::make_unique<ScriptedBench>(spec);
        ASSERT_FALSE(m_bench->trouble().has_value());
    }
    static Settings withLot(const QString& lot)
    {
        Settings settings = demoSettings();
        settings.lots[hardenerKey] = {lot};
        return settings;
    }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control))
            << control.toStdString() << " on " << m_bench->window().screen()->objectName().toStdString();
    }
    void keyIn(const QString& figure, const QString& keys)
    {
        ASSERT_NO_FATAL_FAILURE(tap(figure + u"_figure"_s));
        for (const QChar key : keys)
            ASSERT_NO_FATAL_FAILURE(tap(key == u'.' ? u"key_point"_s : u"key_"_s + key));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
    void layBead(const QString& length, double grammes)
    {
        ASSERT_NO_FATAL_FAILURE(keyIn(u"bead_length_mm"_s, length));
        ASSERT_TRUE(m_wires.weigh(*m_bench, grammes));
        ASSERT_NO_FATAL_FAILURE(tap(u"take_bead"_s));
        ASSERT_NO_FATAL_FAILURE(tap(u"answer_way_on"_s));
    }
    void walkTo(const DemoJob& job, Station station)
    {
        Walk walk(*m_bench, job);
        ASSERT_TRUE(walk.walkTo(station)) << walk.why().toStdString();
    }
    [[nodiscard]] QAbstractButton* find(const QString& control) { return m_bench->thumb().find(control); }
    [[nodiscard]] QString text(const QString& name) { return shown(m_bench->window(), name); }
    [[nodiscard]] QString screen() { return m_bench->window().screen()->objectName(); }
    [[nodiscard]] std::vector<Event> events(const QUuid& subject) const
    {
        const auto log = RepairLog::open(m_folder.filePath(u"bench.sqlite"_s), LogMode::ReadOnly);
        const auto all = log ? (*log)->events(subject) : Logged<std::vector<Event>>{};
        return all ? *all : std::vector<Event>{};
    }
    template <class T> [[nodiscard]] std::optional<T> newest(const QUuid& subject) const
    {
        std::optional<T> found;
        for (const Event& each : events(subject))
            if (const auto* payload = std::get_if<T>(&each.payload))
                found = *payload;
        return found;
    }

    QTemporaryDir m_folder;
    InstrumentWires m_wires;
    Instant m_start = workingMorning();
    std::unique_ptr<ScriptedBench> m_bench;
};

/// Mixed by the bead, in large batches: a gouge along a roof cap.
DemoJob longGouge()
{
    DemoJob job = roofCap();
    job.job = u"4421"_s;
    job.person = u"Ada"_s;
    job.figures[u"length_mm"_s] = u"300"_s;
    job.figures[u"width_mm"_s] = u"100"_s;
    job.figures[u"depth_mm"_s] = u"4"_s;
    return job;
}

/// To the question of air, panel and humidity.
void walkToReading(ScriptedBench& bench, const DemoJob& job)
{
    Walk walk(bench, job);
    while (bench.window().screen()->objectName() != u"screen_assess_reading"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
}

TEST_F(TakeOver, AirAndHumidityComeByOneTapAndTheRecordSaysSo)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkToReading(*m_bench, skirtPanel()));
    ASSERT_TRUE(find(u"take_air"_s));
    EXPECT_FALSE(find(u"take_air"_s)->isEnabled()) << "nothing has come yet";
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0", 2));
    EXPECT_FALSE(find(u"take_air"_s)->isEnabled()) << "it does not stand yet";
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0"));
    tap(u"take_air"_s);
    EXPECT_EQ(text(u"air_c_figure"_s), u"21.5"_s) << "to half a degree";
    EXPECT_EQ(text(u"humidity_percent_figure"_s), u"48"_s);
    keyIn(u"panel_c"_s, u"20"_s);
    tap(u"answer_way_on"_s);
    const Repair* repair = m_bench->repair(u"4421"_s);
    ASSERT_TRUE(repair && repair->assessment.reading);
    EXPECT_NEAR(inKelvin(repair->assessment.reading->air), 273.15 + 21.4, 1e-6) << "as it was read, not as shown";
    const auto answered = newest<Answered>(repair->id);
    ASSERT_TRUE(answered);
    EXPECT_EQ(answered->question, Question::Reading);
    EXPECT_EQ(answered->by, EnteredBy::Instrument);
}

TEST_F(TakeOver, WhatIsSteppedAfterwardsIsNoInstruments)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkToReading(*m_bench, skirtPanel()));
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0"));
    tap(u"take_air"_s);
    tap(u"air_c_plus"_s);
    keyIn(u"panel_c"_s, u"20"_s);
    tap(u"answer_way_on"_s);
    const auto answered = newest<Answered>(m_bench->repair(u"4421"_s)->id);
    ASSERT_TRUE(answered);
    EXPECT_FALSE(answered->by);
}

TEST_F(TakeOver, ASteadyReadingThatHasGrownOldIsNotTaken)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkToReading(*m_bench, skirtPanel()));
    ASSERT_TRUE(m_wires.read(*m_bench, "21.4 48.0"));
    QAbstractButton* key = find(u"take_air"_s);
    ASSERT_TRUE(key && key->isEnabled());
    m_bench->clock().advance(seconds(10)); // the glass has not been painted anew
    key->click();
    EXPECT_EQ(text(u"humidity_percent_figure"_s), u"–"_s);
    m_bench->window().tick();
    EXPECT_FALSE(find(u"take_air"_s)->isEnabled());
}

TEST_F(TakeOver, WithoutInstrumentsNothingAsksForThem)
{
    ScriptedBench::Spec spec;
    spec.log = m_folder.filePath(u"bench.sqlite"_s);
    spec.start = m_start;
    spec.settings = demoSettings();
    m_bench = std::make_unique<ScriptedBench>(spec);
    ASSERT_NO_FATAL_FAILURE(walkToReading(*m_bench, skirtPanel()));
    EXPECT_FALSE(find(u"take_air"_s));
}

TEST_F(TakeOver, AMixIsRecordedAsItWasWeighed)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkTo(skirtPanel(), Station::Mix));
    const double planned = inGrams(m_bench->repair(u"4421"_s)->plan->batches.front().mix.filler);
    const double filler = std::round(planned * 1.1);
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler, 2));
    EXPECT_EQ(text(u"weigh_mix"_s), QString::number(filler, 'f', 2) + u"\u00a0g"_s) << "live, while it moves";
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler));
    tap(u"weigh_mix"_s);
    EXPECT_EQ(screen(), u"screen_weigh"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler * 0.02));
    tap(u"take_hardener"_s);
    tap(u"answer_way_on"_s);
    const auto mixed = newest<HardenerIn>(m_bench->repair(u"4421"_s)->id);
    ASSERT_TRUE(mixed);
    EXPECT_NEAR(inGrams(mixed->filler), filler, 1e-3);
    EXPECT_NEAR(inGrams(mixed->hardener), filler * 0.02, 0.006) << "the scale shows hundredths";
    EXPECT_EQ(mixed->by, EnteredBy::Instrument);
}

TEST_F(TakeOver, AScaleThatMovesGivesNoFiller)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkTo(skirtPanel(), Station::Mix));
    const double planned = inGrams(m_bench->repair(u"4421"_s)->plan->batches.front().mix.filler);
    for (int i = 0; i < 6; ++i)
        ASSERT_TRUE(m_wires.weigh(*m_bench, planned + i, 1));
    tap(u"weigh_mix"_s);
    EXPECT_EQ(screen(), u"screen_weigh"_s);
    EXPECT_EQ(text(u"filler_g_figure"_s), u"–"_s);
    EXPECT_FALSE(find(u"take_filler"_s)->isEnabled());
}

TEST_F(TakeOver, WeighedByHandIsTypedAndOutsideTheBandRefused)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkTo(skirtPanel(), Station::Mix));
    tap(u"weigh_mix"_s);
    const Mix& mix = m_bench->repair(u"4421"_s)->plan->batches.front().mix;
    const double filler = std::round(inGrams(mix.filler));
    keyIn(u"filler_g"_s, QString::number(filler));
    keyIn(u"hardener_g"_s, QString::number(filler * 0.035, 'f', 2)); // 3.5 %: beyond (common practice, no source)
    EXPECT_FALSE(find(u"answer_way_on"_s)->isEnabled());
    keyIn(u"hardener_g"_s, QString::number(filler * 0.022, 'f', 2));
    tap(u"answer_way_on"_s);
    const auto mixed = newest<HardenerIn>(m_bench->repair(u"4421"_s)->id);
    ASSERT_TRUE(mixed);
    EXPECT_EQ(mixed->by, EnteredBy::Typed);
    EXPECT_NEAR(inGrams(mixed->filler), filler, 1e-3);
}

TEST_F(TakeOver, AnUntaredScaleGivesNoHardener)
{
    ASSERT_NO_FATAL_FAILURE(open());
    ASSERT_NO_FATAL_FAILURE(walkTo(skirtPanel(), Station::Mix));
    tap(u"weigh_mix"_s);
    const double filler = inGrams(m_bench->repair(u"4421"_s)->plan->batches.front().mix.filler);
    ASSERT_TRUE(m_wires.weigh(*m_bench, filler * 1.02));
    EXPECT_FALSE(find(u"take_hardener"_s)->isEnabled()) << "far beyond four times what is planned";
    EXPECT_TRUE(find(u"take_filler"_s)->isEnabled());
}

TEST_F(TakeOver, ThreeBeadsCalibrateTheTubeAndTheMixGoesByIt)
{
    ASSERT_NO_FATAL_FAILURE(open(withLot(u"H7"_s)));
    ASSERT_NO_FATAL_FAILURE(walkTo(longGouge(), Station::Mix));
    EXPECT_EQ(text(u"mix_bead_by"_s), u"Bead by the sheet: 23.0\u00a0mg/mm"_s);
    const Mix planned = m_bench->repair(u"4421"_s)->plan->batches.front().mix;
    m_bench->window().showHome();
    m_bench->thumb().settle();
    tap(u"set_up"_s);
    for (int i = 0; i < 6; ++i)
        tap(u"answer_way_on"_s);
    tap(u"calibrate_bead"_s);
    ASSERT_NO_FATAL_FAILURE(layBead(u"100"_s, 2.50));
    ASSERT_NO_FATAL_FAILURE(layBead(u"100"_s, 2.40));
    tap(u"answer_back"_s); // what was laid stays
    tap(u"calibrate_bead"_s);
    EXPECT_EQ(screen(), u"screen_bead_trial"_s);
    EXPECT_FALSE(find(u"answer_way_on"_s)->isEnabled()) << "two are too few";
    tap(u"another_bead"_s);
    ASSERT_NO_FATAL_FAILURE(layBead(u"100"_s, 2.60));
    EXPECT_EQ(text(u"bead_mean"_s), u"25.0\u00a0mg/mm"_s);
    tap(u"answer_way_on"_s);
    const auto bead = newest<BeadCalibrated>(benchSubject());
    ASSERT_TRUE(bead);
    EXPECT_EQ(bead->hardenerLot, u"H7"_s);
    EXPECT_EQ(bead->beads.size(), 3U);
    EXPECT_NEAR(inMilligramsPerMillimetre(bead->mean), 25, 1e-3);

    m_bench->window().showRepair(m_bench->repair(u"4421"_s)->id);
    m_bench->thumb().settle();
    EXPECT_TRUE(text(u"mix_bead_by"_s).startsWith(u"Bead by the calibration of"_s))
        << qPrintable(text(u"mix_bead_by"_s));
    EXPECT_TRUE(text(u"mix_bead_by"_s).endsWith(u"25.0\u00a0mg/mm"_s));
    const BatchInHand batch = batchInHand(*m_bench->repair(u"4421"_s)->plan, {}, {}, m_bench->bench().planning());
    EXPECT_EQ(batch.batch.mix.hardener, planned.hardener);
    EXPECT_NEAR(inMillimetres(batch.batch.mix.bead), inMillimetres(planned.bead) * 23 / 25, 0.1);
    EXPECT_EQ(text(u"mix_bead"_s), Words(UnitSystem::Metric, QLocale(u"en"_s)).length(batch.batch.mix.bead));

    ASSERT_NO_FATAL_FAILURE(open(withLot(u"H7"_s))); // it is in the log
    EXPECT_TRUE(m_bench->bench().bead());
    ASSERT_NO_FATAL_FAILURE(open(withLot(u"H8"_s))); // another tube
    m_bench->window().showRepair(m_bench->repair(u"4421"_s)->id);
    m_bench->thumb().settle();
    EXPECT_EQ(text(u"mix_bead_by"_s), u"Bead by the sheet, not calibrated for this lot: 23.0\u00a0mg/mm"_s);
}

TEST_F(TakeOver, BeadsThatScatterAreRefusedWithTheReason)
{
    ASSERT_NO_FATAL_FAILURE(open(withLot(u"H7"_s)));
    tap(u"set_up"_s);
    for (int i = 0; i < 6; ++i)
        tap(u"answer_way_on"_s);
    tap(u"calibrate_bead"_s);
    for (const double grammes : {2.0, 2.5, 3.0})
        ASSERT_NO_FATAL_FAILURE(layBead(u"100"_s, grammes));
    EXPECT_TRUE(text(u"bead_verdict"_s).contains(u"scatter by 20 %"_s) ||
                text(u"bead_verdict"_s).contains(u"scatter by 20\u00a0%"_s))
        << qPrintable(text(u"bead_verdict"_s));
    EXPECT_FALSE(find(u"answer_way_on"_s)->isEnabled());
    ASSERT_TRUE(m_bench->thumb().hold(u"beads_anew"_s));
    EXPECT_EQ(screen(), u"screen_lay_bead"_s);
    EXPECT_TRUE(events(benchSubject()).empty());
}

TEST_F(TakeOver, WithoutALotThereIsNoTubeToCalibrate)
{
    ASSERT_NO_FATAL_FAILURE(open());
    tap(u"set_up"_s);
    for (int i = 0; i < 6; ++i)
        tap(u"answer_way_on"_s);
    tap(u"calibrate_bead"_s);
    EXPECT_EQ(screen(), u"screen_bead_trial"_s);
    EXPECT_FALSE(text(u"bead_no_lot"_s).isEmpty());
}

/// What was told at the bench is offered where the rate is set up, for the person who is there, and kept by two taps.
TEST_F(TakeOver, TheOwnSpreadingRateIsOfferedAndKept)
{
    ASSERT_NO_FATAL_FAILURE(open());
    const auto toRate = [this] {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        tap(u"set_up"_s);
        for (int i = 0; i < 4; ++i)
            tap(u"answer_way_on"_s);
        for (int i = 0; i < 20 && !find(u"assumption_spreading_g_per_min"_s); ++i)
            tap(u"page_after"_s);
        tap(u"assumption_spreading_g_per_min"_s);
    };
    ASSERT_NO_FATAL_FAILURE(toRate());
    EXPECT_FALSE(find(u"take_learnt"_s)) << "nothing was mixed yet";
    SpreadBook book;
    for (int round = 0; round < 8 && !book.of(demoSettings().person, seconds(45)); ++round) {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        DemoJob job = longGouge();
        job.job = QString::number(5000 + round);
        Walk walk(*m_bench, job);
        ASSERT_TRUE(walk.walkTo(Station::HandOver)) << walk.why().toStdString();
        book = SpreadBook();
        for (const Repair* each : m_bench->bench().openRepairs())
            for (const Event& event : events(each->id))
                book.add(event);
    }
    const auto learnt = book.of(demoSettings().person, seconds(45));
    ASSERT_TRUE(learnt) << "the walks mix enough batches";
    EXPECT_EQ(m_bench->bench().spreadOf(demoSettings().person), learnt) << "the bench counts as the log does";
    ASSERT_NO_FATAL_FAILURE(toRate());
    tap(u"take_learnt"_s);
    if (find(u"answer_way_on"_s)->isEnabled()) // not when it is the default by chance
        tap(u"answer_way_on"_s);
    EXPECT_NEAR(inGramsPerMinute(m_bench->bench().assumptions().spreading), inGramsPerMinute(learnt->rate), 0.51)
        << "as finely as it is shown";
    ASSERT_NO_FATAL_FAILURE(open()); // after a restart the log tells the same
    EXPECT_EQ(m_bench->bench().spreadOf(demoSettings().person), learnt);
}

} // namespace
} // namespace strandbench::test
