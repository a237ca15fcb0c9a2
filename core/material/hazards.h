// SPDX-License-Identifier: GPL-3.0-or-later
// What the safety data sheet of one product says of its dangers, as the shop copied it from section 2 and 4 to 13.
#pragma once

#include "quantity/codes.h"

#include <vector>

namespace strandbench {

/// The GHS pictograms, by the codes that UN GHS Annex 3 and CLP Annex V give them.
enum class GhsPictogram {
    ExplodingBomb,
    Flame,
    FlameOverCircle,
    GasCylinder,
    Corrosion,
    Skull,
    Exclamation,
    HealthHazard,
    Environment,
};

template <> struct Codes<GhsPictogram> {
    static constexpr std::array<std::pair<GhsPictogram, const char*>, 9> table{{
        {GhsPictogram::ExplodingBomb, "GHS01"},
        {GhsPictogram::Flame, "GHS02"},
        {GhsPictogram::FlameOverCircle, "GHS03"},
        {GhsPictogram::GasCylinder, "GHS04"},
        {GhsPictogram::Corrosion, "GHS05"},
        {GhsPictogram::Skull, "GHS06"},
        {GhsPictogram::Exclamation, "GHS07"},
        {GhsPictogram::HealthHazard, "GHS08"},
        {GhsPictogram::Environment, "GHS09"},
    }};
};

enum class SignalWord { None, Warning, Danger };

template <> struct Codes<SignalWord> {
    static constexpr std::array<std::pair<SignalWord, const char*>, 3> table{{
        {SignalWord::None, "none"},
        {SignalWord::Warning, "warning"},
        {SignalWord::Danger, "danger"},
    }};
};

/// One product's dangers as its own safety data sheet states them; they win over the general table.
struct SheetHazards {
    SignalWord signal = SignalWord::None;
    std::vector<GhsPictogram> pictograms;
    std::vector<QString> hazards;     ///< "H226", "EUH066", "H302+H312"
    std::vector<QString> precautions; ///< "P210", "P305+P351+P338"
    // The shop's own words, shown as entered; empty: the sheet adds nothing, and the general line stands.
    QString gloves;
    QString respirator;
    QString firstAid;
    QString waste;
    bool operator==(const SheetHazards&) const = default;
};

} // namespace strandbench
