// SPDX-License-Identifier: GPL-3.0-or-later
// The power cut at every step as in power_cut_test.cpp, and of what was not synced each thing lost, kept and torn
// alone, and everything by chance with more seeds.
#include "cut_repair.h"

#include <iostream>

using namespace strandbench;
using namespace strandbench::test;

namespace {

constexpr int parts = 8;

class PowerCutWide : public CutRepair, public ::testing::WithParamInterface<int> {};

TEST_P(PowerCutWide, LosesNothingThatWasAcknowledged)
{
    const Counts counts = cutAt(GetParam(), parts, {true, 8});
    EXPECT_EQ(counts.lost, 0) << counts.firstLoss;
    EXPECT_GT(counts.disks, 10 * counts.cuts);
    std::cout << counts.cuts << " cuts, " << counts.variants << " variants, " << counts.disks << " different disks\n";
}

INSTANTIATE_TEST_SUITE_P(Part, PowerCutWide, ::testing::Range(0, parts));

} // namespace
