// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who guesses: a new process for every guess, the machine started again now and then, the clock of the wall
// set on, and always as soon as the door looks at the next.
#include "roles/pin_door.h"

#include "set_clock.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <atomic>
#include <cmath>
#include <thread>
#include <vector>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr PinCost cheap{1, 8192};

struct Guessing {
    int looked = 0;     ///< guesses that the door looked at
    int held = 0;       ///< guesses that it did not
    double seconds = 0; ///< that went by
    bool opened = false;
};

/// Guesses on until so many were looked at, or the next would be later than that. rebootEvery: 0 for never.
Guessing guess(const QString& path, SetClock& clock, int most, double mostSeconds, int rebootEvery)
{
    Guessing done;
    int boots = 0;
    for (int number = 0; done.looked < most; ++number) {
        PinDoor door(path, clock, cheap); // as after a restart of the program
        const QString pin = QString::number(500'000 + done.looked * 7);
        const auto opened = door.open(pin);
        if (opened)
            done.opened = true;
        if (opened || opened.error().why == ActRefusal::WrongPin) {
            ++done.looked;
            if (rebootEvery > 0 && done.looked % rebootEvery == 0) {
                clock.reboot(u"boot-%1"_s.arg(++boots));
                clock.at.utcMs += 86'400'000;
            }
            continue;
        }
        ++done.held;
        const double wait = std::ceil(inSeconds(door.waitLeft()));
        if (done.seconds + wait > mostSeconds)
            break;
        clock.pass(wait);
        done.seconds += wait;
    }
    return done;
}

/// What the table of README says, reckoned here by itself: 0, 0, 0, then 30 s doubling up to 15 min before each.
double documentedSeconds(int guesses)
{
    double all = 0;
    double wait = 30;
    for (int i = 3; i < guesses; ++i, wait = std::min(wait * 2, 900.0))
        all += wait;
    return all;
}

class PinGuesses : public ::testing::TestWithParam<int> {
protected:
    void SetUp() override { ASSERT_TRUE(PinDoor(path(), clock, cheap).set(u"271828"_s).empty()); }
    [[nodiscard]] QString path() const { return m_folder.filePath(u"supervisor.pin"_s); }
    SetClock clock;
    QTemporaryDir m_folder;
};

TEST_P(PinGuesses, AThousandTakeAsLongAsDocumented)
{
    const Guessing done = guess(path(), clock, 1000, 1e9, GetParam());
    EXPECT_EQ(done.looked, 1000);
    EXPECT_FALSE(done.opened);
    EXPECT_EQ(done.held, 997);
    EXPECT_NEAR(done.seconds, documentedSeconds(1000), 1);
    EXPECT_GT(done.seconds, 10 * 86'400.0); // ten days
    RecordProperty("seconds", std::to_string(done.seconds));
}

TEST_P(PinGuesses, ADayHasRoomForAHundredAndTwo)
{
    const Guessing done = guess(path(), clock, 1000, 86'400, GetParam());
    int most = 0;
    while (documentedSeconds(most + 1) <= 86'400)
        ++most;
    EXPECT_EQ(most, 102);
    EXPECT_EQ(done.looked, most);
}

TEST(PinGuessesAtOnce, AreCountedOneByOne)
{
    SetClock clock;
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"supervisor.pin"_s);
    ASSERT_TRUE(PinDoor(path, clock, cheap).set(u"271828"_s).empty());
    std::atomic<int> looked = 0;
    std::atomic<int> held = 0;
    std::vector<std::thread> guessing;
    for (int each = 0; each < 16; ++each) // each opens the file and its lock for itself, as a program does
        guessing.emplace_back([&, each] {
            for (int i = 0; i < 5; ++i) {
                const auto opened = PinDoor(path, clock, cheap).open(QString::number(500'000 + each * 100 + i));
                looked += !opened && opened.error().why == ActRefusal::WrongPin ? 1 : 0;
                held += !opened && opened.error().why == ActRefusal::MustWait ? 1 : 0;
            }
        });
    for (std::thread& each : guessing)
        each.join();
    EXPECT_EQ(looked, PinRate{}.freeTries);
    EXPECT_EQ(held, 16 * 5 - PinRate{}.freeTries);
}

// Never, now and then, and after every guess.
INSTANTIATE_TEST_SUITE_P(Restarts, PinGuesses, ::testing::Values(0, 7, 1));

} // namespace
} // namespace strandbench::test
