// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of a drawing's file. Each stands for a role and is, or is next to, the role's colour by day, so that
// the file looks in any viewer as it does on the glass; the theme puts its own colour in its place.
#pragma once

#include "theme/theme.h"

#include <map>

namespace strandbench {

/// Every colour that a drawing may hold, as "#RRGGBB" in capitals, and the role that it stands for.
[[nodiscard]] const std::map<QString, Role>& drawingKeys();

/// The text of a drawing in the theme's colours. `ink` is used instead of the theme's for what is drawn in Role::Ink.
/// Throws std::logic_error for a colour that is neither a key nor one of drawingColoursOfLaw().
[[nodiscard]] QString recoloured(const QString& drawing, const Theme& theme, const QColor& ink);

/// Colours that a regulation prescribes, day and night alike, by their keys: those of the GHS pictograms (CLP Annex V).
/// Their white has a key of its own, for white is the card.
[[nodiscard]] const std::map<QString, QColor>& drawingColoursOfLaw();

} // namespace strandbench
