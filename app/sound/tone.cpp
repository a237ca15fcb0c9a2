// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/tone.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

namespace strandbench {
namespace {

constexpr double fadeSeconds = 0.005;

bool audible(double hertz) { return hertz >= 20 && hertz <= 20'000; }

bool isTone(const Tone& tone)
{
    const double highest = std::max(tone.fromHertz, tone.toHertz) * (1.0 + tone.overtones);
    return audible(tone.fromHertz) && audible(tone.toHertz) && tone.overtones >= 0 && audible(highest) &&
           inSeconds(tone.sound) > 0 && inSeconds(tone.pause) >= 0 && tone.times >= 1 && tone.restAfter >= 0 &&
           tone.loudness >= 0 && tone.loudness <= 1;
}

std::size_t countOf(Duration length) { return static_cast<std::size_t>(std::llround(inSeconds(length) * sampleRate)); }

bool rests(const Tone& tone) { return tone.restAfter > 0 && tone.restAfter < tone.times; }

/// How often the fundamental has turned at a moment of a sound: the integral of its frequency, which rises evenly.
double turnsAt(const Tone& tone, int time, double at, double length)
{
    const double more = tone.toHertz - tone.fromHertz;
    if (tone.rise == Rise::Within)
        return (tone.fromHertz + more * at / (2 * length)) * at;
    const double share = tone.times > 1 ? static_cast<double>(time) / (tone.times - 1) : 0;
    return (tone.fromHertz + more * share) * at;
}

/// The fundamental and its overtones, 3 dB an octave down. Phases that grow with the square of the number keep the
/// peaks low (Schroeder 1970), so that more of it is heard at the same full scale.
double heightAt(double turns, int overtones)
{
    double height = 0;
    const int all = overtones + 1;
    for (int number = 1; number <= all; ++number) {
        const double phase = std::numbers::pi * number * (number - 1) / all;
        height += std::sin(2 * std::numbers::pi * number * turns - phase) / std::sqrt(number);
    }
    return height;
}

/// One sound, not yet faded.
std::vector<double> heightsOf(const Tone& tone, int time)
{
    std::vector<double> heights(countOf(tone.sound));
    const double length = static_cast<double>(heights.size()) / sampleRate;
    for (std::size_t i = 0; i < heights.size(); ++i)
        heights[i] = heightAt(turnsAt(tone, time, static_cast<double>(i) / sampleRate, length), tone.overtones);
    return heights;
}

void append(std::vector<std::int16_t>& samples, const std::vector<double>& heights, double scale)
{
    const double length = static_cast<double>(heights.size()) / sampleRate;
    for (std::size_t i = 0; i < heights.size(); ++i) {
        const double at = static_cast<double>(i) / sampleRate;
        const double fade = std::clamp(std::min(at, length - at) / fadeSeconds, 0.0, 1.0);
        samples.push_back(static_cast<std::int16_t>(std::lround(scale * fade * heights[i])));
    }
}

} // namespace

Duration lengthOf(const Tone& tone)
{
    const Duration all =
        tone.sound * static_cast<double>(tone.times) + tone.pause * static_cast<double>(tone.times - 1);
    return rests(tone) ? all + tone.sound + tone.pause : all;
}

std::vector<std::int16_t> samplesOf(const Tone& tone)
{
    if (!isTone(tone))
        throw std::invalid_argument("samplesOf: not a tone");
    std::vector<std::vector<double>> sounds;
    double peak = 1; // of a sine, also of a short one that is cut before its top
    for (int time = 0; time < tone.times; ++time) {
        sounds.push_back(heightsOf(tone, time));
        for (const double height : sounds.back())
            peak = std::max(peak, std::abs(height));
    }
    const double scale = std::numeric_limits<std::int16_t>::max() * tone.loudness / peak;
    const std::size_t pause = countOf(tone.pause);
    std::vector<std::int16_t> samples;
    samples.reserve(countOf(lengthOf(tone)) + 1);
    for (int time = 0; time < tone.times; ++time) {
        if (time > 0)
            samples.insert(samples.end(), pause, 0);
        if (time > 0 && time == tone.restAfter)
            samples.insert(samples.end(), countOf(tone.sound) + pause, 0);
        append(samples, sounds[static_cast<std::size_t>(time)], scale);
    }
    return samples;
}

} // namespace strandbench
