// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet that is typed field by field, written and read again.
#include "exchange/sheet_draft.h"

#include "exchange/sheet_csv.h"
#include "exchange/sheets.h"
#include "json_tools.h"
#include "random_sheet.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::Contains;
using testing::ElementsAre;
using testing::StartsWith;
using testing::UnorderedElementsAre;

namespace strandbench {
namespace {

const ProductSheet& mixed() { return *demoCatalogue().byClass(FillerClass::MixedStrand); }

// Invariant: the demo sheets stand in the order of the table, so that a file that is written reads like theirs.
TEST(SheetDraft, WritesADemoSheetAsItsFileHasIt)
{
    for (const ProductSheet& sheet : demoCatalogue().sheets())
        EXPECT_EQ(SheetDraft::of(sheet).toJson(), sheet.source) << sheet.id.toStdString();
}

// Invariant: what must be given is what a paper sheet states; a class is chosen before the first field.
TEST(SheetDraft, OfAClassLacksWhatAPaperSheetStates)
{
    EXPECT_THAT(faultsOf(SheetDraft::ofClass(FillerClass::LongStrand).sheet()),
                UnorderedElementsAre(StartsWith("id||Missing"), StartsWith("name||Missing"),
                                     StartsWith("density_g_per_ml||Missing"), StartsWith("working_min||Missing"),
                                     StartsWith("sanding_min||Missing"), StartsWith("reference_c||Missing"),
                                     StartsWith("greatest_lift_mm||Missing"),
                                     StartsWith("hardener_percent.nominal||Missing")));
    EXPECT_THAT(faultsOf(SheetDraft::ofClass(FillerClass::FinishFine).sheet()),
                Contains(StartsWith("finish_in_all_mm||Missing")));
}

TEST(SheetDraft, WhatIsAssumedIsMarkedUntilItIsSet)
{
    SheetDraft draft = SheetDraft::ofClass(FillerClass::LongStrand);
    EXPECT_TRUE(draft.isAssumed(u"conductivity_w_per_m_k"_s));
    EXPECT_FALSE(draft.isAssumed(u"density_g_per_ml"_s));
    draft.set(u"conductivity_w_per_m_k"_s, 0.35);
    EXPECT_FALSE(draft.isAssumed(u"conductivity_w_per_m_k"_s)) << "the same figure, but now it was told";
    EXPECT_FALSE(SheetDraft::of(mixed()).isAssumed(u"conductivity_w_per_m_k"_s));
}

TEST(SheetDraft, AnotherClassTakesItsFieldsAlong)
{
    SheetDraft draft = SheetDraft::ofClass(FillerClass::FinishFine);
    EXPECT_EQ(draft.value(u"sanding_test_mm"_s).toDouble(), 1);
    draft.set(u"finish_in_all_mm"_s, 3);
    draft.set(u"filler_class"_s, u"short_strand"_s);
    EXPECT_FALSE(draft.holds(u"finish_in_all_mm"_s));
    EXPECT_EQ(draft.value(u"sanding_test_mm"_s).toDouble(), 3);
    draft.set(u"sanding_test_mm"_s, 2.5);
    draft.set(u"filler_class"_s, u"finish_fine"_s);
    EXPECT_EQ(draft.value(u"sanding_test_mm"_s).toDouble(), 2.5) << "what was told stays";
}

// Each field of the table says what is wrong with it, by the path that the editor knows it by.
TEST(SheetDraft, EachNumberFaultsAtItsOwnField)
{
    for (const SheetField& field : sheetFields()) {
        if (field.kind != SheetFieldKind::Number && field.kind != SheetFieldKind::Whole)
            continue;
        SheetDraft draft = SheetDraft::of(
            belongs(field, mixed().fillerClass) ? mixed() : *demoCatalogue().byClass(FillerClass::FinishFine));
        draft.set(field.path, 1e12);
        EXPECT_THAT(faultsOf(draft.sheet()),
                    Contains(StartsWith(field.path.toStdString() + "|1000000000000|OutOfRange")))
            << field.path.toStdString();
        draft.set(field.path, QJsonValue::Undefined);
        const bool missing = !draft.sheet().has_value();
        EXPECT_EQ(missing, !field.mayBeLeftOut) << field.path.toStdString();
    }
}

// Property: every valid sheet survives being typed anew, whatever it holds; only the bytes may differ.
TEST(SheetDraft, EveryValidSheetSurvivesDraftJsonAndCsv)
{
    std::mt19937 dice(20261127);
    for (int i = 0; i < 400; ++i) {
        const SheetDraft draft = test::randomSheet(dice);
        const auto sheet = draft.sheet();
        ASSERT_TRUE(sheet) << faultsOf(sheet).front() << '\n' << draft.toJson().toStdString();
        const SheetDraft again = SheetDraft::of(*sheet);
        EXPECT_EQ(again.toJson(), draft.toJson());
        const auto fromCsv = readSheetCsv(sheetToCsv(*sheet));
        ASSERT_TRUE(fromCsv) << faultsOf(fromCsv).front() << '\n' << sheetToCsv(*sheet).toStdString();
        EXPECT_EQ(fromCsv->source, sheet->source);
        EXPECT_EQ(fromCsv->hash, sheet->hash);
        EXPECT_EQ(fromCsv->cells, sheet->cells);
    }
}

TEST(SheetDraft, KeepsTheSheetsOwnCells)
{
    SheetDraft draft = SheetDraft::of(mixed());
    draft.setRest({{u"cells"_s, QJsonObject{{u"smc"_s, QJsonObject{{u"suitability"_s, u"no"_s},
                                                                   {u"reason"_s, u"tried: it peels"_s}}}}}});
    const auto sheet = draft.sheet();
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->cells.at(u"smc"_s).suitability, Suitability::No);
    EXPECT_EQ(SheetDraft::of(*sheet).rest(), draft.rest());
}

TEST(SheetIds, FollowFromTheName)
{
    const QSet<QString> none;
    EXPECT_EQ(sheetIdFor(u"Short strand, dense"_s, none), u"short_strand_dense"_s);
    EXPECT_EQ(sheetIdFor(u"Fibré à fibres longues N° 3"_s, none), u"fibre_a_fibres_longues_n_3"_s);
    EXPECT_EQ(sheetIdFor(u"  …  "_s, none), u"product"_s);
    EXPECT_EQ(sheetIdFor(u"Shop"_s, {u"shop"_s, u"shop_2"_s}), u"shop_3"_s);
    const QString longest(60, u'x');
    EXPECT_EQ(sheetIdFor(longest, none).size(), 40);
    EXPECT_EQ(sheetIdFor(longest, {QString(40, u'x')}), QString(38, u'x') + u"_2"_s);
}

} // namespace
} // namespace strandbench
