// SPDX-License-Identifier: GPL-3.0-or-later
#include "material/catalogue.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

ProductSheet sheetOf(const QString& id, FillerClass filler)
{
    ProductSheet sheet;
    sheet.id = id;
    sheet.fillerClass = filler;
    return sheet;
}

TEST(Catalogue, FindsById)
{
    const Catalogue catalogue({sheetOf(u"a"_s, FillerClass::ShortStrand), sheetOf(u"b"_s, FillerClass::MixedStrand)});
    ASSERT_NE(catalogue.byId(u"b"_s), nullptr);
    EXPECT_EQ(catalogue.byId(u"b"_s), &catalogue.sheets().at(1));
    EXPECT_EQ(catalogue.byId(u"c"_s), nullptr);
    EXPECT_EQ(catalogue.byId(u"B"_s), nullptr);
    EXPECT_EQ(catalogue.byId({}), nullptr);
}

TEST(Catalogue, FindsTheFirstOfAClass)
{
    const Catalogue catalogue({sheetOf(u"a"_s, FillerClass::ShortStrand), sheetOf(u"b"_s, FillerClass::MixedStrand),
                               sheetOf(u"c"_s, FillerClass::MixedStrand)});
    EXPECT_EQ(catalogue.byClass(FillerClass::MixedStrand), &catalogue.sheets().at(1));
    EXPECT_EQ(catalogue.byClass(FillerClass::FinishFine), nullptr);
    EXPECT_EQ(Catalogue().byClass(FillerClass::MixedStrand), nullptr);
}

TEST(FillerClasses, FourAreFibreReinforced)
{
    int reinforced = 0;
    for (const auto& entry : Codes<FillerClass>::table)
        reinforced += isFibreReinforced(entry.first) ? 1 : 0;
    EXPECT_EQ(reinforced, 4);
    EXPECT_FALSE(isFibreReinforced(FillerClass::FinishFine));
}

} // namespace
