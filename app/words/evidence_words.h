// SPDX-License-Identifier: GPL-3.0-or-later
// What eye, hand and instruments find on a practice panel, as a person reads it: what is found, never what it means.
#pragma once

#include "practice/panel.h"
#include "words/words.h"

namespace strandbench {

/// What may be looked at or tried on a panel, in the order offered.
enum class PanelTry {
    Front,
    Back,
    Edge,
    Magnet,
    ZincGauge,
    Ohmmeter,
    TapIt,
    SandSpot,
    Bend,
    Vinegar,
    Cloth,
    Nail,
    CrackTips,
    Adhesive,
    Foil,
    Around,
    Measures,
    Air,
    Since,
};
template <> struct Codes<PanelTry> {
    static constexpr std::array<std::pair<PanelTry, const char*>, 19> table{{
        {PanelTry::Front, "front"},
        {PanelTry::Back, "back"},
        {PanelTry::Edge, "edge"},
        {PanelTry::Magnet, "magnet"},
        {PanelTry::ZincGauge, "zinc"},
        {PanelTry::Ohmmeter, "ohmmeter"},
        {PanelTry::TapIt, "tap"},
        {PanelTry::SandSpot, "sand"},
        {PanelTry::Bend, "bend"},
        {PanelTry::Vinegar, "vinegar"},
        {PanelTry::Cloth, "cloth"},
        {PanelTry::Nail, "nail"},
        {PanelTry::CrackTips, "crack_tips"},
        {PanelTry::Adhesive, "adhesive"},
        {PanelTry::Foil, "foil"},
        {PanelTry::Around, "around"},
        {PanelTry::Measures, "measures"},
        {PanelTry::Air, "air"},
        {PanelTry::Since, "since"},
    }};
};

/// "Magnet": at most three words, for a key.
[[nodiscard]] QString tryName(PanelTry what);
/// What it finds on this panel; where it cannot be tried, that.
[[nodiscard]] QString tryFinds(PanelTry what, const PracticePanel& panel, const Words& words);

} // namespace strandbench
