// SPDX-License-Identifier: GPL-3.0-or-later
// The tables, and the way from one version of them to the next.
#pragma once

#include "repairlog/connection.h"

namespace strandbench {

/// Marks a file as a log of this program: "SBLG" in SQLite's application id.
inline constexpr qint64 logApplicationId = 0x53424C47;

/// One step to a version: its statements, and the oldest program that may still use what they leave.
struct Migration {
    int version = 0;
    int oldestProgram = 0; ///< stored as min_compatible_version
    QStringList statements;
};

/// Every step, in order. A step that has been released is never edited; another follows it.
[[nodiscard]] const std::vector<Migration>& migrations();
/// The version that this program writes: that of the last step.
[[nodiscard]] int currentVersion();

/// Runs the steps that the file does not have yet, each in one transaction with its version stamp: both
/// PRAGMA user_version and meta. A new file gets its application id and its origin with the first.
[[nodiscard]] Logged<void> migrate(const SqlConnection& connection, const std::vector<Migration>& steps);

/// In meta: how many photos and kept sheets have lost their bytes, in a log that was rescued; not there for none.
[[nodiscard]] QString photosLostKey();
[[nodiscard]] Logged<void> setMeta(const SqlConnection& connection, const QString& key, const QString& value);
/// A value of meta; empty when the key is not there.
[[nodiscard]] Logged<QString> metaValue(const SqlConnection& connection, const QString& key);

} // namespace strandbench
