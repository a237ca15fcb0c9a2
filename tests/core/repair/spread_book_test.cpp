// SPDX-License-Identifier: GPL-3.0-or-later
// The spreading rate of each person, from the log. Times and masses are invented; what is held are invariants.
#include "repair/spread_book.h"

#include "repair_script.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int kneading = 45;

class Spreads {
public:
    /// A batch of so many grams, told clear so many seconds after its hardener.
    void batch(double grammes, int toClear, const QString& person = u"Ana"_s)
    {
        const QUuid repair = QUuid::createUuid();
        HardenerIn mixed;
        mixed.filler = grams(grammes);
        put(repair, mixed, m_at, person);
        put(repair, EdgesClear{}, m_at + toClear, person);
        m_at += 3600;
    }
    void put(const QUuid& repair, const Payload& payload, int second, const QString& person)
    {
        Event event;
        event.repair = repair;
        event.person = person;
        event.payload = payload;
        event.at = test::moment(second);
        book.add(event);
    }
    [[nodiscard]] std::optional<SpreadLearnt> of(const QString& person = u"Ana"_s) const
    {
        return book.of(person, seconds(kneading));
    }
    SpreadBook book;

private:
    int m_at = 0;
};

TEST(SpreadBook, SaysNothingOfFewBatchesAndOfNobody)
{
    Spreads told;
    for (std::size_t i = 0; i + 1 < SpreadLearnt::atLeast; ++i)
        told.batch(60, kneading + 90);
    EXPECT_FALSE(told.of());
    told.batch(60, kneading + 90);
    ASSERT_TRUE(told.of());
    EXPECT_NEAR(inGramsPerMinute(told.of()->rate), 40, 1e-6) << "60 g in 90 s beyond the kneading";
    EXPECT_FALSE(told.of({}));
    EXPECT_FALSE(told.of(u"Ben"_s)) << "each person's own";
}

TEST(SpreadBook, OneBatchLeftLyingChangesLittle)
{
    Spreads told;
    for (int i = 0; i < 6; ++i)
        told.batch(60, kneading + 90);
    told.batch(60, kneading + 700); // about 5 g/min
    ASSERT_TRUE(told.of());
    EXPECT_NEAR(inGramsPerMinute(told.of()->rate), 40, 1e-6);
    EXPECT_LT(inGramsPerMinute(told.of()->slowest), 6);
    EXPECT_EQ(told.of()->batches, 7U);
}

TEST(SpreadBook, ATapAtOnceOrOneForgottenIsNotBelieved)
{
    Spreads told;
    for (int i = 0; i < 5; ++i)
        told.batch(60, kneading + 90);
    for (const int toClear : {0, kneading - 1, kneading, kneading + 1, 36'000})
        told.batch(60, toClear);
    ASSERT_TRUE(told.of());
    EXPECT_EQ(told.of()->batches, 5U);
    EXPECT_NEAR(inGramsPerMinute(told.of()->slowest), 40, 1e-6);
    EXPECT_NEAR(inGramsPerMinute(told.of()->quickest), 40, 1e-6);
}

TEST(SpreadBook, OnlyTheNewestBatchesCount)
{
    Spreads told;
    for (int i = 0; i < 20; ++i)
        told.batch(60, kneading + 180); // 20 g/min, while learning the trade
    for (std::size_t i = 0; i < SpreadLearnt::newest; ++i)
        told.batch(60, kneading + 90);
    ASSERT_TRUE(told.of());
    EXPECT_EQ(told.of()->batches, SpreadLearnt::newest);
    EXPECT_NEAR(inGramsPerMinute(told.of()->slowest), 40, 1e-6);
}

TEST(SpreadBook, EdgesWithoutTheirHardenerTellNothing)
{
    Spreads told;
    for (int i = 0; i < 8; ++i)
        told.put(QUuid::createUuid(), EdgesClear{}, i * 100, u"Ana"_s);
    EXPECT_FALSE(told.of());
}

/// Invariants, for any batches: the rate lies within its range, which lies within what is believed; and it does not
/// depend on the order in which batches of other benches were brought in.
TEST(SpreadBook, TheRateLiesWithinItsRange)
{
    std::mt19937 chance(20261127);
    for (int round = 0; round < 200; ++round) {
        Spreads told;
        const int count = std::uniform_int_distribution(0, 30)(chance);
        for (int i = 0; i < count; ++i)
            told.batch(std::uniform_real_distribution(5.0, 400.0)(chance),
                       std::uniform_int_distribution(0, 1500)(chance));
        const auto learnt = told.of();
        if (!learnt)
            continue;
        EXPECT_GE(learnt->batches, SpreadLearnt::atLeast);
        EXPECT_LE(learnt->batches, SpreadLearnt::newest);
        EXPECT_GE(learnt->rate, learnt->slowest);
        EXPECT_LE(learnt->rate, learnt->quickest);
        EXPECT_GE(learnt->slowest, slowestSpread());
        EXPECT_LE(learnt->quickest, quickestSpread());
    }
}

} // namespace
} // namespace strandbench
