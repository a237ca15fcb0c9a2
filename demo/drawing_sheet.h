// SPDX-License-Identifier: GPL-3.0-or-later
// All fixed drawings on one page, folder by folder, each with its name, one that moves with all its frames.
#pragma once

#include "theme/theme.h"

#include <QString>

namespace strandbench {

/// Writes the page in the theme's colours. False when it cannot be written.
[[nodiscard]] bool writeDrawingSheet(const QString& file, const Theme& theme);

} // namespace strandbench
