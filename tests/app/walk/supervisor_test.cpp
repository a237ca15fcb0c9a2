// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's acts through the glass: each asks for the PIN, and what is refused is in the log.
#include "bench_fixture.h"
#include "shown.h"

#include "repair/lot_book.h"
#include "walk/every_job.h"

#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString right = u"271828"_s;
const QString wrong = u"314159"_s;

class Supervisor : public BenchTest {
protected:
    void keyIn(const QString& pin)
    {
        for (const QChar digit : pin)
            tap(u"key_"_s + digit);
    }
    void givePin(const QString& pin)
    {
        ASSERT_EQ(screen(), u"screen_pin"_s);
        keyIn(pin);
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
    }
    [[nodiscard]] std::vector<Event> ofBench()
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        return opened ? *(*opened)->events(benchSubject()) : std::vector<Event>{};
    }
    /// What was refused, in the order of the log.
    [[nodiscard]] std::vector<ActRefused> refused()
    {
        std::vector<ActRefused> all;
        for (const Event& each : ofBench())
            if (const auto* one = std::get_if<ActRefused>(&each.payload))
                all.push_back(*one);
        return all;
    }
    [[nodiscard]] QString trouble() { return window().screen()->troubleShown(); }
    void toRecordOfADoneRepair()
    {
        open();
        ASSERT_TRUE(bench().door().set(right).empty());
        Walk walk(bench(), skirtPanel());
        ASSERT_TRUE(walk.walkTo(Station::Done)) << walk.why().toStdString();
        window().showHome();
        bench().thumb().settle();
        tap(u"today"_s);
        waitFor(u"today_row_0"_s);
        tap(u"today_row_0"_s);
        ASSERT_EQ(screen(), u"screen_record"_s);
    }
};

TEST_F(Supervisor, SetsAPinAndChangesIt)
{
    open();
    tap(u"set_up"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_set_up_people"_s);
    tap(u"supervisor_pin"_s);
    ASSERT_EQ(screen(), u"screen_pin_new"_s) << "there is no old one to ask for";
    keyIn(right);
    EXPECT_FALSE(shown(window(), u"pin_dots"_s).contains(right));
    EXPECT_EQ(shown(window(), u"pin_dots"_s), QString(6, u'•'));
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pin_again"_s);
    keyIn(wrong);
    tap(u"answer_way_on"_s);
    EXPECT_FALSE(trouble().isEmpty()) << "the two are not the same";
    EXPECT_FALSE(bench().door().isSet());
    keyIn(right);
    tap(u"answer_way_on"_s);
    bench().thumb().settle();
    EXPECT_EQ(screen(), u"screen_set_up_people"_s);
    EXPECT_TRUE(bench().door().open(right));
    ASSERT_EQ(ofBench().size(), 1U);
    EXPECT_EQ(std::get<PinSet>(ofBench().front().payload), PinSet{false});

    tap(u"supervisor_pin"_s);
    ASSERT_EQ(screen(), u"screen_pin_old"_s);
    for (const QString& each : {wrong, wrong, wrong}) { // the old one is wrong
        keyIn(each);
        tap(u"answer_way_on"_s);
    }
    ASSERT_EQ(screen(), u"screen_pin_again"_s);
    bench().thumb().settle();
    EXPECT_EQ(refused(), std::vector({ActRefused{SupervisorAct::ChangePin, ActRefusal::WrongPin}}));
    EXPECT_TRUE(bench().door().open(right)) << "it holds";
}

TEST_F(Supervisor, APinThatIsEasyIsNotTaken)
{
    open();
    tap(u"set_up"_s);
    tap(u"answer_way_on"_s);
    tap(u"supervisor_pin"_s);
    for (int i = 0; i < 2; ++i) {
        keyIn(u"123456"_s);
        tap(u"answer_way_on"_s);
    }
    bench().thumb().settle();
    EXPECT_FALSE(trouble().isEmpty());
    EXPECT_FALSE(bench().door().isSet());
}

TEST_F(Supervisor, SignsOffWithThePinAlone)
{
    toRecordOfADoneRepair();
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    tap(u"sign_off"_s);
    keyIn(right.left(5));
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s)) << "no PIN is so short";
    tap(u"key_clear"_s);
    givePin(wrong);
    EXPECT_EQ(screen(), u"screen_pin"_s);
    EXPECT_FALSE(trouble().isEmpty());
    EXPECT_EQ(refused(), std::vector({ActRefused{SupervisorAct::SignOff, ActRefusal::WrongPin}}));
    givePin(right);
    EXPECT_EQ(screen(), u"screen_record"_s);
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    EXPECT_FALSE(waitText(u"signed_off"_s).isEmpty());
    EXPECT_EQ(bench().thumb().find(u"sign_off"_s), nullptr);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    waitFor(u"today_row_0"_s);
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"signed off"_s));
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Supervisor, PutsAnEntryRightAndTheEntryStays)
{
    toRecordOfADoneRepair();
    const QString first = waitText(u"event_0_text"_s);
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    tap(u"sign_off"_s);
    givePin(right);
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"correct_event"_s);
    tap(u"correct_event"_s);
    ASSERT_EQ(screen(), u"screen_correct_which"_s);
    waitFor(u"correct_0"_s);
    tap(u"correct_0"_s);
    ASSERT_EQ(screen(), u"screen_correct_text"_s);
    for (const int key : {0, 1, 2})
        tap(u"letter_%1"_s.arg(key));
    tap(u"answer_way_on"_s);
    givePin(right);
    ASSERT_EQ(screen(), u"screen_record"_s);
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    ASSERT_TRUE(opened);
    const QUuid repair = (*opened)->repairsOfDay(localDay(bench().clock().now()))->front().repair;
    const auto events = (*opened)->events(repair);
    const auto& correction = std::get<Corrected>(events->back().payload);
    EXPECT_EQ(correction.seq, events->front().seq);
    EXPECT_EQ(correction.text.toLower(), u"abc"_s);
    EXPECT_EQ(waitText(u"event_0_text"_s), first);
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Supervisor, WaitsAfterWrongPinsEvenOverARestart)
{
    toRecordOfADoneRepair();
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    tap(u"sign_off"_s);
    for (int i = 0; i < 3; ++i)
        givePin(wrong);
    keyIn(right);
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s)) << "it waits";
    EXPECT_TRUE(trouble().contains(u"0:30"_s) || trouble().contains(u"00:30"_s)) << trouble().toStdString();
    open();
    tap(u"today"_s);
    waitFor(u"today_row_0"_s);
    tap(u"today_row_0"_s);
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    tap(u"sign_off"_s);
    keyIn(right);
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s));
    bench().clock().advance(seconds(30));
    window().tick();
    tap(u"answer_way_on"_s);
    bench().thumb().settle();
    EXPECT_EQ(screen(), u"screen_record"_s);
    EXPECT_EQ(refused().size(), 3U);
}

TEST_F(Supervisor, WithoutAPinOnTheBenchNothingIsSignedOff)
{
    toRecordOfADoneRepair();
    ASSERT_TRUE(QFile::remove(pinPathOf(log())));
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    tap(u"sign_off"_s);
    EXPECT_FALSE(trouble().isEmpty());
    givePin(right);
    EXPECT_EQ(screen(), u"screen_pin"_s);
    EXPECT_EQ(refused(), std::vector({ActRefused{SupervisorAct::SignOff, ActRefusal::NotSet}}));
}

TEST_F(Supervisor, EveryActThatComesRoundThePinIsRefusedAndWritten)
{
    open();
    ASSERT_TRUE(bench().door().set(right).empty());
    walkTo(skirtPanel(), Station::Prepare);
    const QUuid repair = bench().repair(u"4421"_s)->id;
    const LotOfProduct lot{u"demo_mixed"_s, u"H1"_s};
    const std::vector<std::pair<QUuid, Payload>> acts{
        {repair, SignedOff{}},
        {repair, Returned{u"soft"_s}},
        {repair, Overridden{{u"moisture_damp"_s}, u"maker_allows"_s}},
        {repair, Corrected{1, u"text"_s}},
        {lotSubject(lot), LotForgotten{lot.sheetId, lot.hardenerLot, u"told_wrong"_s}},
        {benchSubject(), PinSet{}}};
    std::vector<ActRefused> expected;
    for (const auto& [subject, payload] : acts) {
        std::optional<LogFailure> failure;
        bench().bench().submit(subject, u"R. Quist"_s, payload,
                               [&](const std::optional<LogFailure>& said) { failure = said; });
        ASSERT_TRUE(QTest::qWaitFor([&] { return failure.has_value(); }));
        EXPECT_EQ(failure->trouble, LogTrouble::NeedsPin);
        expected.push_back({*supervisorActOf(payload), ActRefusal::NoPin});
        std::optional<PinRefused> shut;
        bench().bench().submitAsSupervisor(
            subject, u"R. Quist"_s, payload, {},
            [&](const std::optional<PinRefused>& said, const std::optional<LogFailure>&) { shut = said; });
        ASSERT_TRUE(QTest::qWaitFor([&] { return shut.has_value(); }));
        EXPECT_EQ(shut->why, ActRefusal::NoPin);
        expected.push_back({*supervisorActOf(payload), ActRefusal::NoPin});
    }
    EXPECT_EQ(refused(), expected);
    EXPECT_EQ(ofBench().size(), expected.size());
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    const auto ofRepair = (*opened)->events(repair);
    ASSERT_TRUE(ofRepair);
    for (const Event& each : *ofRepair)
        EXPECT_FALSE(supervisorActOf(each.payload)) << kindOf(each.payload).toStdString();
}

TEST_F(Supervisor, OverridesAStopWithAReasonAndThePlanSaysSo)
{
    open();
    ASSERT_TRUE(bench().door().set(right).empty());
    DemoJob job = skirtPanel();
    job.answers[u"moisture"_s] = u"damp"_s;
    walkTo(job, Station::Decide);
    ASSERT_EQ(screen(), u"screen_refusal"_s);
    tap(u"override_stop"_s);
    EXPECT_EQ(screen(), u"screen_refusal"_s) << "a brush of the sleeve does nothing";
    ASSERT_TRUE(bench().thumb().hold(u"override_stop"_s));
    ASSERT_EQ(screen(), u"screen_override"_s);
    tap(u"override_proved_otherwise"_s);
    givePin(right);
    EXPECT_EQ(screen(), u"screen_plan"_s);
    const Repair* repair = bench().repair(u"4421"_s);
    EXPECT_EQ(repair->assessment.overridden, std::vector{u"moisture_damp"_s});
    tap(u"answer_way_on"_s);
    ASSERT_TRUE(repair->plan);
    EXPECT_TRUE(
        std::ranges::any_of(repair->plan->reasons, [](const Reason& each) { return each.code == u"overridden"_s; }));
    EXPECT_EQ(nextStep(*repair).station, Station::Prepare);
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    waitFor(u"today_row_0"_s);
    tap(u"today_row_0"_s);
    EXPECT_FALSE(waitText(u"deviation_0_text"_s).isEmpty());
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"overridden"_s, Qt::CaseInsensitive)) << "it is a deviation";
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Supervisor, WhatIsNobodysToOverrideHasNoKeyForIt)
{
    for (const QString& zone : {u"structural"_s, u"restraint"_s, u"fuel_or_pressure"_s}) {
        open();
        DemoJob job = skirtPanel();
        job.job = u"9"_s + QString::number(zone.size());
        job.answers[u"zone"_s] = zone;
        job.answers[u"moisture"_s] = u"damp"_s; // which alone might be overridden
        walkTo(job, Station::Decide);
        ASSERT_EQ(screen(), u"screen_refusal"_s) << zone.toStdString();
        EXPECT_EQ(bench().thumb().find(u"override_stop"_s), nullptr) << zone.toStdString();
    }
}

TEST_F(Supervisor, ForgetsALotWithThePin)
{
    Settings settings = demoSettings();
    settings.lots[u"hardener"_s] = {u"H1"_s};
    open(settings);
    ASSERT_TRUE(bench().door().set(right).empty());
    walkTo(skirtPanel(), Station::Spread);
    const BatchRun run = bench().repair(u"4421"_s)->runs.front();
    bench().clock().advance(run.times().gel - elapsed(run.hardenerIn, bench().clock().now()));
    window().tick();
    tap(u"it_has_gelled"_s);
    tap(u"gelled_panel"_s);
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    tap(u"answer_way_on"_s);
    waitFor(u"lot_row_0"_s);
    tap(u"lot_row_0"_s);
    ASSERT_EQ(screen(), u"screen_lot_page"_s);
    ASSERT_TRUE(bench().thumb().hold(u"forget_lot"_s));
    tap(u"forget_told_wrong"_s);
    givePin(wrong);
    EXPECT_EQ(refused(), std::vector({ActRefused{SupervisorAct::Forget, ActRefusal::WrongPin}}));
    givePin(right);
    EXPECT_EQ(screen(), u"screen_lot_page"_s);
    EXPECT_EQ(bench().thumb().find(u"forget_lot"_s), nullptr) << "nothing is left to forget";
}

} // namespace
} // namespace strandbench::test
