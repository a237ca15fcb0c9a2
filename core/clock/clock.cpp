// SPDX-License-Identifier: GPL-3.0-or-later
#include "clock/clock.h"

#include <QDateTime>
#include <QFile>

#include <algorithm>
#include <chrono>
#include <cstdlib>
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

qint64 read(clockid_t which)
{
    timespec now{};
    clock_gettime(which, &now);
    return static_cast<qint64>(now.tv_sec) * 1000 + now.tv_nsec / 1'000'000;
}

/// Longer than this between two readings of the boot clock, and the wall's reading between them belongs to neither.
constexpr qint64 atOnceMs = 20;
constexpr int tries = 5;

} // namespace

SystemClock::SystemClock() : m_bootId(readBootId()) {}

Instant SystemClock::now() const
{
    Instant now;
    for (int i = 0; i < tries; ++i) {
        const qint64 before = read(CLOCK_BOOTTIME);
        const QDateTime local = QDateTime::currentDateTime();
        now = {local.toMSecsSinceEpoch(), read(CLOCK_BOOTTIME), m_bootId, local.offsetFromUtc()};
        if (now.boottimeMs - before <= atOnceMs)
            break;
    }
    return now;
}

Duration SystemClock::asleep() const
{
    // CLOCK_MONOTONIC stands still in suspend. It is read first, so that the difference is never short of a sleep.
    const qint64 awake = read(CLOCK_MONOTONIC);
    return seconds(static_cast<double>(std::max<qint64>(0, read(CLOCK_BOOTTIME) - awake)) / 1e3);
}

Duration elapsed(const Instant& from, const Instant& to)
{
    const bool sameBoot = !from.bootId.isEmpty() && from.bootId == to.bootId;
    const qint64 ms = sameBoot ? to.boottimeMs - from.boottimeMs : to.utcMs - from.utcMs;
    return seconds(static_cast<double>(std::max<qint64>(0, ms)) / 1000.0);
}

QString localDay(const Instant& at)
{
    // Every event is given its day and held to it: the calendar alone, where years have four digits, is quicker.
    using namespace std::chrono;
    constexpr qint64 firstMs = duration_cast<milliseconds>(sys_days(year(1) / 1 / 3).time_since_epoch()).count();
    constexpr qint64 lastMs = duration_cast<milliseconds>(sys_days(year(9999) / 12 / 30).time_since_epoch()).count();
    if (at.utcMs >= firstMs && at.utcMs <= lastMs && std::abs(at.utcOffsetSeconds) <= 86400) {
        const auto local = sys_time<milliseconds>(milliseconds(at.utcMs)) + std::chrono::seconds(at.utcOffsetSeconds);
        const year_month_day day(floor<days>(local));
        return QString::asprintf("%04d-%02u-%02u", int(day.year()), unsigned(day.month()), unsigned(day.day()));
    }
    return QDateTime::fromMSecsSinceEpoch(at.utcMs, Qt::OffsetFromUTC, at.utcOffsetSeconds)
        .date()
        .toString(Qt::ISODate);
}

} // namespace strandbench
