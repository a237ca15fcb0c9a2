// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/tone.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace strandbench {
namespace {

/// Crossings of nothing upwards within a stretch: for a sine, its cycles.
int cycles(const std::vector<std::int16_t>& samples, std::size_t from, std::size_t to)
{
    int count = 0;
    for (std::size_t i = from + 1; i < to; ++i)
        count += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
    return count;
}

TEST(ToneSamples, LastAsLongAsTheToneSays)
{
    const Tone tone{500, 1000, seconds(0.3), seconds(0.1), 4, 0.5};
    EXPECT_NEAR(static_cast<double>(samplesOf(tone).size()) / sampleRate, 4 * 0.3 + 3 * 0.1, 1e-4);
    EXPECT_NEAR(inSeconds(lengthOf(tone)), 1.5, 1e-12);
}

TEST(ToneSamples, RiseFromTheFirstFrequencyToTheLast)
{
    const Tone tone{500, 1500, seconds(1), seconds(0), 1, 0.5};
    const std::vector<std::int16_t> samples = samplesOf(tone);
    // An even rise passes through its mean at half time: 0.1 s there hold a tenth of it.
    EXPECT_NEAR(cycles(samples, 0, sampleRate / 10), 55, 2);
    EXPECT_NEAR(cycles(samples, sampleRate * 45 / 100, sampleRate * 55 / 100), 100, 2);
    EXPECT_NEAR(cycles(samples, sampleRate * 9 / 10, sampleRate), 145, 2);
    EXPECT_NEAR(cycles(samples, 0, sampleRate), 1000, 2);
}

TEST(ToneSamples, KeepToTheLoudnessAndFadeAtBothEnds)
{
    const Tone tone{800, 800, seconds(0.2), seconds(0.1), 2, 0.5};
    const std::vector<std::int16_t> samples = samplesOf(tone);
    const auto [low, high] = std::minmax_element(samples.begin(), samples.end());
    EXPECT_NEAR(*high, 32767 / 2, 200);
    EXPECT_NEAR(*low, -32767 / 2, 200);
    EXPECT_EQ(samples.front(), 0);
    EXPECT_LT(std::abs(samples.back()), 400);
    const std::size_t quiet = sampleRate / 4; // within the pause
    EXPECT_TRUE(std::all_of(samples.begin() + quiet, samples.begin() + quiet + 1000, [](auto s) { return s == 0; }));
}

TEST(ToneSamples, RiseSoundBySoundAndLeaveOneBeatOut)
{
    Tone tone{400, 800, seconds(0.2), seconds(0.1), 5, 0.5, Rise::SoundBySound};
    tone.restAfter = 3;
    const std::vector<std::int16_t> samples = samplesOf(tone);
    EXPECT_NEAR(inSeconds(lengthOf(tone)), 6 * 0.2 + 5 * 0.1, 1e-12);
    EXPECT_NEAR(static_cast<double>(samples.size()) / sampleRate, inSeconds(lengthOf(tone)), 1e-4);
    const double begins[] = {0, 0.3, 0.6, 1.2, 1.5};
    for (int i = 0; i < 5; ++i) {
        const auto from = static_cast<std::size_t>((begins[i] + 0.05) * sampleRate);
        EXPECT_NEAR(cycles(samples, from, from + sampleRate / 10), 40 + 10 * i, 1) << i; // level within a sound
    }
    EXPECT_TRUE(std::all_of(samples.begin() + sampleRate * 81 / 100, samples.begin() + sampleRate * 119 / 100,
                            [](auto s) { return s == 0; }));
}

TEST(ToneSamples, AreAsLoudWithOvertonesAsWithout)
{
    Tone tone{300, 300, seconds(0.2), seconds(0.1), 1, 1.0};
    for (const int overtones : {0, 1, 4, 16}) {
        tone.overtones = overtones;
        const std::vector<std::int16_t> samples = samplesOf(tone);
        const auto [low, high] = std::minmax_element(samples.begin(), samples.end());
        EXPECT_NEAR(std::max<int>(*high, -*low), 32767, 200) << overtones;
    }
}

TEST(ToneSamples, RefuseWhatIsNoTone)
{
    EXPECT_THROW((void)samplesOf({0, 1000, seconds(1), seconds(0), 1, 0.5}), std::invalid_argument);
    EXPECT_THROW((void)samplesOf({500, 1000, seconds(0), seconds(0), 1, 0.5}), std::invalid_argument);
    EXPECT_THROW((void)samplesOf({500, 1000, seconds(1), seconds(-1), 1, 0.5}), std::invalid_argument);
    EXPECT_THROW((void)samplesOf({500, 1000, seconds(1), seconds(0), 0, 0.5}), std::invalid_argument);
    EXPECT_THROW((void)samplesOf({500, 1000, seconds(1), seconds(0), 1, 1.5}), std::invalid_argument);
    const Tone shrill{500, 2000, seconds(1), seconds(0), 1, 0.5, Rise::Within, 10}; // 22 kHz
    EXPECT_THROW((void)samplesOf(shrill), std::invalid_argument);
}

} // namespace
} // namespace strandbench
