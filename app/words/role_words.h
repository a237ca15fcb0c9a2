// SPDX-License-Identifier: GPL-3.0-or-later
// What rings, what the clock did, and what the supervisor alone may do, in words.
#pragma once

#include "repair/alarms.h"
#include "roles/supervisor.h"
#include "words/words.h"

namespace strandbench {

/// "edges soon"
[[nodiscard]] QString alarmName(AlarmKind kind);
/// What to do, in two or three words; of the edges with the time that is left: "Clear the edges: 0:20".
[[nodiscard]] QString alarmHeadline(const DueAlarm& alarm, const Words& words);
/// "+2 more"
[[nodiscard]] QString moreAlarms(int count);

/// What became of the clocks, and that running times go on: "Clock set on by 1:00:00. Running times go on."
[[nodiscard]] QString jumpText(const ClockJumped& jump, const Words& words);

/// "sign-off"
[[nodiscard]] QString supervisorActName(SupervisorAct act);
/// "without a PIN"
[[nodiscard]] QString actRefusalText(ActRefusal why);
/// Why a repair was returned; a code of returnReasons().
[[nodiscard]] QString returnReason(const QString& code);
/// The same of a repair that was: the words that were keyed in, where they say it.
[[nodiscard]] QString returnText(const Returned& returned);
/// Why a stop was overridden; a code of overrideReasons().
[[nodiscard]] QString overrideReason(const QString& code);

/// One line of what happened to the bench itself.
[[nodiscard]] QString benchEventText(const Payload& payload, const Words& words);

/// "22.4 mg/mm", in both systems of units: what a sheet has it in.
[[nodiscard]] QString beadMassText(LinearDensity mass, const Words& words);

} // namespace strandbench
