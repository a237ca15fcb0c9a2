// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/card.h"

#include "theme/sizes.h"

#include <QPainter>

#include <algorithm>

namespace strandbench {

Card::Card(const Theme& theme, QWidget* parent) : QWidget(parent), m_theme(theme) {}

void Card::setEdge(Role edge)
{
    m_edge = edge;
    update();
}

void Card::setFilled(Role fill)
{
    m_fill = fill;
    update();
}

void Card::paintEvent(QPaintEvent*)
{
    constexpr double softEdge = 0.3;  // mm
    constexpr double thickEdge = 1.0; // mm
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double width = std::max(1, m_theme.px(m_edge == Role::SoftEdge ? softEdge : thickEdge));
    const double radius = m_theme.px(sizes::radius);
    painter.setPen(QPen(m_theme.color(m_edge), width));
    painter.setBrush(m_theme.color(m_fill));
    painter.drawRoundedRect(QRectF(rect()).adjusted(width / 2, width / 2, -width / 2, -width / 2), radius, radius);
}

} // namespace strandbench
