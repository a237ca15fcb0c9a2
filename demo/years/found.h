// SPDX-License-Identifier: GPL-3.0-or-later
// What comes through the depot's door: what the technician answers, question by question.
#pragma once

#include "repair/event.h"

#include <map>

namespace strandbench::years {

struct Found {
    QString name;
    std::map<Question, AnswerValue> answers;
};

/// What can be filled as it is.
[[nodiscard]] const std::vector<Found>& fillable();
/// What is sent elsewhere first.
[[nodiscard]] const std::vector<Found>& refused();

} // namespace strandbench::years
