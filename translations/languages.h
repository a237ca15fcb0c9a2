// SPDX-License-Identifier: GPL-3.0-or-later
// Which languages the program carries. Linking this library brings their catalogues along, as resources
// ":/i18n/strandbench_<language>.qm".
#pragma once

#include <QStringList>

namespace strandbench {

/// The ISO 639-1 codes of the catalogues in the program, sorted: "de", "en", "es", "fr". English has one too, for
/// its plurals.
[[nodiscard]] QStringList carriedLanguages();

} // namespace strandbench
