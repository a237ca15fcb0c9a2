// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/small_key.h"

#include "theme/sizes.h"

namespace strandbench {

void paintSmallKey(QPainter& painter, const QRectF& rect, Role face, const Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(face));
    painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), theme.px(sizes::radius), theme.px(sizes::radius));
}

} // namespace strandbench
