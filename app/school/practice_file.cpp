// SPDX-License-Identifier: GPL-3.0-or-later
#include "school/practice_file.h"

#include <QFile>
#include <QFileInfo>
#include <QDir>

#include <unistd.h>

#include <cerrno>
#include <cstring>

using namespace Qt::StringLiterals;

namespace strandbench {

PracticeFile PracticeFile::besideLog(const QString& log)
{
    return PracticeFile(QFileInfo(log).absoluteDir().filePath(u"practice.jsonl"_s));
}

ReadEntries PracticeFile::load() const
{
    QFile file(m_path);
    if (!file.exists())
        return {};
    if (!file.open(QIODevice::ReadOnly))
        return {{}, {{m_path, file.errorString(), FaultKind::NotReadable, {u"practice.jsonl"_s}}}};
    return readEntries(file.readAll());
}

std::optional<QString> PracticeFile::add(const PracticeEntry& entry) const
{
    QFile file(m_path);
    if (!file.open(QIODevice::ReadWrite))
        return file.errorString();
    QByteArray line = writeEntry(entry);
    // A line that a power cut left without its end is not gone on with.
    if (file.size() > 0 && file.seek(file.size() - 1) && file.read(1) != "\n")
        line.prepend('\n');
    if (!file.seek(file.size()) || file.write(line) != line.size() || !file.flush())
        return file.errorString();
    if (::fsync(file.handle()) != 0)
        return QString::fromLocal8Bit(std::strerror(errno));
    return std::nullopt;
}

} // namespace strandbench
