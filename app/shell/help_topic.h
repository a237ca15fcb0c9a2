// SPDX-License-Identifier: GPL-3.0-or-later
// Which topic of help belongs to where somebody is.
#pragma once

#include "screens/frame/screen.h"
#include "shell/place.h"
#include "words/help_words.h"

#include <optional>

namespace strandbench {

/// The topic of a place. Of a repair's own place the topic follows from its step: see below.
[[nodiscard]] HelpTopic topicOf(Place place);
/// The topic of a repair's step. screen: object name of what is shown, by which a refusal differs from a plan.
[[nodiscard]] HelpTopic topicOf(const NextStep& next, const Repair& repair, const QString& screen);
[[nodiscard]] HelpTopic topicOf(const Look& look, const Repair& repair);
[[nodiscard]] HelpTopic topicOf(Question question);
/// The topic of a step of preparing or finishing, or of a test of the hand-over; empty for a code that is not known.
[[nodiscard]] std::optional<HelpTopic> topicOfStep(const QString& code);

} // namespace strandbench
