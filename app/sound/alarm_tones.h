// SPDX-License-Identifier: GPL-3.0-or-later
// What each alarm sounds like: a burst of rising sounds, repeated after a pause until somebody answers.
#pragma once

#include "clock/alarm.h"
#include "sound/tone.h"

namespace strandbench {

/// One burst. What is lost when nobody comes has five sounds, three and two; the rest has three, slower and quieter.
[[nodiscard]] Tone toneOf(AlarmKind kind);
/// From the end of a burst to the next one.
[[nodiscard]] Duration pauseAfter(AlarmKind kind);

/// Nothing that is heard: whether a device takes it says whether alarms can sound at all.
[[nodiscard]] Tone silentCheck();

} // namespace strandbench
