// SPDX-License-Identifier: GPL-3.0-or-later
// What the code on a sheet holds, so that paper leads back to the log: lines of a word and its value, the same in every
// language.
//
//     strandbench 1                  the layout of what follows
//     repair <uuid>                  of a job sheet
//     job <number>                   as keyed in, on one line
//     day <YYYY-MM-DD>               of a day sheet, in the place of repair and job
//     head <origin> <count> <hash>   of the log as read: the bench, its entries, SHA-256 of the last as 64 digits
#pragma once

#include "repair/repair.h"
#include "repairlog/repair_log.h"

namespace strandbench {

[[nodiscard]] QString jobSheetCode(const Repair& repair, const ChainHead& head);
/// day: "YYYY-MM-DD".
[[nodiscard]] QString daySheetCode(const QString& day, const ChainHead& head);

} // namespace strandbench
