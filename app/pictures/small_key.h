// SPDX-License-Identifier: GPL-3.0-or-later
// A key of the glass in small, as a sign for it.
#pragma once

#include "theme/theme.h"

#include <QPainter>

namespace strandbench {

/// In the colour of its kind: Role::Go, Role::Action and so on.
void paintSmallKey(QPainter& painter, const QRectF& rect, Role face, const Theme& theme);

} // namespace strandbench
