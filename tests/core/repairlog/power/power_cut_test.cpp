// SPDX-License-Identifier: GPL-3.0-or-later
// The power cut at every single step of a whole repair: what was acknowledged is there, once, and the log goes on.
#include "cut_repair.h"

#include <algorithm>
#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

constexpr int parts = 4;

class PowerCut : public CutRepair {
protected:
    [[nodiscard]] int countOf(DiskStep::Kind kind) const
    {
        return int(std::ranges::count(steps(), kind, &DiskStep::kind));
    }
    [[nodiscard]] bool touched(const std::string& ending) const
    {
        return std::ranges::any_of(steps(), [&](const DiskStep& each) { return each.file.ends_with(ending); });
    }
};

TEST_F(PowerCut, TheRecordIsOfAWholeRepairWithAllThatADiskIsAsked)
{
    using Kind = DiskStep::Kind;
    EXPECT_GT(acts().size(), 45U);
    EXPECT_EQ(countOf(Kind::Acknowledged), int(acts().size()) + 1) << "the log made, and every act";
    EXPECT_GE(countOf(Kind::Sync), int(acts().size()));
    EXPECT_GT(countOf(Kind::Create), 3);
    EXPECT_GT(countOf(Kind::Delete), 3);
    EXPECT_GE(countOf(Kind::SyncFolder), 2);
    EXPECT_GE(countOf(Kind::Truncate), 1) << "a checkpoint that cut the WAL off";
    EXPECT_TRUE(touched("bench.db") && touched("-wal") && touched("-journal"));
    std::cout << steps().size() << " steps, " << acts().size() << " acts\n";
}

class PowerCutAtEveryStep : public PowerCut, public ::testing::WithParamInterface<int> {};

TEST_P(PowerCutAtEveryStep, LosesNothingThatWasAcknowledged)
{
    const Counts counts = cutAt(GetParam(), parts, {});
    EXPECT_EQ(counts.lost, 0) << counts.firstLoss;
    EXPECT_GT(counts.cuts, 200);
    EXPECT_GT(counts.disks, counts.cuts) << "cuts are told apart";
    std::cout << counts.cuts << " cuts, " << counts.variants << " variants, " << counts.disks << " different disks\n";
}

INSTANTIATE_TEST_SUITE_P(Part, PowerCutAtEveryStep, ::testing::Range(0, parts));

/// A test of the test: on a disk that says 'synced' and does nothing, acts are lost, and it shows.
TEST_F(PowerCut, OnADiskThatLiesActsAreLostAndFoundMissing)
{
    const Counts counts = cutAt(0, parts, {}, Syncs::Lies);
    EXPECT_GT(counts.lost, counts.cuts) << "at nearly every cut at least 'none kept' is a loss";
    EXPECT_NE(counts.firstLoss, "");
}

} // namespace
