// SPDX-License-Identifier: GPL-3.0-or-later
// The bench's assumptions beside the log: assumptions.json.
#pragma once

#include "exchange/assumptions_json.h"

namespace strandbench {

class AssumptionsFile {
public:
    explicit AssumptionsFile(QString path) : m_path(std::move(path)) {}
    /// The file that lies beside a log.
    [[nodiscard]] static AssumptionsFile besideLog(const QString& log);

    /// The default where there is no file yet; a file that cannot be opened is a NotReadable fault that names it.
    [[nodiscard]] ReadAssumptions load();
    /// Writes it whole or not at all; false when the disk refuses. A file that held a fault is kept as
    /// assumptions.json.refused first, so that what it said is not lost.
    [[nodiscard]] bool save(const AssumptionBook& book);

private:
    QString m_path;
    bool m_faulty = false;
};

} // namespace strandbench
