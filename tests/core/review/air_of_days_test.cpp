// SPDX-License-Identifier: GPL-3.0-or-later
// The air of days out of a repair's events: readings with their margin, what was mixed, what was wiped down.
#include "review_script.h"

#include "review/air_of_days.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

AirOfDays airOf(const std::vector<Event>& events) { return strandbench::airOf(events, reviewCatalogue()); }

TEST(AirOfDays, HoldsEveryReadingWithItsMargin)
{
    const auto events = cleanRepair();
    const AirOfDays air = airOf(events);
    const JobRecord record = recordOf(events);
    ASSERT_EQ(air.readings.size(), record.readings.size());
    for (std::size_t i = 0; i < air.readings.size(); ++i) {
        EXPECT_EQ(air.readings[i].reading, record.readings[i].reading);
        EXPECT_EQ(air.readings[i].air.margin, record.readings[i].margin);
        EXPECT_EQ(air.readings[i].seq, record.readings[i].told.seq);
        EXPECT_FALSE(air.readings[i].nearDew());
    }
}

TEST(AirOfDays, TellsThePanelThatIsNearItsDewPoint)
{
    // 20 degC and 60 %: 12.01 degC (psychrolib 1.1.1, ASHRAE 2017), so that 15.0 is short of three by 0.01 K.
    auto events = cleanRepair();
    firstOf<ReadingTaken>(events).reading = {celsius(20), celsius(15.0), Fraction::ofHundred(60)};
    const AirOfDays air = airOf(events);
    int near = 0;
    for (const AirReading& each : air.readings)
        if (each.nearDew()) {
            ++near;
            EXPECT_NEAR(inKelvinStep(each.air.margin), 2.99, 0.01);
        }
    EXPECT_EQ(near, 1);
}

TEST(AirOfDays, LeavesOutAReadingThatWasCorrected)
{
    auto events = cleanRepair();
    const std::size_t before = airOf(events).readings.size();
    const qint64 seq = seqOf(events, [](const Event& each) {
        const auto* answered = std::get_if<Answered>(&each.payload);
        return answered && answered->question == Question::Reading;
    });
    const Reading right{celsius(22), celsius(21), Fraction::ofHundred(40)};
    insertAfter(events, seq, Answered{Question::Reading, right, seq});
    const AirOfDays air = airOf(events);
    ASSERT_EQ(air.readings.size(), before);
    EXPECT_EQ(air.readings.front().reading, right);
}

TEST(AirOfDays, HoldsEveryBatchWithItsSheetsStyrene)
{
    auto events = cleanRepair();
    const Catalogue catalogue = reviewCatalogue();
    const AirOfDays air = airOf(events);
    const JobRecord record = recordOf(events);
    ASSERT_EQ(air.fillers.size(), record.batches.size());
    for (std::size_t i = 0; i < air.fillers.size(); ++i) {
        const HardenerIn& mixed = record.batches[i].mixed;
        EXPECT_EQ(air.fillers[i].filler, mixed.filler);
        EXPECT_EQ(air.fillers[i].untilGel, mixed.times.gel);
        EXPECT_EQ(air.fillers[i].styrene, catalogue.byId(mixed.sheetId)->styrene);
        EXPECT_EQ(air.fillers[i].at, record.batches[i].hardenerIn.at);
    }
    EXPECT_EQ(air.unknownSheets, 0);
    firstOf<HardenerIn>(events).sheetId = u"nobody_has_it"_s;
    EXPECT_EQ(airOf(events).unknownSheets, 1);
    EXPECT_EQ(airOf(events).fillers.size(), record.batches.size() - 1);
}

TEST(AirOfDays, KnowsTheStepsThatWipeDown)
{
    EXPECT_EQ(vapourOfStep(u"degrease"_s), Vapour::Naphtha);
    EXPECT_EQ(vapourOfStep(u"wipe_metal"_s), Vapour::Naphtha);
    EXPECT_EQ(vapourOfStep(u"degrease_little"_s), Vapour::Acetone);
    EXPECT_EQ(vapourOfStep(u"flash_off"_s), std::nullopt) << "it only waits";
    const Instant at{1'768'000'000'000, 5000, u"b1"_s, 0};
    const auto told = [&](const QString& code, qint64 seq) {
        return Event{u"o"_s, seq, {}, {}, StepDone{Stage::Prepare, 0, code}, at, {}};
    };
    const AirOfDays air = airOf(std::vector{told(u"wash"_s, 1), told(u"degrease"_s, 2), told(u"degrease_little"_s, 3)});
    ASSERT_EQ(air.wipes.size(), 2U);
    EXPECT_EQ(air.wipes[0].vapour, Vapour::Naphtha);
    EXPECT_EQ(air.wipes[1].at, at);
}

TEST(AirOfDays, DaysAreNewestFirstAndEachHasItsOwn)
{
    auto events = cleanRepair();
    const qint64 half = events[events.size() / 2].seq;
    delayFrom(events, half, 2 * 86'400'000LL);
    const AirOfDays air = airOf(events);
    const std::vector<QString> days = daysRead(air);
    ASSERT_EQ(days.size(), 2U);
    EXPECT_GT(days[0], days[1]);
    EXPECT_EQ(readingsOf(air, days[0]).size() + readingsOf(air, days[1]).size(), air.readings.size());
    EXPECT_TRUE(readingsOf(air, u"2000-01-01"_s).empty());
}

TEST(AirOfDays, WorkIsOnAClockThatIsNoughtNow)
{
    const auto events = cleanRepair();
    const AirOfDays air = airOf(events);
    const Instant now = events.back().at;
    const WorkInRoom work = workBefore(air, now, minutes(24 * 60));
    ASSERT_EQ(work.fillers.size(), air.fillers.size());
    for (std::size_t i = 0; i < work.fillers.size(); ++i)
        EXPECT_NEAR(inSeconds(work.fillers[i].from), -inSeconds(elapsed(air.fillers[i].at, now)), 1e-9);
    const Duration afterTheFirst = elapsed(air.fillers.front().at, now) - seconds(1);
    EXPECT_EQ(workBefore(air, now, afterTheFirst).fillers.size(), air.fillers.size() - 1);
}

} // namespace
} // namespace strandbench::test
