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

std::size_t countOf(Duration length) { return static_cast<std::size_t>(std::llround(inSeconds(length) * sampleRate)); }

} // namespace

Duration lengthOf(const Tone& tone)
{
    return tone.sound * static_cast<double>(tone.times) + tone.pause * static_cast<double>(tone.times - 1);
}

std::vector<std::int16_t> samplesOf(const Tone& tone)
{
    if (!audible(tone.fromHertz) || !audible(tone.toHertz) || !(inSeconds(tone.sound) > 0) ||
        !(inSeconds(tone.pause) >= 0) || tone.times < 1 || !(tone.loudness >= 0 && tone.loudness <= 1))
        throw std::invalid_argument("samplesOf: not a tone");
    const std::size_t sounding = countOf(tone.sound);
    const std::size_t silent = countOf(tone.pause);
    const double length = static_cast<double>(sounding) / sampleRate;
    std::vector<std::int16_t> samples;
    samples.reserve((sounding + silent) * static_cast<std::size_t>(tone.times));
    for (int time = 0; time < tone.times; ++time) {
        if (time > 0)
            samples.insert(samples.end(), silent, 0);
        for (std::size_t i = 0; i < sounding; ++i) {
            const double at = static_cast<double>(i) / sampleRate;
            // The phase is the integral of a frequency that rises evenly.
            const double turns = (tone.fromHertz + (tone.toHertz - tone.fromHertz) * at / (2 * length)) * at;
            const double fade = std::clamp(std::min(at, length - at) / fadeSeconds, 0.0, 1.0);
            const double full = std::numeric_limits<std::int16_t>::max();
            const double height = std::sin(2 * std::numbers::pi * turns);
            samples.push_back(static_cast<std::int16_t>(std::lround(full * tone.loudness * fade * height)));
        }
    }
    return samples;
}

} // namespace strandbench
