// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of the answers: what a panel is made of, and what happened to it.
#include "pictures/drawing.h"
#include "pictures/section_picture.h"

using namespace Qt::StringLiterals;

namespace strandbench {

void paintSubstrate(QPainter& painter, const QRectF& rect, Substrate substrate, const Theme& theme)
{
    paintDrawing(painter, rect, u"substrates/"_s + codeOf(substrate), theme);
}

void paintDamage(QPainter& painter, const QRectF& rect, DamageKind damage, std::optional<WeldKind> weld,
                 const Theme& theme)
{
    const QString name = damage == DamageKind::WeldSeam && weld ? u"weld_"_s + codeOf(*weld) : codeOf(damage);
    paintDrawing(painter, rect, u"damages/"_s + name, theme);
}

} // namespace strandbench
