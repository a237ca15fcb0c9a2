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
    m_playing = true;
    m_thread = std::thread([this, tone] { // samples are worked out there too: they take as long as painting a screen
        const LoadedAlsa alsa = m_load();
        const Sounded outcome =
            alsa.calls ? playThrough(*alsa.calls, samplesOf(tone)) : Sounded{Sounded::Result::NoLibrary, alsa.trouble};
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
