// SPDX-License-Identifier: GPL-3.0-or-later
// Volumes of what is to be filled, and the outline of the section.
#pragma once

#include "quantity/quantity.h"
#include "substrate/assessment.h"

namespace strandbench {

enum class Face { Front, Back };
template <> struct Codes<Face> {
    static constexpr std::array<std::pair<Face, const char*>, 2> table{{{Face::Front, "front"}, {Face::Back, "back"}}};
};

/// One prepared face of a repair, measured upwards from its floor (the narrow side).
/// Volumes are closed forms of each damage's outline. The damage must be one that can be filled.
class Cavity {
public:
    /// rearAccess halves a hole's height a face; other damages have one face and ignore it.
    Cavity(const Damage& damage, bool rearAccess);

    [[nodiscard]] int faces() const;                      ///< 1 or 2
    [[nodiscard]] Length height() const;                  ///< of one face
    [[nodiscard]] Volume volume() const;                  ///< of one face, up to its height
    [[nodiscard]] Volume volumeUpTo(Length height) const; ///< of one face from its floor; clamped to 0..height()
    /// How high so much fills one face from its floor: the inverse of volumeUpTo(), 0..height().
    [[nodiscard]] Length heightOf(Volume volume) const;
    [[nodiscard]] Area opening() const; ///< at the surface, after the bevel
    [[nodiscard]] Length openingLength() const;
    [[nodiscard]] Length openingWidth() const;
    [[nodiscard]] Length floorWidth() const; ///< of the section drawn along the length: 0 for a V

private:
    Damage m_damage;
    Length m_height;
    int m_faces;
};

} // namespace strandbench
