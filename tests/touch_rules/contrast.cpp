// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch_rules/contrast.h"

#include <algorithm>
#include <cmath>

namespace strandbench::rules {

namespace {

// The definition's own constants; its threshold 0.03928 makes no difference for 8-bit channels.
double linear(int channel)
{
    const double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

} // namespace

double relativeLuminance(const QColor& color)
{
    return 0.2126 * linear(color.red()) + 0.7152 * linear(color.green()) + 0.0722 * linear(color.blue());
}

double contrastRatio(const QColor& one, const QColor& other)
{
    const double a = relativeLuminance(one);
    const double b = relativeLuminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

} // namespace strandbench::rules
