// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/file_identity.h"

#include <QFile>

#include <sys/stat.h>

namespace strandbench {

std::optional<FileIdentity> FileIdentity::of(const QString& path)
{
    struct stat found = {};
    if (::stat(QFile::encodeName(path).constData(), &found) != 0)
        return std::nullopt;
    return FileIdentity{found.st_dev, found.st_ino};
}

} // namespace strandbench
