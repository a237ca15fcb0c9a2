// SPDX-License-Identifier: GPL-3.0-or-later
// What the engine makes of a sheet before anybody plans with it.
#include "plan/sheet_outlook.h"

#include "exchange/sheets.h"

#include <gtest/gtest.h>

namespace strandbench {
namespace {

// Invariant: the law was calibrated on these test pieces, so that at the sheet's own temperature they come out as
// stated.
TEST(SheetOutlook, AtItsOwnTemperatureASheetIsTakenAtItsWord)
{
    const CureEngine engine;
    for (const ProductSheet& sheet : demoCatalogue().sheets()) {
        const auto at = timesAt(sheet, sheet.reference, engine);
        ASSERT_TRUE(at);
        EXPECT_NEAR(inMinutes(*at->gel), inMinutes(sheet.working.nominal), 0.002 * inMinutes(sheet.working.nominal))
            << sheet.id.toStdString();
        EXPECT_NEAR(inMinutes(*at->sand), inMinutes(sheet.sanding.nominal), 0.002 * inMinutes(sheet.sanding.nominal))
            << sheet.id.toStdString();
    }
}

// Invariant of the law (Arrhenius): warmer is faster, and leaves less room for a lift.
TEST(SheetOutlook, WarmerIsFasterAndLeavesLessRoom)
{
    const CureEngine engine;
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::ShortStrandLight);
    const auto outlook = outlookOf(sheet, engine);
    ASSERT_TRUE(outlook);
    ASSERT_EQ(outlook->at.size(), 4U);
    const double days[] = {10, 18, 25, 32};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(inCelsius(outlook->at[i].temperature), days[i], 1e-9);
        ASSERT_TRUE(outlook->at[i].gel && outlook->at[i].sand && outlook->at[i].greatest);
        if (i == 0)
            continue;
        EXPECT_LT(*outlook->at[i].gel, *outlook->at[i - 1].gel);
        EXPECT_LT(*outlook->at[i].sand, *outlook->at[i - 1].sand);
        EXPECT_LE(*outlook->at[i].greatest, *outlook->at[i - 1].greatest);
    }
    EXPECT_LT(*outlook->at.back().greatest, outlook->looked) << "this one does come to its peak";
}

TEST(SheetOutlook, TimesThatFitNoLawOfCureAreTold)
{
    ProductSheet sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    sheet.sanding.nominal = sheet.working.nominal * 1.001;
    const auto outlook = outlookOf(sheet, CureEngine());
    ASSERT_FALSE(outlook);
    EXPECT_FALSE(outlook.error().code.isEmpty());
}

} // namespace
} // namespace strandbench
