// SPDX-License-Identifier: GPL-3.0-or-later
// What is registered with Google Benchmark, run by turns.
#pragma once

#include <functional>
#include <map>
#include <string>

namespace strandbench::bench {

/// Work by its name; Google Benchmark decides how often it is done.
using Works = std::map<std::string, std::function<void()>>;

/// Repetitions of all are mixed at random, so that a busy moment meets every one. Prints Google Benchmark's own lines.
/// The median milliseconds by the wall, by name.
[[nodiscard]] std::map<std::string, double> medianMilliseconds(const Works& works);

} // namespace strandbench::bench
