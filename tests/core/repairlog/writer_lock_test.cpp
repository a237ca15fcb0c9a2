// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/writer_lock.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QSysInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <cstring>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class OneWriter : public ::testing::Test {
protected:
    [[nodiscard]] QString log() const { return m_folder.filePath(u"bench.sqlite"_s); }
    QTemporaryDir m_folder;
};

TEST_F(OneWriter, TheSecondIsToldWhoHasIt)
{
    const auto first = WriterLock::take(log());
    ASSERT_TRUE(first);
    ASSERT_TRUE(*first);
    const auto second = WriterLock::take(log());
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().process, QCoreApplication::applicationPid());
    EXPECT_EQ(second.error().machine, QSysInfo::machineHostName());
    EXPECT_EQ(second.error().program, u"test_repairlog"_s);
    const LogFailure failure = inUseBy(second.error());
    EXPECT_EQ(failure.trouble, LogTrouble::InUse);
    EXPECT_TRUE(failure.detail.contains(QString::number(QCoreApplication::applicationPid())));
}

TEST_F(OneWriter, LetsGoAtTheEnd)
{
    ASSERT_TRUE(WriterLock::take(log()));
    EXPECT_TRUE(WriterLock::take(log()));
    EXPECT_FALSE(QFile::exists(lockPathOf(log())));
}

TEST_F(OneWriter, ALinkIsTheSameLog)
{
    QFile file(log());
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const QString link = m_folder.filePath(u"link.sqlite"_s);
    ASSERT_TRUE(QFile::link(log(), link));
    const auto first = WriterLock::take(log());
    ASSERT_TRUE(first);
    EXPECT_FALSE(WriterLock::take(link));
}

TEST_F(OneWriter, WhatAKilledProgramLeftCountsForNothing)
{
    int ready[2];
    ASSERT_EQ(pipe(ready), 0);
    const pid_t child = fork();
    if (child == 0) {
        const auto lock = WriterLock::take(log());
        const char word = lock ? 'y' : 'n';
        static_cast<void>(write(ready[1], &word, 1));
        for (;;)
            pause();
    }
    char word = 0;
    ASSERT_EQ(read(ready[0], &word, 1), 1);
    ASSERT_EQ(word, 'y');
    const auto held = WriterLock::take(log());
    ASSERT_FALSE(held);
    EXPECT_EQ(held.error().process, child);
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    EXPECT_TRUE(QFile::exists(lockPathOf(log()))) << "it was left behind";
    EXPECT_TRUE(WriterLock::take(log()));
    close(ready[0]);
    close(ready[1]);
}

TEST_F(OneWriter, AFileThatNobodyHoldsCountsForNothing)
{
    // A kill or a power cut between making the lock and writing the name into it; a name that somebody else has now.
    const std::string another = "1\ninit\nanother machine\n";
    for (const char* left : {"", "\n\n", "half a na", another.c_str()}) {
        QFile file(lockPathOf(log()));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write(left) == qint64(std::strlen(left)));
        file.close();
        const auto lock = WriterLock::take(log());
        ASSERT_TRUE(lock) << left;
        EXPECT_TRUE(*lock);
        EXPECT_FALSE(WriterLock::take(log())) << "and it holds";
    }
}

TEST_F(OneWriter, ALivingProgramsLockStandsThoughItsNameIsNotInItYet)
{
    const int file = ::open(lockPathOf(log()).toLocal8Bit().constData(), O_RDWR | O_CREAT | O_EXCL, 0600);
    ASSERT_GE(file, 0);
    ASSERT_EQ(::flock(file, LOCK_EX | LOCK_NB), 0);
    EXPECT_FALSE(WriterLock::take(log()));
    EXPECT_TRUE(QFile::exists(lockPathOf(log())));
    ::close(file); // it died
    EXPECT_TRUE(WriterLock::take(log()));
}

TEST_F(OneWriter, WhereNothingCanBeWrittenItIsNotTheLockThatSays)
{
    const auto lock = WriterLock::take(m_folder.filePath(u"no such folder/bench.sqlite"_s));
    ASSERT_TRUE(lock);
    EXPECT_FALSE(*lock);
}

} // namespace
} // namespace strandbench
