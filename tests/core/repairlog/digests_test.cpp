// SPDX-License-Identifier: GPL-3.0-or-later
// Digests beside the log: whole through their bytes, kept until their repair goes on or the mark changes, by day and by
// lot as the log's own rows have them.
#include "two_logs.h"

#include "repairlog/digest_bytes.h"
#include "repairlog/find_index.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

RepairDigest fullDigest()
{
    RepairDigest digest;
    digest.repair = QUuid::createUuid();
    digest.bench = u"bench 1"_s;
    digest.job = u"4421"_s;
    digest.panel = u"skirt panel"_s;
    digest.substrate = Substrate::Smc;
    digest.station = Station::Done;
    digest.standing = Standing::Returned;
    digest.people = {u"Ada"_s, u"Renée"_s};
    digest.takenInUtcMs = 1'768'000'000'123;
    digest.handedOverDay = u"2026-01-09"_s;
    digest.reworkOf = QUuid::createUuid();
    digest.deviations = {DeviationKind::Overridden, DeviationKind::PhotoMissing, DeviationKind::ClockSetBack};
    DigestBatch batch;
    batch.batch = {true, 3};
    batch.sheetId = u"shop_mixed"_s;
    batch.lot = u"F-77"_s;
    batch.hardenerLot = u"H 5"_s;
    batch.planned = grams(60.1);
    batch.mixed = grams(72.3);
    batch.hardener = grams(1.45);
    batch.predictedGel = seconds(280.5);
    batch.observedGel = seconds(301);
    batch.utcMs = 1'768'000'600'000;
    digest.batches = {batch, DigestBatch{}};
    digest.parts = {{JobPart::Lay, minutes(3), minutes(4.5)}, {JobPart::Finish, minutes(20), minutes(18)}};
    return digest;
}

TEST(DigestBytes, AreReadBackAsTheyWereWritten)
{
    const RepairDigest full = fullDigest();
    EXPECT_EQ(digestFrom(digestBytes(full)), full);
    EXPECT_EQ(digestFrom(digestBytes({})), RepairDigest{});
    RepairDigest unreadable;
    unreadable.readable = false;
    EXPECT_EQ(digestFrom(digestBytes(unreadable)), unreadable);
}

TEST(DigestBytes, ACutOrALongerOneIsNone)
{
    const QByteArray bytes = digestBytes(fullDigest());
    for (qsizetype length = 0; length < bytes.size(); ++length)
        EXPECT_EQ(digestFrom(bytes.first(length)), std::nullopt) << length;
    EXPECT_EQ(digestFrom(bytes + 'x'), std::nullopt);
}

class DigestsTest : public test::TwoLogs {
protected:
    DigestsTest() : m_log(open())
    {
        auto opened = FindIndex::open(findIndexPath(path()));
        if (!opened)
            throw std::runtime_error("no index");
        m_index = *std::move(opened);
    }
    void catchUp()
    {
        for (;;) {
            const auto whole = m_index->catchUp(*m_log, 1000);
            ASSERT_TRUE(whole);
            if (*whole)
                return;
        }
    }
    QUuid takeIn(const QString& job, int atSeconds)
    {
        const QUuid repair = QUuid::createUuid();
        EXPECT_TRUE(m_log->append(draft(repair, TakenIn{job, u"door"_s}, atSeconds)));
        return repair;
    }
    static RepairDigest named(const QUuid& repair, const QString& job)
    {
        RepairDigest digest;
        digest.repair = repair;
        digest.job = job;
        return digest;
    }
    std::set<QUuid> undigested(const QString& mark) const
    {
        const auto found = m_index->undigested(u"0000"_s, u"9999"_s, mark, 1000);
        EXPECT_TRUE(found);
        return {found->begin(), found->end()};
    }
    bool isWhole(const QString& mark) const
    {
        const auto found = m_index->digests(u"0000"_s, u"9999"_s, mark);
        return found && found->has_value();
    }
    QStringList jobs() const
    {
        const auto found = m_index->digests(u"0000"_s, u"9999"_s, u"m"_s);
        QStringList jobs;
        if (!found || !*found)
            return {u"not whole"_s};
        for (const RepairDigest& each : **found)
            jobs << each.job;
        return jobs;
    }

    std::unique_ptr<RepairLog> m_log;
    std::unique_ptr<FindIndex> m_index;
};

TEST_F(DigestsTest, OneIsStaleOnceItsRepairGoesOn)
{
    const QUuid first = takeIn(u"1"_s, 0);
    const QUuid second = takeIn(u"2"_s, 10);
    catchUp();
    EXPECT_EQ(undigested(u"m"_s), (std::set{first, second}));
    ASSERT_TRUE(m_index->keep({named(second, u"2"_s), named(first, u"1"_s)}, u"m"_s));
    EXPECT_EQ(undigested(u"m"_s), std::set<QUuid>{});
    EXPECT_EQ(jobs(), (QStringList{u"1"_s, u"2"_s})) << "in the order of taking in";
    ASSERT_TRUE(m_log->append(draft(first, Noted{{}, u"wet"_s}, 20)));
    catchUp();
    EXPECT_EQ(undigested(u"m"_s), std::set{first}) << "it went on";
    EXPECT_FALSE(isWhole(u"m"_s));
    ASSERT_TRUE(m_index->keep({named(first, u"1 again"_s)}, u"m"_s));
    EXPECT_EQ(jobs(), (QStringList{u"1 again"_s, u"2"_s}));
}

TEST_F(DigestsTest, AllAreStaleUnderAnotherMark)
{
    const QUuid first = takeIn(u"1"_s, 0);
    const QUuid second = takeIn(u"2"_s, 10);
    catchUp();
    ASSERT_TRUE(m_index->keep({named(first, u"1"_s), named(second, u"2"_s)}, u"old limits"_s));
    EXPECT_EQ(undigested(u"new limits"_s), (std::set{first, second}));
    EXPECT_TRUE(isWhole(u"old limits"_s));
    EXPECT_FALSE(isWhole(u"new limits"_s));
    ASSERT_TRUE(m_index->keep({named(first, u"1"_s)}, u"new limits"_s));
    EXPECT_EQ(undigested(u"new limits"_s), std::set{second});
    EXPECT_EQ(m_index->undigested(u"0000"_s, u"9999"_s, u"newest"_s, 1)->size(), 1U) << "at most so many";
}

TEST_F(DigestsTest, OnlyRepairsWithAnActOnTheDaysAreMeant)
{
    const QUuid early = takeIn(u"1"_s, 0);
    const QUuid late = takeIn(u"2"_s, 5 * 24 * 3600);
    ASSERT_TRUE(m_log->append(draft(early, Noted{{}, u"still here"_s}, 9 * 24 * 3600)));
    catchUp();
    ASSERT_TRUE(m_index->keep({named(early, u"1"_s), named(late, u"2"_s)}, u"m"_s));
    const auto on = [&](int day) {
        const QString local = localDay(test::moment(day * 24 * 3600));
        QStringList found;
        const auto digests = m_index->digests(local, local, u"m"_s);
        for (const RepairDigest& each : **digests)
            found << each.job;
        EXPECT_EQ(m_index->repairsOf(local, local), int(found.size()));
        return found;
    };
    EXPECT_EQ(on(0), QStringList{u"1"_s});
    EXPECT_EQ(on(3), QStringList());
    EXPECT_EQ(on(5), QStringList{u"2"_s});
    EXPECT_EQ(on(9), QStringList{u"1"_s}) << "worked on again";
}

TEST_F(DigestsTest, OfALotAreThoseThatTookOfIt)
{
    const QUuid one = QUuid::createUuid();
    Repair repair = walk(*m_log, one, Station::Mix, u"door"_s);
    Payload mix = test::actAt(repair);
    std::get<HardenerIn>(mix).lot = u"F-77"_s;
    ASSERT_TRUE(m_log->append(draft(one, mix, 4000)));
    takeIn(u"2"_s, 5000);
    catchUp();
    const StockLot lot{u"demo_mixed"_s, u"F-77"_s};
    EXPECT_EQ(*m_index->undigested(lot, u"m"_s, 100), std::vector{one});
    EXPECT_FALSE(*m_index->digests(lot, u"m"_s));
    ASSERT_TRUE(m_index->keep({named(one, u"1"_s)}, u"m"_s));
    EXPECT_TRUE(m_index->undigested(lot, u"m"_s, 100)->empty());
    ASSERT_EQ((*m_index->digests(lot, u"m"_s))->size(), 1U);
    EXPECT_TRUE((*m_index->digests(StockLot{u"demo_mixed"_s, u"F-78"_s}, u"m"_s))->empty());
}

} // namespace
} // namespace strandbench
