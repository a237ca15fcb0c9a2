// SPDX-License-Identifier: GPL-3.0-or-later
// The record holds what the events said, act for act.
#include "review_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

TEST(JobRecord, HoldsEveryActOfAWholeRepair)
{
    const auto events = cleanRepair();
    const JobRecord record = recordOf(events);
    EXPECT_EQ(record.repair, *foldRepair(events));
    EXPECT_EQ(record.events, events);
    EXPECT_EQ(record.state, u"done"_s);
    EXPECT_EQ(record.people, QStringList{u"R. Quist"_s});
    EXPECT_EQ(record.answers.size(), sampleAnswers().size());
    ASSERT_EQ(record.plans.size(), 1U);
    EXPECT_EQ(record.plans[0].accepted.plan, samplePlan());
    // Three of preparing, two of finishing, six tests of the hand-over.
    EXPECT_EQ(record.steps.size(), 3U + 2U + handOverTests().size());
    EXPECT_EQ(record.readings.size(), 7U) << "one answered, one before each of six batches";
    ASSERT_EQ(record.batches.size(), 6U);
    EXPECT_TRUE(record.photosMissing.empty());
    EXPECT_TRUE(record.turned.has_value());
    EXPECT_TRUE(record.handedOver.has_value());
    EXPECT_EQ(inSeconds(record.lasted), double(events.back().at.utcMs - events.front().at.utcMs) / 1000);
}

TEST(JobRecord, PutsPlannedBesideMixed)
{
    auto events = cleanRepair();
    firstOf<HardenerIn>(events).filler = grams(50);
    firstOf<HardenerIn>(events).hardener = grams(1.1);
    insertAfter(events,
                seqOf(events, [](const Event& each) { return std::holds_alternative<HardenerIn>(each.payload); }),
                Gelled{{false, 0}, GelPlace::Board});
    const JobRecord record = recordOf(events);
    const BatchRecord& first = record.batches.front();
    EXPECT_EQ(first.planned, samplePlan().batches[0].mix);
    EXPECT_EQ(first.mixed.filler, grams(50));
    EXPECT_NEAR(first.hardenerShare.percent(), 2.2, 1e-9);
    EXPECT_EQ(first.demoSheet, std::optional(false));
    EXPECT_EQ(inSeconds(first.since(*first.edgesClear)), 200);
    EXPECT_EQ(inSeconds(first.since(*first.boardGelled)), 0);
    EXPECT_FALSE(first.panelGelled.has_value());
    EXPECT_FALSE(first.sands.has_value()) << "the second batch of its lift was told to sand";
    EXPECT_TRUE(first.sanded.has_value()) << "a lift is sanded as one";
}

TEST(JobRecord, AddsUpWhatWasLaid)
{
    const JobRecord record = recordOf(cleanRepair());
    ASSERT_EQ(record.layers.size(), 5U) << "two lifts in front, one behind, two coats";
    EXPECT_EQ(record.layers[0].batches, 2);
    EXPECT_NEAR(inGrams(record.layers[0].mixed), 120, 1e-9);
    EXPECT_EQ(record.layers[0].face, std::optional(Face::Front));
    EXPECT_EQ(record.layers[2].face, std::optional(Face::Back));
    EXPECT_TRUE(record.layers[4].finishing);
    EXPECT_EQ(record.layers[4].face, std::nullopt);
    for (const LayerRecord& each : record.layers) {
        EXPECT_TRUE(each.laidUntil.has_value());
        EXPECT_TRUE(each.sanded.has_value());
    }
}

TEST(JobRecord, IsOfAnOpenRepairToo)
{
    auto events = cleanRepair();
    while (!std::holds_alternative<HardenerIn>(events.back().payload))
        events.pop_back();
    const JobRecord record = recordOf(events);
    EXPECT_EQ(record.state, u"spread"_s);
    EXPECT_FALSE(record.handedOver.has_value());
    EXPECT_EQ(record.photosMissing.size(), 4U);
    EXPECT_FALSE(record.layers.back().laidUntil.has_value());
}

TEST(JobRecord, CountsLocalDays)
{
    auto events = cleanRepair();
    ASSERT_EQ(recordOf(events).days.size(), 1U);
    const QString first = recordOf(events).days.front();
    events.back().at.utcMs += 24 * 3'600'000LL;
    EXPECT_EQ(recordOf(events).days, (std::vector<QString>{first, localDay(events.back().at)}));
}

TEST(JobRecord, RefusesEventsThatDoNotFollow)
{
    auto events = cleanRepair();
    events.erase(events.begin() + 3);
    EXPECT_FALSE(strandbench::recordOf(events, reviewCatalogue()).has_value());
    EXPECT_FALSE(strandbench::recordOf({}, reviewCatalogue()).has_value());
}

} // namespace
} // namespace strandbench::test
