// SPDX-License-Identifier: GPL-3.0-or-later
// What does harm, in words: codes of core/harm and of resources/harm to sentences.
#pragma once

#include "harm/harm.h"
#include "words/words.h"

namespace strandbench::words {

[[nodiscard]] QString harmMaterial(const QString& code); ///< "Hardener paste (peroxide)"
[[nodiscard]] QString gloves(const QString& code);
[[nodiscard]] QString respirator(const QString& code);
[[nodiscard]] QString firstAid(const QString& code);
[[nodiscard]] QString harmWaste(const QString& code);
[[nodiscard]] CautionText measure(Measure measure);          ///< what stands before the work
[[nodiscard]] QString signalWord(SignalWord signal);         ///< "Danger"; empty for none
[[nodiscard]] QString pictogramName(GhsPictogram pictogram); ///< "flame", for a reader of the glass

/// A statement with its code: "H226 Flammable liquid and vapour." Joined ones part by part where the whole has no
/// text of its own; a code without a text stands alone, for the sheet to explain.
[[nodiscard]] QString statement(const QString& code);
[[nodiscard]] bool hasStatement(const QString& code);

} // namespace strandbench::words
