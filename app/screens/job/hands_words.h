// SPDX-License-Identifier: GPL-3.0-or-later
// When one pair of hands is wanted twice, and what keeps the hardener out, as the screens say it.
#pragma once

#include "pictures/mix_block.h"
#include "repair/hands.h"
#include "screens/frame/screen.h"

namespace strandbench::hands {

/// What every running mix of the bench still asks for, from now.
[[nodiscard]] std::vector<HandsOf> onBench(const Bench& bench);

/// "Hands: job 4417 needs its edges cleared in 03:20. Hold this batch back until 14:32: 04:05 to go."
[[nodiscard]] QString holdBack(const HoldBack& hold, const QUuid& own, const Surroundings& around);
/// The repair that the technician would go to instead of mixing.
[[nodiscard]] QUuid otherOf(const HandsCollide& collision, const QUuid& own);

/// "In 01:15 two jobs need hands: first job 4417, clear the edges, then job 4421."
[[nodiscard]] QString collision(const HandsCollide& collision, const Surroundings& around);

/// A running mix as its block says it; one of a collision with its turn.
[[nodiscard]] MixBlockText blockText(const RunningMix& mix, const std::optional<HandsCollide>& collision,
                                     const Bench& bench, const Words& words);

/// Why the hardener stays out, and what to do: "Too hot for this lift: 93 °C of 90 °C. Let the panel cool ..."
[[nodiscard]] QString mixHold(const Reason& reason, const Words& words);

} // namespace strandbench::hands
