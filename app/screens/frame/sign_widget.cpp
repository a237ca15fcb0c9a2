// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/sign_widget.h"

#include "pictures/picture_access.h"

#include <QPainter>

namespace strandbench {

SignWidget::SignWidget(const Theme& theme, Pictogram sign, const QString& accessibleName, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_sign(sign)
{
    sayIsPicture(*this); // before it is named: what a reader asks of it then is kept
    setAccessibleName(accessibleName);
    setMinimumSize(theme.px(10), theme.px(10));
}

void SignWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintPictogram(painter, QRectF(rect()), m_sign, m_theme, m_theme.color(Role::Ink));
}

} // namespace strandbench
