// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/alsa.h"

#include <QLibrary>

#include <algorithm>
#include <utility>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// From <alsa/pcm.h>: its values are part of the library's binary interface, soname 2.
constexpr int streamPlayback = 0;
constexpr int accessInterleaved = 3;
constexpr int openWithoutWaiting = 1; // a device that another program holds would be waited for without end
constexpr int formatS16 = Q_BYTE_ORDER == Q_LITTLE_ENDIAN ? 2 : 3;
constexpr int soname = 2;
constexpr unsigned latencyUs = 100'000;

/// Puts a function of the library where it belongs; false when the library has none of that name.
template <class Signature> bool resolve(QLibrary& library, const char* name, std::function<Signature>& into)
{
    auto* function = reinterpret_cast<Signature*>(library.resolve(name));
    into = function;
    return function != nullptr;
}

/// In the place of the library's own, which writes a page on standard error each time that no device opens: what is
/// wrong is told on the glass.
void saysNothing(const char*, int, const char*, int, const char*, ...) {}
using SetErrorHandler = int(void (*handler)(const char*, int, const char*, int, const char*, ...));

/// Frames that a device takes at once without much left to lose when it runs dry.
constexpr std::size_t chunk = 4096;

/// Nothing when all were taken, else the error's number; a write that is taken in part goes on.
std::optional<int> writeAll(const AlsaCalls& alsa, void* pcm, const std::vector<std::int16_t>& samples)
{
    std::size_t at = 0;
    while (at < samples.size()) {
        const long taken = alsa.write(pcm, samples.data() + at, std::min(chunk, samples.size() - at));
        if (taken < 0)
            return static_cast<int>(taken); // also -EPIPE: it ran dry, so something of the tone was missing
        if (taken == 0)
            return -5; // EIO: a device that takes nothing and says no error
        at += static_cast<std::size_t>(taken);
    }
    return std::nullopt;
}

} // namespace

LoadedAlsa loadAlsa()
{
    QLibrary library(u"asound"_s, soname); // never unloaded: QLibrary's destructor leaves it
    if (!library.load())
        return {std::nullopt, library.errorString()};
    if (auto* setHandler = reinterpret_cast<SetErrorHandler*>(library.resolve("snd_lib_error_set_handler")))
        setHandler(saysNothing);
    AlsaCalls calls;
    const bool whole =
        resolve(library, "snd_pcm_open", calls.open) && resolve(library, "snd_pcm_nonblock", calls.nonblock) &&
        resolve(library, "snd_pcm_set_params", calls.setParams) && resolve(library, "snd_pcm_writei", calls.write) &&
        resolve(library, "snd_pcm_drain", calls.drain) && resolve(library, "snd_pcm_close", calls.close) &&
        resolve(library, "snd_strerror", calls.text);
    if (!whole)
        return {std::nullopt, library.errorString()};
    return {calls, {}};
}

Sounded playThrough(const AlsaCalls& alsa, const std::vector<std::int16_t>& samples)
{
    const auto failed = [&alsa](Sounded::Result result, int error) {
        return Sounded{result, QString::fromUtf8(alsa.text(error))};
    };
    void* pcm = nullptr;
    if (const int error = alsa.open(&pcm, "default", streamPlayback, openWithoutWaiting); error < 0)
        return failed(Sounded::Result::NoDevice, error);
    std::optional<int> error;
    if (const int stuck = alsa.nonblock(pcm, 0); stuck < 0)
        error = stuck;
    else if (const int refused = alsa.setParams(pcm, formatS16, accessInterleaved, 1, sampleRate, 1, latencyUs);
             refused < 0)
        error = refused;
    else
        error = writeAll(alsa, pcm, samples);
    if (!error)
        if (const int dry = alsa.drain(pcm); dry < 0)
            error = dry;
    if (const int unclosed = alsa.close(pcm); unclosed < 0 && !error)
        error = unclosed;
    return error ? failed(Sounded::Result::WriteFailed, *error) : Sounded{Sounded::Result::Played, {}};
}

} // namespace strandbench
