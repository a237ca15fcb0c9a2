// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "repair/repair_script.h"

#include "repairlog/repair_log.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <atomic>
#include <functional>

namespace strandbench::test {

/// Runs in a forked child and gives its exit status; 256 + signal when a signal ended it. The parent must
/// have no log open: a child may not use a connection of its parent.
int inChild(const std::function<int()>& run);

/// What a child and its parent tell each other, in memory that both have.
struct Shared {
    std::atomic<int> acknowledged = 0; ///< events that the child knows to be written
    std::atomic<bool> stop = false;
};

/// A child that runs until it ends, is told to stop, or is killed.
class Child {
public:
    explicit Child(const std::function<int(Shared&)>& run);
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    /// Waits until the child has acknowledged this many events; false when it ended before.
    bool waitFor(int acknowledged);
    [[nodiscard]] int acknowledged() const { return m_shared->acknowledged; }
    /// Wait for its end, asked for or not, and give its exit status; 256 + signal when a signal ended it.
    int wait();
    int stop();
    int kill();

private:
    bool ended(int how);
    Shared* m_shared;
    pid_t m_child = 0;
    int m_status = 0;
};

/// Every file of a folder with its bytes.
[[nodiscard]] std::map<QString, QByteArray> contentsOf(const QString& folder);

class LogTest : public ::testing::Test {
protected:
    LogTest();

    [[nodiscard]] QString folder() const { return m_folder.path(); }
    /// A name with a blank and a letter beyond ASCII in it, as shops have them.
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("bench log ü.db")); }
    [[nodiscard]] std::unique_ptr<RepairLog> open(LogMode mode = LogMode::ReadWrite) const;

    /// A draft at the moment after the repair's last.
    [[nodiscard]] static EventDraft draft(const QUuid& repair, const Payload& payload, int atSeconds = 0);
    /// Takes a repair in and does what is due until the station is due.
    static Repair walk(RepairLog& log, const QUuid& repair, Station until, const QString& panel = {});
    /// For a child: takes in one repair after another and does all that is due, counting what was acknowledged.
    static int appendUntilStopped(RepairLog& log, Shared& shared);
    /// Makes a log with one repair walked to the station and another taken in, and closes it.
    void makeLog(Station until = Station::Done) const;

private:
    QTemporaryDir m_folder;
};

/// The trouble of a failure; fails the test when there is none.
template <class T> LogTrouble troubleOf(const Logged<T>& result)
{
    if (result) {
        ADD_FAILURE() << "it did not fail";
        return LogTrouble::IoError;
    }
    EXPECT_FALSE(result.error().detail.isEmpty()) << "a failure says more than its code";
    return result.error().trouble;
}

} // namespace strandbench::test
