// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite takes the WAL away by its name when the last connection closes. Where another log lies under that name by now,
// its WAL is not ours to take.
#pragma once

#include <QString>

namespace strandbench {

/// Lives while a connection is closed: the WAL of a stranger has a second name meanwhile.
class StrangersWal {
public:
    /// strange: what lies at the log's path is not what the connection has open.
    StrangersWal(const QString& log, bool strange);
    ~StrangersWal();
    StrangersWal(const StrangersWal&) = delete;
    StrangersWal& operator=(const StrangersWal&) = delete;

private:
    QString m_wal;
    QString m_kept;
    bool m_holds = false;
};

} // namespace strandbench
