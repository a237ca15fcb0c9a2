// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"

namespace strandbench {

/// Air, panel and humidity as read at one moment.
struct Reading {
    Temperature air;
    Temperature panel;
    Fraction humidity; ///< relative humidity of the air, above 0 and at most 1
    bool operator==(const Reading&) const = default;
};

} // namespace strandbench
