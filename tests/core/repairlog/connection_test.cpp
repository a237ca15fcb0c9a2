// SPDX-License-Identifier: GPL-3.0-or-later
// Statements that stay prepared: each time runs as if it were the first.
#include "repairlog/connection.h"

#include "log_fixture.h"
#include "referee.h"

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class KeptStatements : public LogTest {
protected:
    KeptStatements() : connection(*SqlConnection::open(path(), Access::ReadWrite))
    {
        EXPECT_TRUE(connection->run(u"CREATE TABLE t (a INTEGER PRIMARY KEY, b TEXT)"_s));
        for (int i = 1; i <= 3; ++i)
            EXPECT_TRUE(put(i, QString::number(i * 10)));
    }
    [[nodiscard]] Logged<void> put(int a, const QVariant& b) const
    {
        return connection->run(u"INSERT INTO t VALUES (?, ?)"_s, {a, b});
    }
    std::unique_ptr<SqlConnection> connection;
};

TEST_F(KeptStatements, TheSameStatementMayRunWithinItself)
{
    const QString sql = u"SELECT a FROM t WHERE a >= ? ORDER BY a"_s;
    QList<qint64> outer;
    QList<qint64> inner;
    const auto take = [&](const Row& row) -> Logged<void> {
        outer << row.integer(0);
        inner << connection->value(sql, {row.integer(0)})->toLongLong();
        return {};
    };
    for (int round = 0; round < 2; ++round)
        ASSERT_TRUE(connection->each(sql, {2}, take));
    EXPECT_EQ(outer, (QList<qint64>{2, 3, 2, 3}));
    EXPECT_EQ(inner, outer);
}

TEST_F(KeptStatements, OneThatFailedRunsAgain)
{
    EXPECT_EQ(troubleOf(put(3, u"again"_s)), LogTrouble::DoesNotFollow);
    EXPECT_TRUE(put(4, u"40"_s));
    EXPECT_EQ(Referee(path()).value("SELECT count(*) FROM t"), "4");
}

TEST_F(KeptStatements, AReadingThatWasBrokenOffBeginsAnew)
{
    int seen = 0;
    const auto once = [&](const Row&) -> Logged<void> {
        ++seen;
        return tl::unexpected(LogFailure{LogTrouble::Damaged, u"enough"_s});
    };
    const auto all = [&](const Row&) -> Logged<void> {
        ++seen;
        return {};
    };
    EXPECT_EQ(troubleOf(connection->each(u"SELECT a FROM t"_s, {}, once)), LogTrouble::Damaged);
    EXPECT_TRUE(connection->each(u"SELECT a FROM t"_s, {}, all));
    EXPECT_EQ(seen, 1 + 3);
    EXPECT_EQ(Referee(path()).run("DROP TABLE t"), "") << "no reading holds the file";
}

TEST_F(KeptStatements, NoValueOfTheTimeBeforeStays)
{
    EXPECT_TRUE(put(4, QByteArray(100'000, 'x'))); // too large to be held on to
    EXPECT_TRUE(put(5, QString()));
    EXPECT_TRUE(put(6, u"ü"_s));
    const Referee referee(path());
    EXPECT_EQ(referee.value("SELECT group_concat(length(b), ' ') FROM t"), "2 2 2 100000 0 1");
}

TEST_F(KeptStatements, TablesMadeAnewAreSeen)
{
    EXPECT_EQ(connection->value(u"SELECT * FROM t"_s)->toInt(), 1);
    ASSERT_EQ(Referee(path()).run("DROP TABLE t; CREATE TABLE t (x TEXT, a INTEGER); INSERT INTO t VALUES ('new', 1)"),
              "");
    EXPECT_EQ(connection->value(u"SELECT * FROM t"_s)->toString(), u"new"_s);
}

TEST_F(KeptStatements, ASettingTakesEffectEachTime)
{
    for (int round = 0; round < 2; ++round) {
        EXPECT_TRUE(connection->set(u"synchronous"_s, u"OFF"_s, u"0"_s));
        EXPECT_TRUE(connection->set(u"synchronous"_s, u"FULL"_s, u"2"_s));
    }
}

} // namespace
