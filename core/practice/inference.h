// SPDX-License-Identifier: GPL-3.0-or-later
// What evidence a truth would show, and the other way: which truths a panel's evidence leaves.
#pragma once

#include "practice/panel.h"

#include <QStringList>

namespace strandbench {

/// Every answer that could stand behind what is shown, question by question.
struct Candidates {
    struct Kind {
        DamageKind kind = DamageKind::Gouge;
        std::optional<WeldKind> weld;
        std::optional<bool> adhesiveCured;
        bool operator==(const Kind&) const = default;
    };
    std::vector<Substrate> substrates; ///< never Unknown: more than one of them is that
    std::vector<SurfaceState> surfaces;
    std::vector<Kind> damages;
    std::vector<Zone> zones;
    std::vector<Moisture> moistures;
    std::vector<CoreMaterial> cores;
};

/// What of the evidence speaks against a substrate under such a surface, as codes: magnet, zinc, conducts, edge, back,
/// tap, sanded, bends, fizzes; empty when nothing does. Unknown and unlisted substrates are spoken against by nothing.
[[nodiscard]] QStringList speaksAgainst(Substrate substrate, SurfaceState surface, const Evidence& evidence);

/// The forward model, question by question: whether such a truth may show this.
[[nodiscard]] bool showsSubstrate(Substrate substrate, SurfaceState surface, const Evidence& evidence);
[[nodiscard]] bool showsSurface(SurfaceState surface, const Evidence& evidence);
[[nodiscard]] bool showsDamage(const Candidates::Kind& damage, const Evidence& evidence);
[[nodiscard]] bool showsZone(Zone zone, const Evidence& evidence);
[[nodiscard]] bool showsMoisture(Moisture moisture, const Evidence& evidence);
[[nodiscard]] bool showsCore(CoreMaterial core, const Evidence& evidence);

/// Its inverse, by trying every truth.
[[nodiscard]] Candidates consistentWith(const Evidence& evidence);

/// The assessment that what is shown leaves, with an empty answer where it leaves more than one; several substrates
/// are Unknown. Reading and measures but the length are the truth's, being shown as measured.
[[nodiscard]] Assessment assessmentFrom(const PracticePanel& panel);

/// The questions that what is shown does not answer as the truth has it: none where the panel is solvable. Codes:
/// substrate, surface, damage_kind, size, weld, adhesive_cured, rear_access, zone, moisture, core.
[[nodiscard]] QStringList unanswered(const PracticePanel& panel);

/// Load-bearing structure reaches so far round a mounting (common practice, no source).
[[nodiscard]] inline Length mountingReach() { return millimetres(300); }
/// A sensor looks through so much more than its own width (an assumption).
[[nodiscard]] inline Length sensorReach() { return millimetres(50); }

} // namespace strandbench
