// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "headless/command.h"

namespace strandbench::headless {

/// The bytes of an input, or what the command ends with because there are none.
struct Input {
    std::optional<QByteArray> bytes;
    Outcome failure;
};

/// Reads a file, or standard input for '-'. An input over 1 MiB is refused: no description is that long.
[[nodiscard]] Input readInput(const QString& file, const Words& words);

} // namespace strandbench::headless
