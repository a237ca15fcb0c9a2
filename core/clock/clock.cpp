// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/clock.h"

#include <QDateTime>
#include <QFile>

#include <algorithm>
#include <ctime>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The kernel's identity of this boot; empty where there is none, and then UTC alone is trusted.
QString readBootId()
{
    QFile file(u"/proc/sys/kernel/random/boot_id"_s);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QString::fromLatin1(file.readAll()).trimmed();
}

qint64 boottimeMs()
{
    timespec now{};
    clock_gettime(CLOCK_BOOTTIME, &now);
    return static_cast<qint64>(now.tv_sec) * 1000 + now.tv_nsec / 1'000'000;
}

} // namespace

SystemClock::SystemClock() : m_bootId(readBootId()) {}

Instant SystemClock::now() const
{
    const QDateTime local = QDateTime::currentDateTime();
    return {local.toMSecsSinceEpoch(), boottimeMs(), m_bootId, local.offsetFromUtc()};
}

Duration elapsed(const Instant& from, const Instant& to)
{
    const bool sameBoot = !from.bootId.isEmpty() && from.bootId == to.bootId;
    const qint64 ms = sameBoot ? to.boottimeMs - from.boottimeMs : to.utcMs - from.utcMs;
    return seconds(static_cast<double>(std::max<qint64>(0, ms)) / 1000.0);
}

QString localDay(const Instant& at)
{
    return QDateTime::fromMSecsSinceEpoch(at.utcMs, Qt::OffsetFromUTC, at.utcOffsetSeconds)
        .date()
        .toString(Qt::ISODate);
}

} // namespace strandbench
