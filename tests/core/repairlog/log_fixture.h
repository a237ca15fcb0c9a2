// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "repair/repair_script.h"

#include "repairlog/repair_log.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <functional>

namespace strandbench::test {

/// Runs in a forked child and gives its exit status; 256 + signal when a signal ended it. The parent must
/// have no log open: a child may not use a connection of its parent.
int inChild(const std::function<int()>& run);

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
