// SPDX-License-Identifier: GPL-3.0-or-later
// The table of assumptions against the list of the trade's assumptions, and what it lets through.
#include "plan/assumption_table.h"

#include "repairs.h"

#include <QSet>

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

double defaultOf(const QString& code)
{
    const AssumptionEntry* entry = findAssumption(code);
    return entry ? entry->number(entry->byDefault()) : std::numeric_limits<double>::quiet_NaN();
}

TEST(AssumptionTable, HasEveryRowOfTheListWithItsDefault)
{
    // The list of assumptions as it was agreed: ours, no source. The nozzle stands on each sheet, hands-on times in the
    // data of the steps.
    const std::pair<QString, double> rows[] = {
        {u"filler_over_air_k"_s, 0},
        {u"kneading_s"_s, 45},
        {u"spreading_g_per_min"_s, 45},
        {u"edges_at_gel_percent"_s, 75},
        {u"board_mm"_s, 250},
        {u"board_thickness_mm"_s, 3},
        {u"board_kg_per_m3"_s, 600},
        {u"board_j_per_kg_k"_s, 1500},
        {u"board_w_per_m_k"_s, 0.15},
        {u"board_loss_percent"_s, 10},
        {u"board_loss_g"_s, 2},
        {u"proud_mm"_s, 1},
        {u"bridge_share_percent"_s, 50},
        {u"left_low_mm"_s, 0.5},
        {u"skim_beyond_mm"_s, 10},
        {u"face_front_w_per_m2_k"_s, 10},
        {u"face_back_w_per_m2_k"_s, 8},
        {u"laminate_kg_per_m3"_s, 1890},
        {u"laminate_j_per_kg_k"_s, 1260},
        {u"laminate_w_per_m_k"_s, 0.2163},
        {u"steel_kg_per_m3"_s, 7850},
        {u"steel_j_per_kg_k"_s, 434},
        {u"steel_w_per_m_k"_s, 60},
        {u"aluminium_kg_per_m3"_s, 2702},
        {u"aluminium_j_per_kg_k"_s, 903},
        {u"aluminium_w_per_m_k"_s, 237},
        {u"panel_low_c"_s, 10},
        {u"panel_caution_below_c"_s, 15},
        {u"panel_high_c"_s, 30},
        {u"air_low_c"_s, 10},
        {u"air_high_c"_s, 35},
    };
    for (const auto& [code, value] : rows)
        EXPECT_DOUBLE_EQ(defaultOf(code), value) << code.toStdString();
}

TEST(AssumptionTable, HasEveryCodeOnceAndItsDefaultWithinTheRange)
{
    QSet<QString> codes;
    for (const AssumptionEntry& each : assumptionTable()) {
        EXPECT_FALSE(codes.contains(each.code)) << each.code.toStdString();
        codes.insert(each.code);
        EXPECT_LT(each.number(each.least), each.number(each.most)) << each.code.toStdString();
        EXPECT_GE(each.number(each.byDefault()), each.number(each.least)) << each.code.toStdString();
        EXPECT_LE(each.number(each.byDefault()), each.number(each.most)) << each.code.toStdString();
        EXPECT_TRUE(each.isDefault(Assumptions{}));
    }
    EXPECT_TRUE(contradictions(Assumptions{}).empty());
}

TEST(AssumptionTable, EachEntryChangesItsOwnAndNothingElse)
{
    for (const AssumptionEntry& each : assumptionTable()) {
        const bool atTop = each.number(each.byDefault()) == each.number(each.most);
        Assumptions changed;
        each.put(changed, atTop ? each.least : each.most);
        for (const AssumptionEntry& other : assumptionTable())
            EXPECT_EQ(other.isDefault(changed), other.code != each.code)
                << each.code.toStdString() << " and " << other.code.toStdString();
    }
}

TEST(AssumptionTable, RefusesWhatIsBeyondTheRangeAndNamesTheRange)
{
    const AssumptionEntry& kneading = *findAssumption(u"kneading_s"_s);
    for (const double bad : {9.0, 181.0, -45.0, std::numeric_limits<double>::quiet_NaN()}) {
        const auto refused = changed({}, kneading, bad);
        ASSERT_FALSE(refused.has_value()) << bad;
        EXPECT_EQ(refused.error().front().kind, FaultKind::OutOfRange);
        EXPECT_EQ(refused.error().front().field, u"kneading_s"_s);
        EXPECT_EQ(refused.error().front().allowed, (QStringList{u"10"_s, u"180"_s, u"s"_s}));
    }
    const auto taken = changed({}, kneading, 180);
    ASSERT_TRUE(taken.has_value());
    EXPECT_EQ(taken->kneading, seconds(180));
}

TEST(AssumptionTable, RefusesWhatContradictsAnother)
{
    const auto refused = changed({}, *findAssumption(u"hole_both_faces_mm"_s), 20); // without rear access it is 25
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().front(),
              (Fault{u"hole_no_rear_access_mm"_s, u"25"_s, FaultKind::Conflicts, {u"hole_both_faces_mm"_s, u"20"_s}}));
}

TEST(AssumptionTable, LimitsOnlyNarrow)
{
    // What decides whether filler goes on at all is common practice: a bench may be stricter.
    const QStringList least{u"panel_low_c"_s,           u"air_low_c"_s,     u"dew_margin_k"_s, u"before_primer_min"_s,
                            u"panel_caution_below_c"_s, u"backing_lap_mm"_s};
    const QStringList most{u"panel_high_c"_s,     u"air_high_c"_s,         u"laminate_peak_c"_s,
                           u"bond_seam_peak_c"_s, u"hole_both_faces_mm"_s, u"hole_no_rear_access_mm"_s,
                           u"hole_greatest_mm"_s, u"dense_hole_mm"_s,      u"dent_deepest_mm"_s};
    for (const QString& code : least)
        EXPECT_EQ(findAssumption(code)->number(findAssumption(code)->least), defaultOf(code)) << code.toStdString();
    for (const QString& code : most)
        EXPECT_EQ(findAssumption(code)->number(findAssumption(code)->most), defaultOf(code)) << code.toStdString();
}

TEST(AssumptionTable, APlanStandsAtBothEndsOfEveryRange)
{
    for (const AssumptionEntry& each : assumptionTable()) {
        for (const AssumptionValue& end : {each.least, each.most}) {
            Bench bench;
            each.put(bench.assumptions, end);
            const RepairPlan plan = bench.plan(sampleHole());
            EXPECT_TRUE(plan.fill || !plan.stops.empty()) << each.code.toStdString();
            if (plan.fill) {
                EXPECT_GT(inMinutes(plan.readyForPrimer), 60) << each.code.toStdString();
            }
        }
    }
}

TEST(AssumptionTable, ThePlanGoesByTheSetsAssumptionsAlone)
{
    // The engine handed in may hold others: heat carried off from the front keeps the lift cooler.
    Bench bench;
    const RepairPlan usual = bench.plan(sampleHole());
    bench.assumptions.faceFront = wattsPerSquareMetreKelvin(50);
    const RepairPlan blown = bench.plan(sampleHole());
    ASSERT_TRUE(usual.fill && blown.fill);
    EXPECT_LT(*blown.lifts.front().peak, *usual.lifts.front().peak);
    bench.assumptions = {};
    bench.assumptions.fillerOverAir = kelvinStep(10); // warm filler gels sooner
    EXPECT_LT(bench.plan(sampleHole()).batches.front().times.boardGel, usual.batches.front().times.boardGel);
}

} // namespace
} // namespace strandbench::test
