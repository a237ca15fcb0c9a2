// SPDX-License-Identifier: GPL-3.0-or-later
// Files for the targets that read one: in a folder of their own. run_target.sh puts it in memory.
#pragma once

#include "fuzz.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace strandbench::fuzz {

/// The folder, gone with the process.
inline const QTemporaryDir& scratch()
{
    static const QTemporaryDir folder(QDir::tempPath() + QStringLiteral("/strandbench-fuzz-XXXXXX"));
    require(folder.isValid(), "there is a temporary folder");
    return folder;
}

inline void writeFile(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    require(file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size(),
            "the temporary file can be written");
}

inline QByteArray readFile(const QString& path)
{
    QFile file(path);
    require(file.open(QIODevice::ReadOnly), "the temporary file can be read");
    return file.readAll();
}

} // namespace strandbench::fuzz
