// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/drawing_widget.h"

#include "pictures/drawing.h"
#include "pictures/picture_access.h"

namespace strandbench {

DrawingWidget::DrawingWidget(const Theme& theme, const QString& drawing, const QString& accessibleName, QWidget* parent)
    : QWidget(parent), m_theme(theme), m_loop(theme, this)
{
    setAccessibleName(accessibleName);
    installPictureAccess();
    setDrawing(drawing);
}

void DrawingWidget::setDrawing(const QString& drawing)
{
    if (drawing == m_drawing)
        return;
    m_drawing = drawing;
    m_loop.setFrames(framesOf(drawing));
    update();
}

void DrawingWidget::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintDrawing(painter, QRectF(rect()), m_drawing, m_theme, {std::nullopt, m_loop.frame()});
}

} // namespace strandbench
