// SPDX-License-Identifier: GPL-3.0-or-later
// The bursts of the alarms, measured from their samples and held against the figures of the sources that
// alarm_tones.cpp names.
#include "sound/alarm_tones.h"

#include "listener.h"

#include <gtest/gtest.h>

#include <map>

namespace strandbench {
namespace {

using namespace listening;

struct Heard {
    Samples samples;
    std::vector<Stretch> sounds;
    std::vector<double> hertz; ///< of each sound's fundamental
};

/// Measured once a kind.
const Heard& hear(AlarmKind kind)
{
    static std::map<AlarmKind, Heard> known;
    const auto [at, isNew] = known.try_emplace(kind);
    Heard& heard = at->second;
    if (!isNew)
        return heard;
    heard.samples = samplesOf(toneOf(kind));
    heard.sounds = soundsIn(heard.samples);
    // The fundamental is the strongest line, and the range of IEC 60601-1-8 holds it.
    for (const Stretch& sound : heard.sounds)
        heard.hertz.push_back(strongest(heard.samples, sound, 150, 1000));
    return heard;
}

bool high(AlarmKind kind) { return kind == AlarmKind::EdgesSoon || kind == AlarmKind::Gels; }

/// Of one sound with all that sounds with it.
double levelA(const Heard& heard, std::size_t sound)
{
    double power = 0;
    for (double hertz = heard.hertz[sound]; hertz < 5000; hertz += heard.hertz[sound])
        power += std::pow(weightA(hertz) * amplitude(heard.samples, heard.sounds[sound], hertz), 2);
    return 10 * std::log10(power);
}

class Burst : public testing::TestWithParam<AlarmKind> {
protected:
    const Heard& heard = hear(GetParam());
    const bool urgent = high(GetParam());
};

TEST_P(Burst, hasThreeAndTwoSoundsOrThree)
{
    ASSERT_EQ(heard.sounds.size(), urgent ? 5U : 3U);
    std::vector<double> gaps;
    for (std::size_t i = 1; i < heard.sounds.size(); ++i)
        gaps.push_back(static_cast<double>(heard.sounds[i].from - heard.sounds[i - 1].to) / sampleRate);
    const double usual = gaps.front();
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        if (urgent && i == 2)
            EXPECT_GT(gaps[i], 2 * usual) << "the longer one after the third";
        else
            EXPECT_NEAR(gaps[i], usual, 0.001) << i;
    }
}

TEST_P(Burst, soundsLastAsLongAsTheSourceAllows)
{
    for (const Stretch& sound : heard.sounds) {
        EXPECT_GE(sound.seconds(), urgent ? 0.075 : 0.125);
        EXPECT_LE(sound.seconds(), urgent ? 0.200 : 0.250);
        EXPECT_NEAR(sound.seconds(), heard.sounds.front().seconds(), 0.001);
    }
}

TEST_P(Burst, comesAgainAfterAPauseThatTheSourceAllows)
{
    const double pause = inSeconds(pauseAfter(GetParam()));
    EXPECT_GE(pause, 2.5);
    // The window asks once a second, so up to one more passes.
    EXPECT_LE(pause + 1, urgent ? 15.0 : 30.0);
    EXPECT_NEAR(static_cast<double>(heard.samples.size()) / sampleRate, inSeconds(lengthOf(toneOf(GetParam()))), 1e-4);
}

TEST_P(Burst, risesFromSoundToSound)
{
    for (std::size_t i = 1; i < heard.hertz.size(); ++i)
        EXPECT_GT(heard.hertz[i], heard.hertz[i - 1] * 1.03) << i;
    EXPECT_NEAR(heard.hertz.front(), toneOf(GetParam()).fromHertz, 2);
    EXPECT_NEAR(heard.hertz.back(), toneOf(GetParam()).toHertz, 2);
}

TEST_P(Burst, hasFourHarmonicsAboutAsStrongAsItsFundamental)
{
    for (std::size_t i = 0; i < heard.sounds.size(); ++i) {
        EXPECT_GE(heard.hertz[i], 150);
        EXPECT_LE(heard.hertz[i], 1000);
        const double fundamental = amplitude(heard.samples, heard.sounds[i], heard.hertz[i]);
        int harmonics = 0;
        for (int number = 2; number * heard.hertz[i] <= 4000; ++number) {
            const double hertz = number * heard.hertz[i];
            const double level = decibels(amplitude(heard.samples, heard.sounds[i], hertz) / fundamental);
            harmonics += hertz >= 300 && std::abs(level) <= 15 ? 1 : 0;
        }
        EXPECT_GE(harmonics, 4) << "sound " << i;
    }
}

TEST_P(Burst, neverClips)
{
    const auto [low, top] = std::minmax_element(heard.samples.begin(), heard.samples.end());
    const double wanted = 32767 * toneOf(GetParam()).loudness;
    EXPECT_LE(std::max<int>(*top, -*low), static_cast<int>(wanted) + 1);
    EXPECT_GE(std::max<int>(*top, -*low), static_cast<int>(0.95 * wanted)) << "it is as loud as it may be";
    EXPECT_LE(longestAtTheTop(heard.samples), 3U);
}

INSTANTIATE_TEST_SUITE_P(Alarms, Burst,
                         testing::Values(AlarmKind::EdgesSoon, AlarmKind::Gels, AlarmKind::SandFrom,
                                         AlarmKind::SandUntil),
                         [](const auto& each) { return codeOf(each.param).toStdString(); });

// NUREG-0700: tones of different meaning are 20 % apart in frequency, two levels 6 dB(A).
TEST(AlarmTones, AreTwentyPercentApartWhicheverSoundIsHeard)
{
    for (const auto& one : Codes<AlarmKind>::table) {
        for (const auto& other : Codes<AlarmKind>::table) {
            if (urgencyOf(one.first) >= urgencyOf(other.first))
                continue;
            for (const double mine : hear(one.first).hertz)
                for (const double yours : hear(other.first).hertz)
                    EXPECT_GE(mine / yours, 1.2) << one.second << " is the higher beside " << other.second;
        }
    }
}

TEST(AlarmTones, HaveTwoLevelsSixDecibelsApartAndNoMoreThanTwelve)
{
    for (const AlarmKind loud : {AlarmKind::EdgesSoon, AlarmKind::Gels}) {
        for (const AlarmKind quiet : {AlarmKind::SandFrom, AlarmKind::SandUntil}) {
            const Heard& one = hear(loud);
            const Heard& other = hear(quiet);
            for (std::size_t i = 0; i < one.sounds.size(); ++i) {
                for (std::size_t j = 0; j < other.sounds.size(); ++j) {
                    const double apart = levelA(one, i) - levelA(other, j);
                    EXPECT_GE(apart, 6) << codeOf(loud).toStdString() << " " << codeOf(quiet).toStdString();
                    EXPECT_LE(apart, 12) << codeOf(loud).toStdString() << " " << codeOf(quiet).toStdString();
                }
            }
        }
    }
}

TEST(SilentCheck, IsHeardByNobody)
{
    const Samples samples = samplesOf(silentCheck());
    EXPECT_NEAR(static_cast<double>(samples.size()) / sampleRate, 0.05, 1e-4);
    EXPECT_TRUE(std::all_of(samples.begin(), samples.end(), [](auto sample) { return sample == 0; }));
}

} // namespace
} // namespace strandbench
