// SPDX-License-Identifier: GPL-3.0-or-later
// What is tapped of batches and test pats becomes what is believed of their lots.
#include "repair/lot_book.h"

#include "repair_script.h"

#include "learning/product.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const LotOfProduct lot{u"demo_mixed"_s, u"H7"_s};
const BatchRef first{};

ProductSheet mixedSheet()
{
    ProductSheet sheet;
    sheet.id = lot.sheetId;
    sheet.working.nominal = minutes(5);
    sheet.working.early = minutes(4);
    sheet.working.late = minutes(6);
    return sheet;
}

/// A bench whose repairs are written out event by event.
class Told {
public:
    QUuid repair(const QString& job = u"4421"_s)
    {
        const QUuid id = QUuid::createUuid();
        put(id, 0, TakenIn{job, u"door"_s});
        return id;
    }
    void put(const QUuid& subject, int second, const Payload& payload)
    {
        Event event;
        event.repair = subject;
        event.payload = payload;
        event.person = u"Ana"_s;
        event.at = test::moment(second);
        m_events.push_back(event);
        book.add(event);
    }
    void ofLot(int second, const Payload& payload) { put(lotSubject(lot), second, payload); }
    void mix(const QUuid& repair, int second, const QString& hardenerLot = u"H7"_s,
             const QString& sheet = u"demo_mixed"_s, BatchRef batch = {})
    {
        HardenerIn mixed;
        mixed.batch = batch;
        mixed.sheetId = sheet;
        mixed.hardenerLot = hardenerLot;
        mixed.times = {seconds(240), seconds(300), seconds(480), seconds(600)};
        put(repair, second, mixed);
    }
    /// A batch of a repair of its own that gels on the panel so many times as fast as the sheet says.
    void gel(int second, double rate, const QString& hardenerLot = u"H7"_s)
    {
        const QUuid id = repair();
        mix(id, second, hardenerLot);
        put(id, second + static_cast<int>(std::lround(300 / rate)), Gelled{first, GelPlace::Panel});
    }
    [[nodiscard]] const std::vector<Event>& events() const { return m_events; }

    LotBook book;

private:
    std::vector<Event> m_events;
};

TEST(LotBook, WithoutBatchesTheSheetIsBelieved)
{
    const LotBelief belief = LotBook().beliefOf(mixedSheet(), u"H7"_s);
    EXPECT_EQ(belief, (LotBelief{priorOf(mixedSheet()), 0, 0}));
    EXPECT_TRUE(LotBook().lots().empty());
}

/// Board and panel each beside their own prediction: 240 s told at 200, 300 s told at 330, 480 s told at 500.
TEST(LotBook, EachTapIsHeldAgainstItsOwnPrediction)
{
    Told told;
    const QUuid repair = told.repair();
    told.mix(repair, 1000);
    told.put(repair, 1200, Gelled{first, GelPlace::Board});
    told.put(repair, 1330, Gelled{first, GelPlace::Panel});
    told.put(repair, 1500, Sands{first});
    ASSERT_EQ(told.book.lots(), std::vector{lot});
    const BatchOfLot batch = told.book.batchesOf(lot).front();
    EXPECT_EQ(batch.job, u"4421"_s);
    EXPECT_NEAR(batch.told().board->value(), std::log(240.0 / 200.0), 1e-12);
    EXPECT_NEAR(batch.told().panel->value(), std::log(300.0 / 330.0), 1e-12);
    EXPECT_NEAR(batch.told().sandsBy->value(), std::log(480.0 / 500.0), 1e-12);
}

/// What was learnt already is in a batch's own times: gels are held against the sheet, or the second would count twice.
TEST(LotBook, GelsAreHeldAgainstTheSheetNotAgainstWhatWasLearnt)
{
    Told told;
    const QUuid repair = told.repair();
    HardenerIn mixed;
    mixed.sheetId = lot.sheetId;
    mixed.hardenerLot = lot.hardenerLot;
    mixed.times.gel = seconds(240);
    mixed.howSure = HowSure{};
    mixed.howSure->sheet.gel = seconds(300);
    told.put(repair, 0, mixed);
    told.put(repair, 250, Gelled{first, GelPlace::Panel});
    EXPECT_NEAR(told.book.batchesOf(lot).front().told().panel->value(), std::log(300.0 / 250.0), 1e-12);
    PredictedAgain again;
    again.howSure.sheet.gel = seconds(275); // a warmer panel: the sheet's own time is another
    told.put(repair, 251, again);
    EXPECT_NEAR(told.book.batchesOf(lot).front().told().panel->value(), std::log(275.0 / 250.0), 1e-12);
}

/// An invariant: the same batches taught the sheet they were mixed by, and teach no other version of it.
TEST(LotBook, ANewVersionOfTheSheetBeginsAnewAndTheOlderKeepsWhatItLearnt)
{
    Told told;
    ProductSheet older = mixedSheet();
    older.hash = "older";
    ProductSheet newer = mixedSheet();
    newer.hash = "newer";
    const auto mix = [&](int second, const QByteArray& hash, int gelled = 200) {
        const QUuid repair = told.repair();
        HardenerIn mixed;
        mixed.sheetId = lot.sheetId;
        mixed.hardenerLot = lot.hardenerLot;
        mixed.times = {seconds(240), seconds(300), seconds(480), seconds(600)};
        mixed.sheetHash = hash;
        told.put(repair, second, mixed);
        told.put(repair, second + gelled, Gelled{first, GelPlace::Panel});
    };
    for (int i = 0; i < 4; ++i)
        mix(i * 1000, "older");
    const LotBelief learnt = told.book.beliefOf(older, lot.hardenerLot);
    EXPECT_EQ(learnt.batches, 4);
    EXPECT_GT(learnt.rate.mean.value(), 0.1) << "they gelled at 200 s of 300";
    EXPECT_EQ(told.book.beliefOf(newer, lot.hardenerLot), (LotBelief{priorOf(newer), 0, 0}));
    EXPECT_EQ(told.book.beliefOf(newer, u"another lot"_s), (LotBelief{priorOf(newer), 0, 0}))
        << "no other lot's either";
    mix(9000, "older"); // of a repair that goes on with it
    EXPECT_EQ(told.book.beliefOf(newer, lot.hardenerLot).batches, 0);
    EXPECT_EQ(told.book.beliefOf(older, lot.hardenerLot).batches, 5);
    mix(10'000, "newer", 290); // near its sheet: the first that is far off would be held
    EXPECT_EQ(told.book.beliefOf(newer, lot.hardenerLot).batches, 1);
    EXPECT_EQ(told.book.learnt(newer, lot.hardenerLot).lessons.size(), 1U);
    EXPECT_EQ(told.book.batchesOf(lot).size(), 6U) << "none is lost from the page";
}

TEST(LotBook, ATestPatTeachesTheVersionItWasMixedBy)
{
    Told told;
    ProductSheet newer = mixedSheet();
    newer.hash = "newer";
    PatMixed pat{lot.sheetId, lot.hardenerLot, {},         grams(29),  grams(0.58), celsius(20),
                 minutes(5),  minutes(5),      minutes(4), minutes(6), "older"};
    told.ofLot(0, pat);
    told.ofLot(200, PatGelled{lot.sheetId, lot.hardenerLot});
    EXPECT_EQ(told.book.beliefOf(newer, lot.hardenerLot).batches, 0);
    pat.sheetHash = "newer";
    told.ofLot(1000, pat);
    told.ofLot(1290, PatGelled{lot.sheetId, lot.hardenerLot}); // near its sheet: far off, it would be held
    EXPECT_EQ(told.book.beliefOf(newer, lot.hardenerLot).batches, 1);
}

TEST(LotBook, NothingToldIsNothing)
{
    Told told;
    told.mix(told.repair(), 1000);
    EXPECT_FALSE(told.book.batchesOf(lot).front().told().gel());
    const QUuid atOnce = told.repair();
    told.mix(atOnce, 2000);
    told.put(atOnce, 2000, Gelled{first, GelPlace::Panel});
    EXPECT_FALSE(told.book.batchesOf(lot).back().told().gel()) << "a slip of the thumb";
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), u"H7"_s).batches, 0);
}

TEST(LotBook, ALotThatNobodyToldTeachesNothing)
{
    Told told;
    const QUuid repair = told.repair();
    told.mix(repair, 1000, {});
    told.put(repair, 1200, Gelled{first, GelPlace::Panel});
    EXPECT_TRUE(told.book.lots().empty());
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), {}), (LotBelief{priorOf(mixedSheet()), 0, 0}));
}

TEST(LotBook, ProductsAndLotsAreApartAndInOrder)
{
    Told told;
    const QUuid one = told.repair(u"1"_s);
    const QUuid two = told.repair(u"2"_s);
    told.mix(one, 1000);
    told.mix(one, 2000, u"H8"_s, u"demo_mixed"_s, {false, 1});
    told.mix(two, 500);
    told.mix(two, 3000, u"H7"_s, u"demo_short"_s, {false, 1});
    EXPECT_EQ(told.book.lots(),
              (std::vector<LotOfProduct>{{u"demo_short"_s, u"H7"_s}, {u"demo_mixed"_s, u"H8"_s}, lot}));
    const std::vector<BatchOfLot> batches = told.book.batchesOf(lot);
    ASSERT_EQ(batches.size(), 2U);
    EXPECT_EQ(batches[0].job, u"2"_s) << "the older first, whichever came first";
    EXPECT_EQ(batches[1].job, u"1"_s);
}

/// The belief is the textbook's update (belief_test), counted and fed to the forecast.
TEST(LotBook, GelsMoveTheBeliefAndNarrowIt)
{
    Told told;
    const ProductSheet sheet = mixedSheet();
    double before = priorOf(sheet).spread;
    for (int batch = 1; batch <= 4; ++batch) {
        told.gel(1000 * batch, 1.15);
        const LotBelief belief = told.book.beliefOf(sheet, u"H7"_s);
        EXPECT_EQ(belief.batches, batch);
        EXPECT_LT(belief.rate.spread, before);
        before = belief.rate.spread;
    }
    EXPECT_NEAR(told.book.beliefOf(sheet, u"H7"_s).rate.mean.multiplier(), 1.15, 0.03);
}

/// A lot nobody has seen is made likely by its product's other lots, and is no surer than they scatter.
TEST(LotBook, ANewLotBeginsWithItsProductsOthers)
{
    Told told;
    for (int batch = 1; batch <= 6; ++batch)
        told.gel(1000 * batch, 1.15, u"H%1"_s.arg(batch % 2));
    const LotBelief fresh = told.book.beliefOf(mixedSheet(), u"new"_s);
    EXPECT_EQ(fresh.batches, 0);
    EXPECT_EQ(fresh.otherLots, 2);
    EXPECT_GT(fresh.rate.mean.multiplier(), 1.03);
    EXPECT_GE(fresh.rate.spread, LearningRules().lot);
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), {}), fresh) << "a lot that was not told is a new one";
}

TEST(LotBook, ATestPatTeachesLikeAGelOnTheBoard)
{
    Told told;
    PatMixed pat{lot.sheetId, lot.hardenerLot, {}, grams(20), grams(0.4), celsius(21), seconds(300), {}, {}, {}};
    told.ofLot(0, pat);
    ASSERT_TRUE(told.book.patOf(lot));
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), u"H7"_s).batches, 0);
    told.ofLot(250, PatGelled{lot.sheetId, lot.hardenerLot});
    EXPECT_FALSE(told.book.patOf(lot));
    const BatchOfLot taught = told.book.batchesOf(lot).front();
    EXPECT_TRUE(taught.isPat());
    EXPECT_NEAR(taught.told().board->value(), std::log(300.0 / 250.0), 1e-12);
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), u"H7"_s).batches, 1);
}

TEST(LotBook, WhatIsForgottenStaysToBeSeenAndNoLongerCounts)
{
    Told told;
    for (int batch = 1; batch <= 3; ++batch)
        told.gel(1000 * batch, 1.2);
    told.ofLot(5000, LotForgotten{lot.sheetId, lot.hardenerLot, u"told_wrong"_s});
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), u"H7"_s), (LotBelief{priorOf(mixedSheet()), 0, 0}));
    EXPECT_EQ(told.book.batchesOf(lot).size(), 3U);
    EXPECT_TRUE(told.book.batchesOf(lot).front().forgotten);
    EXPECT_EQ(told.book.forgottenOf(lot)->reason, u"told_wrong"_s);
    EXPECT_EQ(told.book.forgottenOf(lot)->person, u"Ana"_s);
    told.gel(6000, 1.1);
    EXPECT_EQ(told.book.beliefOf(mixedSheet(), u"H7"_s).batches, 1) << "what comes after counts again";
}

/// Of which events a lot's own may follow; the log refuses the others.
TEST(LotBook, EventsOfALotFollow)
{
    const auto event = [](const Payload& payload, const LotOfProduct& subject) {
        Event made;
        made.repair = lotSubject(subject);
        made.payload = payload;
        return made;
    };
    const Event pat = event(PatMixed{lot.sheetId, lot.hardenerLot, {}, {}, {}, {}, {}, {}, {}, {}}, lot);
    const Event gelled = event(PatGelled{lot.sheetId, lot.hardenerLot}, lot);
    EXPECT_FALSE(followsOfLot({}, pat));
    EXPECT_FALSE(followsOfLot({pat}, gelled));
    EXPECT_FALSE(followsOfLot({pat}, pat)) << "a pat that was thrown away";
    EXPECT_TRUE(followsOfLot({}, gelled)) << "no pat";
    EXPECT_TRUE(followsOfLot({pat, gelled}, gelled)) << "it gels once";
    EXPECT_TRUE(followsOfLot({pat}, event(PatGelled{lot.sheetId, lot.hardenerLot}, {u"other"_s, u"H7"_s})));
    EXPECT_TRUE(followsOfLot({}, event(LotForgotten{lot.sheetId, lot.hardenerLot, u"because"_s}, lot)));
    EXPECT_FALSE(followsOfLot({}, event(LotForgotten{lot.sheetId, lot.hardenerLot, u"told_wrong"_s}, lot)));
    EXPECT_TRUE(followsOfLot({}, event(LotForgotten{lot.sheetId, {}, u"told_wrong"_s}, {lot.sheetId, {}})));
    EXPECT_TRUE(followsOfLot({}, event(Turned{}, lot)));
}

/// A whole walk of a repair, each event told: what its taps tell comes out.
TEST(LotBook, OfAWalkedRepair)
{
    test::RepairScript script;
    script.walkTo(Station::Mix);
    Payload act = test::actAt(script.repair());
    std::get<HardenerIn>(act).hardenerLot = u"H7"_s;
    const auto [batch, sheet] = std::pair{std::get<HardenerIn>(act).batch, std::get<HardenerIn>(act).sheetId};
    ASSERT_FALSE(script.put(act));
    ASSERT_FALSE(script.put(EdgesClear{batch}));
    ASSERT_FALSE(script.put(Gelled{batch, GelPlace::Panel}));
    LotBook book;
    for (const Event& each : script.events())
        book.add(each);
    // An event every 30 s: the gel was told 60 s after the hardener went in, 280 s are predicted.
    EXPECT_NEAR(book.batchesOf({sheet, u"H7"_s}).front().told().panel->value(), std::log(280.0 / 60.0), 1e-12);
}

} // namespace
} // namespace strandbench
