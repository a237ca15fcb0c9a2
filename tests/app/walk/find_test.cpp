// SPDX-License-Identifier: GPL-3.0-or-later
// Found long afterwards by taps: a repair by words and by a lot, a lot's batches, the recall list as files.
#include "bench_fixture.h"
#include "shown.h"

#include "screens/job/in_hand.h"

#include <QDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString product = u"demo_mixed_strand"_s;

Settings withLots()
{
    Settings settings = demoSettings();
    settings.lots[product] = {u"F-77"_s};
    settings.lots[hardenerKey] = {u"H5"_s};
    return settings;
}

class FindOnTheBench : public BenchTest {
protected:
    void toFind()
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"today"_s);
        tap(u"find"_s);
        ASSERT_EQ(screen(), u"screen_find"_s);
    }
    /// As a scanner or a keyboard gives it.
    void look(const QString& text, const QString& awaited)
    {
        toFind();
        ASSERT_TRUE(window().screen()->scanned(text));
        bench().thumb().settle();
        ASSERT_EQ(screen(), u"screen_found"_s);
        if (!awaited.isEmpty())
            waitFor(awaited);
    }
};

TEST_F(FindOnTheBench, ARepairIsFoundByItsWordsAndItsRecordOpens)
{
    open(withLots());
    walkTo(skirtPanel(), Station::Spread);
    look(u"44 skirt"_s, u"found_row_0"_s);
    EXPECT_TRUE(shown(window(), u"found_row_0"_s).contains(u"4421"_s));
    tap(u"found_row_0"_s);
    EXPECT_EQ(screen(), u"screen_record"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_found"_s) << "back to what was found";
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_find"_s);
}

TEST_F(FindOnTheBench, TheWordsMayBeTappedIn)
{
    open(withLots());
    walkTo(skirtPanel(), Station::Spread);
    toFind();
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s)) << "nothing is looked for yet";
    tap(u"letter_0"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_found"_s);
}

TEST_F(FindOnTheBench, WhatNobodyHasIsSaidAndFoundOnceItIsThere)
{
    open(withLots());
    look(u"4421"_s, {});
    EXPECT_FALSE(waitText(u"found_none"_s).isEmpty());
    window().showHome();
    bench().thumb().settle();
    walkTo(skirtPanel(), Station::Prepare);
    look(u"4421"_s, u"found_row_0"_s);
    EXPECT_TRUE(shown(window(), u"found_none"_s).isEmpty());
}

TEST_F(FindOnTheBench, ALotLeadsToEveryBatchOfItInTwoTapsAndIsWrittenAsFiles)
{
    Settings settings = withLots();
    settings.backupFolder = folder(); // where files are offered to go
    open(settings);
    walkTo(skirtPanel(), Station::HandOver);
    const Repair& repair = *bench().repair(u"4421"_s);
    std::size_t ofLot = 0;
    for (const BatchRun& each : repair.runs)
        ofLot += each.mixed.lot == u"F-77"_s ? 1U : 0U;
    ASSERT_GT(ofLot, 0U);
    look(u"F-77"_s, u"found_lot_0"_s);
    tap(u"found_lot_0"_s);
    ASSERT_EQ(screen(), u"screen_lot_trace"_s);
    waitFor(u"trace_row_0"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(u"1 repair"_s)) << shown(window(), u"sentence"_s).toStdString();
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s); // into the folder that is shown
    EXPECT_EQ(screen(), u"screen_lot_trace"_s);
    const QString told = shown(window(), u"trace_told"_s);
    ASSERT_TRUE(told.contains(u"CSV"_s)) << told.toStdString();
    const QString stem = QDir(folder()).filePath(told.mid(told.indexOf(u": "_s) + 2));
    QFile csv(stem + u".csv"_s);
    QFile pdf(stem + u".pdf"_s);
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly)) << stem.toStdString();
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5).startsWith("%PDF-"));
    const QByteArrayList lines = csv.readAll().split('\n');
    EXPECT_EQ(lines.size(), qsizetype(ofLot) + 2) << "a heading, the batches, the end of the last line";
    EXPECT_TRUE(lines.at(1).startsWith("demo_mixed_strand,F-77,"));
    tap(u"trace_row_0"_s);
    EXPECT_EQ(screen(), u"screen_record"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_lot_trace"_s);
}

TEST_F(FindOnTheBench, TheShelfLeadsThereToo)
{
    open(withLots());
    walkTo(skirtPanel(), Station::Spread);
    window().showHome();
    bench().thumb().settle();
    tap(u"stock"_s);
    ASSERT_TRUE(window().screen()->scanned(u"F-77"_s)); // not booked in yet
    bench().thumb().settle();
    tap(u"product_"_s + product);
    tap(u"answer_way_on"_s);
    for (const QString& figure : {u"stock_packages"_s, u"stock_each"_s})
        tap(figure + u"_plus"_s);
    tap(u"answer_way_on"_s);
    tap(u"stock_not_dated"_s);
    tap(u"stock_moves"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_lot_trace"_s);
    waitFor(u"trace_row_0"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_stock_moves"_s);
}

} // namespace
} // namespace strandbench::test
