// SPDX-License-Identifier: GPL-3.0-or-later
// Planned and actual on one axis: what is drawn of a repair whose times are set here.
#include "review_script.h"

#include "review/job_timeline.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

JobTimeline timelineOf(const std::vector<Event>& events)
{
    return strandbench::timelineOf(recordOf(events), deviationsOf(events));
}

std::vector<JobSpan> ofKind(const std::vector<JobSpan>& spans, SpanKind kind)
{
    std::vector<JobSpan> found;
    for (const JobSpan& each : spans)
        if (each.kind == kind)
            found.push_back(each);
    return found;
}

TEST(JobTimeline, EveryBatchIsLaidFromItsHardenerToItsEdges)
{
    const auto events = cleanRepair();
    const JobRecord record = recordOf(events);
    const JobTimeline line = timelineOf(events);
    const auto laid = ofKind(line.actual, SpanKind::Lay);
    ASSERT_EQ(laid.size(), record.batches.size());
    for (std::size_t i = 0; i < laid.size(); ++i) {
        EXPECT_EQ(laid[i].from, elapsed(record.repair.takenInAt, record.batches[i].hardenerIn.at));
        EXPECT_NEAR(inSeconds(laid[i].to - laid[i].from), 200, 1e-9) << "as the script has it";
    }
    EXPECT_EQ(line.firstMix, laid.front().from);
    EXPECT_EQ(ofKind(line.actual, SpanKind::Assess).size(), 1U);
    EXPECT_EQ(ofKind(line.actual, SpanKind::Prepare).front().to, line.firstMix);
    EXPECT_EQ(ofKind(line.actual, SpanKind::Finish).front().from, line.lastSanded);
    EXPECT_EQ(line.readings.size(), record.readings.size());
    EXPECT_EQ(line.photos.size(), record.repair.photos.size());
    for (const JobSpan& each : line.actual) {
        EXPECT_LT(each.from, each.to);
        EXPECT_LE(each.to, line.length);
    }
}

TEST(JobTimeline, ThePlanBeginsWhereItWasAcceptedAndPartsInOneAreOne)
{
    auto events = cleanRepair();
    auto& plan = firstOf<PlanAccepted>(events).plan;
    plan.timeline = {{u"prepare"_s, seconds(0), minutes(10), true},
                     {u"prepare_waiting"_s, minutes(10), minutes(5), false},
                     {u"mix"_s, minutes(15), minutes(1), true},
                     {u"spread"_s, minutes(16), minutes(4), true},
                     {u"before_primer"_s, minutes(20), minutes(600), false}};
    const JobRecord record = recordOf(events);
    const Duration accepted = elapsed(record.repair.takenInAt, record.plans.front().told.at);
    const JobTimeline line = timelineOf(events);
    ASSERT_EQ(line.planned.size(), 2U) << "waiting for the primer is nobody's work";
    EXPECT_EQ(line.planned[0].kind, SpanKind::Prepare);
    EXPECT_NEAR(inMinutes(line.planned[0].from - accepted), 0, 1e-9);
    EXPECT_NEAR(inMinutes(line.planned[0].to - accepted), 15, 1e-9);
    EXPECT_EQ(line.planned[1].kind, SpanKind::Lay);
    EXPECT_NEAR(inMinutes(line.planned[1].to - accepted), 20, 1e-9);
}

TEST(JobTimeline, AParkedRepairShowsHowLong)
{
    auto events = cleanRepair();
    const qint64 prepared =
        seqOf(events, [](const Event& each) { return std::holds_alternative<StepDone>(each.payload); });
    insertAfter(events, prepared, TakenUpAgain{});
    insertAfter(events, prepared, Parked{u"supervisor"_s, {}, u"asks"_s});
    delayFrom(events, prepared + 2, 3'600'000);
    const auto parked = ofKind(timelineOf(events).actual, SpanKind::Parked);
    ASSERT_EQ(parked.size(), 1U);
    EXPECT_NEAR(inMinutes(parked.front().to - parked.front().from), 60, 1e-9);
}

} // namespace
} // namespace strandbench::test
