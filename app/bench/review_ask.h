// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench asks of its log's thread when many repairs are looked through.
#pragma once

#include "bench/bench.h"

namespace strandbench {

/// Digests by the sheets and limits that the bench goes by now. It holds copies of both: the log's thread may still
/// digest after they were changed, or after the bench has gone. The caller adds progress, and keeps `cancelled`.
[[nodiscard]] ReviewAsk reviewAskOf(const Bench& bench);

} // namespace strandbench
