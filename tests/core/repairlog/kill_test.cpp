// SPDX-License-Identifier: GPL-3.0-or-later
// A program killed after any one append of a whole repair: what was acknowledged is there.
#include "log_fixture.h"
#include "referee.h"

#include <csignal>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

using Kill = LogTest;

TEST_F(Kill, AfterEverySingleEventTheLogGoesOnWhereItWas)
{
    const QUuid id = QUuid::createUuid();
    Repair repair;
    int killed = 0;
    while (repair.open() || killed == 0) {
        const Payload next = killed == 0 ? Payload(TakenIn{u"4421"_s, u"door"_s}) : actAt(repair);
        ASSERT_EQ(inChild([&] {
                      const auto log = open();
                      if (!log->append(draft(id, next, 30 * killed)))
                          return 1;
                      std::raise(SIGKILL);
                      return 0;
                  }),
                  256 + SIGKILL);
        ++killed;
        const auto log = open(LogMode::ReadOnly); // a writer would tidy the WAL away
        const auto events = log->events(id);
        ASSERT_TRUE(events);
        ASSERT_EQ(int(events->size()), killed);
        ASSERT_EQ(events->back().payload.index(), next.index());
        repair = *foldRepair(*events);
    }
    EXPECT_GT(killed, 40);
    EXPECT_TRUE(verifyLog(path())->clean);
    EXPECT_EQ(open()->head()->count, killed);
}

TEST_F(Kill, WhileALogIsMadeItIsNothingOrWhole)
{
    ASSERT_EQ(inChild([&] {
                  const auto log = open();
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    EXPECT_EQ(open()->head()->count, 0);
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Kill, WhileItIsMadeNobodyReadsWhatIsRolledBackAndTheNextWriterSetsItRight)
{
    (void)open();
    ASSERT_EQ(Referee(path()).run("PRAGMA journal_mode = DELETE"), "") << "as while it is made";
    ASSERT_EQ(inChild([&] {
                  const Referee maker(path());
                  if (maker.run("PRAGMA cache_size = 1; BEGIN IMMEDIATE; CREATE TABLE half (a);"
                                "INSERT INTO half VALUES (zeroblob(100000))") != "")
                      return 1;
                  std::raise(SIGKILL);
                  return 0;
              }),
              256 + SIGKILL);
    ASSERT_TRUE(QFile::exists(path() + u"-journal"_s));
    const auto report = verifyLog(path());
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().trouble, LogTrouble::CannotOpen);
    EXPECT_TRUE(report.error().detail.contains(u"cut off while it was made"_s)) << qPrintable(report.error().detail);
    EXPECT_FALSE(RepairLog::open(path(), LogMode::ReadOnly));
    (void)open();
    EXPECT_TRUE(verifyLog(path())->clean);
    EXPECT_EQ(Referee(path()).value("SELECT count(*) FROM sqlite_schema WHERE name = 'half'"), "0");
}

} // namespace
