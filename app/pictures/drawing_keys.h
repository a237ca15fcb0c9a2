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
/// Throws std::logic_error for a colour that is no key; the colours of public law that a folder may hold besides
/// (drawingColoursOfLaw) stay as they are.
[[nodiscard]] QString recoloured(const QString& drawing, const Theme& theme, const QColor& ink);

/// Colours that a regulation prescribes, day and night alike: those of the GHS pictograms (CLP Annex V).
[[nodiscard]] const std::vector<QString>& drawingColoursOfLaw();

} // namespace strandbench
