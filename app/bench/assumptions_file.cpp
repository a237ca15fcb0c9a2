// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/assumptions_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

using namespace Qt::StringLiterals;

namespace strandbench {

AssumptionsFile AssumptionsFile::besideLog(const QString& log)
{
    return AssumptionsFile(QFileInfo(log).absoluteDir().filePath(u"assumptions.json"_s));
}

ReadAssumptions AssumptionsFile::load()
{
    QFile file(m_path);
    if (!file.exists())
        return {};
    ReadAssumptions read;
    if (file.open(QIODevice::ReadOnly))
        read = readAssumptions(file.readAll());
    else
        read.faults = {{m_path, file.errorString(), FaultKind::NotReadable, {u"assumptions.json"_s}}};
    m_faulty = !read.faults.empty();
    return read;
}

bool AssumptionsFile::save(const AssumptionBook& book)
{
    if (m_faulty) {
        const QString refused = m_path + u".refused"_s;
        QFile::remove(refused);
        if (!QFile::copy(m_path, refused))
            return false;
        m_faulty = false;
    }
    QSaveFile file(m_path);
    return file.open(QIODevice::WriteOnly) && file.write(writeAssumptions(book)) >= 0 && file.commit();
}

} // namespace strandbench
