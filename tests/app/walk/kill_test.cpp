// SPDX-License-Identifier: GPL-3.0-or-later
// Killed after each single touch of a whole repair, the program opens again with every confirmed act there, at
// the same step, and with its clocks right.
#include "walk/demo_jobs.h"

#include "repair/run_clock.h"

#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

struct Line {
    bool over = false;
    qint64 lastSeq = 0;
    QString station;
    int index = 0;
    int batch = 0;
    qint64 utcMs = 0;
    qint64 boottimeMs = 0;
    QString screen;
};

/// Runs the walker for so many touches, reads its line, and kills it.
std::optional<Line> walkAndKill(const QString& log, int touches, const Instant& from)
{
    QProcess walker;
    walker.start(QStringLiteral(STRANDBENCH_WALKER), {log, QString::number(touches), QString::number(from.utcMs),
                                                      QString::number(from.boottimeMs), from.bootId});
    QByteArray said;
    while (!said.contains('\n') && walker.waitForReadyRead(60000))
        said += walker.readAllStandardOutput();
    walker.kill(); // SIGKILL
    walker.waitForFinished();
    const QStringList parts = QString::fromUtf8(said).trimmed().split(u' ');
    if (parts.size() != 8) {
        ADD_FAILURE() << "the walker said: " << said.toStdString() << walker.readAllStandardError().toStdString();
        return std::nullopt;
    }
    return Line{parts[0] == u"over"_s, parts[1].toLongLong(), parts[2], parts[3].toInt(), parts[4].toInt(),
                parts[5].toLongLong(), parts[6].toLongLong(), parts[7]};
}

/// Opens the log that was left behind and compares it with what had been confirmed.
void expectAllThere(const QString& log, const Line& line, const Instant& now)
{
    const auto report = verifyLog(log);
    ASSERT_TRUE(report.has_value());
    ASSERT_TRUE(report->clean) << report->where.toStdString();
    ScriptedBench again({log, now, demoSettings(), {1280, 800}, 5.87, {}});
    ASSERT_FALSE(again.trouble().has_value());
    const Repair* repair = again.repair(u"4421"_s);
    if (line.lastSeq == 0) {
        EXPECT_EQ(repair, nullptr);
        return;
    }
    ASSERT_NE(repair, nullptr);
    EXPECT_EQ(repair->lastSeq, line.lastSeq);
    const NextStep next = nextStep(*repair);
    EXPECT_EQ(codeOf(next.station), line.station);
    EXPECT_EQ(next.index, line.index);
    EXPECT_EQ(next.batch ? next.batch->index : -1, line.batch);
    for (const RunningMix& mix : again.bench().runningMixes()) {
        // One boot: by the boot clock. Another boot: by UTC, which is all that there is.
        const bool sameBoot = mix.run.hardenerIn.bootId == now.bootId;
        const qint64 ms =
            sameBoot ? now.boottimeMs - mix.run.hardenerIn.boottimeMs : now.utcMs - mix.run.hardenerIn.utcMs;
        EXPECT_NEAR(inSeconds(mix.face.sinceHardener), static_cast<double>(ms) / 1000.0, 1e-6);
    }
}

TEST(Killed, AfterEachSingleTouchEveryConfirmedActIsThere)
{
    const QTemporaryDir folder;
    const QString log = folder.filePath(u"bench.sqlite"_s);
    Instant now = workingMorning();
    qint64 confirmed = 0;
    int sinceConfirmed = 0; // touches that made no act yet: keyed digits are not kept, so they are done again
    int kills = 0;
    int boots = 0;
    while (kills < 400) {
        const auto line = walkAndKill(log, sinceConfirmed + 1, now);
        ASSERT_TRUE(line.has_value()) << "after " << kills << " kills";
        ++kills;
        if (line->over)
            break;
        // The power is off for a while; every third time the machine has started anew.
        now.utcMs = line->utcMs + 7000;
        now.boottimeMs = line->boottimeMs + 7000;
        if (kills % 3 == 0) {
            now.bootId = u"boot-%1"_s.arg(++boots);
            now.boottimeMs = 20000;
        }
        expectAllThere(log, *line, now);
        if (::testing::Test::HasFailure())
            FAIL() << "after touch " << kills << " on " << line->screen.toStdString();
        EXPECT_GE(line->lastSeq, confirmed) << "a confirmed act is gone";
        sinceConfirmed = line->lastSeq > confirmed ? 0 : sinceConfirmed + 1;
        confirmed = line->lastSeq;
    }
    EXPECT_GT(confirmed, 50) << "the whole repair";
    EXPECT_GT(kills, 80);
    EXPECT_LT(kills, 400) << "the walk came to its end";
    std::cout << kills << " kills, " << confirmed << " acts\n";
}

} // namespace
} // namespace strandbench::test
