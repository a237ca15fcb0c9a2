// SPDX-License-Identifier: GPL-3.0-or-later
// What a record lacks before it is signed: taken away one thing at a time from a whole one.
#include "review/warranty.h"
#include "review_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// A clean repair whose masses came from the scale and whose readings an instrument gave.
std::vector<Event> wholeRecord()
{
    auto events = cleanRepair();
    for (Event& each : events) {
        if (auto* answered = std::get_if<Answered>(&each.payload);
            answered && answered->question == Question::Substrate)
            answered->foundBy = {FoundBy::BrokenEdge, FoundBy::TapSound};
        if (auto* mixed = std::get_if<HardenerIn>(&each.payload))
            mixed->by = EnteredBy::Instrument;
        if (auto* reading = std::get_if<ReadingTaken>(&each.payload))
            reading->by = EnteredBy::Instrument;
    }
    return events;
}

QStringList gapsOf(const std::vector<Event>& events)
{
    QStringList gaps;
    for (const Lacking& each : lackingOf(recordOf(events)))
        gaps << codeOf(each.gap);
    return gaps;
}

void leaveOut(std::vector<Event>& events, const std::function<bool(const Event&)>& which)
{
    std::erase_if(events, which);
    for (std::size_t i = 0; i < events.size(); ++i)
        events[i].seq = qint64(i) + 1;
}

TEST(Warranty, AWholeRecordLacksNothing) { EXPECT_EQ(gapsOf(wholeRecord()), QStringList()); }

TEST(Warranty, EachThingThatIsMissingIsNamed)
{
    auto events = wholeRecord();
    HardenerIn& first = firstOf<HardenerIn>(events);
    first.lot.clear();
    first.hardenerLot.clear();
    first.by.reset();
    const auto lacking = lackingOf(recordOf(events));
    ASSERT_EQ(lacking.size(), 3U);
    const BatchRef batch = firstOf<HardenerIn>(events).batch;
    EXPECT_EQ(lacking[0], (Lacking{RecordGap::FillerLotLacking, {}, batch}));
    EXPECT_EQ(lacking[1], (Lacking{RecordGap::HardenerLotLacking, {}, batch}));
    EXPECT_EQ(lacking[2], (Lacking{RecordGap::HardenerNotWeighed, {}, batch}));
}

TEST(Warranty, ASubstrateIsProvenByWhatToldIt)
{
    auto events = wholeRecord();
    Answered& substrate = firstOf<Answered>(events);
    ASSERT_EQ(substrate.question, Question::Substrate);
    substrate.foundBy.clear();
    EXPECT_EQ(gapsOf(events), QStringList{u"substrate_proof_lacking"_s});
}

TEST(Warranty, APhotoIsNamedByItsMoment)
{
    auto events = wholeRecord();
    leaveOut(events, [](const Event& each) {
        const auto* photo = std::get_if<PhotoTaken>(&each.payload);
        return photo && photo->moment == PhotoMoment::Filled;
    });
    const auto lacking = lackingOf(recordOf(events));
    ASSERT_EQ(lacking.size(), 1U);
    EXPECT_EQ(lacking[0].gap, RecordGap::PhotoLacking);
    EXPECT_EQ(lacking[0].arguments, std::vector<Argument>{codeOf(PhotoMoment::Filled)});
}

TEST(Warranty, ReadingsThatWereKeyedInAreNoInstruments)
{
    auto events = wholeRecord();
    for (Event& each : events)
        if (auto* reading = std::get_if<ReadingTaken>(&each.payload))
            reading->by = EnteredBy::Typed;
    EXPECT_EQ(gapsOf(events), QStringList{u"reading_keyed_in"_s});
    auto one = wholeRecord();
    for (Event& each : one)
        if (auto* reading = std::get_if<ReadingTaken>(&each.payload); reading && each.seq > 20)
            reading->by = EnteredBy::Typed;
    EXPECT_EQ(gapsOf(one), QStringList()) << "one by an instrument is enough";
}

TEST(Warranty, WhatWasDoneWithoutANameIsCounted)
{
    auto events = wholeRecord();
    events[3].person.clear();
    events[9].person.clear();
    const auto lacking = lackingOf(recordOf(events));
    ASSERT_EQ(lacking.size(), 1U);
    EXPECT_EQ(lacking[0].gap, RecordGap::PersonLacking);
    EXPECT_EQ(lacking[0].arguments, std::vector<Argument>{Count{2}});
}

TEST(Warranty, ARepairThatIsAtItsTestsLacksThoseToCome)
{
    auto events = wholeRecord();
    const qint64 firstTest = seqOf(events, [](const Event& each) {
        const auto* done = std::get_if<StepDone>(&each.payload);
        return done && done->stage == Stage::HandOver;
    });
    std::erase_if(events, [&](const Event& each) { return each.seq > firstTest; });
    const auto lacking = lackingOf(recordOf(events));
    const auto tests = std::ranges::find(lacking, RecordGap::TestsLacking, &Lacking::gap);
    ASSERT_TRUE(tests != lacking.end());
    EXPECT_EQ(tests->arguments, std::vector<Argument>{Count{int(handOverTests().size()) - 1}});
}

} // namespace
} // namespace strandbench::test
