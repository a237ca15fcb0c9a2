// SPDX-License-Identifier: GPL-3.0-or-later
#include "mix/mix.h"
#include "mix_sheet.h"

#include <gtest/gtest.h>

using namespace strandbench;
using namespace strandbench::test;

namespace {

struct Row {
    double percent;
    HardenerVerdict verdict;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.percent << " %"; }

class JudgeHardener : public testing::TestWithParam<Row> {};

TEST_P(JudgeHardener, ByTheSheetsBand)
{
    EXPECT_EQ(judgeHardener(Fraction::ofHundred(GetParam().percent), mixSheet()), GetParam().verdict);
}

constexpr HardenerVerdict within = HardenerVerdict::Within;
constexpr HardenerVerdict caution = HardenerVerdict::Caution;
constexpr HardenerVerdict refused = HardenerVerdict::Refused;

// Common practice, no source: 1.5-2.5 % accepted, 1.2-1.5 and 2.5-3.0 % with a caution, beyond refused.
INSTANTIATE_TEST_SUITE_P(CommonPracticeNoSource, JudgeHardener,
                         testing::Values(Row{0, refused}, Row{1.19, refused}, Row{1.2, caution}, Row{1.49, caution},
                                         Row{1.5, within}, Row{2, within}, Row{2.5, within}, Row{2.51, caution},
                                         Row{3.0, caution}, Row{3.01, refused}, Row{10, refused}, Row{-2, refused}));

TEST(JudgeHardenerBySheet, TakesTheSheetsOwnBand)
{
    ProductSheet narrow = mixSheet();
    narrow.hardenerLow = Fraction::ofHundred(1.8);
    narrow.hardenerLowCaution = Fraction::ofHundred(1.8);
    EXPECT_EQ(judgeHardener(Fraction::ofHundred(1.7), narrow), refused);
    EXPECT_EQ(judgeHardener(Fraction::ofHundred(1.8), narrow), within);
}

} // namespace
