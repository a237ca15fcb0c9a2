// SPDX-License-Identifier: GPL-3.0-or-later
// More than one log in one folder: of two benches, or of one bench at two times.
#pragma once

#include "log_fixture.h"
#include "referee.h"

#include <QFile>

namespace strandbench::test {

class TwoLogs : public LogTest {
protected:
    [[nodiscard]] QString at(const QString& name) const { return folder() + QChar(u'/') + name; }

    static std::unique_ptr<RepairLog> openAt(const QString& path)
    {
        auto log = RepairLog::open(path, LogMode::ReadWrite);
        if (!log)
            throw std::runtime_error("no log: " + log.error().detail.toStdString());
        return *std::move(log);
    }
    /// A bench's log with one repair walked to a station.
    void makeAt(const QString& path, const QString& panel, Station until = Station::Done) const
    {
        const auto log = openAt(path);
        walk(*log, QUuid::createUuid(), until, panel);
    }
    static VerifyReport cleanly(const QString& path)
    {
        const auto report = verifyLog(path);
        if (!report)
            throw std::runtime_error("no report: " + report.error().detail.toStdString());
        EXPECT_TRUE(report->clean) << qPrintable(report->breaksAt + u' ' + report->where);
        return *report;
    }
    static ChainHead headAt(const QString& path) { return *openAt(path)->head(); }
    static void copyFile(const QString& from, const QString& to)
    {
        if (!QFile::copy(from, to))
            throw std::runtime_error("not copied");
    }
};

} // namespace strandbench::test
