// SPDX-License-Identifier: GPL-3.0-or-later
// Files that never take the place of another.
#pragma once

#include <QByteArray>
#include <QString>

#include <tl/expected.hpp>

namespace strandbench {

/// Writes a new file whole; an error (the system's words) leaves none. One that is there is left as it is.
[[nodiscard]] tl::expected<void, QString> writeNew(const QString& path, const QByteArray& bytes);

/// Writes "stem.pdf" into the folder, or "stem-2.pdf" and so on when that name is taken; the path that it got.
[[nodiscard]] tl::expected<QString, QString> writeBeside(const QString& folder, const QString& stem,
                                                         const QByteArray& bytes);

/// A text as part of a file's name: what a file system or a shell would trip over becomes '_'.
[[nodiscard]] QString asFileName(const QString& text);

} // namespace strandbench
