// SPDX-License-Identifier: GPL-3.0-or-later
// The record of a demo job walked on the glass from taking in to handing over, with everything beside it that a walk
// leaves out: what gelled, pictures, remarks, a time parked, lots, a correction.
#pragma once

#include "report/job_sheet.h"

namespace strandbench::test {

/// Walks the demo job once a process and reads its events from the log.
[[nodiscard]] const std::vector<Event>& walkedEvents();
/// With everything beside it.
[[nodiscard]] std::vector<Event> sampleEvents();
[[nodiscard]] JobRecord sampleRecord();
/// The bytes of the picture that the sample holds.
[[nodiscard]] QByteArray samplePicture();
[[nodiscard]] SheetFacts sampleFacts(Paper paper);

} // namespace strandbench::test
