// SPDX-License-Identifier: GPL-3.0-or-later
// A day's repairs with their whole records, as JSON.
#pragma once

#include "report/day_csv.h"
#include "repairlog/repair_log.h"
#include "words/words.h"

#include <QJsonObject>

namespace strandbench {

/// The end of a bench's chain.
[[nodiscard]] QJsonObject headToJson(const ChainHead& head);

[[nodiscard]] QJsonObject dayToJson(const QString& day, const std::vector<DayEntry>& entries, const ChainHead& head,
                                    const Words& words);

} // namespace strandbench
