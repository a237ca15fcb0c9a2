// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/low_glass.h"

#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

bool isLowGlass(const QWidget* window, const Theme& theme)
{
    constexpr double lowMm = 133; // three figures with their captions have no room for large ones
    return window && theme.metrics().mm(window->height()) < lowMm;
}

} // namespace strandbench
