// SPDX-License-Identifier: GPL-3.0-or-later
// A tone as a value, and its samples.
#pragma once

#include "quantity/quantity.h"

#include <cstdint>
#include <vector>

namespace strandbench {

/// How a tone comes from its first frequency to its last.
enum class Rise {
    Within,       ///< within each sound
    SoundBySound, ///< each sound on one frequency, higher than the one before
};

/// One sound, a pause, and so on: rising from the first frequency to the last, so that it is heard beside a
/// compressor that hums on one.
struct Tone {
    double fromHertz = 700;
    double toHertz = 1400;
    Duration sound = seconds(0.4);
    Duration pause = seconds(0.2);
    int times = 3;
    double loudness = 0.8; ///< of full scale, 0 to 1
    Rise rise = Rise::Within;
    int overtones = 0; ///< multiples of the frequency that sound with it, each weaker than the one below
    int restAfter = 0; ///< after so many sounds one beat is left out; 0: never
    bool operator==(const Tone&) const = default;
};

/// Samples a second.
inline constexpr unsigned sampleRate = 48'000;

/// How long the whole lasts; the last sound has no pause after it.
[[nodiscard]] Duration lengthOf(const Tone& tone);

/// 16-bit samples, one channel, faded in and out over 5 ms so that no sound clicks; the highest peak is the loudness,
/// so that overtones never clip. Throws std::invalid_argument for frequencies outside 20 Hz to 20 kHz (overtones too),
/// no sound, or loudness beyond 0 to 1.
[[nodiscard]] std::vector<std::int16_t> samplesOf(const Tone& tone);

} // namespace strandbench
