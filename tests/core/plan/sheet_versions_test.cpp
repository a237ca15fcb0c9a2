// SPDX-License-Identifier: GPL-3.0-or-later
// A repair goes on with the version of a sheet that it was planned with, whatever is kept meanwhile. Invariants.
#include "repairs.h"

#include "exchange/built_in.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The demo sheets, and before them a denser one of the shop for every class that is planned with.
Catalogue afterKeeping()
{
    std::vector<ProductSheet> sheets = demoCatalogue().sheets();
    std::vector<ProductSheet> own;
    for (ProductSheet each : sheets) {
        each.id.replace(u"demo_"_s, u"shop_"_s);
        each.hash = "of the shop: " + each.hash;
        each.demo = false;
        each.density = each.density * 1.1;
        own.push_back(each);
    }
    own.insert(own.end(), sheets.begin(), sheets.end());
    return Catalogue(own);
}

/// The same products, each with a newer version of another density.
Catalogue withNewerVersions()
{
    std::vector<ProductSheet> newer = demoCatalogue().sheets();
    for (ProductSheet& each : newer) {
        each.hash = "newer: " + each.hash;
        each.density = each.density * 1.1;
    }
    return Catalogue(newer, demoCatalogue().sheets());
}

RepairPlan planned(const Catalogue& catalogue, const CureEngine& engine)
{
    return planRepair(test::sampleHole(), {builtInTable(), catalogue, builtInSteps(), {}, engine});
}

TEST(SheetVersions, APlanMadeAnewTakesTheNewestAndARepairGoesOnWithItsOwn)
{
    const CureEngine engine;
    const RepairPlan before = planned(demoCatalogue(), engine);
    ASSERT_TRUE(before.fill);
    for (const Catalogue& now : {withNewerVersions(), afterKeeping()}) {
        const RepairPlan first = planned(now, engine);
        EXPECT_NE(first.sheetHash, before.sheetHash);
        EXPECT_GT(first.fillerTotal, before.fillerTotal) << "the new sheet is denser";
        const RepairPlan again =
            replanRepair(test::sampleHole(), {builtInTable(), now, builtInSteps(), {}, engine}, before, PlanProgress{});
        EXPECT_EQ(again, before);
    }
}

TEST(SheetVersions, WithALiftLaidTheRestIsOfItsSheetToo)
{
    const CureEngine engine;
    const RepairPlan before = planned(demoCatalogue(), engine);
    PlanProgress done;
    done.frozenBatches = 1;
    done.steps = static_cast<int>(before.prep.size());
    const Catalogue now = withNewerVersions();
    const RepairPlan again =
        replanRepair(test::sampleHole(), {builtInTable(), now, builtInSteps(), {}, engine}, before, done);
    ASSERT_TRUE(again.fill);
    EXPECT_EQ(again.sheetHash, before.sheetHash);
    EXPECT_EQ(again.finishSheetHash, before.finishSheetHash);
    for (const Lift& each : again.lifts)
        EXPECT_EQ(each.sheetHash, demoCatalogue().byId(each.sheetId)->hash);
}

TEST(SheetVersions, NamesEverySheetOfAPlan)
{
    const CureEngine engine;
    const RepairPlan plan = planned(demoCatalogue(), engine);
    for (const SheetVersion& each : versionsIn(plan))
        EXPECT_EQ(each.hash, demoCatalogue().byId(each.id)->hash);
    EXPECT_EQ(versionsIn(plan).size(), plan.lifts.size() + 2);
}

} // namespace
} // namespace strandbench
