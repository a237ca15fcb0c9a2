// SPDX-License-Identifier: GPL-3.0-or-later
// The log of some days of the demo's depot, made once a process; and what stands in it, counted event by event here and
// not by the program.
#pragma once

#include "years/years.h"

#include "repair/event.h"

#include <QTemporaryDir>

#include <map>

namespace strandbench::test {

struct DepotLog {
    QString path;
    std::vector<Event> events; ///< in the order written
    Instant evening;           ///< after the last of them, on the same day
};
/// 300 repairs, some forty of them handed over.
[[nodiscard]] const DepotLog& depotLog();

struct CountedMaterial {
    int batches = 0;
    double planned = 0; ///< grams
    double mixed = 0;
    double over = 0;
};
[[nodiscard]] std::map<QString, CountedMaterial> countMaterial(const std::vector<Event>& events);

/// Of each hardener lot, by sheet and lot: gel times over the sheet's, oldest hardener first.
[[nodiscard]] std::map<std::pair<QString, QString>, std::vector<double>> countGels(const std::vector<Event>& events);

/// Signed off, and signed off or returned, of repairs that are no rework: by substrate.
[[nodiscard]] std::map<Substrate, std::pair<int, int>> countRight(const std::vector<Event>& events);

/// Seconds from 'hardener in' to clear edges, added up, of each repair that was handed over.
[[nodiscard]] std::vector<double> countLaying(const std::vector<Event>& events);

} // namespace strandbench::test
