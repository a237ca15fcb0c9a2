// SPDX-License-Identifier: GPL-3.0-or-later
#include "walk/set_clock.h"

#include <cmath>

namespace strandbench {
namespace {

qint64 wholeMs(Duration time) { return static_cast<qint64>(std::llround(inSeconds(time) * 1000.0)); }

} // namespace

void SetClock::advance(Duration by)
{
    m_now.utcMs += wholeMs(by);
    m_now.boottimeMs += wholeMs(by);
}

Instant before(const Instant& at, Duration by)
{
    Instant earlier = at;
    earlier.utcMs -= wholeMs(by);
    earlier.boottimeMs -= wholeMs(by);
    return earlier;
}

} // namespace strandbench
