// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that counts as valid, far beyond a bench.
#pragma once

#include "cases.h"

namespace strandbench::test {

/// Over the whole of the valid ranges of `strandbench cure`, their ends and zeros among them.
[[nodiscard]] CureCase wideCase(std::mt19937_64& random);

/// Solves so many and checks each: finite, ordered, bounded, or a difficulty with its name. Prints the seed, and how
/// many were refused and why.
void checkWideCases(unsigned seed, int count);

} // namespace strandbench::test
