// SPDX-License-Identifier: GPL-3.0-or-later
// What is solved: layers as a bench has them.
#pragma once

#include "cure/cure_case.h"

#include <string>
#include <vector>

namespace strandbench::curebench {

struct BenchCase {
    int millimetres; ///< of fresh filler
    std::string where;
    CureCase cureCase;
    [[nodiscard]] std::string name() const { return std::to_string(millimetres) + " mm " + where; }
};

[[nodiscard]] std::vector<BenchCase> benchCases();

} // namespace strandbench::curebench
