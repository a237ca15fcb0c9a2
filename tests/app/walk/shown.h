// SPDX-License-Identifier: GPL-3.0-or-later
// What a person reads on the glass.
#pragma once

#include "walk/walk.h"

namespace strandbench::test {

/// The text of a label or the title of a button by its object name; empty when it is not to be seen.
[[nodiscard]] QString shown(BenchWindow& window, const QString& name);
/// Every text on the present screen, ribbon left out.
[[nodiscard]] QStringList allShown(BenchWindow& window);
/// The figures in a text: "35", "9.9", "1/16", "05:32".
[[nodiscard]] QStringList figuresOf(const QString& text);

} // namespace strandbench::test
