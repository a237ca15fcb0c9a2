// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of jump at every phase of a batch: what its clock shows after it, against the time that really went by.
// The table of what was measured is printed.
#include "repair/restate.h"
#include "repair/run_clock.h"

#include <gtest/gtest.h>

#include <cstdio>

using namespace Qt::StringLiterals;
using namespace strandbench;

namespace {

const Assumptions ours;

/// A machine whose clocks are moved by hand, beside the time that really goes by.
class Machine final : public Clock {
public:
    [[nodiscard]] Instant now() const override { return at; }
    [[nodiscard]] Duration asleep() const override { return slept; }
    void pass(double s)
    {
        real += s;
        at.utcMs += qRound64(s * 1e3);
        at.boottimeMs += qRound64(s * 1e3);
    }
    void sleep(double s)
    {
        pass(s);
        slept += seconds(s);
    }
    void setWall(double by) { at.utcMs += qRound64(by * 1e3); }
    /// Off for a while; its hardware clock goes on, off by so much when it comes back.
    void restart(double off, double wallIsOff = 0)
    {
        pass(off);
        setWall(wallIsOff);
        at.bootId += u'+';
        at.boottimeMs = 12'000;
        slept = seconds(0);
    }
    double real = 0;
    Instant at{1'772'434'800'000, 5'000'000, u"boot"_s, 3600};
    Duration slept = seconds(0);
};

/// A bench on that machine: one batch, and a watch that is started again with the program.
class OneBatch {
public:
    OneBatch() : watch(std::make_unique<ClockWatch>(machine))
    {
        BatchRun run;
        run.mixed.times = {minutes(4), minutes(5), minutes(8), minutes(15)};
        run.hardenerIn = machine.now();
        repair.runs.push_back(run);
        m_began = machine.real;
        look();
    }
    void look()
    {
        for (const ClockJumped& each : watch->look()) {
            kinds << codeOf(each.kind);
            if (each.kind == ClockJump::WallStepped)
                restate(repair, machine.now(), each.by);
        }
        lastWritten = machine.now();
    }
    /// Time goes by with the program looking each second.
    void run(double s)
    {
        for (; s >= 1; s -= 1) {
            machine.pass(1);
            look();
        }
        machine.pass(s);
        look();
    }
    void startProgram()
    {
        watch = std::make_unique<ClockWatch>(machine);
        watch->goOnFrom(lastWritten);
        look();
    }
    [[nodiscard]] ClockFace face() const { return clockOf(repair.runs.front(), ours, machine.now()); }
    [[nodiscard]] double reallySince() const { return machine.real - m_began; }

    Machine machine;
    Repair repair;
    QStringList kinds;
    Instant lastWritten;
    std::unique_ptr<ClockWatch> watch;

private:
    double m_began = 0;
};

struct Jump {
    const char* name;
    void (*happens)(OneBatch& bench);
    QStringList told;
};

void PrintTo(const Jump& jump, std::ostream* out) { *out << jump.name; }

void wallOn(OneBatch& b)
{
    b.machine.setWall(3600);
    b.run(1);
}
void wallBack(OneBatch& b)
{
    b.machine.setWall(-3600);
    b.run(1);
}
void wallByADay(OneBatch& b)
{
    b.machine.setWall(86'400);
    b.run(1);
}
void summer(OneBatch& b)
{
    b.machine.at.utcOffsetSeconds = 7200;
    b.run(1);
}
void winter(OneBatch& b)
{
    b.machine.at.utcOffsetSeconds = 0;
    b.run(1);
}
void sleepShort(OneBatch& b)
{
    b.machine.sleep(30);
    b.run(1);
}
void sleepLong(OneBatch& b)
{
    b.machine.sleep(1200);
    b.run(1);
}
void programAgain(OneBatch& b)
{
    b.machine.pass(5);
    b.startProgram();
}
void machineAgain(OneBatch& b)
{
    b.machine.restart(90);
    b.startProgram();
}
/// The wall was an hour slow when the hardener went in, is put right, and then the machine restarts.
void setThenAgain(OneBatch& b)
{
    b.machine.setWall(3600);
    b.run(1);
    b.machine.restart(90);
    b.startProgram();
}
/// The hardware clock is an hour slow from the first; the network puts it right only after the restart.
void againThenSet(OneBatch& b)
{
    b.machine.restart(90);
    b.startProgram();
    b.machine.setWall(3600);
    b.run(1);
}
/// The hardware clock has lost the time; the network gives it back.
void lostThenFound(OneBatch& b)
{
    b.machine.restart(90, -40'000);
    b.startProgram();
    b.machine.setWall(40'000);
    b.run(1);
}
void setWhileClosed(OneBatch& b)
{
    b.machine.pass(5);
    b.machine.setWall(-7200);
    b.machine.pass(5);
    b.startProgram();
}

const QString step = u"wall_stepped"_s;
const QString restart = u"restarted"_s;
const Jump jumps[] = {{"wall set on 1 h", wallOn, {step}},
                      {"wall set back 1 h", wallBack, {step}},
                      {"wall set on a day", wallByADay, {step}},
                      {"summer time begins", summer, {u"offset_changed"_s}},
                      {"summer time ends", winter, {u"offset_changed"_s}},
                      {"slept 30 s", sleepShort, {u"slept"_s}},
                      {"slept 20 min", sleepLong, {u"slept"_s}},
                      {"program restarted", programAgain, {}},
                      {"machine restarted", machineAgain, {restart}},
                      {"wall set on 1 h, then machine restarted", setThenAgain, {step, restart}},
                      {"machine restarted, then wall set on 1 h", againThenSet, {restart, step}},
                      {"machine lost the time, network set it", lostThenFound, {restart, step}},
                      {"wall set back 2 h with the program closed", setWhileClosed, {step}}};

class EveryJump : public ::testing::TestWithParam<std::tuple<Jump, double>> {};

/// What a clock of these times shows so long after 'hardener in', reckoned from the real time alone.
ClockFace truth(double since)
{
    return readClock({minutes(4), minutes(5), minutes(8), minutes(15)}, ours, seconds(since));
}

TEST_P(EveryJump, LeavesTheRemainingTimeRightToASecond)
{
    const auto& [jump, at] = GetParam();
    OneBatch bench;
    bench.run(at);
    const ClockFace before = bench.face();
    EXPECT_EQ(before, truth(at));
    const double realBefore = bench.reallySince();
    jump.happens(bench);
    const ClockFace after = bench.face();
    const ClockFace expected = truth(bench.reallySince());
    EXPECT_NEAR(inSeconds(after.sinceHardener), bench.reallySince(), 1);
    EXPECT_EQ(after.phase, expected.phase);
    EXPECT_NEAR(inSeconds(after.toNextPhase), inSeconds(expected.toNextPhase), 1);
    EXPECT_NEAR(inSeconds(after.boardSetsIn), inSeconds(expected.boardSetsIn), 1);
    EXPECT_EQ(bench.kinds, jump.told);
    std::printf("| %s | %s | %.0f s | %.0f s | %s | %.0f s | %.3f s |\n", jump.name, qPrintable(codeOf(before.phase)),
                inSeconds(before.toNextPhase), bench.reallySince() - realBefore, qPrintable(codeOf(after.phase)),
                inSeconds(after.toNextPhase), inSeconds(after.toNextPhase) - inSeconds(expected.toNextPhase));
}

// Knead, spread, clear edges, hands off, sand, harder.
INSTANTIATE_TEST_SUITE_P(AtEveryPhase, EveryJump,
                         ::testing::Combine(::testing::ValuesIn(jumps),
                                            ::testing::Values(20.0, 100.0, 250.0, 400.0, 900.0, 1500.0)));

TEST(Restated, WhatWasToldAfterTheStepStays)
{
    const Instant at{2'000'000, 700'000, u"a"_s, 0};
    const Instant before{1'000'000, 600'000, u"a"_s, 0};
    const Instant after{2'100'000, 800'000, u"a"_s, 0};
    EXPECT_EQ(restated(before, at, seconds(3600)).utcMs, 4'600'000);
    EXPECT_EQ(restated(after, at, seconds(3600)), after);
    EXPECT_EQ(restated(at, at, seconds(3600)), at); // the act that told the step itself
}

} // namespace
