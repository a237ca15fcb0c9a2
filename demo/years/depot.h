// SPDX-License-Identifier: GPL-3.0-or-later
// The invented county bus depot: who works there, what is mended, what is written down, and the days.
#pragma once

#include "clock/clock.h"
#include "years/dice.h"

#include <QStringList>

namespace strandbench::years {

[[nodiscard]] const QStringList& technicians();
[[nodiscard]] const QStringList& supervisors();
[[nodiscard]] const QStringList& panels();

/// A remark as somebody keys it in: what was seen, where, on which bus, and what was done.
[[nodiscard]] QString remark(Dice& dice);
/// What a supervisor puts right of a record.
[[nodiscard]] QString correction(Dice& dice);

/// The lots in the hand on a day, counted from the first: a lot of filler lasts some days' work, one of hardener weeks.
/// All fillers of a delivery have the same lot.
[[nodiscard]] QString fillerLot(qint64 day);
[[nodiscard]] QString hardenerLot(qint64 day);

/// Days, counted from the first, and the time of day in seconds. The bench starts anew each midnight.
class Calendar {
public:
    explicit Calendar(quint64 seed) : m_seed(seed) {}
    [[nodiscard]] Instant at(qint64 day, double secondsOfDay);
    /// The beginning of a day, by the wall, in UTC.
    [[nodiscard]] static qint64 beginsMs(qint64 day);
    [[nodiscard]] Instant ofUtc(qint64 utcMs);
    [[nodiscard]] static qint64 dayOf(qint64 utcMs);

private:
    quint64 m_seed;
    qint64 m_day = -1;
    QString m_boot; ///< of m_day
};

} // namespace strandbench::years
