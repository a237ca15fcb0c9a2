// SPDX-License-Identifier: GPL-3.0-or-later
// The real window killed at random moments: what its screen had shown as done is in the log, and it goes on from there.
#include "victim.h"

#include "repairlog/repair_log.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <iostream>
#include <random>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int kills = 30;
constexpr int leastMs = 100;
constexpr int mostMs = 3000;

/// The newest act that a painted screen was built from; 0: none.
qint64 newestPainted(const std::vector<QByteArray>& lines)
{
    qint64 newest = 0;
    for (const QByteArray& line : lines)
        if (line.startsWith("painted "))
            newest = std::max(newest, line.split(' ').at(1).toLongLong());
    return newest;
}

TEST(WindowCrash, WhatWasPaintedAsDoneIsThereAndTheWindowGoesOn)
{
    const QTemporaryDir folder;
    const QString log = folder.filePath(u"bench.sqlite"_s);
    const unsigned seed = std::random_device()();
    std::mt19937 random(seed);
    qint64 painted = 0;
    qint64 there = 0;
    int working = 0;
    for (int kill = 1; kill <= kills; ++kill) {
        const auto trace =
            testing::ScopedTrace(__FILE__, __LINE__, "seed " + std::to_string(seed) + ", kill " + std::to_string(kill));
        Victim victim(QStringLiteral(CRASH_WINDOW), {log});
        const auto end = Victim::Time::clock::now() +
                         std::chrono::milliseconds(std::uniform_int_distribution(leastMs, mostMs)(random));
        victim.listen(end);
        victim.kill();
        for (const QByteArray& line : victim.lines())
            ASSERT_FALSE(line.startsWith("trouble")) << line.toStdString();
        working += std::ranges::count(victim.lines(), "phase working") > 0 ? 1 : 0;
        painted = std::max(painted, newestPainted(victim.lines()));
        if (painted == 0)
            continue; // nothing was done yet: perhaps there is not even a log
        const auto report = verifyLog(log);
        ASSERT_TRUE(report) << report.error().detail.toStdString();
        ASSERT_TRUE(report->clean) << report->where.toStdString();
        ASSERT_GE(report->events, painted) << "what was painted as done is not there";
        ASSERT_GE(report->events, there) << "what was there is gone";
        // The tap that reads air and panel again writes two acts: the reading, and its step as done.
        ASSERT_LE(report->events, std::max(painted, there) + 2) << "one tap at a time is under way";
        there = report->events;
    }
    std::cout << "seed " << seed << ", " << kills << " kills, " << working << " at work, " << painted
              << " acts painted, " << there << " in the log\n";
    EXPECT_GT(working, kills / 3);
    EXPECT_GT(painted, kills);
}

} // namespace
} // namespace strandbench::test

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
