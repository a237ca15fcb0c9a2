// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that refuses and a program that is killed give no guess away.
#include "roles/pin_door.h"
#include "roles/pin_file.h"

#include "set_clock.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <memory>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr PinCost cheap{1, 8192};

/// While it stands no byte goes into a file, whoever writes it: a read-only folder would not hold up root.
class NoRoom {
public:
    NoRoom() : m_signal(std::signal(SIGXFSZ, SIG_IGN))
    {
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit none{0, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &none);
    }
    ~NoRoom()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        (void)std::signal(SIGXFSZ, m_signal);
    }
    NoRoom(const NoRoom&) = delete;
    NoRoom& operator=(const NoRoom&) = delete;

private:
    rlimit m_before{};
    void (*m_signal)(int);
};

class PinDisk : public ::testing::Test {
protected:
    PinDoor door() { return PinDoor(path(), clock, cheap); }
    [[nodiscard]] QString path() const { return m_folder.filePath(u"supervisor.pin"_s); }
    [[nodiscard]] QByteArray held() const
    {
        QFile file(path());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    [[nodiscard]] int wrongHeld() const { return QJsonDocument::fromJson(held())[u"wrong"_s].toInt(-1); }
    SetClock clock;
    QTemporaryDir m_folder;
    const QString right = u"271828"_s;
    const QString other = u"314159"_s;
};

TEST_F(PinDisk, ThatIsFullLooksAtNoPin)
{
    ASSERT_TRUE(door().set(right).empty());
    EXPECT_EQ(door().open(other).error().why, ActRefusal::WrongPin);
    const QByteArray before = held();
    {
        const NoRoom full;
        for (const QString& pin : {right, other, right, other, right})
            EXPECT_EQ(door().open(pin).error().why, ActRefusal::NotCounted);
        const Faults faults = door().set(other);
        ASSERT_EQ(faults.size(), 1U);
        EXPECT_EQ(faults.front().kind, FaultKind::NotFound);
    }
    EXPECT_EQ(held(), before);
    EXPECT_EQ(door().open(other).error().why, ActRefusal::WrongPin); // the one that was not set
    EXPECT_TRUE(door().open(right));
}

TEST_F(PinDisk, WithoutItsLockLooksAtNoPin)
{
    ASSERT_TRUE(door().set(right).empty());
    ASSERT_TRUE(QFile::remove(path() + u".lock"_s));
    ASSERT_TRUE(QFile::link(m_folder.path(), path() + u".lock"_s)); // nothing that can be locked
    EXPECT_EQ(door().open(right).error().why, ActRefusal::NotCounted);
    EXPECT_EQ(door().set(other).front().kind, FaultKind::NotFound);
    EXPECT_EQ(wrongHeld(), 0);
}

TEST_F(PinDisk, IsLockedForOneAtATime)
{
    auto first = std::make_unique<PinLock>(path());
    EXPECT_TRUE(first->isHeld());
    EXPECT_FALSE(PinLock(path(), std::chrono::milliseconds(0)).isHeld());
    first.reset();
    EXPECT_TRUE(PinLock(path(), std::chrono::milliseconds(0)).isHeld());
}

/// A program that tries a PIN and is still looking at it. Some seconds of that, so that it can be met in the middle.
class PinLookedAt : public PinDisk {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(PinDoor(path(), clock, {30, 64 * 1024 * 1024}).set(right).empty());
        ASSERT_EQ(wrongHeld(), 0);
        m_trying = ::fork();
        ASSERT_GE(m_trying, 0);
        if (m_trying == 0)
            ::_exit(door().open(right) ? 0 : 1);
        int status = 0;
        pid_t ended = 0;
        while (wrongHeld() != 1 && (ended = ::waitpid(m_trying, &status, WNOHANG)) == 0)
            ::usleep(1000);
        ASSERT_EQ(ended, 0) << "it was over before it was counted";
    }
    /// How it ended, as waitpid() tells.
    [[nodiscard]] int end() const
    {
        int status = -1;
        EXPECT_EQ(::waitpid(m_trying, &status, 0), m_trying);
        return status;
    }
    pid_t m_trying = -1;
};

TEST_F(PinLookedAt, AndKilledIsCounted)
{
    ASSERT_EQ(::kill(m_trying, SIGKILL), 0);
    EXPECT_TRUE(WIFSIGNALED(end()));
    EXPECT_EQ(wrongHeld(), 1); // even the right one
    EXPECT_TRUE(door().open(right));
}

TEST_F(PinLookedAt, WhileAnotherIsSetOpensNothing)
{
    ASSERT_TRUE(door().set(other).empty());
    const int status = end();
    ASSERT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 1);
    EXPECT_TRUE(door().open(other));
}

} // namespace
} // namespace strandbench::test
