// SPDX-License-Identifier: GPL-3.0-or-later
// Something that plays a tone and says what became of it. Sound is never the only alarm.
#pragma once

#include "sound/tone.h"

#include <QObject>
#include <QString>

namespace strandbench {

/// What became of a tone. Only Played means that the device took every sample of it and let them run out; whether it
/// was heard, a person alone can say.
struct Sounded {
    enum class Result {
        Played,
        NoLibrary,   ///< ALSA's library is not on this machine, or lacks a function
        NoDevice,    ///< no device opens
        WriteFailed, ///< it opened, but refused the format, ran dry or failed on the way
    };
    Result result = Result::NoDevice;
    QString said; ///< the device's or the library's own words; empty when played
    bool operator==(const Sounded&) const = default;
};

class Player : public QObject {
    Q_OBJECT
public:
    explicit Player(QObject* parent = nullptr);
    ~Player() override;
    /// Begins to play; finished() tells the outcome, later and on this object's own thread. While one tone plays
    /// another is not begun: false.
    [[nodiscard]] virtual bool play(const Tone& tone) = 0;
    [[nodiscard]] virtual bool playing() const = 0;

Q_SIGNALS:
    void finished(const strandbench::Sounded& outcome);
};

} // namespace strandbench
