// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/damage_mark.h"

#include "repairlog/disk.h"
#include "repairlog/failure.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// By the log's real name: a link to it is the same log.
QString beside(const QString& log, const QString& ending)
{
    const QFileInfo info(log);
    return (info.exists() ? info.canonicalFilePath() : info.absoluteFilePath()) + ending;
}

QString damagedPath(const QString& log) { return beside(log, u".damaged"_s); }
QString restoringPath(const QString& log) { return beside(log, u".restoring"_s); }

/// The whole text or nothing, on the disk before it comes back.
Logged<void> write(const QString& path, const QString& text)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(text.toUtf8()) < 0 || !file.commit())
        return failed(LogTrouble::IoError, u"%1: %2"_s.arg(path, file.errorString()));
    return disk::syncFolderOf(path);
}

} // namespace

void markDamaged(const QString& log, const QString& what)
{
    if (isMarkedDamaged(log))
        return;
    if (const auto written = write(damagedPath(log), what + u'\n'); !written)
        qWarning("the mark of a damaged log was not written: %s", qPrintable(written.error().detail));
}

bool isMarkedDamaged(const QString& log) { return QFileInfo::exists(damagedPath(log)); }

void clearDamageMark(const QString& log)
{
    if (isMarkedDamaged(log) && !QFile::remove(damagedPath(log)))
        qWarning("the mark of a damaged log was not taken away: %s", qPrintable(damagedPath(log)));
}

Logged<void> markRestoring(const QString& log, const QString& earlier) { return write(restoringPath(log), earlier); }

QString restoreCutOff(const QString& log)
{
    QFile file(restoringPath(log));
    if (!file.exists())
        return {};
    const QString earlier = file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.read(4096)).trimmed() : QString();
    return earlier.isEmpty() ? restoringPath(log) : earlier;
}

Logged<void> clearRestoringMark(const QString& log)
{
    if (QFileInfo::exists(restoringPath(log)) && !QFile::remove(restoringPath(log)))
        return failed(LogTrouble::IoError, restoringPath(log));
    return disk::syncFolderOf(log);
}

} // namespace strandbench
