// SPDX-License-Identifier: GPL-3.0-or-later
// What each truth shows to eye, hand and instruments, as tables (common practice, no source). Inside practice only.
#pragma once

#include "practice/panel.h"

namespace strandbench::practice {

/// What the tests of the material may find; an empty list: never seen on it.
struct MaterialShows {
    Substrate substrate;
    MagnetPull magnet;
    bool conducts;
    std::vector<EdgeLook> edges;
    std::vector<BackMark> backs;
    std::vector<TapSound> taps;
    SandedTo sanded;
    std::optional<BackMarking> marking;
    std::optional<bool> bends; ///< empty: either
};

/// One row a substrate; none for Unknown.
[[nodiscard]] const std::vector<MaterialShows>& materials();

struct FilmShows {
    SurfaceState surface;
    std::vector<FilmLook> looks;
    std::vector<ClothRub> rubs;
    bool nailMarks;
};

/// One row a state of the surface.
[[nodiscard]] const std::vector<FilmShows>& films();
/// Old filler and sealer are so thick that a magnet feels it.
[[nodiscard]] bool isThick(SurfaceState surface);

/// The marks that belong to a kind of damage, one of which is seen.
[[nodiscard]] std::vector<FrontMark> marksOf(DamageKind kind);

} // namespace strandbench::practice
