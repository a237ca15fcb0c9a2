// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/strangers_wal.h"

#include <QFile>

#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {

StrangersWal::StrangersWal(const QString& log, bool strange) : m_wal(log + u"-wal"_s), m_kept(m_wal + u".kept"_s)
{
    m_holds = strange && ::link(QFile::encodeName(m_wal).constData(), QFile::encodeName(m_kept).constData()) == 0;
}

StrangersWal::~StrangersWal()
{
    if (m_holds && (QFile::exists(m_wal) ? !QFile::remove(m_kept) : !QFile::rename(m_kept, m_wal)))
        qWarning("%s was left", qPrintable(m_kept));
}

} // namespace strandbench
