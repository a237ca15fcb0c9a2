// SPDX-License-Identifier: GPL-3.0-or-later
#include "program.h"

#include <QJsonDocument>
#include <QProcess>
#include <QProcessEnvironment>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

Ran run(QProcess& process, const QStringList& arguments, const QByteArray& input)
{
    QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
    for (const QString& each : {u"DISPLAY"_s, u"WAYLAND_DISPLAY"_s, u"QT_QPA_PLATFORM"_s})
        surroundings.remove(each);
    surroundings.insert(u"LC_ALL"_s, u"C"_s); // the poorest locale: neither UTF-8 nor a language
    process.setProcessEnvironment(surroundings);
    process.start(QStringLiteral(STRANDBENCH_PROGRAM), arguments);
    process.write(input);
    process.closeWriteChannel();
    if (!process.waitForFinished(60000) || process.exitStatus() != QProcess::NormalExit)
        return {-1, process.readAllStandardOutput(), process.readAllStandardError()};
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

} // namespace

QJsonObject Ran::json() const { return QJsonDocument::fromJson(out).object(); }

QStringList Ran::messages() const { return QString::fromUtf8(err).split(u'\n', Qt::SkipEmptyParts); }

Ran program(const QStringList& arguments, const QByteArray& input)
{
    QProcess process;
    return run(process, arguments, input);
}

Ran programInto(const QString& file, const QStringList& arguments)
{
    QProcess process;
    process.setStandardOutputFile(file);
    return run(process, arguments, {});
}

} // namespace strandbench
