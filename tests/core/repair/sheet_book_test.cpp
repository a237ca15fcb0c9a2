// SPDX-License-Identifier: GPL-3.0-or-later
// What was kept and laid aside becomes the catalogue that is planned with. All checks: invariants of the book.
#include "repair/sheet_book.h"

#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

ProductSheet sheetOf(const QString& id, const QByteArray& hash, bool demo = false,
                     FillerClass filler = FillerClass::MixedStrand)
{
    ProductSheet sheet;
    sheet.id = id;
    sheet.hash = hash;
    sheet.demo = demo;
    sheet.fillerClass = filler;
    return sheet;
}

const Catalogue& carried()
{
    static const Catalogue demo(
        {sheetOf(u"demo_mixed"_s, "demo", true), sheetOf(u"demo_smooth"_s, "demo", true, FillerClass::FinishSmooth)});
    return demo;
}

class Sheets : public ::testing::Test {
protected:
    void keep(const ProductSheet& sheet, const QString& person = u"Ana"_s)
    {
        Event event;
        event.person = person;
        event.at = test::moment(++m_second);
        event.payload = SheetKept{sheet.id, sheet.hash};
        book.add(event, &sheet);
    }
    void layAside(const QString& id)
    {
        Event event;
        event.payload = SheetLaidAside{id};
        book.add(event);
    }
    [[nodiscard]] QStringList inUse() const
    {
        QStringList names;
        const Catalogue catalogue = book.catalogue(carried());
        for (const ProductSheet& each : catalogue.sheets())
            names << each.id + u':' + QString::fromLatin1(each.hash);
        return names;
    }
    SheetBook book;

private:
    int m_second = 0;
};

TEST_F(Sheets, WithoutAnyTheCarriedOnesAreInUse)
{
    EXPECT_EQ(inUse(), QStringList({u"demo_mixed:demo"_s, u"demo_smooth:demo"_s}));
    EXPECT_TRUE(book.products().empty());
}

TEST_F(Sheets, TheShopsOwnComeFirstTheNewestVersionOfEach)
{
    keep(sheetOf(u"shop"_s, "1"));
    keep(sheetOf(u"other"_s, "1"));
    keep(sheetOf(u"shop"_s, "2"), u"Renée"_s);
    EXPECT_EQ(inUse(), QStringList({u"shop:2"_s, u"other:1"_s, u"demo_mixed:demo"_s, u"demo_smooth:demo"_s}));
    const Catalogue catalogue = book.catalogue(carried());
    EXPECT_EQ(catalogue.byClass(FillerClass::MixedStrand)->id, u"shop"_s);
    EXPECT_EQ(catalogue.version(u"shop"_s, "1")->hash, "1");
    const auto versions = book.versions(u"shop"_s);
    ASSERT_EQ(versions.size(), 2U);
    EXPECT_EQ(versions.front().person, u"Renée"_s) << "the newest first";
    EXPECT_EQ(versions.back().sheet.hash, "1");
}

TEST_F(Sheets, ADemoSheetOfTheShopsStandsAfterWhatIsNone)
{
    keep(sheetOf(u"shop"_s, "1"));
    keep(sheetOf(u"tried"_s, "1", true));
    EXPECT_EQ(inUse(), QStringList({u"shop:1"_s, u"tried:1"_s, u"demo_mixed:demo"_s, u"demo_smooth:demo"_s}));
}

TEST_F(Sheets, WhatIsLaidAsideIsPlannedWithNoMoreAndStaysKnown)
{
    keep(sheetOf(u"shop"_s, "1"));
    layAside(u"shop"_s);
    layAside(u"nobody's"_s);
    EXPECT_EQ(inUse(), QStringList({u"demo_mixed:demo"_s, u"demo_smooth:demo"_s}));
    EXPECT_FALSE(book.inUse(u"shop"_s));
    EXPECT_EQ(book.catalogue(carried()).version(u"shop"_s, "1")->hash, "1");
    EXPECT_EQ(book.products(), std::vector<QString>{u"shop"_s});
    keep(sheetOf(u"shop"_s, "2"));
    EXPECT_TRUE(book.inUse(u"shop"_s));
    EXPECT_EQ(book.catalogue(carried()).byId(u"shop"_s)->hash, "2");
}

TEST_F(Sheets, WhatIsOnlyKnownIsFoundByItsVersionAlone)
{
    book.alsoKnown(sheetOf(u"demo_mixed"_s, "of an earlier program", true));
    const Catalogue catalogue = book.catalogue(carried());
    EXPECT_EQ(catalogue.byId(u"demo_mixed"_s)->hash, "demo");
    EXPECT_EQ(catalogue.version(u"demo_mixed"_s, "of an earlier program")->hash, "of an earlier program");
}

} // namespace
} // namespace strandbench
