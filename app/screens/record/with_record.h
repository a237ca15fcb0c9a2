// SPDX-License-Identifier: GPL-3.0-or-later
// A screen of one repair's record, read from the log.
#pragma once

#include "review/job_record.h"
#include "screens/frame/screen.h"

namespace strandbench {

/// Reads a repair and calls with its record and file, once, if the screen is still there; what keeps it from being read
/// is shown on the screen.
void withRecord(const Surroundings& around, Screen* screen, const QUuid& repair,
                const std::function<void(const JobRecord& record, const RepairFile& file)>& show);

} // namespace strandbench
