// SPDX-License-Identifier: GPL-3.0-or-later
// The acts that need a supervisor: each asks for the PIN.
#pragma once

#include "quantity/codes.h"

namespace strandbench {

enum class SupervisorAct {
    SignOff,   ///< a repair that was handed over
    Return,    ///< likewise: it is not in order
    Override,  ///< a stop that may be overridden
    Sheets,    ///< product sheets of the shop's own
    Restore,   ///< a log from a backup
    Forget,    ///< what the batches of a lot taught
    Correct,   ///< a remark on an event of a repair that is signed off
    ChangePin, ///< the PIN itself
};
template <> struct Codes<SupervisorAct> {
    static constexpr std::array<std::pair<SupervisorAct, const char*>, 8> table{{
        {SupervisorAct::SignOff, "sign_off"},
        {SupervisorAct::Return, "return"},
        {SupervisorAct::Override, "override"},
        {SupervisorAct::Sheets, "sheets"},
        {SupervisorAct::Restore, "restore"},
        {SupervisorAct::Forget, "forget"},
        {SupervisorAct::Correct, "correct"},
        {SupervisorAct::ChangePin, "change_pin"},
    }};
};

/// Why a supervisor's act was refused.
enum class ActRefusal {
    NoPin,      ///< it was tried without one
    WrongPin,   ///< the PIN given is not the bench's
    MustWait,   ///< wrong ones were given before, and the wait is not over
    NotSet,     ///< no PIN has been set on this bench
    NotCounted, ///< the try could not be written down, so it was not looked at
};
template <> struct Codes<ActRefusal> {
    static constexpr std::array<std::pair<ActRefusal, const char*>, 5> table{{
        {ActRefusal::NoPin, "no_pin"},
        {ActRefusal::WrongPin, "wrong_pin"},
        {ActRefusal::MustWait, "must_wait"},
        {ActRefusal::NotSet, "not_set"},
        {ActRefusal::NotCounted, "not_counted"},
    }};
};

} // namespace strandbench
