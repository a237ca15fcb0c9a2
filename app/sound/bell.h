// SPDX-License-Identifier: GPL-3.0-or-later
// Sounds the most urgent alarm until it is answered, and knows whether this machine can be heard at all.
#pragma once

#include "clock/alarm.h"
#include "clock/clock.h"
#include "sound/player.h"

#include <optional>

namespace strandbench {

class Bell final : public QObject {
    Q_OBJECT
public:
    /// Without a player nothing ever sounds, and silent() says so as soon as something should have.
    explicit Bell(Player* player, QObject* parent = nullptr);

    /// The most urgent alarm that nobody has answered, or none; called about every second. A burst begins when the
    /// alarm appears or becomes more urgent, and again after its pause. It never begins while a tone plays.
    void ring(std::optional<AlarmKind> kind, const Instant& now);
    /// Tries the device with a tone that nobody hears, unless something was tried before.
    void check();

    /// The last try did not come to its end at a device, so alarms are seen alone.
    [[nodiscard]] bool silent() const { return m_silent; }
    /// The device's or the library's own words for it.
    [[nodiscard]] QString trouble() const { return m_trouble; }

Q_SIGNALS:
    void silentChanged();

private:
    struct Burst {
        AlarmKind kind;
        Instant begun;
    };
    [[nodiscard]] bool due(AlarmKind kind, const Instant& now) const;
    void waitFor(const Instant& now);
    void take(const Sounded& outcome);

    Player* m_player;
    std::optional<Burst> m_last;      ///< since somebody last answered everything
    std::optional<Instant> m_waiting; ///< for a tone that plays
    bool m_tried = false;
    bool m_silent = false;
    QString m_trouble;
};

} // namespace strandbench
