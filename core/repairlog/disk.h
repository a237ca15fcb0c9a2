// SPDX-License-Identifier: GPL-3.0-or-later
// Files put in place so that a power cut leaves the old or the new. Inside core/repairlog only.
#pragma once

#include "repairlog/repair_log.h"

namespace strandbench::disk {

/// Takes a half-made database away again, with what SQLite may have left beside it.
class Temporary {
public:
    explicit Temporary(QString path) : m_path(std::move(path)) {}
    ~Temporary();
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    [[nodiscard]] const QString& path() const { return m_path; }

private:
    QString m_path;
};

/// A name beside a file for what is not finished: no program takes such a file for a log.
[[nodiscard]] QString partNameFor(const QString& path);

/// Nothing may stand there yet, not even a link to nothing; and its folder must take a file.
[[nodiscard]] Logged<void> checkTarget(const QString& to);

[[nodiscard]] Logged<void> syncFile(const QString& path);
[[nodiscard]] Logged<void> syncFolderOf(const QString& path);

/// A consistent copy of a log (VACUUM INTO); not verified, not synced.
[[nodiscard]] Logged<void> copyLog(const QString& path, const QString& to);

/// Renames without ever replacing. Some file systems (on sticks, say) cannot promise that in one call; there
/// it is looked for once more just before.
[[nodiscard]] Logged<void> putInPlace(const QString& from, const QString& to);
/// Renames over what is there.
[[nodiscard]] Logged<void> replace(const QString& from, const QString& to);

/// A second name for a file, or a copy where the file system knows no such names.
[[nodiscard]] Logged<void> keepBeside(const QString& from, const QString& to);

/// Copies a file as far as it can be read; what cannot is 0 in the copy, and counted (bytes). Opens and closes the file
/// itself: not while a connection of this process has it open, which would lose its locks.
[[nodiscard]] Logged<qint64> copyWhatReads(const QString& from, const QString& to);

} // namespace strandbench::disk
