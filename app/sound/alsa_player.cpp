// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/alsa_player.h"

namespace strandbench {

AlsaPlayer::AlsaPlayer(Load load, QObject* parent) : Player(parent), m_load(std::move(load)) {}

AlsaPlayer::~AlsaPlayer()
{
    if (m_thread.joinable())
        m_thread.join();
}

bool AlsaPlayer::play(const Tone& tone)
{
    if (m_playing)
        return false;
    if (m_thread.joinable())
        m_thread.join(); // it has told its outcome already
    std::vector<std::int16_t> samples = samplesOf(tone);
    m_playing = true;
    m_thread = std::thread([this, samples = std::move(samples)] {
        const LoadedAlsa alsa = m_load();
        const Sounded outcome =
            alsa.calls ? playThrough(*alsa.calls, samples) : Sounded{Sounded::Result::NoLibrary, alsa.trouble};
        QMetaObject::invokeMethod(
            this,
            [this, outcome] {
                m_playing = false;
                Q_EMIT finished(outcome);
            },
            Qt::QueuedConnection);
    });
    return true;
}

} // namespace strandbench
