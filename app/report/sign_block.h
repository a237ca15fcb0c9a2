// SPDX-License-Identifier: GPL-3.0-or-later
// The end of a sheet: what the log says of its signing, and lines to sign by hand.
#pragma once

#include "report/paper_document.h"
#include "review/job_record.h"

namespace strandbench {

/// Signed off or returned, by whom and when; the repair that does it again, or the one that this one does again. At
/// least one sentence.
[[nodiscard]] QStringList signingTold(const JobRecord& record);

/// The heading, those sentences, and a line each for technician and supervisor: name, date, signature.
void writeSignBlock(PaperDocument& paper, const JobRecord& record);
/// The same of a day: what the log says of each of its jobs, and the lines once.
void writeSignBlock(PaperDocument& paper, const std::vector<JobRecord>& records);

} // namespace strandbench
