// SPDX-License-Identifier: GPL-3.0-or-later
// Figures of many repairs against examples that are counted by hand, and against what must hold of any.
#include "review/figures.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

DigestBatch gel(const QString& lot, qint64 utcMs, double predicted, std::optional<double> observed)
{
    DigestBatch batch;
    batch.sheetId = u"shop_mixed"_s;
    batch.hardenerLot = lot;
    batch.planned = grams(60);
    batch.mixed = grams(60);
    batch.hardener = grams(1.2);
    batch.predictedGel = seconds(predicted);
    if (observed)
        batch.observedGel = seconds(*observed);
    batch.utcMs = utcMs;
    return batch;
}

DigestBatch mix(const QString& sheet, double planned, double mixed)
{
    DigestBatch batch = gel({}, 0, 300, {});
    batch.sheetId = sheet;
    batch.planned = grams(planned);
    batch.mixed = grams(mixed);
    return batch;
}

RepairDigest repairOf(std::vector<DigestBatch> batches)
{
    RepairDigest repair;
    repair.repair = QUuid::createUuid();
    repair.batches = std::move(batches);
    return repair;
}

TEST(Figures, GelsOfALotComeInTheOrderOfTimeWhateverRepairTheyAreOf)
{
    const std::vector<RepairDigest> repairs{
        repairOf({gel(u"H-7"_s, 3000, 300, 330), gel(u"H-8"_s, 9000, 300, 300), gel(u"H-7"_s, 4000, 300, {})}),
        repairOf({gel(u"H-7"_s, 1000, 200, 180), gel(u"H-7"_s, 2000, 400, 400), gel({}, 2500, 300, 300)})};
    const auto lots = gelLots(repairs);
    ASSERT_EQ(lots.size(), 2U) << "a batch whose lot was not told is of none";
    EXPECT_EQ(lots[0].lot, (GelLot{u"shop_mixed"_s, u"H-8"_s})) << "seen last";
    EXPECT_EQ(lots[1].gels, 3);
    EXPECT_EQ(lots[1].lastUtcMs, 3000) << "of a gel that was seen";
    const auto drift = gelDrift(repairs, lots[1].lot);
    ASSERT_TRUE(drift);
    EXPECT_EQ(drift->chart.values, (std::vector<double>{180.0 / 200, 1.0, 330.0 / 300}));
    EXPECT_NEAR(drift->chart.limits.centre, 1.0, 1e-12);
    EXPECT_NEAR(drift->chart.sigma, 0.1 / 1.128, 1e-12) << "both steps are a tenth";
    EXPECT_EQ(drift->points[2].repair, repairs[0].repair);
    EXPECT_EQ(drift->ewma.averages.front(), 1) << "begins at the sheet";
    EXPECT_NEAR(drift->ewma.averages[1], 0.3 * 0.9 + 0.7, 1e-12);
    EXPECT_FALSE(gelDrift(repairs, lots[0].lot)) << "one gel is no series";
}

TEST(Figures, ASlowerLotIsSignalled)
{
    std::vector<DigestBatch> batches;
    for (int i = 0; i < 40; ++i) // scatter of 2 %, from the 25th on slower by 8 %
        batches.push_back(gel(u"H-7"_s, i, 300, 300 * ((i % 2 == 0 ? 0.98 : 1.02) + (i >= 24 ? 0.08 : 0))));
    const auto drift = gelDrift({repairOf(batches)}, {u"shop_mixed"_s, u"H-7"_s});
    ASSERT_TRUE(drift);
    EXPECT_FALSE(drift->runs.empty());
    EXPECT_TRUE(drift->ewma.limits.holds(drift->ewma.averages[24]));
    EXPECT_FALSE(drift->ewma.limits.holds(drift->ewma.averages.back()));
    batches.resize(24);
    const auto before = gelDrift({repairOf(batches)}, {u"shop_mixed"_s, u"H-7"_s});
    for (const double each : before->ewma.averages)
        EXPECT_TRUE(before->ewma.limits.holds(each));
}

TEST(Figures, MaterialIsAddedUpByProduct)
{
    const auto used = materialUsed(
        {repairOf({mix(u"a"_s, 100, 110), mix(u"a"_s, 50, 45)}), repairOf({mix(u"b"_s, 40, 60), mix(u"a"_s, 10, 10)})});
    ASSERT_EQ(used.size(), 2U);
    EXPECT_EQ(used[0].sheetId, u"b"_s) << "most beyond the plan first";
    EXPECT_NEAR(inGrams(used[0].over), 20, 1e-9);
    EXPECT_EQ(used[1].batches, 3);
    EXPECT_NEAR(inGrams(used[1].planned), 160, 1e-9);
    EXPECT_NEAR(inGrams(used[1].mixed), 165, 1e-9);
    EXPECT_NEAR(inGrams(used[1].over), 10, 1e-9) << "what one batch lacks does not make good what another has too much";
    EXPECT_NEAR(inGrams(used[1].under), 5, 1e-9);
}

TEST(Figures, MixedIsPlannedWithWhatIsOverLessWhatIsUnder)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> amount(5, 400);
    std::vector<RepairDigest> repairs;
    for (int i = 0; i < 200; ++i)
        repairs.push_back(repairOf({mix(QString::number(i % 5), amount(random), amount(random))}));
    int batches = 0;
    for (const MaterialUsed& each : materialUsed(repairs)) {
        EXPECT_NEAR(inGrams(each.mixed), inGrams(each.planned + each.over - each.under), 1e-6);
        batches += each.batches;
    }
    EXPECT_EQ(batches, 200);
}

RepairDigest judged(std::optional<Substrate> substrate, Standing standing, bool rework = false)
{
    RepairDigest repair = repairOf({});
    repair.substrate = substrate;
    repair.standing = standing;
    if (rework)
        repair.reworkOf = QUuid::createUuid();
    return repair;
}

TEST(Figures, RightTheFirstTimeCountsWhatWasJudgedAndIsNoRework)
{
    std::vector<RepairDigest> repairs;
    for (int i = 0; i < 9; ++i)
        repairs.push_back(judged(Substrate::Smc, Standing::SignedOff));
    repairs.push_back(judged(Substrate::Smc, Standing::Returned));
    repairs.push_back(judged(Substrate::Smc, Standing::SignedOff, true)); // the rework of another
    repairs.push_back(judged(Substrate::Smc, Standing::ToLookThrough));
    repairs.push_back(judged(Substrate::Steel, Standing::Returned));
    repairs.push_back(judged(Substrate::Aluminium, Standing::AtWork));
    const auto rows = firstTimeRight(repairs);
    ASSERT_EQ(rows.size(), 2U) << "nothing of aluminium was judged";
    const auto smc = std::ranges::find(rows, std::optional(Substrate::Smc), &FirstTimeRight::substrate);
    const auto steel = std::ranges::find(rows, std::optional(Substrate::Steel), &FirstTimeRight::substrate);
    ASSERT_TRUE(smc != rows.end() && steel != rows.end());
    EXPECT_EQ(smc->judged, 10);
    EXPECT_EQ(smc->right, 9);
    // Jeffreys, 9 of 10 at 95 %: quantiles of Beta(9.5, 1.5), as tables of that interval print them.
    EXPECT_NEAR(smc->interval.low.percent(), 61.9, 0.1);
    EXPECT_NEAR(smc->interval.high.percent(), 98.9, 0.1);
    EXPECT_EQ(steel->right, 0);
    EXPECT_EQ(steel->interval.low.value(), 0);
}

TEST(Figures, TimesAreMediansAndTheSlowTenth)
{
    std::vector<RepairDigest> repairs;
    for (const int minute : {50, 10, 40, 20, 30, 60, 90, 70, 100, 80}) {
        RepairDigest repair = repairOf({});
        repair.parts = {{JobPart::Sand, minutes(25), minutes(minute)}};
        repairs.push_back(repair);
    }
    repairs.front().parts.push_back({JobPart::Lay, minutes(7), minutes(9)});
    const auto times = partTimes(repairs);
    ASSERT_EQ(times.size(), 2U);
    EXPECT_EQ(times[0].part, JobPart::Lay) << "in the order of the job";
    EXPECT_EQ(inMinutes(times[0].actual), 9);
    EXPECT_EQ(times[1].repairs, 10);
    EXPECT_NEAR(inMinutes(times[1].actual), 55, 1e-9) << "between the two in the middle";
    EXPECT_NEAR(inMinutes(times[1].planned), 25, 1e-9);
    EXPECT_NEAR(inMinutes(times[1].slow), 100, 1e-9) << "one of ten took that long";
}

TEST(Figures, DeviationsFallAndTheirSharesRiseToAll)
{
    using enum DeviationKind;
    RepairDigest one = repairOf({});
    one.deviations = {PhotoMissing, PhotoMissing, NoReading, Parked};
    RepairDigest two = repairOf({});
    two.deviations = {PhotoMissing, Parked, Overridden, Parked};
    const auto shares = deviationShares({one, two});
    std::vector<std::pair<DeviationKind, int>> counted;
    for (const DeviationShare& each : shares)
        counted.emplace_back(each.kind, each.count);
    EXPECT_EQ(counted, (std::vector<std::pair<DeviationKind, int>>{
                           {Parked, 3}, {PhotoMissing, 3}, {NoReading, 1}, {Overridden, 1}}))
        << "of equal ones in the order of their kinds";
    EXPECT_NEAR(shares[0].upTo.percent(), 37.5, 1e-9);
    EXPECT_NEAR(shares[1].upTo.percent(), 75, 1e-9);
    EXPECT_EQ(shares.back().upTo.value(), 1);
    EXPECT_TRUE(deviationShares({}).empty());
}

} // namespace
} // namespace strandbench
