// SPDX-License-Identifier: GPL-3.0-or-later
// The bell asked once a second, on a player whose tones end when the test says so.
#include "sound/bell.h"

#include "sound/alarm_tones.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class FakePlayer final : public Player {
public:
    bool play(const Tone& tone) override
    {
        if (m_playing || refuses)
            return false;
        m_playing = true;
        played.push_back(tone);
        return true;
    }
    [[nodiscard]] bool playing() const override { return m_playing; }
    void end(const Sounded& outcome = {Sounded::Result::Played, {}})
    {
        m_playing = false;
        Q_EMIT finished(outcome);
    }
    std::vector<Tone> played;
    bool refuses = false;

private:
    bool m_playing = false;
};

class Ringing : public testing::Test {
protected:
    void ring(std::optional<AlarmKind> kind) { bell.ring(kind, now); }
    void later(double s)
    {
        now.utcMs += static_cast<qint64>(s * 1000);
        now.boottimeMs += static_cast<qint64>(s * 1000);
    }
    /// A second's step, as the window does it; the tone that plays ends when its length is over.
    void secondsOf(std::optional<AlarmKind> kind, int count)
    {
        for (int i = 0; i < count; ++i) {
            const std::size_t before = player.played.size();
            ring(kind);
            if (player.played.size() > before)
                beganAt.push_back(now.boottimeMs);
            later(1);
            if (player.played.empty())
                continue;
            const auto lastsMs = static_cast<qint64>(1000 * inSeconds(lengthOf(player.played.back())));
            if (player.playing() && now.boottimeMs - beganAt.back() >= lastsMs)
                player.end();
        }
    }
    FakePlayer player;
    Bell bell{&player};
    Instant now{1'000'000, 500'000, u"boot"_s, 0};
    std::vector<qint64> beganAt;
};

TEST_F(Ringing, beginsAtOnceAndComesAgainAfterItsPause)
{
    for (const AlarmKind kind : {AlarmKind::Gels, AlarmKind::SandFrom}) {
        beganAt.clear();
        ring(std::nullopt);
        secondsOf(kind, 40);
        ASSERT_GE(beganAt.size(), 3U);
        for (std::size_t i = 1; i < beganAt.size(); ++i) {
            const double between = static_cast<double>(beganAt[i] - beganAt[i - 1]) / 1000;
            const double least = inSeconds(lengthOf(toneOf(kind)) + pauseAfter(kind));
            EXPECT_GE(between, least);
            EXPECT_LT(between, least + 1);
        }
        EXPECT_EQ(player.played.back(), toneOf(kind));
        if (player.playing())
            player.end();
    }
}

TEST_F(Ringing, isQuietWhenAnsweredAndBeginsAtOnceNextTime)
{
    secondsOf(AlarmKind::Gels, 3);
    const std::size_t before = player.played.size();
    secondsOf(std::nullopt, 60);
    EXPECT_EQ(player.played.size(), before);
    secondsOf(AlarmKind::Gels, 1);
    secondsOf(std::nullopt, 2);
    secondsOf(AlarmKind::Gels, 1); // within the pause, but of another alarm
    EXPECT_EQ(player.played.size(), before + 2);
}

TEST_F(Ringing, whatIsMoreUrgentDoesNotWaitForThePause)
{
    secondsOf(AlarmKind::SandFrom, 3); // its burst is over, its pause is not
    ASSERT_FALSE(player.playing());
    ring(AlarmKind::SandUntil);
    ASSERT_EQ(player.played.size(), 2U);
    EXPECT_EQ(player.played.back(), toneOf(AlarmKind::SandUntil));
    // While a tone plays nothing else begins: the more urgent one is next.
    ring(AlarmKind::EdgesSoon);
    EXPECT_EQ(player.played.size(), 2U);
    player.end();
    ring(AlarmKind::EdgesSoon);
    EXPECT_EQ(player.played.back(), toneOf(AlarmKind::EdgesSoon));
    EXPECT_EQ(player.played.size(), 3U);
}

TEST_F(Ringing, whatIsLessUrgentWaitsForThePause)
{
    secondsOf(AlarmKind::Gels, 2);
    ASSERT_FALSE(player.playing());
    ring(AlarmKind::SandFrom);
    EXPECT_EQ(player.played.size(), 1U);
    later(2.5);
    ring(AlarmKind::SandFrom);
    EXPECT_EQ(player.played.size(), 2U);
    EXPECT_EQ(player.played.back(), toneOf(AlarmKind::SandFrom));
}

TEST_F(Ringing, goesByTheBootClock)
{
    secondsOf(AlarmKind::Gels, 2);
    now.utcMs += 3'600'000; // the wall clock was set
    ring(AlarmKind::Gels);
    EXPECT_EQ(player.played.size(), 1U);
    now.utcMs -= 7'200'000;
    later(2.5);
    ring(AlarmKind::Gels);
    EXPECT_EQ(player.played.size(), 2U);
}

TEST_F(Ringing, triesAgainWhenThePlayerWouldNotBegin)
{
    player.refuses = true;
    ring(AlarmKind::Gels);
    player.refuses = false;
    later(1);
    ring(AlarmKind::Gels);
    EXPECT_EQ(player.played.size(), 1U);
}

TEST_F(Ringing, saysWhenNoDeviceOpensAndWhenOneWorksAgain)
{
    QSignalSpy changed(&bell, &Bell::silentChanged);
    EXPECT_FALSE(bell.silent());
    ring(AlarmKind::Gels);
    EXPECT_FALSE(bell.silent()); // nobody knows yet
    player.end({Sounded::Result::NoDevice, u"no such device"_s});
    EXPECT_TRUE(bell.silent());
    EXPECT_EQ(bell.trouble(), u"no such device"_s);
    EXPECT_EQ(changed.count(), 1);
    later(10);
    ring(AlarmKind::Gels);
    player.end({Sounded::Result::WriteFailed, u"ran dry"_s});
    EXPECT_EQ(bell.trouble(), u"ran dry"_s);
    EXPECT_EQ(changed.count(), 1); // still silent
    later(10);
    ring(AlarmKind::Gels);
    player.end();
    EXPECT_FALSE(bell.silent());
    EXPECT_EQ(bell.trouble(), QString());
    EXPECT_EQ(changed.count(), 2);
}

TEST_F(Ringing, aToneThatNeverEndsIsSilence)
{
    ring(AlarmKind::Gels);
    for (int i = 0; i < 9; ++i) {
        later(1);
        ring(AlarmKind::Gels);
    }
    EXPECT_FALSE(bell.silent());
    later(2);
    ring(AlarmKind::Gels);
    EXPECT_TRUE(bell.silent());
    EXPECT_EQ(player.played.size(), 1U);
    player.end();
    EXPECT_FALSE(bell.silent());
}

TEST_F(Ringing, checksOnceWithAToneThatNobodyHears)
{
    bell.check();
    ASSERT_EQ(player.played.size(), 1U);
    EXPECT_EQ(player.played.front(), silentCheck());
    player.end({Sounded::Result::NoLibrary, u"no such library"_s});
    EXPECT_TRUE(bell.silent());
    bell.check();
    EXPECT_EQ(player.played.size(), 1U);
}

TEST_F(Ringing, checksNothingAfterAnAlarmOrASoundTest)
{
    ASSERT_TRUE(player.play(Tone{})); // the sound test's, beside the bell
    player.end({Sounded::Result::NoDevice, {}});
    EXPECT_TRUE(bell.silent());
    bell.check();
    EXPECT_EQ(player.played.size(), 1U);
}

TEST(BellWithoutAPlayer, saysThatItIsSilentWhenItShouldSound)
{
    const Instant now{1, 1, u"boot"_s, 0};
    Bell asked(nullptr);
    QSignalSpy changed(&asked, &Bell::silentChanged);
    asked.ring(std::nullopt, now);
    EXPECT_FALSE(asked.silent());
    asked.ring(AlarmKind::SandFrom, now);
    asked.ring(AlarmKind::SandFrom, now);
    EXPECT_TRUE(asked.silent());
    EXPECT_EQ(changed.count(), 1);
    Bell checked(nullptr);
    checked.check();
    EXPECT_TRUE(checked.silent());
}

} // namespace
} // namespace strandbench
