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

} // namespace strandbench::curebench
