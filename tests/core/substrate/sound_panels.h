// SPDX-License-Identifier: GPL-3.0-or-later
// Panels of which every question is answered and nothing is in the way, for tests to spoil.
#pragma once

#include "substrate/decision.h"

#include <QStringList>

namespace strandbench::test {

/// The five substrates that are ever filled.
inline constexpr std::array filledSubstrates{Substrate::Laminate, Substrate::Smc, Substrate::Steel,
                                             Substrate::Galvanised, Substrate::Aluminium};
/// The four fibre-reinforced classes, in the table's order.
inline constexpr std::array fibreFillers{FillerClass::ShortStrand, FillerClass::ShortStrandLight,
                                         FillerClass::MixedStrand, FillerClass::LongStrand};

/// A damage of modest size with what its kind asks for; a hole is 10 mm across.
[[nodiscard]] Damage smallDamage(DamageKind kind);
/// A washed, bare, dry panel in a cosmetic zone at 22 °C and 50 %.
[[nodiscard]] Assessment soundPanel(Substrate substrate, DamageKind kind);

/// decide() with the program's own table and the demo sheets.
[[nodiscard]] Decision decideHere(const Assessment& assessment);
/// The demo sheets of these classes alone.
[[nodiscard]] Catalogue only(const std::vector<FillerClass>& classes);
/// The demo sheet of a class.
[[nodiscard]] ProductSheet demoSheet(FillerClass filler);

/// The codes of the stops, sorted.
[[nodiscard]] QStringList stopCodes(const Decision& decision);
/// The questions that 'not_assessed' names, sorted.
[[nodiscard]] QStringList unanswered(const Decision& decision);
/// The stop of this code; fails the test when there is none.
[[nodiscard]] Stop stopNamed(const Decision& decision, const QString& code);
/// The code of the reason why a class was rejected; empty when it was not.
[[nodiscard]] QString whyNot(const Decision& decision, FillerClass filler);

} // namespace strandbench::test
