// SPDX-License-Identifier: GPL-3.0-or-later
// Plays tones through ALSA in a thread of its own, so that the glass never waits for a speaker.
#pragma once

#include "sound/alsa.h"

#include <thread>

namespace strandbench {

class AlsaPlayer final : public Player {
    Q_OBJECT
public:
    using Load = std::function<LoadedAlsa()>;
    explicit AlsaPlayer(Load load = loadAlsa, QObject* parent = nullptr);
    /// Waits for the tone that plays: a few seconds at most.
    ~AlsaPlayer() override;
    [[nodiscard]] bool play(const Tone& tone) override;
    [[nodiscard]] bool playing() const override { return m_playing; }

private:
    Load m_load;
    std::thread m_thread;
    bool m_playing = false; ///< own thread alone
};

} // namespace strandbench
