// SPDX-License-Identifier: GPL-3.0-or-later
// The digest of a repair against its events, counted here act by act.
#include "review/digest.h"
#include "review_script.h"

#include <gtest/gtest.h>

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

RepairDigest digest(const std::vector<Event>& events, const DeviationLimits& limits = {})
{
    return digestOf(events, reviewCatalogue(), limits);
}

template <class T> bool is(const Event& event) { return std::holds_alternative<T>(event.payload); }

TEST(Digest, HoldsWhatFiguresCount)
{
    const auto events = cleanRepair();
    const RepairDigest made = digest(events);
    EXPECT_TRUE(made.readable);
    EXPECT_EQ(made.repair, events.front().repair);
    EXPECT_EQ(made.bench, events.front().origin);
    EXPECT_EQ(made.job, u"4421"_s);
    EXPECT_EQ(made.substrate, std::optional(Substrate::Smc));
    EXPECT_EQ(made.station, Station::Done);
    EXPECT_EQ(made.standing, Standing::ToLookThrough);
    EXPECT_EQ(made.takenInUtcMs, events.front().at.utcMs);
    EXPECT_EQ(made.handedOverDay, localDay(events.back().at));
    EXPECT_TRUE(made.deviations.empty());
    const auto mixed = std::ranges::count_if(events, is<HardenerIn>);
    ASSERT_EQ(std::ptrdiff_t(made.batches.size()), mixed);
    for (const DigestBatch& each : made.batches) {
        EXPECT_EQ(each.lot, u"F 1207"_s);
        EXPECT_EQ(each.hardenerLot, u"H 88"_s);
        EXPECT_EQ(each.mixed, grams(60));
        EXPECT_EQ(each.observedGel, std::nullopt) << "nobody told a gel";
    }
}

TEST(Digest, AGelIsObservedFromItsHardenerOnAndPredictedByTheSheetAlone)
{
    auto events = cleanRepair();
    HowSure sure;
    sure.sheet.gel = seconds(300);
    firstOf<HardenerIn>(events).howSure = sure;
    const qint64 hardener = seqOf(events, is<HardenerIn>);
    insertAfter(events, hardener, Gelled{firstOf<HardenerIn>(events).batch, GelPlace::Panel});
    events[std::size_t(hardener)].at = moment(0);
    events[std::size_t(hardener)].at.utcMs = events[std::size_t(hardener - 1)].at.utcMs + 270'000;
    events[std::size_t(hardener)].at.boottimeMs = events[std::size_t(hardener - 1)].at.boottimeMs + 270'000;
    delayFrom(events, hardener + 2, 270'000);
    const DigestBatch first = digest(events).batches.front();
    ASSERT_TRUE(first.observedGel);
    EXPECT_NEAR(inSeconds(*first.observedGel), 270, 1e-6);
    EXPECT_NEAR(inSeconds(first.predictedGel), 300, 1e-6) << "not what a lot had taught";
}

TEST(Digest, PartsOfTheJobAddUpTheirActs)
{
    auto events = cleanRepair();
    firstOf<PlanAccepted>(events).plan.timeline = {
        {u"prepare"_s, {}, minutes(20)}, {u"prepare_waiting"_s, {}, minutes(10)},
        {u"mix"_s, {}, minutes(2)},      {u"spread"_s, {}, minutes(3)},
        {u"wait"_s, {}, minutes(8)},     {u"wait"_s, {}, minutes(8)},
        {u"sand"_s, {}, minutes(5)},     {u"turn"_s, {}, minutes(99)},
        {u"finish"_s, {}, minutes(4)}};
    std::map<JobPart, std::pair<double, double>> parts; // minutes planned, seconds actual
    const RepairDigest made = digest(events);
    for (const PartTime& each : made.parts)
        parts[each.part] = {inMinutes(each.planned), inSeconds(each.actual)};
    ASSERT_EQ(parts.size(), 5U);
    EXPECT_NEAR(parts[JobPart::Prepare].first, 30, 1e-9) << "waiting for what was washed belongs to it";
    EXPECT_NEAR(parts[JobPart::Lay].first, 5, 1e-9);
    EXPECT_NEAR(parts[JobPart::Wait].first, 16, 1e-9);
    // Counted from the script's pauses: 30 s an act, 200 s to clear edges, 300 s until it sands.
    EXPECT_NEAR(parts[JobPart::Prepare].second, 5 * 30, 1e-6) << "three steps, a reading, the hardener";
    EXPECT_NEAR(parts[JobPart::Lay].second, 6 * 200, 1e-6) << "six batches";
    EXPECT_NEAR(parts[JobPart::Wait].second, 5 * 300, 1e-6) << "five layers";
    EXPECT_NEAR(parts[JobPart::Sand].second, 5 * 30, 1e-6);
    const qint64 lastSanded = std::ranges::find_if(events.rbegin(), events.rend(), is<Sanded>)->seq;
    EXPECT_NEAR(parts[JobPart::Finish].second, double(events.back().seq - lastSanded) * 30, 1e-6);
    while (!is<HandedOver>(events.back()))
        events.pop_back();
    events.pop_back();
    EXPECT_TRUE(digest(events).parts.empty()) << "not handed over yet";
}

TEST(Digest, DeviationsAreThoseOfTheRecord)
{
    auto events = cleanRepair();
    firstOf<HardenerIn>(events).lot.clear();
    firstOf<HardenerIn>(events).hardener = grams(2.4);
    std::vector<DeviationKind> kinds;
    for (const Deviation& each : deviationsOf(events))
        kinds.push_back(each.kind);
    EXPECT_EQ(kinds.size(), 2U);
    EXPECT_EQ(digest(events).deviations, kinds);
}

TEST(Digest, OfEventsThatDoNotFoldOnlyRepairAndBenchAreKnown)
{
    auto events = cleanRepair();
    events.erase(events.begin() + 4);
    const RepairDigest made = digest(events);
    EXPECT_FALSE(made.readable);
    EXPECT_EQ(made.repair, events.front().repair);
    EXPECT_EQ(made.bench, events.front().origin);
    EXPECT_TRUE(made.batches.empty() && made.job.isEmpty());
}

TEST(Digest, TheMarkChangesWithLimitsAndSheets)
{
    const Catalogue sheets = reviewCatalogue();
    const QString mark = digestMark(sheets, {});
    EXPECT_EQ(digestMark(reviewCatalogue(), {}), mark);
    DeviationLimits wider;
    wider.readingAge = minutes(61);
    EXPECT_NE(digestMark(sheets, wider), mark);
    DeviationLimits damper;
    damper.filling.dewMargin = damper.filling.dewMargin * 1.01;
    EXPECT_NE(digestMark(sheets, damper), mark);
    auto others = sheets.sheets();
    others.front().hash = QByteArray(32, 'x');
    EXPECT_NE(digestMark(Catalogue(others), {}), mark);
    others.pop_back();
    EXPECT_NE(digestMark(Catalogue(others), {}), mark);
}

} // namespace
} // namespace strandbench::test
