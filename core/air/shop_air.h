// SPDX-License-Identifier: GPL-3.0-or-later
// What the work has given off into the room, by the well-mixed box, beside the limits that authorities publish. A
// reason to ventilate: beside the panel it is more, other work in the room is not in it, and being below a limit clears
// nobody.
#pragma once

#include "air/vapour.h"
#include "air/well_mixed_room.h"

#include <vector>

namespace strandbench {

/// Filler that lay open.
struct FillerSpread {
    Mass filler;      ///< 0 or more
    Fraction styrene; ///< of its mass, at most 0.6; 0 gives off nothing
    Duration from;    ///< on the clock of the caller's choice
    Duration lasting; ///< above 0: until it gels. All is taken to be given off by then, which is on the quick side
};

/// One wiping down.
struct SolventWiped {
    Vapour vapour = Vapour::Acetone;
    Duration from;
};

/// The limits whose rule sums a mixture, by name.
inline const QString mixtureLimits = QStringLiteral("OSHA PEL");

struct WorkInRoom {
    std::vector<FillerSpread> fillers;
    std::vector<SolventWiped> wipes;
};

/// Between what is given off at least and at most; alike where all of a solvent is.
struct VapourRange {
    Fraction least;
    Fraction most; ///< shares of the air by volume
};

/// How a range lies to a limit. Below is the box's word alone, and clears nobody.
enum class BesideIt { Below, MayBeAbove, Above };

struct LimitBeside {
    ExposureLimit limit;
    VapourRange box; ///< what the limit is about: the highest mean of its time, or the highest there is
    BesideIt lies = BesideIt::Below;
};

class ShopAir {
public:
    /// Throws std::logic_error where the room has no air, the air comes back, or a filler cannot be.
    ShopAir(const ShopRoom& room, const WorkInRoom& work);

    [[nodiscard]] bool gaveOff(Vapour vapour) const; ///< whether anything of it was given off
    [[nodiscard]] VapourRange at(Vapour vapour, Duration when) const;
    /// The highest there ever is of this work, what is still to be given off included.
    [[nodiscard]] VapourRange peak(Vapour vapour) const;
    [[nodiscard]] VapourRange highestMean(Vapour vapour, Duration over) const;
    /// What a limit of this kind is about: means of eight hours, of fifteen minutes, of five; the peak for the others.
    [[nodiscard]] VapourRange ofKind(Vapour vapour, LimitKind kind) const;
    /// Each published limit of a vapour, in the order of exposureLimits().
    [[nodiscard]] std::vector<LimitBeside> besideLimits(Vapour vapour) const;
    /// The shares of the time-weighted limits of one name, summed over what was given off (29 CFR 1910.1000(d)(2)).
    /// The highest means of the vapours need not fall together: it is at most this.
    [[nodiscard]] VapourRange ofMixtureLimit(const QString& limitName) const;

private:
    struct Releases {
        std::vector<Release> least;
        std::vector<Release> most;
    };
    [[nodiscard]] Releases& of(Vapour vapour) { return m_releases[static_cast<std::size_t>(vapour)]; }
    [[nodiscard]] const Releases& of(Vapour vapour) const { return m_releases[static_cast<std::size_t>(vapour)]; }
    template <class Level> [[nodiscard]] VapourRange range(Vapour vapour, const Level& level) const;

    WellMixedRoom m_room;
    std::array<Releases, Codes<Vapour>::table.size()> m_releases;
};

} // namespace strandbench
