// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/clock.h"

#include <QDateTime>

#include <gtest/gtest.h>

#include <ctime>
#include <limits>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

/// 2026-03-02 07:00 UTC.
constexpr qint64 morning = 1'772'434'800'000;

struct Row {
    const char* what;
    Instant from;
    Instant to;
    double seconds;
};

void PrintTo(const Row& row, std::ostream* out) { *out << row.what; }

class Elapsed : public testing::TestWithParam<Row> {};

TEST_P(Elapsed, InSeconds) { EXPECT_DOUBLE_EQ(inSeconds(elapsed(GetParam().from, GetParam().to)), GetParam().seconds); }

INSTANTIATE_TEST_SUITE_P(
    WithinABoot, Elapsed,
    testing::Values(Row{"steady", {morning, 5'000, u"a"_s}, {morning + 90'000, 95'000, u"a"_s}, 90},
                    Row{"milliseconds count", {morning, 5'000, u"a"_s}, {morning + 250, 5'250, u"a"_s}, 0.25},
                    Row{"UTC set on by an hour", {morning, 5'000, u"a"_s}, {morning + 3'690'000, 95'000, u"a"_s}, 90},
                    Row{"UTC set back by an hour", {morning, 5'000, u"a"_s}, {morning - 3'510'000, 95'000, u"a"_s}, 90},
                    Row{"summer time", {morning, 5'000, u"a"_s, 3600}, {morning + 90'000, 95'000, u"a"_s, 7200}, 90},
                    Row{"the later one first", {morning, 95'000, u"a"_s}, {morning, 5'000, u"a"_s}, 0},
                    Row{"the same moment", {morning, 5'000, u"a"_s}, {morning, 5'000, u"a"_s}, 0}));

INSTANTIATE_TEST_SUITE_P(
    AcrossBoots, Elapsed,
    testing::Values(Row{"restarted", {morning, 9'000'000, u"a"_s}, {morning + 120'000, 30'000, u"b"_s}, 120},
                    Row{"restarted, UTC behind", {morning, 9'000'000, u"a"_s}, {morning - 1, 30'000, u"b"_s}, 0},
                    Row{"boot ahead of UTC", {morning, 1'000, u"a"_s}, {morning + 5'000, 99'000'000, u"b"_s}, 5},
                    // Two machines without an identity of their boot are not one boot.
                    Row{"no identity", {morning, 5'000, {}}, {morning + 60'000, 95'000, {}}, 60}));

struct DayRow {
    const char* utc;
    int offsetHours;
    const char* day;
};

void PrintTo(const DayRow& row, std::ostream* out) { *out << row.utc << " at " << row.offsetHours << " h"; }

class LocalDay : public testing::TestWithParam<DayRow> {};

TEST_P(LocalDay, ByTheOffsetItCarries)
{
    const QDateTime at = QDateTime::fromString(QString::fromLatin1(GetParam().utc), Qt::ISODate);
    ASSERT_TRUE(at.isValid());
    EXPECT_EQ(localDay({at.toMSecsSinceEpoch(), 0, {}, GetParam().offsetHours * 3600}).toStdString(), GetParam().day);
}

INSTANTIATE_TEST_SUITE_P(
    Offsets, LocalDay,
    testing::Values(DayRow{"2026-03-02T07:00:00Z", 0, "2026-03-02"}, DayRow{"2026-03-02T23:30:00Z", 0, "2026-03-02"},
                    DayRow{"2026-03-02T23:30:00Z", 1, "2026-03-03"}, DayRow{"2026-03-02T00:30:00Z", -6, "2026-03-01"},
                    DayRow{"2026-12-31T20:00:00Z", 10, "2027-01-01"}, DayRow{"2028-02-29T12:00:00Z", 0, "2028-02-29"}));

TEST(SystemClockNow, ReadsTheMachinesClocks)
{
    const SystemClock clock;
    const qint64 before = QDateTime::currentMSecsSinceEpoch();
    const Instant first = clock.now();
    const Instant second = clock.now();
    const qint64 after = QDateTime::currentMSecsSinceEpoch();
    EXPECT_GE(first.utcMs, before);
    EXPECT_LE(second.utcMs, after);
    EXPECT_GE(second.boottimeMs, first.boottimeMs);
    EXPECT_EQ(first.bootId, second.bootId);
    EXPECT_EQ(first.utcOffsetSeconds, QDateTime::currentDateTime().offsetFromUtc());

    EXPECT_FALSE(first.bootId.contains(u'\n'));
}

TEST(SystemClockNow, CountsTheTimeAsleep)
{
    // CLOCK_BOOTTIME and no other: CLOCK_MONOTONIC stands still in suspend, where the two have parted.
    timespec before{};
    timespec after{};
    ASSERT_EQ(clock_gettime(CLOCK_BOOTTIME, &before), 0);
    const Instant now = SystemClock().now();
    ASSERT_EQ(clock_gettime(CLOCK_BOOTTIME, &after), 0);
    EXPECT_GE(now.boottimeMs, static_cast<qint64>(before.tv_sec) * 1000 + before.tv_nsec / 1'000'000);
    EXPECT_LE(now.boottimeMs, static_cast<qint64>(after.tv_sec) * 1000 + after.tv_nsec / 1'000'000);
}

TEST(SystemClockNow, TwoClocksOfOneBootAgree)
{
    const Instant from = SystemClock().now();
    const Instant to = SystemClock().now();
    EXPECT_EQ(from.bootId, to.bootId);
    EXPECT_LT(inSeconds(elapsed(from, to)), 5.0);
}

TEST(LocalDayOfEveryDay, IsThatOfQtsCalendarForSixCenturies)
{
    // Referee: QDateTime, a general-purpose library's proleptic Gregorian calendar.
    int offset = -86'400;
    qint64 ms = QDateTime(QDate(1600, 1, 1), QTime(0, 0), Qt::UTC).toMSecsSinceEpoch();
    const qint64 last = QDateTime(QDate(2200, 1, 1), QTime(0, 0), Qt::UTC).toMSecsSinceEpoch();
    for (; ms < last; ms += 86'399'999) { // now just before midnight, now just after
        offset = offset >= 86'400 ? -86'400 : offset + 1'801;
        ASSERT_EQ(localDay({ms, 0, {}, offset}),
                  QDateTime::fromMSecsSinceEpoch(ms, Qt::OffsetFromUTC, offset).date().toString(Qt::ISODate));
    }
    for (const qint64 odd : {std::numeric_limits<qint64>::min(), std::numeric_limits<qint64>::max(),
                             qint64(-70'000'000'000'000), qint64(260'000'000'000'000)})
        EXPECT_EQ(localDay({odd, 0, {}, 3600}),
                  QDateTime::fromMSecsSinceEpoch(odd, Qt::OffsetFromUTC, 3600).date().toString(Qt::ISODate));
}

} // namespace
