// SPDX-License-Identifier: GPL-3.0-or-later
// A batch that runs keeps the assumptions of its start, however often they change meanwhile.
#include "clock/assumption_book.h"

#include <gtest/gtest.h>

namespace strandbench {
namespace {

Instant at(qint64 minute) { return {minute * 60'000, 0, {}, 0}; }

Assumptions kneadedFor(double s)
{
    Assumptions assumptions;
    assumptions.kneading = seconds(s);
    return assumptions;
}

TEST(AssumptionBook, GivesWhatHeldAtAMoment)
{
    AssumptionBook book;
    book.change(kneadedFor(60), at(10), at(5));
    book.change(kneadedFor(90), at(20), at(5));
    EXPECT_EQ(book.at(at(5)).kneading, seconds(45));
    EXPECT_EQ(book.at(at(10)).kneading, seconds(60)); // from the moment of the change on
    EXPECT_EQ(book.at(at(19)).kneading, seconds(60));
    EXPECT_EQ(book.at(at(20)).kneading, seconds(90));
    EXPECT_EQ(book.at(at(99)).kneading, seconds(90));
}

TEST(AssumptionBook, ForgetsWhatNoRunningBatchBeganUnder)
{
    AssumptionBook book;
    book.change(kneadedFor(60), at(10), at(5));
    book.change(kneadedFor(90), at(20), at(15)); // the batch of minute 5 has been sanded
    ASSERT_EQ(book.earlier.size(), 1U);
    EXPECT_EQ(book.at(at(15)).kneading, seconds(60));
    book.change(kneadedFor(30), at(30), {});
    EXPECT_TRUE(book.earlier.empty());
    EXPECT_EQ(book.at(at(15)).kneading, seconds(30));
}

TEST(AssumptionBook, StaysInOrderWhenTheWallClockIsPutBack)
{
    AssumptionBook book;
    book.change(kneadedFor(60), at(20), at(5));
    book.change(kneadedFor(90), at(10), at(5));
    EXPECT_EQ(book.at(at(5)).kneading, seconds(45));
    EXPECT_LE(book.earlier.front().untilUtcMs, book.earlier.back().untilUtcMs);
}

} // namespace
} // namespace strandbench
