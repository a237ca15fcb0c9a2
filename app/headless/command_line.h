// SPDX-License-Identifier: GPL-3.0-or-later
// From the words after the command to its arguments.
#pragma once

#include "headless/command.h"

#include <variant>

namespace strandbench::headless {

/// What was asked for instead of running.
enum class Ask { Help, Version };

/// Either arguments, or help or version, or the messages of a refusal.
using Parsed = std::variant<Arguments, Ask, QStringList>;

/// Reads the arguments of a command (null: the program itself, which takes help, version and language).
/// Every fault at once: unknown options, missing and repeated ones, words too many.
[[nodiscard]] Parsed parse(const Command* command, const QStringList& arguments);

/// The language asked for with --lang, read before anything else so that faults are told in it; empty when
/// none is asked for.
[[nodiscard]] QString languageAsked(const QStringList& arguments);

/// The help of a command, or of the program (null).
[[nodiscard]] QString helpOf(const Command* command);

} // namespace strandbench::headless
