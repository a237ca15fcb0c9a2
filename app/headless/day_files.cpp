// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/day_files.h"

#include "headless/log_lines.h"
#include "report/write_new.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

QString pathOf(const QString& folder, const QString& day, const QString& ending)
{
    return QDir(folder).filePath(u"day-"_s + day + u'.' + ending);
}

} // namespace

Faults judgeDayFolder(const QString& option, const QString& folder, const QString& day)
{
    // A folder is not made: where a stick or a share is not mounted, its files would lie where nobody looks.
    if (!QFileInfo(folder).isDir())
        return {{option, folder, FaultKind::NotOneOf, {say(QT_TRANSLATE_NOOP("Headless", "a folder that is there"))}}};
    Faults faults;
    if (day.isEmpty())
        return faults;
    for (const QString& ending : {u"pdf"_s, u"csv"_s, u"json"_s})
        if (const auto taken = nameTaken(option, pathOf(folder, day, ending)))
            faults.push_back(*taken);
    return faults;
}

Outcome writeDayFiles(const QString& option, const QString& folder, const QString& day,
                      const std::vector<DayFile>& files, QJsonObject done)
{
    QStringList written;
    for (const DayFile& each : files) {
        const QString path = pathOf(folder, day, each.ending);
        if (const auto one = writeNew(path, each.bytes); !one) {
            for (const QString& before : written)
                QFile::remove(before);
            return ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "%1: '%2' cannot be written: %3"),
                                              {option, path, one.error().simplified()}));
        }
        written << path;
        done[each.ending] = path;
    }
    return {Status::Done, done, {}};
}

} // namespace strandbench::headless
