// SPDX-License-Identifier: GPL-3.0-or-later
// A cure case and its result as `strandbench cure` takes and gives them.
#pragma once

#include "cure/cure_case.h"
#include "cure/cure_result.h"
#include "quantity/fault.h"

#include <QByteArray>
#include <QJsonObject>

namespace strandbench {

/// Reads a case, strict: every fault at once, by name. Ranges: see the table of the contract in the source.
[[nodiscard]] Checked<CureCase> readCureCase(const QByteArray& json);
/// The case as readCureCase() takes it.
[[nodiscard]] QJsonObject cureCaseToJson(const CureCase& cureCase);
/// {"gel_s":…|null, "sand_s":…|null, "peak_c":…, "peak_s":…, "final_mean_conversion":…, "curve":[…]}
[[nodiscard]] QJsonObject cureResultToJson(const CureResult& result);

} // namespace strandbench
