// SPDX-License-Identifier: GPL-3.0-or-later
// A day narrowed down and put in order: against digests written out by hand.
#include "review/day_review.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

RepairDigest repair(const QString& job, qint64 takenIn, std::vector<DeviationKind> deviations)
{
    RepairDigest digest;
    digest.repair = QUuid::createUuid();
    digest.job = job;
    digest.takenInUtcMs = takenIn;
    digest.deviations = std::move(deviations);
    return digest;
}

DigestBatch batch(const QString& sheet, const QString& lot, const QString& hardenerLot, double planned, double mixed)
{
    DigestBatch made;
    made.sheetId = sheet;
    made.lot = lot;
    made.hardenerLot = hardenerLot;
    made.planned = grams(planned);
    made.mixed = grams(mixed);
    return made;
}

QStringList jobs(const std::vector<RepairDigest>& repairs)
{
    QStringList all;
    for (const RepairDigest& each : repairs)
        all << each.job;
    return all;
}

TEST(EyesFirst, WhatMayNotHoldComesBeforeWhatIsOnlyBadlyRecorded)
{
    const std::vector<RepairDigest> day{
        repair(u"clean"_s, 1, {}),
        repair(u"no lot"_s, 2, {DeviationKind::LotNotTold, DeviationKind::PhotoMissing}),
        repair(u"old reading"_s, 3, {DeviationKind::ReadingOld}),
        repair(u"hardener"_s, 4, {DeviationKind::LotNotTold, DeviationKind::HardenerLow}),
        repair(u"two"_s, 5, {DeviationKind::SandsEarly, DeviationKind::Overridden}),
        repair(u"clean later"_s, 0, {}),
    };
    EXPECT_EQ(jobs(eyesFirst(day, {})),
              QStringList({u"two"_s, u"hardener"_s, u"old reading"_s, u"no lot"_s, u"clean later"_s, u"clean"_s}));
}

TEST(EyesFirst, WhatCannotBeReadComesBeforeEverything)
{
    std::vector<RepairDigest> day{repair(u"two"_s, 1, {DeviationKind::Overridden}), repair(u"unread"_s, 2, {})};
    day[1].readable = false;
    EXPECT_EQ(jobs(eyesFirst(day, {})).constFirst(), u"unread"_s);
}

TEST(Narrowing, KeepsThoseThatHaveTheValueAndCountsEachOnce)
{
    std::vector<RepairDigest> day{repair(u"a"_s, 1, {}), repair(u"b"_s, 2, {}), repair(u"c"_s, 3, {})};
    day[0].batches = {batch(u"mixed"_s, u"F-1"_s, u"H-1"_s, 60, 60), batch(u"mixed"_s, u"F-1"_s, u"H-1"_s, 60, 60)};
    day[1].batches = {batch(u"short"_s, u"F-2"_s, u"H-1"_s, 60, 60)};
    day[0].people = {u"A. Brook"_s, u"R. Quist"_s};
    day[1].people = {u"R. Quist"_s};
    day[1].substrate = Substrate::Smc;
    EXPECT_EQ(jobs(eyesFirst(day, {NarrowBy::Lot, u"F-1"_s})), QStringList({u"a"_s}));
    EXPECT_EQ(jobs(eyesFirst(day, {NarrowBy::Lot, u"H-1"_s})), QStringList({u"a"_s, u"b"_s}));
    EXPECT_EQ(jobs(eyesFirst(day, {NarrowBy::Product, u"short"_s})), QStringList({u"b"_s}));
    EXPECT_EQ(jobs(eyesFirst(day, {NarrowBy::Person, QString()})), QStringList({u"c"_s})) << "nobody is named";
    EXPECT_EQ(jobs(eyesFirst(day, {NarrowBy::Substrate, u"smc"_s})), QStringList({u"b"_s}));
    const auto lots = valuesOf(day, NarrowBy::Lot);
    ASSERT_EQ(lots.size(), 3U);
    EXPECT_EQ(lots[0], (std::pair<QString, int>(u"H-1"_s, 2)));
    EXPECT_EQ(lots[1], (std::pair<QString, int>(u"F-1"_s, 1)));
    EXPECT_TRUE(valuesOf(day, NarrowBy::Nothing).empty());
    // Every value that is offered keeps as many as it says.
    for (const NarrowBy by : {NarrowBy::Bench, NarrowBy::Person, NarrowBy::Product, NarrowBy::Lot, NarrowBy::Substrate})
        for (const auto& [value, count] : valuesOf(day, by))
            EXPECT_EQ(eyesFirst(day, {by, value}).size(), std::size_t(count)) << value.toStdString();
}

TEST(DayFigures, CountAndAddUp)
{
    std::vector<RepairDigest> day{repair(u"a"_s, 1, {DeviationKind::HardenerHigh}), repair(u"b"_s, 2, {}),
                                  repair(u"c"_s, 3, {})};
    day[0].standing = Standing::ToLookThrough;
    day[1].standing = Standing::SignedOff;
    day[2].standing = Standing::Returned;
    day[0].batches = {batch(u"mixed"_s, {}, {}, 60, 75), batch(u"mixed"_s, {}, {}, 40, 40)};
    day[0].parts = {{JobPart::Lay, minutes(10), minutes(12)}, {JobPart::Wait, minutes(30), minutes(50)}};
    const DayFigures figures = dayFigures(day);
    EXPECT_EQ(figures.repairs, 3);
    EXPECT_EQ(figures.toLookThrough, 1);
    EXPECT_EQ(figures.signedOff, 1);
    EXPECT_EQ(figures.returned, 1);
    EXPECT_EQ(figures.needEyes, 1);
    EXPECT_NEAR(inGrams(figures.planned), 100, 1e-9);
    EXPECT_NEAR(inGrams(figures.mixed), 115, 1e-9);
    EXPECT_EQ(figures.hands, minutes(12)) << "waiting is no work";
    EXPECT_EQ(figures.handsPlanned, minutes(10));
}

} // namespace
} // namespace strandbench::test
