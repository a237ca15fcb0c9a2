// SPDX-License-Identifier: GPL-3.0-or-later
// A tube's bead, calibrated, and the mix that goes by it. The masses are invented; what is held are invariants.
#include "repair/bead_book.h"

#include "repair/mixing.h"
#include "repair_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

std::vector<LaidBead> threeBeads()
{
    return {{millimetres(100), grams(2.2)}, {millimetres(100), grams(2.4)}, {millimetres(100), grams(2.3)}};
}

Event eventOf(const BeadCalibrated& bead, int second)
{
    Event event;
    event.repair = benchSubject();
    event.payload = bead;
    event.at = test::moment(second);
    return event;
}

ProductSheet sheetOf(const QString& id, double milligrams)
{
    ProductSheet sheet;
    sheet.id = id;
    sheet.beadMass = milligramsPerMillimetre(milligrams);
    sheet.density = kilogramsPerCubicMetre(1450);
    sheet.hardenerNominal = Fraction::ofHundred(2);
    return sheet;
}

TEST(BeadBook, HoldsTheNewestOfEachLotAndNoneOfAnother)
{
    BeadBook book;
    EXPECT_TRUE(book.empty());
    const auto first = beadCalibrated(u"H1"_s, threeBeads());
    ASSERT_TRUE(first);
    book.add(eventOf(*first, 10));
    BeadCalibrated second = *first;
    second.mean = milligramsPerMillimetre(25);
    book.add(eventOf(second, 20));
    ASSERT_TRUE(book.of(u"H1"_s));
    EXPECT_EQ(book.of(u"H1"_s)->bead, second);
    EXPECT_EQ(book.of(u"H1"_s)->at, test::moment(20));
    EXPECT_FALSE(book.of(u"H2"_s)) << "a nozzle belongs to its tube";
    EXPECT_FALSE(book.of({})) << "of a lot that was not told there is none";
}

TEST(BeadBook, RefusesWhatBelongsToNoTube)
{
    const auto none = beadCalibrated({}, threeBeads());
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().front().field, u"hardener_lot"_s);
    EXPECT_FALSE(beadCalibrated(u"H1"_s, {{millimetres(100), grams(2.2)}}));
}

TEST(BeadBook, ItsEventIsTheBenchsAndNoSupervisors)
{
    const BeadCalibrated bead = *beadCalibrated(u"H1"_s, threeBeads());
    EXPECT_EQ(subjectOf(bead), Subject::Bench);
    EXPECT_FALSE(supervisorActOf(bead));
    EXPECT_FALSE(isAgainstTheClock(bead));
}

TEST(Catalogue, TakesTheTubesBeadForEverySheetAndGivesTheirOwnBack)
{
    const Catalogue own({sheetOf(u"a"_s, 23), sheetOf(u"b"_s, 30)});
    Catalogue catalogue = own;
    const ProductSheet* first = catalogue.byId(u"a"_s);
    catalogue.setBead(milligramsPerMillimetre(25), own);
    EXPECT_EQ(catalogue.byId(u"a"_s), first) << "pointers to sheets go on to hold";
    EXPECT_EQ(catalogue.byId(u"a"_s)->beadMass, milligramsPerMillimetre(25));
    EXPECT_EQ(catalogue.byId(u"b"_s)->beadMass, milligramsPerMillimetre(25));
    catalogue.setBead(std::nullopt, own);
    EXPECT_EQ(catalogue.byId(u"a"_s)->beadMass, own.byId(u"a"_s)->beadMass);
    EXPECT_EQ(catalogue.byId(u"b"_s)->beadMass, own.byId(u"b"_s)->beadMass);
}

/// Invariant: whatever the nozzle, the bead that is shown lays the hardener that the batch needs.
TEST(LaidAgain, KeepsBothMassesAndLaysThemByTheBead)
{
    const Mix planned = mixForFiller(grams(151), sheetOf(u"a"_s, 23));
    for (const double nozzle : {10.0, 22.4, 23.0, 60.0}) {
        const ProductSheet now = sheetOf(u"a"_s, nozzle);
        const Mix laid = laidAgain(planned, now);
        EXPECT_EQ(laid.filler, planned.filler);
        EXPECT_EQ(laid.hardener, planned.hardener);
        EXPECT_NEAR(inGrams(laid.bead * now.beadMass), inGrams(planned.hardener), 1e-9);
        EXPECT_NEAR(inMillimetres(beadForPuddle(laid.puddle)), inMillimetres(laid.bead), 1e-6) << "common practice";
    }
}

TEST(LaidAgain, AThickerBeadIsShorterInASmallerPuddle)
{
    const Mix planned = mixForFiller(grams(151), sheetOf(u"a"_s, 23));
    const Mix laid = laidAgain(planned, sheetOf(u"a"_s, 46));
    EXPECT_NEAR(inMillimetres(laid.bead) * 2, inMillimetres(planned.bead), 1e-6);
    EXPECT_LT(laid.puddle, planned.puddle);
    EXPECT_GT(laid.puddleHeight, planned.puddleHeight);
}

} // namespace
} // namespace strandbench
