// SPDX-License-Identifier: GPL-3.0-or-later
// Product sheets as JSON, and the demo sheets that the program carries.
#pragma once

#include "material/catalogue.h"
#include "quantity/fault.h"

namespace strandbench {

/// Reads one product sheet. Every fault at once: unknown key, missing key, wrong unit (a key with another
/// unit's ending), wrong kind, out of range, times out of order. The sheet keeps the bytes and their hash.
[[nodiscard]] Checked<ProductSheet> readSheet(const QByteArray& json);

/// The demo sheets that the program carries (resources/sheets/*.json): invented values that say so.
/// Throws std::logic_error when a built-in resource does not parse, which is a defect of the build.
[[nodiscard]] const Catalogue& demoCatalogue();

} // namespace strandbench
