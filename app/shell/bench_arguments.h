// SPDX-License-Identifier: GPL-3.0-or-later
// What the bench is opened with: the log, and a window of a size instead of the full screen.
#pragma once

#include "quantity/fault.h"

#include <QSize>
#include <QStringList>

#include <vector>

namespace strandbench {

struct BenchArguments {
    QString log;               ///< as given; empty: the person's own
    QSize glass;               ///< in pixels; empty: the full screen
    std::vector<Fault> faults; ///< every one at once; with any the bench does not open
};

/// Reads `--log FILE` and `--glass WxH` (100x100 to 99999x99999); `given` begins with the program's name.
[[nodiscard]] BenchArguments readBenchArguments(const QStringList& given);

} // namespace strandbench
