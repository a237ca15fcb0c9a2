// SPDX-License-Identifier: GPL-3.0-or-later
// The dangers that a product sheet states: what the shop copied from its safety data sheet.
#pragma once

#include "exchange/strict_json.h"
#include "material/sheet.h"

namespace strandbench {

/// How a hazard or a precautionary statement is spelt, as CLP Annex III and IV number them: "H226", "H361d",
/// "EUH066", "H302+H312"; "P210", "P305+P351+P338". Whether the number exists is not asked: annexes grow.
[[nodiscard]] bool isHazardCode(const QString& code);
[[nodiscard]] bool isPrecautionCode(const QString& code);

/// Reads the member "hazards" of a sheet; a sheet without it states nothing, and is as it was before there was such
/// a member. Its own member "hardener" is the same of the hardener, and may be left out too.
void readSheetHazards(StrictObject& sheet, ProductSheet& into);

} // namespace strandbench
