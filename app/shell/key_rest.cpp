// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/key_rest.h"

#include <QKeyEvent>

namespace strandbench {
namespace {

const Duration rest = seconds(0.5);

} // namespace

bool KeyRest::resting(const Instant& now) const { return m_last && elapsed(*m_last, now) < rest; }

bool KeyRest::passes(const QKeyEvent& press, const Instant& now)
{
    if (press.isAutoRepeat())
        return false;
    const bool bounced = resting(now);
    m_last = now;
    return !bounced;
}

} // namespace strandbench
