// SPDX-License-Identifier: GPL-3.0-or-later
// Which file lies at a path: a log that was taken away while it was open goes on in a file that nobody can find.
#pragma once

#include <QString>

#include <optional>

namespace strandbench {

struct FileIdentity {
    quint64 device = 0;
    quint64 number = 0; ///< of its inode
    bool operator==(const FileIdentity&) const = default;

    /// Empty where there is no file, or where it cannot be asked.
    [[nodiscard]] static std::optional<FileIdentity> of(const QString& path);
};

} // namespace strandbench
