// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace strandbench::fuzz {

/// Wrong on purpose: reads beyond the end of "lot=!", and adds beyond an int in "lot=+".
int plantedParse(const char* text, std::size_t size);

} // namespace strandbench::fuzz
