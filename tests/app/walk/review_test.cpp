// SPDX-License-Identifier: GPL-3.0-or-later
// A day looked through by taps: what needs eyes, a repair's timeline and lots, signing off, returning, its rework, the
// day's sheets as files.
#include "bench_fixture.h"
#include "shown.h"

#include "screens/job/in_hand.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString pin = u"271828"_s;

class Review : public BenchTest {
protected:
    void openWithPin()
    {
        Settings settings = demoSettings();
        settings.lots[u"demo_mixed_strand"_s] = {u"F-77"_s};
        settings.lots[hardenerKey] = {u"H5"_s};
        settings.backupFolder = folder();
        open(settings);
        ASSERT_TRUE(bench().door().set(pin).empty());
    }
    void toReview()
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"today"_s);
        tap(u"review"_s);
        ASSERT_EQ(screen(), u"screen_review"_s);
        waitFor(u"review_row_0"_s);
    }
    void givePin()
    {
        ASSERT_EQ(screen(), u"screen_pin"_s);
        for (const QChar digit : pin)
            tap(u"key_"_s + digit);
        tap(u"answer_way_on"_s);
        bench().thumb().settle();
    }
    [[nodiscard]] QString row(int index) { return shown(window(), u"review_row_%1"_s.arg(index)); }
    [[nodiscard]] std::vector<RepairSummary> openInLog() const
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        return *(*opened)->openRepairs();
    }
    /// From home on, whatever was shown before.
    void walkHomeTo(const DemoJob& job, Station station)
    {
        window().showHome();
        bench().thumb().settle();
        walkTo(job, station);
    }
    /// The one repair of today.
    [[nodiscard]] QUuid repairOfToday()
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
        return (*opened)->repairsOfDay(localDay(bench().clock().now()))->front().repair;
    }
};

TEST_F(Review, OneIsSignedOffAndOneReturnedAndTheDayIsLookedThrough)
{
    openWithPin();
    walkTo(skirtPanel(), Station::Done);
    DemoJob second = skirtPanel();
    second.job = u"4422"_s;
    walkHomeTo(second, Station::Done);
    toReview();
    EXPECT_TRUE(shown(window(), u"sentence"_s).startsWith(u"2 "_s)) << shown(window(), u"sentence"_s).toStdString();
    EXPECT_TRUE(shown(window(), u"review_figures"_s).contains(u"2 repairs"_s));

    tap(u"answer_way_on"_s); // the next to look through
    ASSERT_EQ(screen(), u"screen_record"_s);
    waitFor(u"closing"_s);
    const QString first = shown(window(), u"context"_s);
    tap(u"closing"_s);
    waitFor(u"sign_off"_s);
    EXPECT_FALSE(waitText(u"lacking_0_text"_s).isEmpty()) << "a walk without photos lacks them";
    tap(u"sign_off"_s);
    givePin();
    ASSERT_EQ(screen(), u"screen_review"_s) << "on through the day";
    waitFor(u"review_row_0"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).startsWith(u"1 "_s));

    tap(u"answer_way_on"_s);
    waitFor(u"closing"_s);
    EXPECT_NE(shown(window(), u"context"_s), first) << "the other one";
    tap(u"closing"_s);
    waitFor(u"return_it"_s);
    tap(u"return_it"_s);
    ASSERT_EQ(screen(), u"screen_return_why"_s);
    tap(u"return_pinholes"_s);
    givePin();
    waitFor(u"review_row_0"_s);
    EXPECT_FALSE(bench().thumb().tap(u"answer_way_on"_s)) << "all is looked through";
    ASSERT_EQ(openInLog().size(), 1U);
    EXPECT_EQ(openInLog().front().station, u"returned"_s);

    tap(u"review_row_0"_s); // one of its lots is suspect: the recall list
    waitFor(u"lots"_s);
    tap(u"lots"_s);
    waitFor(u"repair_lot_0"_s);
    tap(u"repair_lot_0"_s);
    waitFor(u"trace_row_0"_s);
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(u"2 repairs"_s)) << "both took of it";
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s); // into the folder that is shown
    const QString told = waitText(u"trace_told"_s);
    ASSERT_TRUE(told.contains(u"CSV"_s)) << told.toStdString();
    const QString stem = QDir(folder()).filePath(told.mid(told.indexOf(u": "_s) + 2));
    EXPECT_GT(QFileInfo(stem + u".csv"_s).size(), 0);
    EXPECT_GT(QFileInfo(stem + u".pdf"_s).size(), 0);
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Review, WhatIsReturnedIsOnTheRailAndItsReworkIsLinked)
{
    openWithPin();
    walkTo(skirtPanel(), Station::Done);
    const QUuid returned = repairOfToday();
    open(bench().window().settings()); // the bench that returns it has not seen the work
    toReview();
    tap(u"review_row_0"_s);
    waitFor(u"closing"_s);
    tap(u"closing"_s);
    waitFor(u"return_it"_s);
    tap(u"return_it"_s);
    tap(u"return_contour"_s);
    givePin();
    window().showHome();
    waitFor(u"job_card_0"_s);
    tap(u"job_card_0"_s);
    ASSERT_EQ(screen(), u"screen_returned"_s);
    EXPECT_TRUE(allShown(window()).join(u'\n').contains(u"The contour is not true"_s));
    tap(u"answer_way_on"_s);
    bench().thumb().settle();
    ASSERT_EQ(openInLog().size(), 1U) << "the returned one is closed by its rework";
    const QUuid rework = openInLog().front().repair;
    EXPECT_NE(rework, returned);
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    const auto events = (*opened)->events(rework);
    EXPECT_EQ(std::get<TakenIn>(events->front().payload).reworkOf, returned);
    EXPECT_EQ(std::get<ReworkBegun>((*opened)->events(returned)->back().payload).rework, rework);
    EXPECT_TRUE(screen().startsWith(u"screen_"_s));
    EXPECT_EQ(window().presentRepair(), rework) << "and it is what is worked at";
    close();
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(Review, ARepairOpensToItsTimelineAndItsLots)
{
    openWithPin();
    walkTo(skirtPanel(), Station::Done);
    toReview();
    tap(u"review_row_0"_s);
    waitFor(u"timeline"_s);
    tap(u"timeline"_s);
    ASSERT_EQ(screen(), u"screen_timeline"_s);
    waitFor(u"zoom"_s);
    tap(u"zoom"_s);
    tap(u"answer_back"_s);
    waitFor(u"lots"_s);
    tap(u"lots"_s);
    waitFor(u"repair_lot_0"_s);
    tap(u"repair_lot_0"_s);
    ASSERT_EQ(screen(), u"screen_lot_trace"_s) << "from a repair to its lot's others in two taps";
    waitFor(u"trace_row_0"_s);
    tap(u"trace_row_0"_s);
    ASSERT_EQ(screen(), u"screen_record"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_review"_s) << "not in a round";
}

TEST_F(Review, TheDayIsNarrowedAndAnotherDayIsLookedAt)
{
    openWithPin();
    walkTo(skirtPanel(), Station::Done);
    DemoJob second = skirtPanel();
    second.job = u"4422"_s;
    second.answers[u"substrate"_s] = u"carbon"_s;
    walkHomeTo(second, Station::Decide);
    toReview();
    waitFor(u"review_row_1"_s);
    tap(u"narrow"_s);
    tap(u"narrow_substrate"_s);
    waitFor(u"narrow_value_1"_s);
    tap(u"narrow_value_0"_s);
    ASSERT_EQ(screen(), u"screen_review"_s);
    waitFor(u"review_row_0"_s);
    EXPECT_EQ(bench().thumb().find(u"review_row_1"_s), nullptr);
    tap(u"narrow"_s);
    tap(u"narrow_nothing"_s);
    waitFor(u"review_row_1"_s);
    EXPECT_FALSE(bench().thumb().tap(u"day_after"_s)) << "tomorrow has not been";
    tap(u"day_before"_s);
    EXPECT_FALSE(waitText(u"review_none"_s).isEmpty());
    tap(u"day_after"_s);
    waitFor(u"review_row_1"_s);
}

TEST_F(Review, TheDaysSheetsAreWrittenAsThreeFiles)
{
    QStandardPaths::setTestModeEnabled(true);
    const QDir documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    ASSERT_TRUE(QDir().mkpath(documents.path()));
    openWithPin();
    walkTo(skirtPanel(), Station::Done);
    toReview();
    const QString stem = u"day-"_s + localDay(bench().clock().now());
    const QStringList before = documents.entryList({stem + u"*"_s});
    tap(u"day_files"_s);
    ASSERT_EQ(screen(), u"screen_day_sheets"_s);
    ASSERT_TRUE(QTest::qWaitFor([&] { return bench().thumb().tap(u"sheet_folder_0"_s); }));
    const QString told = waitText(u"sheet_told"_s);
    ASSERT_TRUE(told.contains(stem)) << told.toStdString();
    const QString path = told.mid(told.indexOf(u'/'));
    const QString base = path.left(path.size() - 4);
    QFile csv(base + u".csv"_s);
    QFile json(base + u".json"_s);
    QFile pdf(path);
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly)) << csv.fileName().toStdString();
    ASSERT_TRUE(json.open(QIODevice::ReadOnly));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5).startsWith("%PDF-"));
    EXPECT_EQ(csv.readAll().split('\n').size(), 3) << "a heading, one repair, the end of the last line";
    const QJsonObject day = QJsonDocument::fromJson(json.readAll()).object();
    EXPECT_EQ(day[u"repairs"_s].toArray().size(), 1);
    EXPECT_EQ(day[u"repairs"_s][0][u"job"_s].toString(), u"4421"_s);
    for (QFile* each : {&csv, &json, &pdf})
        EXPECT_TRUE(each->remove());
}

} // namespace
} // namespace strandbench::test
