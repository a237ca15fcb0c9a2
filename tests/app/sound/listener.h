// SPDX-License-Identifier: GPL-3.0-or-later
// What is in samples, found from them alone: where sounds begin and end, and how strong a frequency is.
#pragma once

#include "sound/tone.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdlib>
#include <numbers>

namespace strandbench::listening {

using Samples = std::vector<std::int16_t>;

/// From the first sample that is not silent to the one after the last; silence shorter than 20 ms is part of a sound.
struct Stretch {
    std::size_t from;
    std::size_t to;
    [[nodiscard]] double seconds() const { return static_cast<double>(to - from) / sampleRate; }
};

inline std::vector<Stretch> soundsIn(const Samples& samples)
{
    constexpr std::size_t leastSilence = sampleRate / 50;
    std::vector<Stretch> found;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (samples[i] == 0)
            continue;
        if (found.empty() || i - found.back().to > leastSilence)
            found.push_back({i, i});
        found.back().to = i + 1;
    }
    return found;
}

/// The amplitude of a frequency in the middle of a stretch: one bin of a Fourier transform under a Hann window, so that
/// what stands beside it does not leak in.
inline double amplitude(const Samples& samples, const Stretch& where, double hertz)
{
    const std::size_t edge = sampleRate / 100; // clear of the fades
    const std::size_t count = where.to - where.from - 2 * edge;
    const std::complex<double> step = std::polar(1.0, -2 * std::numbers::pi * hertz / sampleRate);
    const std::complex<double> turn = std::polar(1.0, 2 * std::numbers::pi / static_cast<double>(count));
    std::complex<double> wave = 1;
    std::complex<double> window = 1;
    std::complex<double> sum;
    for (std::size_t i = 0; i < count; ++i) {
        sum += (1 - window.real()) * samples[where.from + edge + i] * wave;
        wave *= step;
        window *= turn;
    }
    return 2 * std::abs(sum) / static_cast<double>(count); // the window's mean is 1
}

/// The strongest line between two frequencies, to 0.5 Hz. Lines are some 15 Hz wide, so steps of 5 Hz miss none.
inline double strongest(const Samples& samples, const Stretch& where, double from, double to)
{
    const auto best = [&](double low, double high, double step) {
        double found = low;
        double most = 0;
        for (double hertz = low; hertz <= high; hertz += step) {
            const double now = amplitude(samples, where, hertz);
            found = now > most ? hertz : found;
            most = std::max(most, now);
        }
        return found;
    };
    const double near = best(from, to, 5);
    return best(std::max(from, near - 5), near + 5, 0.5);
}

/// How many samples stand at the highest or the lowest value beside each other: many where a top was cut off.
inline std::size_t longestAtTheTop(const Samples& samples)
{
    const auto [low, top] = std::minmax_element(samples.begin(), samples.end());
    std::size_t longest = 0;
    std::size_t run = 0;
    for (const std::int16_t each : samples) {
        run = each == *low || each == *top ? run + 1 : 0;
        longest = std::max(longest, run);
    }
    return longest;
}

inline double decibels(double ratio) { return 20 * std::log10(ratio); }

/// How much of a frequency counts in dB(A) (IEC 61672-1), as a factor of amplitude.
inline double weightA(double hertz)
{
    const double f2 = hertz * hertz;
    const auto squared = [](double value) { return value * value; };
    const double ra =
        squared(12194) * f2 * f2 /
        ((f2 + squared(20.6)) * std::sqrt((f2 + squared(107.7)) * (f2 + squared(737.9))) * (f2 + squared(12194)));
    return ra * std::pow(10, 2.0 / 20);
}

} // namespace strandbench::listening
