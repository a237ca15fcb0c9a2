// SPDX-License-Identifier: GPL-3.0-or-later
// What writes an act: the same SQL through either library.
#pragma once

#include <array>
#include <cstddef>

namespace strandbench::commitbench {

enum Which : std::size_t { Begin, InsertEvent, InsertBlob, InsertLink, PutSummary, Commit };

/// By Which.
inline constexpr std::array allStatements{
    "BEGIN IMMEDIATE",
    "INSERT INTO event VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
    "INSERT INTO blob VALUES (?, ?)",
    "INSERT INTO event_blob VALUES (?, ?, ?)",
    "INSERT INTO summary VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (repair) DO UPDATE SET "
    "job = excluded.job, panel = excluded.panel, job_key = excluded.job_key, panel_key = excluded.panel_key, "
    "substrate = excluded.substrate, damage_kind = excluded.damage_kind, station = excluded.station, "
    "person = excluded.person, open = excluded.open, first_utc_ms = excluded.first_utc_ms, "
    "last_utc_ms = excluded.last_utc_ms, last_seq = excluded.last_seq",
    "COMMIT",
};

/// As the program has them on its own connection.
inline constexpr std::array allPragmas{"PRAGMA busy_timeout = 2000", "PRAGMA foreign_keys = ON",
                                       "PRAGMA synchronous = FULL"};

} // namespace strandbench::commitbench
