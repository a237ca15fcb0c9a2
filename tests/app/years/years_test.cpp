// SPDX-License-Identifier: GPL-3.0-or-later
// The log of many years: the same from the same seed, whole, foldable, and as busy as it promises; counted by SQL over
// the stored rows.
#include "years/years.h"

#include "exchange/sheets.h"
#include "repairlog/bulk_writer.h"
#include "repairlog/find_index.h"
#include "review/deviations.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr qint64 repairs = 1200; ///< some thirty days

/// Qt loads its SQL drivers only with an application; it lives as long as the process.
void needApplication()
{
    static int count = 1;
    static char name[] = "test_app_years";
    static char* arguments[] = {name, nullptr};
    static QCoreApplication* application = new QCoreApplication(count, arguments);
    Q_UNUSED(application)
}

class YearsTest : public testing::Test {
protected:
    YearsTest() { needApplication(); }

    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    years::YearsReport write(const QString& name, quint64 seed, int benches = 1) const
    {
        const auto report = years::writeYears({path(name), repairs, seed, benches});
        if (!report)
            throw std::runtime_error(report.error().detail.toStdString());
        return *report;
    }
    [[nodiscard]] VerifyReport verified(const QString& name) const
    {
        const auto report = verifyLog(path(name));
        if (!report)
            throw std::runtime_error(report.error().detail.toStdString());
        EXPECT_TRUE(report->clean) << qPrintable(report->breaksAt) << ": " << qPrintable(report->where);
        return *report;
    }
    /// The first column of every row, by SQLite's own library.
    [[nodiscard]] std::vector<std::string> rows(const QString& name, const char* sql) const
    {
        sqlite3* database = nullptr;
        std::vector<std::string> found;
        const auto take = [](void* to, int, char** cells, char**) {
            static_cast<std::vector<std::string>*>(to)->emplace_back(cells[0]);
            return 0;
        };
        EXPECT_EQ(sqlite3_open_v2(path(name).toUtf8(), &database, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(database, sql, take, &found, nullptr), SQLITE_OK) << sqlite3_errmsg(database);
        sqlite3_close(database);
        return found;
    }

private:
    QTemporaryDir m_folder;
};

TEST_F(YearsTest, TheSameSeedGivesTheSameLog)
{
    write(u"one"_s, 7);
    write(u"again"_s, 7);
    write(u"other"_s, 8);
    const VerifyReport one = verified(u"one"_s);
    EXPECT_EQ(one.heads, verified(u"again"_s).heads) << "the head is a hash over every byte of every event";
    EXPECT_NE(one.heads.front().hash, verified(u"other"_s).heads.front().hash);
    const char* summaries = "SELECT repair || job || panel || station || person || last_seq FROM summary";
    EXPECT_EQ(rows(u"one"_s, summaries), rows(u"again"_s, summaries));
}

TEST_F(YearsTest, TwelveEventsARepairAndFortyRepairsADay)
{
    const years::YearsReport report = write(u"log"_s, 1);
    const VerifyReport held = verified(u"log"_s);
    EXPECT_EQ(held.repairs, repairs);
    EXPECT_EQ(held.events, report.events);
    EXPECT_GE(double(held.events) / double(held.repairs), 10);
    EXPECT_LE(double(held.events) / double(held.repairs), 14);
    const auto aDay = rows(u"log"_s, "SELECT count(*) FROM event WHERE kind = 'taken_in' GROUP BY local_day");
    ASSERT_GE(aDay.size(), 20U);
    for (std::size_t i = 0; i + 2 < aDay.size(); ++i) { // the last is cut short, and reworks may come after it
        EXPECT_GE(std::stoi(aDay[i]), 30);
        EXPECT_LE(std::stoi(aDay[i]), 50);
    }
    EXPECT_EQ(rows(u"log"_s, "SELECT count(*) FROM summary WHERE open = 1"), std::vector{std::to_string(report.open)});
    EXPECT_EQ(rows(u"log"_s, "SELECT count(*) FROM event WHERE kind = 'rework_begun'"),
              std::vector{std::to_string(report.reworks)});
    EXPECT_GT(report.reworks, 0);
}

TEST_F(YearsTest, EveryRepairReadsAndTheyStrayInManyWays)
{
    write(u"log"_s, 1);
    auto log = RepairLog::open(path(u"log"_s), LogMode::ReadOnly);
    ASSERT_TRUE(log);
    std::set<DeviationKind> kinds;
    for (const std::string& id : rows(u"log"_s, "SELECT repair FROM summary")) {
        const auto events = (*log)->events(QUuid::fromString(QString::fromStdString(id)));
        ASSERT_TRUE(events);
        const auto record = recordOf(*events, demoCatalogue());
        ASSERT_TRUE(record) << id;
        const auto strayed = deviationsOf(*record, demoCatalogue());
        for (const Deviation& each : strayed)
            kinds.insert(each.kind);
    }
    for (const DeviationKind each :
         {DeviationKind::HardenerLow, DeviationKind::HardenerHigh, DeviationKind::SandsEarly,
          DeviationKind::PanelNearDewPoint, DeviationKind::EdgesAfterPredictedGel, DeviationKind::LotNotTold,
          DeviationKind::HardenerLotNotTold, DeviationKind::Parked, DeviationKind::PersonNotTold})
        EXPECT_TRUE(kinds.contains(each)) << qPrintable(codeOf(each));
}

TEST_F(YearsTest, SeveralBenchesHaveAChainEach)
{
    write(u"log"_s, 1, 3);
    const VerifyReport held = verified(u"log"_s);
    EXPECT_EQ(held.heads.size(), 3U);
    EXPECT_EQ(held.repairs, repairs);
}

TEST_F(YearsTest, ABenchGoesOnWithALogThatWasMade)
{
    write(u"log"_s, 1);
    {
        auto log = RepairLog::open(path(u"log"_s), LogMode::ReadWrite);
        ASSERT_TRUE(log) << qPrintable(log.error().detail);
        const Instant now{2'000'000'000'000, 1000, u"boot"_s, 0};
        ASSERT_TRUE((*log)->append({QUuid::createUuid(), u"Ada"_s, TakenIn{u"1"_s, u"Roof"_s}, now, {}}));
    }
    EXPECT_EQ(verified(u"log"_s).repairs, repairs + 1);
}

TEST_F(YearsTest, WhatIsNotFinishedIsTakenAwayAndNothingIsOverwritten)
{
    {
        const auto writer = BulkWriter::create(path(u"log"_s), QUuid::createUuid());
        ASSERT_TRUE(writer);
        EXPECT_TRUE(QFile::exists(path(u"log"_s)));
        const auto second = BulkWriter::create(path(u"log"_s), QUuid::createUuid());
        ASSERT_FALSE(second);
        EXPECT_EQ(second.error().trouble, LogTrouble::CannotOpen);
        EXPECT_TRUE(QFile::exists(path(u"log"_s)));
    }
    EXPECT_FALSE(QFile::exists(path(u"log"_s)));
}

/// Words lie in one piece once enough came in, and each search then gives what reading every repair gives.
TEST_F(YearsTest, TheIndexIsPutInOrderAndFindsWhatStandsThere)
{
    const auto report = years::writeYears({path(u"long"_s), 1800, 3, 1});
    ASSERT_TRUE(report);
    const auto log = RepairLog::open(path(u"long"_s), LogMode::ReadOnly);
    ASSERT_TRUE(log);
    {
        const auto index = FindIndex::open(path(u"long.find"_s));
        ASSERT_TRUE(index);
        int slices = 1;
        for (auto whole = (*index)->catchUp(**log, 5000); whole && !*whole; whole = (*index)->catchUp(**log, 5000))
            ++slices;
        EXPECT_GT(slices, 5) << "in slices, with the putting in order after them";
        for (const QString& word : {u"pinholes"_s, u"rust"_s, u"Ada"_s}) {
            const auto found = (*index)->search(word, 100'000);
            ASSERT_TRUE(found);
            const std::string read =
                "SELECT count(*) FROM found WHERE ' ' || people || ' ' || notes || ' ' || job || ' ' "
                "|| panel LIKE '%" +
                word.toStdString() + "%'";
            EXPECT_EQ(std::to_string(found->size()), rows(u"long.find"_s, read.c_str()).front()) << qPrintable(word);
            EXPECT_GT(found->size(), 0U);
        }
    }
    EXPECT_EQ(rows(u"long.find"_s, "SELECT count(DISTINCT segid) FROM found_words_idx").front(), "1");
}

} // namespace
} // namespace strandbench
