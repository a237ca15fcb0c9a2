// SPDX-License-Identifier: GPL-3.0-or-later
// A repair's record as JSON: every key with its unit in its name, numbers in full precision, moments in ISO 8601 with
// the bench's own offset from UTC.
#pragma once

#include "review/deviations.h"
#include "words/words.h"

#include <QJsonObject>

namespace strandbench {

/// The whole record with its deviations.
[[nodiscard]] QJsonObject recordToJson(const JobRecord& record, const std::vector<Deviation>& deviations,
                                       const Words& words);

/// "2026-11-25T08:12:30.000+01:00"
[[nodiscard]] QString isoOf(const Instant& at);

} // namespace strandbench
