// SPDX-License-Identifier: GPL-3.0-or-later
// A vapour in a room whose air is well mixed: V dC/dt = G - Q C. Beside the panel it is more than in the middle of the
// room, so that what comes out is the least that is breathed there.
#pragma once

#include "air/shop_room.h"
#include "air/vapour.h"

#include <optional>
#include <vector>

namespace strandbench {

/// Mass that goes into the air evenly over a time.
struct Release {
    Mass mass;        ///< 0 or more
    Duration from;    ///< on the clock of the caller's choice
    Duration lasting; ///< above 0
};

class WellMixedRoom {
public:
    /// Volume above 0, air changes 0 or more (0: nothing leaves); throws std::logic_error otherwise. The room is clean
    /// before the first release.
    WellMixedRoom(Volume air, Rate changes);

    [[nodiscard]] Concentration at(const std::vector<Release>& releases, Duration when) const;
    /// The highest there ever is; 0 without a release.
    [[nodiscard]] Concentration peak(const std::vector<Release>& releases) const;
    /// The mean over a time of more than 0: until > from.
    [[nodiscard]] Concentration mean(const std::vector<Release>& releases, Duration from, Duration until) const;
    /// The highest mean that there ever is over a time of more than 0, wherever that time begins; 0 without a release.
    /// Found where it stands, not by trying moments: the mean rises while the end of its time is above the beginning.
    [[nodiscard]] Concentration highestMean(const std::vector<Release>& releases, Duration over) const;

private:
    /// Of one release, in SI units.
    [[nodiscard]] double concentration(const Release& release, double when) const;
    /// What a person in the room took in of it by then: the concentration's integral from the start of the release.
    [[nodiscard]] double dose(const Release& release, double when) const;

    /// The moment between two, with no begin or end of a release between, at which a difference that nears one value as
    /// concentrations do passes zero; empty when it does not.
    [[nodiscard]] std::optional<double> zeroBetween(double from, double until, double first, double last) const;

    double m_volume;
    double m_rate;
};

} // namespace strandbench
