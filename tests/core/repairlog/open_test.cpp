// SPDX-License-Identifier: GPL-3.0-or-later
// Every way in which a log does not open, told apart; and what is not ours stays as it is.
#include "log_fixture.h"
#include "referee.h"

#include <QDir>
#include <QFile>

#include <grp.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

class Opening : public LogTest {
protected:
    LogTrouble trouble(LogMode mode = LogMode::ReadWrite) const { return troubleOf(RepairLog::open(path(), mode)); }
    void put(const QByteArray& bytes) const
    {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }
    /// Neither way of opening, nor verifying or backing up, may touch what lies there.
    void expectLeftAlone(LogTrouble expected) const
    {
        const auto before = contentsOf(folder());
        EXPECT_EQ(trouble(LogMode::ReadWrite), expected);
        EXPECT_EQ(trouble(LogMode::ReadOnly), expected);
        EXPECT_EQ(troubleOf(verifyLog(path())), expected);
        EXPECT_EQ(troubleOf(backupLog(path(), folder() + u"/copy.db"_s)), expected);
        EXPECT_EQ(contentsOf(folder()), before);
    }
};

/// As a person without rights: the tests may run as root, whom no permission bit stops.
int asNobody(const std::function<int()>& run)
{
    return inChild([&] {
        if (::geteuid() == 0 && (::setgroups(0, nullptr) != 0 || ::setgid(65534) != 0 || ::setuid(65534) != 0))
            return 200;
        return run();
    });
}

int codeOfTrouble(const QString& path, LogMode mode)
{
    const auto log = RepairLog::open(path, mode);
    return log ? 100 : int(log.error().trouble);
}

bool chmodTo(const QString& path, mode_t mode) { return ::chmod(QFile::encodeName(path).constData(), mode) == 0; }

TEST_F(Opening, AFolderThatIsNotThere)
{
    EXPECT_EQ(troubleOf(RepairLog::open(folder() + u"/none/log.db"_s, LogMode::ReadWrite)), LogTrouble::CannotOpen);
    EXPECT_FALSE(QDir(folder() + u"/none"_s).exists());
}

TEST_F(Opening, AFolderInsteadOfAFile)
{
    EXPECT_EQ(troubleOf(RepairLog::open(folder(), LogMode::ReadWrite)), LogTrouble::CannotOpen);
    EXPECT_EQ(troubleOf(RepairLog::open(folder(), LogMode::ReadOnly)), LogTrouble::CannotOpen);
}

TEST_F(Opening, NoPathAPipeAndALinkToNothing)
{
    EXPECT_EQ(troubleOf(RepairLog::open({}, LogMode::ReadWrite)), LogTrouble::CannotOpen);
    ASSERT_EQ(::mkfifo(QFile::encodeName(path()).constData(), 0600), 0);
    EXPECT_EQ(trouble(), LogTrouble::CannotOpen);
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::link(folder() + u"/gone"_s, path()));
    EXPECT_EQ(trouble(), LogTrouble::CannotOpen);
}

TEST_F(Opening, AFileThatIsNotThereIsNotReadAndNotMade)
{
    EXPECT_EQ(trouble(LogMode::ReadOnly), LogTrouble::CannotOpen);
    EXPECT_EQ(troubleOf(verifyLog(path())), LogTrouble::CannotOpen);
    EXPECT_TRUE(contentsOf(folder()).empty());
}

TEST_F(Opening, SomethingElseThanADatabase)
{
    for (const QByteArray& bytes : {QByteArray("x"), QByteArray("plain text, nothing more\n"),
                                    QByteArray(100'000, '\0'), QByteArray("SQLite format 3") + QByteArray(5000, 'x')}) {
        put(bytes);
        expectLeftAlone(LogTrouble::NotADatabase);
    }
}

TEST_F(Opening, AnotherProgramsDatabase)
{
    ASSERT_EQ(Referee(path()).run("CREATE TABLE t (a); INSERT INTO t VALUES (1)"), "");
    expectLeftAlone(LogTrouble::NotALog);
}

TEST_F(Opening, AnotherProgramsDatabaseInWalMode)
{
    ASSERT_EQ(Referee(path()).run("PRAGMA journal_mode = WAL; PRAGMA application_id = 42; CREATE TABLE t (a)"), "");
    expectLeftAlone(LogTrouble::NotALog);
}

TEST_F(Opening, AnotherProgramsDatabaseThatIsEmptyButSigned)
{
    ASSERT_EQ(Referee(path()).run("PRAGMA application_id = 42; CREATE TABLE t (a); DROP TABLE t"), "");
    expectLeftAlone(LogTrouble::NotALog);
}

TEST_F(Opening, ANewerLogThatForbidsIt)
{
    makeLog(Station::Assess);
    ASSERT_EQ(Referee(path()).run("UPDATE meta SET value = '99' WHERE key <> 'origin'; PRAGMA user_version = 99"), "");
    expectLeftAlone(LogTrouble::NewerVersion);
    ASSERT_EQ(Referee(path()).run("UPDATE meta SET value = 'soon' WHERE key = 'min_compatible_version'"), "");
    expectLeftAlone(LogTrouble::NewerVersion);
    ASSERT_EQ(Referee(path()).run("DELETE FROM meta WHERE key = 'min_compatible_version'"), "");
    expectLeftAlone(LogTrouble::NewerVersion);
}

TEST_F(Opening, ANewerLogThatAllowsIt)
{
    makeLog(Station::Assess);
    ASSERT_EQ(
        Referee(path()).run("UPDATE meta SET value = '99' WHERE key = 'schema_version'; PRAGMA user_version = 99"), "");
    const auto log = open();
    EXPECT_EQ(log->openRepairs()->size(), 2U);
    EXPECT_EQ(verifyLog(path())->schemaVersion, 99);
}

TEST_F(Opening, ATruncatedLog)
{
    makeLog();
    ASSERT_TRUE(QFile::resize(path(), 3 * 4096 + 17));
    const auto before = contentsOf(folder());
    EXPECT_EQ(trouble(LogMode::ReadWrite), LogTrouble::CutShort);
    EXPECT_EQ(trouble(LogMode::ReadOnly), LogTrouble::Damaged);
    EXPECT_EQ(contentsOf(folder()), before);
    const auto report = verifyLog(path());
    ASSERT_TRUE(report);
    EXPECT_FALSE(report->clean);
    EXPECT_EQ(report->breaksAt, u"integrity"_s);
    EXPECT_EQ(troubleOf(backupLog(path(), folder() + u"/copy.db"_s)), LogTrouble::Damaged);
}

TEST_F(Opening, AFileWithoutBytesIsANewLog)
{
    put({});
    EXPECT_EQ(trouble(LogMode::ReadOnly), LogTrouble::NotALog);
    EXPECT_EQ(troubleOf(verifyLog(path())), LogTrouble::NotALog);
    EXPECT_EQ(open()->head()->count, 0);
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Opening, AnSqliteFileWithNothingInItIsANewLog)
{
    ASSERT_EQ(Referee(path()).run("CREATE TABLE t (a); DROP TABLE t"), "");
    EXPECT_EQ(open()->head()->count, 0);
    EXPECT_TRUE(verifyLog(path())->clean);
}

TEST_F(Opening, AFileThatMayOnlyBeRead)
{
    makeLog(Station::Assess);
    ASSERT_TRUE(chmodTo(folder(), 0777) && chmodTo(path(), 0444));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadWrite); }), int(LogTrouble::ReadOnly));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadOnly); }), 100);
    EXPECT_EQ(asNobody([&] { return verifyLog(path())->clean ? 100 : 1; }), 100);
}

TEST_F(Opening, AFolderThatMayOnlyBeRead)
{
    makeLog(Station::Assess);
    ASSERT_TRUE(chmodTo(path(), 0666) && chmodTo(folder(), 0555));
    const QString fresh = folder() + u"/fresh.db"_s;
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadWrite); }), int(LogTrouble::ReadOnly));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(fresh, LogMode::ReadWrite); }), int(LogTrouble::ReadOnly));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadOnly); }), 100);
    EXPECT_EQ(asNobody([&] { return verifyLog(path())->clean ? 100 : 1; }), 100);
    EXPECT_EQ(asNobody([&] {
                  const auto done = backupLog(path(), fresh);
                  return done ? 100 : int(done.error().trouble);
              }),
              int(LogTrouble::ReadOnly));
    ASSERT_TRUE(chmodTo(folder(), 0700));
}

TEST_F(Opening, AFileThatMayNotEvenBeRead)
{
    makeLog(Station::Assess);
    ASSERT_TRUE(chmodTo(folder(), 0777) && chmodTo(path(), 0000));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadWrite); }), int(LogTrouble::CannotOpen));
    EXPECT_EQ(asNobody([&] { return codeOfTrouble(path(), LogMode::ReadOnly); }), int(LogTrouble::CannotOpen));
}

/// A child that runs SQL on the log and holds what it has until it is told to end.
class Holder {
public:
    Holder(const QString& path, const QByteArray& sql)
    {
        if (::pipe(m_ready) != 0 || ::pipe(m_end) != 0)
            throw std::runtime_error("pipe");
        m_child = ::fork();
        if (m_child == 0)
            ::_exit(hold(path, sql));
        char word = 0;
        if (::read(m_ready[0], &word, 1) != 1 || word != 'y')
            throw std::runtime_error("the other program has no lock");
    }
    ~Holder() { release(); }
    Holder(const Holder&) = delete;
    Holder& operator=(const Holder&) = delete;
    void release()
    {
        if (m_child <= 0)
            return;
        EXPECT_EQ(::write(m_end[1], "e", 1), 1);
        ::waitpid(m_child, nullptr, 0);
        m_child = 0;
        for (int each : {m_ready[0], m_ready[1], m_end[0], m_end[1]})
            ::close(each);
    }

private:
    int hold(const QString& path, const QByteArray& sql) const
    {
        const Referee other(path);
        const char word = other.run(sql).isEmpty() ? 'y' : 'n';
        char end = 0;
        return ::write(m_ready[1], &word, 1) == 1 && ::read(m_end[0], &end, 1) == 1 ? 0 : 1;
    }
    int m_ready[2]{};
    int m_end[2]{};
    pid_t m_child = 0;
};

TEST_F(Opening, ALogThatAnotherProgramHoldsForItself)
{
    makeLog(Station::Assess);
    Holder other(path(), "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; UPDATE meta SET value = value");
    EXPECT_EQ(trouble(LogMode::ReadWrite), LogTrouble::Locked);
    EXPECT_EQ(trouble(LogMode::ReadOnly), LogTrouble::Locked);
    EXPECT_EQ(troubleOf(verifyLog(path())), LogTrouble::Locked);
    other.release();
    EXPECT_EQ(open()->openRepairs()->size(), 2U);
}

TEST_F(Opening, WritingWhileAnotherProgramWrites)
{
    const QUuid id = QUuid::createUuid();
    makeLog(Station::Assess);
    Holder other(path(), "BEGIN IMMEDIATE");
    {
        const auto log = open(); // reading goes on
        const ChainHead head = *log->head();
        const EventDraft taken = draft(id, TakenIn{u"1"_s, u"p"_s});
        EXPECT_EQ(troubleOf(log->append(taken)), LogTrouble::Locked);
        EXPECT_EQ(*log->head(), head);
        other.release();
        EXPECT_TRUE(log->append(taken)) << "later it goes";
    }
    EXPECT_TRUE(verifyLog(path())->clean);
}

} // namespace
