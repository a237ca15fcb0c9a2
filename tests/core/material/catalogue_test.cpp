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

ProductSheet versionOf(const QString& id, FillerClass filler, const QByteArray& hash)
{
    ProductSheet sheet = sheetOf(id, filler);
    sheet.hash = hash;
    return sheet;
}

const Catalogue& twoVersions()
{
    static const Catalogue catalogue(
        {versionOf(u"a"_s, FillerClass::ShortStrand, "new"), versionOf(u"b"_s, FillerClass::ShortStrand, "only")},
        {versionOf(u"a"_s, FillerClass::ShortStrand, "old"), versionOf(u"gone"_s, FillerClass::LongStrand, "first"),
         versionOf(u"gone"_s, FillerClass::LongStrand, "last")});
    return catalogue;
}

TEST(Catalogue, FindsThatVeryVersionElseTheOneInUse)
{
    EXPECT_EQ(twoVersions().version(u"a"_s, "old")->hash, "old");
    EXPECT_EQ(twoVersions().version(u"a"_s, "new")->hash, "new");
    EXPECT_EQ(twoVersions().version(u"a"_s, "lost")->hash, "new");
    EXPECT_EQ(twoVersions().version(u"a"_s, {})->hash, "new");
    EXPECT_EQ(twoVersions().version(u"c"_s, "old"), nullptr);
}

TEST(Catalogue, OneLaidAsideIsFoundByNameAndNeverChosen)
{
    EXPECT_EQ(twoVersions().byId(u"gone"_s)->hash, "last") << "the newest of it";
    EXPECT_EQ(twoVersions().byClass(FillerClass::LongStrand), nullptr);
}

TEST(Catalogue, GoesOnWithWhatWasPlanned)
{
    const Catalogue then = twoVersions().goingOnWith({{u"b"_s, "only"}, {u"a"_s, "old"}, {u"nobody's"_s, "x"}});
    ASSERT_EQ(then.sheets().size(), 2U);
    EXPECT_EQ(then.byClass(FillerClass::ShortStrand)->id, u"b"_s);
    EXPECT_EQ(then.byId(u"a"_s)->hash, "old");
    EXPECT_EQ(then.version(u"a"_s, "new")->hash, "new") << "the newer one is still known";
    const Catalogue aside = twoVersions().goingOnWith({{u"gone"_s, "first"}});
    EXPECT_EQ(aside.byClass(FillerClass::LongStrand)->hash, "first") << "laid aside, and the repair goes on with it";
    EXPECT_EQ(aside.byClass(FillerClass::ShortStrand)->hash, "new");
}

} // namespace
