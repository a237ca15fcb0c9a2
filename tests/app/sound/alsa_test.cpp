// SPDX-License-Identifier: GPL-3.0-or-later
// A tone counts as played only when the device took all of it and let it run out. The device is a test's own: the
// contract is that of ALSA's reference (negative is an error; a write may take a part).
#include "sound/alsa_player.h"

#include <QElapsedTimer>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include <cerrno>
#include <cstring>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

struct Device {
    int opens = 0; ///< or the error
    int takesFormat = 0;
    int drains = 0;
    int closes = 0;
    long atATime = 1000;     ///< frames of one write
    std::size_t failsAt = 0; ///< frames after which a write fails; 0: never
    long failure = -EPIPE;
    std::vector<std::int16_t> heard;
    int closed = 0;

    AlsaCalls calls()
    {
        AlsaCalls made;
        made.open = [this](void** pcm, const char* name, int stream, int) {
            EXPECT_STREQ(name, "default");
            EXPECT_EQ(stream, 0);
            *pcm = this;
            return opens;
        };
        made.nonblock = [](void*, int) { return 0; };
        made.setParams = [this](void*, int, int, unsigned channels, unsigned rate, int, unsigned) {
            EXPECT_EQ(channels, 1U);
            EXPECT_EQ(rate, sampleRate);
            return takesFormat;
        };
        made.write = [this](void*, const void* samples, unsigned long frames) -> long {
            if (failsAt != 0 && heard.size() >= failsAt)
                return failure;
            const auto taken = std::min(static_cast<long>(frames), atATime);
            const auto* first = static_cast<const std::int16_t*>(samples);
            heard.insert(heard.end(), first, first + taken);
            return taken;
        };
        made.drain = [this](void*) { return drains; };
        made.close = [this](void*) {
            ++closed;
            return closes;
        };
        made.text = [](int error) -> const char* { return std::strerror(-error); };
        return made;
    }
};

TEST(PlayThrough, GivesTheDeviceEverySampleInOrder)
{
    Device device;
    device.atATime = 777; // never a whole chunk
    const std::vector<std::int16_t> samples = samplesOf(Tone{});
    EXPECT_EQ(playThrough(device.calls(), samples), (Sounded{Sounded::Result::Played, {}}));
    EXPECT_EQ(device.heard, samples);
    EXPECT_EQ(device.closed, 1);
}

TEST(PlayThrough, SaysThatNoDeviceOpens)
{
    Device device;
    device.opens = -ENOENT;
    const Sounded outcome = playThrough(device.calls(), samplesOf(Tone{}));
    EXPECT_EQ(outcome.result, Sounded::Result::NoDevice);
    EXPECT_EQ(outcome.said, QString::fromUtf8(std::strerror(ENOENT)));
    EXPECT_TRUE(device.heard.empty());
    EXPECT_EQ(device.closed, 0);
}

TEST(PlayThrough, WhatOpenedButFailedIsNotPlayed)
{
    const std::vector<std::int16_t> samples = samplesOf(Tone{});
    const auto outcomeOf = [&](const std::function<void(Device&)>& spoil) {
        Device device;
        spoil(device);
        const Sounded outcome = playThrough(device.calls(), samples);
        EXPECT_EQ(device.closed, 1);
        EXPECT_FALSE(outcome.said.isEmpty());
        return outcome.result;
    };
    constexpr auto failed = Sounded::Result::WriteFailed;
    EXPECT_EQ(outcomeOf([](Device& d) { d.takesFormat = -EINVAL; }), failed);
    EXPECT_EQ(outcomeOf([](Device& d) { d.failsAt = 20'000; }), failed); // it ran dry half way
    EXPECT_EQ(outcomeOf([](Device& d) { d.atATime = 0; }), failed);      // takes nothing for ever
    EXPECT_EQ(outcomeOf([](Device& d) { d.drains = -ESTRPIPE; }), failed);
    EXPECT_EQ(outcomeOf([](Device& d) { d.closes = -EIO; }), failed);
}

TEST(AlsaPlayerThread, PlaysBesideTheGlassAndTellsOnce)
{
    Device device;
    AlsaPlayer player([&device] {
        AlsaCalls calls = device.calls();
        calls.drain = [](void*) {
            std::this_thread::sleep_for(std::chrono::milliseconds(200));
            return 0;
        };
        return LoadedAlsa{calls, {}};
    });
    QSignalSpy told(&player, &Player::finished);
    QElapsedTimer since;
    since.start();
    ASSERT_TRUE(player.play(Tone{}));
    EXPECT_TRUE(player.playing());
    EXPECT_FALSE(player.play(Tone{})); // one at a time
    ASSERT_TRUE(told.wait(5000));
    EXPECT_GE(since.elapsed(), 200); // the outcome is not told before the end
    EXPECT_FALSE(player.playing());
    EXPECT_EQ(told.front().front().value<Sounded>().result, Sounded::Result::Played);
    ASSERT_TRUE(player.play(Tone{}));
    ASSERT_TRUE(told.wait(5000));
    EXPECT_EQ(told.count(), 2);
}

TEST(AlsaPlayerThread, SaysWhatTheLibraryLacks)
{
    AlsaPlayer player([] { return LoadedAlsa{std::nullopt, u"no such library"_s}; });
    QSignalSpy told(&player, &Player::finished);
    ASSERT_TRUE(player.play(Tone{}));
    ASSERT_TRUE(told.wait(5000));
    EXPECT_EQ(told.front().front().value<Sounded>(), (Sounded{Sounded::Result::NoLibrary, u"no such library"_s}));
}

TEST(AlsaPlayerThread, OutlivesNothingWhenItGoesInTheMiddle)
{
    Device device;
    {
        AlsaPlayer player([&device] { return LoadedAlsa{device.calls(), {}}; });
        ASSERT_TRUE(player.play(Tone{}));
    }
    EXPECT_EQ(device.closed, 1); // it waited for the device to be given back
}

TEST(ThisMachine, AnswersHonestly)
{
    // Whatever this machine has: a library that is there gives all its functions; one that is not gives a reason.
    const LoadedAlsa alsa = loadAlsa();
    EXPECT_EQ(alsa.calls.has_value(), alsa.trouble.isEmpty());
}

} // namespace
} // namespace strandbench
