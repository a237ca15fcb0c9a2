// SPDX-License-Identifier: GPL-3.0-or-later
// The few functions of ALSA's PCM interface that a tone needs, as values: the library's own, or a test's. Their meaning
// is that of the ALSA project's C library reference, "PCM Interface".
#pragma once

#include "sound/player.h"

#include <functional>
#include <optional>

namespace strandbench {

/// 0 or above: done, or so many frames; below 0: an error that `text` puts into words.
struct AlsaCalls {
    std::function<int(void** pcm, const char* name, int stream, int mode)> open;
    std::function<int(void* pcm, int nonblock)> nonblock;
    std::function<int(void* pcm, int format, int access, unsigned channels, unsigned rate, int resample,
                      unsigned latencyUs)>
        setParams;
    std::function<long(void* pcm, const void* samples, unsigned long frames)> write;
    std::function<int(void* pcm)> drain;
    std::function<int(void* pcm)> close;
    std::function<const char*(int error)> text;
};

/// The machine's own library, loaded when first asked for; nothing and why when it is not there.
struct LoadedAlsa {
    std::optional<AlsaCalls> calls;
    QString trouble;
};
[[nodiscard]] LoadedAlsa loadAlsa();

/// Plays samples to their end at the default device: waits for them, so it belongs in a thread of its own.
/// What opened but was refused, ran dry or was cut short is WriteFailed, with what the device said.
[[nodiscard]] Sounded playThrough(const AlsaCalls& alsa, const std::vector<std::int16_t>& samples);

} // namespace strandbench
