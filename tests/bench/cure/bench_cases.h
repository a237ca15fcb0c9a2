// SPDX-License-Identifier: GPL-3.0-or-later
// What is solved: layers as a bench has them.
#pragma once

#include "cure/cure_case.h"

#include <string>
#include <vector>

namespace strandbench::curebench {

struct BenchCase {
    std::string name;
    CureCase cureCase;
};

[[nodiscard]] std::vector<BenchCase> benchCases();

/// The same case with both rates times this.
[[nodiscard]] CureCase faster(CureCase cureCase, double times);

} // namespace strandbench::curebench
