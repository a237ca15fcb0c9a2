// SPDX-License-Identifier: GPL-3.0-or-later
// One writer: whoever writes a log holds a lock beside it, and says in it who that is. The kernel keeps the lock
// (flock), so that it goes with its process however that ends; the file alone means nothing.
#pragma once

#include "repairlog/repair_log.h"

#include <memory>

namespace strandbench {

/// A program that has a bench.
struct Holder {
    qint64 process = 0; ///< its id on its machine
    QString machine;
    QString program;
    bool operator==(const Holder&) const = default;
};

class WriterLock {
public:
    /// Takes the lock of a log, or says who has it. What a program left behind that is gone, by a kill or a power cut,
    /// counts for nothing. Empty: nothing can be written there at all, which opening the log will say better.
    [[nodiscard]] static tl::expected<std::unique_ptr<WriterLock>, Holder> take(const QString& log);
    ~WriterLock(); ///< lets go
    /// False once its file was taken away, with its folder say: then it keeps nobody out any more.
    [[nodiscard]] bool stands() const;
    WriterLock(const WriterLock&) = delete;
    WriterLock& operator=(const WriterLock&) = delete;

private:
    WriterLock(int file, QByteArray path) : m_file(file), m_path(std::move(path)) {}
    int m_file;
    QByteArray m_path;
};

/// The lock's file, beside the log.
[[nodiscard]] QString lockPathOf(const QString& log);

/// That another copy has the bench: the detail names it.
[[nodiscard]] LogFailure inUseBy(const Holder& holder);

} // namespace strandbench
