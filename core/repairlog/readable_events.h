// SPDX-License-Identifier: GPL-3.0-or-later
// The events of a damaged log that can still be read, one by one. Inside core/repairlog only.
#pragma once

#include "repairlog/chain.h"
#include "repairlog/connection.h"

namespace strandbench {

/// Hands over every event that can be read, in the order in which they were written; pages that cannot be read are
/// passed over. Fails only when not even the table can be found, or when `take` does.
[[nodiscard]] Logged<void> eachReadable(const SqlConnection& log,
                                        const std::function<Logged<void>(const EventRecord&)>& take);

/// The bench of the first event that can be read; empty when none can.
[[nodiscard]] QString firstOrigin(const SqlConnection& log);

} // namespace strandbench
