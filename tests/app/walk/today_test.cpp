// SPDX-License-Identifier: GPL-3.0-or-later
// Today's work, the record of a repair and its job sheet, by taps.
#include "bench_fixture.h"
#include "shown.h"

#include "screens/paper/sheet_screen.h"
#include "words/deviation_words.h"
#include "words/event_words.h"

#include <QDir>
#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Today : public BenchTest {
protected:
    void SetUp() override { qputenv("HOME", QFile::encodeName(folder())); } // the documents of this test
    void TearDown() override { qputenv("HOME", m_home); }

    /// The texts of all rows of the record, page by page.
    QStringList rowsShown(const QString& stem)
    {
        QStringList texts;
        for (;;) {
            for (const FitLabel* each : window().screen()->findChildren<FitLabel*>())
                if (each->isVisible() && each->objectName().startsWith(stem) && each->objectName().endsWith(u"_text"_s))
                    texts << each->text();
            const QAbstractButton* more = bench().thumb().find(u"rows_more"_s);
            if (!more || !more->isEnabled())
                return texts;
            tap(u"rows_more"_s);
        }
    }

private:
    QByteArray m_home = qgetenv("HOME");
};

TEST_F(Today, ListsWhatIsOpenAndWhatWasHandedOver)
{
    open();
    walkTo(skirtPanel(), Station::Done);
    window().showHome();
    bench().thumb().settle();
    walkTo(wheelArch(), Station::Parked);
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    ASSERT_EQ(screen(), u"screen_today"_s);
    waitFor(u"today_row_1"_s);
    const QString first = shown(window(), u"today_row_0"_s);
    EXPECT_TRUE(first.contains(u"4421"_s) && first.contains(u"Skirt panel"_s)) << first.toStdString();
    EXPECT_TRUE(shown(window(), u"today_row_1"_s).contains(u"4402"_s));
    const auto* row = qobject_cast<TapButton*>(bench().thumb().find(u"today_row_0"_s));
    ASSERT_NE(row, nullptr);
    EXPECT_TRUE(row->secondLine().contains(u"Handed over"_s)) << row->secondLine().toStdString();
    EXPECT_TRUE(row->secondLine().contains(u"Ada"_s));
    EXPECT_TRUE(row->secondLine().contains(u"deviation"_s));
    EXPECT_EQ(bench().thumb().find(u"today_row_2"_s), nullptr);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_home"_s);
}

TEST_F(Today, ShowsEveryActOfARepairInOrder)
{
    open();
    walkTo(skirtPanel(), Station::Done);
    close();
    open(); // handed over before this start: the bench no longer holds it, the log does
    tap(u"today"_s);
    waitFor(u"today_row_0"_s);
    tap(u"today_row_0"_s);
    ASSERT_EQ(screen(), u"screen_record"_s);
    waitFor(u"answer_way_on"_s);
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    const auto day = (*opened)->repairsOfDay(localDay(bench().clock().now()));
    const auto events = (*opened)->events(day->at(0).repair);
    const auto record = recordOf(*events, bench().bench().planning().catalogue);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    QStringList expected;
    for (const EventLine& each : eventLines(*record, words))
        expected << each.text;
    ASSERT_GT(expected.size(), 40);
    const auto deviations =
        deviationsOf(*record, bench().bench().planning().catalogue, limitsFrom(bench().bench().assumptions()));
    ASSERT_FALSE(deviations.empty());
    EXPECT_EQ(shown(window(), u"deviation_0_text"_s), deviationText(deviations.front(), words))
        << "what deviates stands on top";
    EXPECT_EQ(rowsShown(u"event_"_s), expected);
    tap(u"rows_before"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_today"_s);
}

TEST_F(Today, WritesTheJobSheetAndNeverOverOne)
{
    open();
    walkTo(skirtPanel(), Station::Spread);
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    waitFor(u"today_row_0"_s);
    tap(u"today_row_0"_s);
    waitFor(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_sheet"_s);
    waitFor(u"sheet_folder_0"_s);
    tap(u"sheet_folder_0"_s);
    const QString stem = sheetFolders().front().path + u"/job-4421-2026-09-14"_s;
    ASSERT_TRUE(stem.startsWith(folder())) << "this test writes to its own folder alone: " << stem.toStdString();
    EXPECT_TRUE(shown(window(), u"sheet_told"_s).contains(stem + u".pdf"_s));
    tap(u"paper_letter"_s);
    tap(u"sheet_folder_0"_s);
    EXPECT_TRUE(shown(window(), u"sheet_told"_s).contains(stem + u"-2.pdf"_s));
    for (const QString& path : {stem + u".pdf"_s, stem + u"-2.pdf"_s}) {
        QFile pdf(path);
        ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << path.toStdString();
        EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    }
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_record"_s);
}

TEST_F(Today, SaysWhyTheJobSheetWasNotWritten)
{
    open();
    walkTo(wheelArch(), Station::Parked);
    QFile inTheWay(sheetFolders().front().path); // a file where the folder would be
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    window().showHome();
    bench().thumb().settle();
    tap(u"today"_s);
    waitFor(u"today_row_0"_s);
    tap(u"today_row_0"_s);
    waitFor(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    waitFor(u"sheet_folder_0"_s);
    tap(u"sheet_folder_0"_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"could not be written"_s));
    EXPECT_EQ(shown(window(), u"sheet_told"_s), QString());
}

} // namespace
} // namespace strandbench::test
