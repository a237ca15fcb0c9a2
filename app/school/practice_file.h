// SPDX-License-Identifier: GPL-3.0-or-later
// The practice record on the disk: beside the log, and never in it.
#pragma once

#include "practice/practice_record.h"

#include <QString>

namespace strandbench {

class PracticeFile {
public:
    explicit PracticeFile(QString path) : m_path(std::move(path)) {}
    /// "practice.jsonl" in the folder of the log.
    [[nodiscard]] static PracticeFile besideLog(const QString& log);

    /// What it holds; lines that do not read are named, and stay in the file.
    [[nodiscard]] ReadEntries load() const;
    /// Adds an entry at its end, and sees that it is on the disk. The system's own words where it is not.
    [[nodiscard]] std::optional<QString> add(const PracticeEntry& entry) const;

private:
    QString m_path;
};

} // namespace strandbench
