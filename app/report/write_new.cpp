// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/write_new.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <unistd.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int mostNames = 9999;
constexpr int longestName = 60;

bool taken(const QString& path) { return QFileInfo::exists(path) || QFileInfo(path).isSymLink(); }

} // namespace

tl::expected<void, QString> writeNew(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return tl::unexpected(file.errorString());
    // A stick is pulled as soon as the screen says that it is there: it must be on it by then.
    const bool written = file.write(bytes) == bytes.size() && file.flush() && ::fsync(file.handle()) == 0;
    if (written)
        return {};
    const QString why = file.errorString();
    file.close();
    file.remove();
    return tl::unexpected(why);
}

tl::expected<QString, QString> writeBeside(const QString& folder, const QString& stem, const QByteArray& bytes)
{
    if (!QDir().mkpath(folder))
        return tl::unexpected(u"%1: %2"_s.arg(folder, QString::fromLocal8Bit(strerror(errno))));
    for (int i = 1; i <= mostNames; ++i) {
        const QString name = i == 1 ? stem : u"%1-%2"_s.arg(stem).arg(i);
        const QString path = QDir(folder).filePath(name + u".pdf"_s);
        if (taken(path))
            continue;
        const auto written = writeNew(path, bytes);
        return written ? tl::expected<QString, QString>(path) : tl::unexpected(written.error());
    }
    return tl::unexpected(u"%1-%2.pdf"_s.arg(stem).arg(mostNames));
}

QString asFileName(const QString& text)
{
    QString name;
    for (const QChar each : text.left(longestName))
        name += each.isLetterOrNumber() || each == u'-' ? each : QChar(u'_');
    return name;
}

} // namespace strandbench
