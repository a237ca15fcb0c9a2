// SPDX-License-Identifier: GPL-3.0-or-later
// A model of the bench beside the glass: whatever is tapped, the log folds to what the bench holds, the screen is that
// of the next step, no screen is a dead end, and every repair can still be led to its hand-over or to a stop.
// STRANDBENCH_TAPS says how many taps, STRANDBENCH_SEED where the dice begin.
#include "bench_fixture.h"
#include "random_taps.h"

#include "repairlog/repair_log.h"

#include <iostream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

int fromEnvironment(const char* name, int usual)
{
    bool number = false;
    const int given = qEnvironmentVariableIntValue(name, &number);
    return number ? given : usual;
}

class RandomTaps : public BenchTest {
protected:
    /// Every repair folded anew from the file is what the bench holds.
    void compareWithLog()
    {
        const auto reader = RepairLog::open(log(), LogMode::ReadOnly);
        ASSERT_TRUE(reader);
        for (const Repair* each : bench().bench().openRepairs()) {
            const auto events = (*reader)->events(each->id);
            ASSERT_TRUE(events);
            const Checked<Repair> folded = foldRepair(*events);
            ASSERT_TRUE(folded) << folded.error().front().field.toStdString();
            ASSERT_EQ(*folded, *each) << each->job.toStdString();
        }
    }
};

TEST_F(RandomTaps, LeaveNoDeadEndAndNothingThatTheLogDoesNotSay)
{
    const int taps = fromEnvironment("STRANDBENCH_TAPS", 1500);
    const int seed = fromEnvironment("STRANDBENCH_SEED", 4);
    std::cout << "taps " << taps << ", seed " << seed << '\n';
    open();
    RandomThumb thumb(bench(), unsigned(seed));
    std::size_t eventsBefore = 0;
    for (int tap = 0; tap < taps; ++tap) {
        const QString before = screen();
        ASSERT_TRUE(thumb.touch()) << "a dead end: " << before.toStdString() << " after tap " << tap;
        const QString odd = thumb.oddOfScreen();
        ASSERT_TRUE(odd.isEmpty()) << odd.toStdString() << " after " << thumb.last().toStdString() << " on "
                                   << before.toStdString() << ", tap " << tap;
        std::size_t events = 0;
        for (const Repair* each : bench().bench().openRepairs())
            events += std::size_t(each->lastSeq);
        if (events != eventsBefore)
            compareWithLog();
        ASSERT_FALSE(HasFatalFailure()) << thumb.last().toStdString() << " on " << before.toStdString();
        eventsBefore = events;
    }
    // From wherever they were left, all come to an end.
    std::vector<DemoJob> open;
    for (const DemoJob& each : thumb.jobs())
        if (bench().repair(each.job))
            open.push_back(each);
    for (const DemoJob& each : open) {
        const Station end = thumb.leadToTheEnd(each);
        EXPECT_TRUE(end == Station::Done || end == Station::Parked)
            << each.job.toStdString() << ": " << thumb.why().toStdString();
    }
    std::cout << thumb.summary().toStdString() << '\n';
    EXPECT_GT(thumb.screensSeen(), 25);
}

} // namespace
} // namespace strandbench::test
