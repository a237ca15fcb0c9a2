// SPDX-License-Identifier: GPL-3.0-or-later
// The air of a span of days at a bench, from its events: what was read, and what the work gave off into the room.
#pragma once

#include "air/gate.h"
#include "air/shop_air.h"
#include "material/catalogue.h"
#include "repair/event.h"

#include <optional>
#include <vector>

namespace strandbench {

/// Air, panel and humidity as they were read, with what followed from it for filling.
struct AirReading {
    Reading reading;
    AirVerdict air; ///< by the limits that hold now
    Instant at;
    qint64 seq = 0;                     ///< of the event
    [[nodiscard]] bool nearDew() const; ///< the panel was nearer to its dew point than the limit
};

/// A batch or a test pat that lay open until it gelled, as predicted when its hardener went in.
struct FillerInRoom {
    Mass filler;
    Fraction styrene;
    Duration untilGel;
    Instant at;
};

/// A step that wipes down with a solvent, as it was told to be done.
struct WipeInRoom {
    Vapour vapour = Vapour::Acetone;
    Instant at;
};

struct AirOfDays {
    std::vector<AirReading> readings; ///< in the order of the events; one that was corrected is left out
    std::vector<FillerInRoom> fillers;
    std::vector<WipeInRoom> wipes;
    int unknownSheets = 0; ///< batches and pats of a sheet that is no longer known: they are not among the fillers
};

/// The vapour of a step that wipes down with a solvent; empty of any other. A wax remover is taken for naphtha.
[[nodiscard]] std::optional<Vapour> vapourOfStep(const QString& code);

/// Of events of one bench, oldest first, as RepairLog::eventsOfAir() reads them; others are passed over. Styrene is
/// that of each sheet's version in the catalogue.
[[nodiscard]] AirOfDays airOf(const std::vector<Event>& events, const Catalogue& catalogue,
                              const FillingLimits& limits = {});

/// The days with a reading, newest first, "YYYY-MM-DD"; and the readings of one of them.
[[nodiscard]] std::vector<QString> daysRead(const AirOfDays& air);
[[nodiscard]] std::vector<AirReading> readingsOf(const AirOfDays& air, const QString& localDay);

/// What was given off from so long before a moment until then, on a clock that is 0 at that moment. What came before is
/// taken to be gone: after a day one air change in two hours leaves 6 millionths.
[[nodiscard]] WorkInRoom workBefore(const AirOfDays& air, const Instant& now, Duration back);

} // namespace strandbench
