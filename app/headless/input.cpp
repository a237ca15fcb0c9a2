// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/input.h"

#include <QFile>

#include <cstdio>

using namespace Qt::StringLiterals;

namespace strandbench::headless {
namespace {

constexpr qint64 longest = 1 << 20;

Input cannotRead(const QString& file, const QString& why)
{
    return {std::nullopt,
            ended(Status::Trouble, say(QT_TRANSLATE_NOOP("Headless", "FILE: '%1' cannot be read: %2"), {file, why}))};
}

} // namespace

Input readInput(const QString& file, const Words& words)
{
    QFile device(file);
    const bool opened = file == u"-"_s ? device.open(stdin, QIODevice::ReadOnly) : device.open(QIODevice::ReadOnly);
    if (!opened)
        return cannotRead(file, device.errorString());
    QByteArray bytes;
    while (bytes.size() <= longest) {
        const QByteArray more = device.read(longest + 1 - bytes.size());
        if (more.isEmpty())
            break;
        bytes += more;
    }
    if (device.error() != QFileDevice::NoError)
        return cannotRead(file, device.errorString());
    if (bytes.size() > longest)
        return {std::nullopt, refused({{u"FILE"_s, file, FaultKind::TooLong, {QString::number(longest)}}}, words)};
    return {bytes, {}};
}

} // namespace strandbench::headless
