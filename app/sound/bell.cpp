// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/bell.h"

#include "sound/alarm_tones.h"

namespace strandbench {
namespace {

// No tone of ours lasts 3 s: a device that is still at it takes nothing more.
const Duration stuck = seconds(10);

} // namespace

Bell::Bell(Player* player, QObject* parent) : QObject(parent), m_player(player)
{
    // The outcome of a sound test counts like that of an alarm.
    if (m_player)
        connect(m_player, &Player::finished, this, &Bell::take);
}

void Bell::ring(std::optional<AlarmKind> kind, const Instant& now)
{
    if (!kind) {
        m_last.reset();
        m_waiting.reset();
        return;
    }
    if (!m_player)
        return take({Sounded::Result::NoDevice, {}});
    if (m_player->playing())
        return waitFor(now);
    m_waiting.reset();
    if (!due(*kind, now) || !m_player->play(toneOf(*kind)))
        return;
    m_tried = true;
    m_last = Burst{*kind, now};
}

bool Bell::due(AlarmKind kind, const Instant& now) const
{
    if (!m_last || urgencyOf(kind) < urgencyOf(m_last->kind))
        return true;
    return elapsed(m_last->begun, now) >= lengthOf(toneOf(m_last->kind)) + pauseAfter(m_last->kind);
}

void Bell::waitFor(const Instant& now)
{
    if (!m_waiting)
        m_waiting = now;
    else if (elapsed(*m_waiting, now) >= stuck)
        take({Sounded::Result::WriteFailed, {}});
}

void Bell::check()
{
    if (m_tried)
        return;
    if (!m_player)
        return take({Sounded::Result::NoDevice, {}});
    m_tried = m_player->play(silentCheck());
}

void Bell::take(const Sounded& outcome)
{
    m_tried = true;
    m_trouble = outcome.said;
    const bool silent = outcome.result != Sounded::Result::Played;
    if (silent == m_silent)
        return;
    m_silent = silent;
    Q_EMIT silentChanged();
}

} // namespace strandbench
