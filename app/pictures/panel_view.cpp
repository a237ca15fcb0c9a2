// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/panel_view.h"

#include "pictures/panel_sides.h"
#include "pictures/picture_access.h"

namespace strandbench {

void paintPanelView(QPainter& painter, const QRectF& rect, PanelSide side, const Evidence& shown, const Theme& theme)
{
    if (rect.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const SectionDrawing nothing; // the stage's own drawings, which tell the material, are not used
    const StepStage stage(painter, rect, nothing, theme);
    switch (side) {
    case PanelSide::Front:
        drawPanelFront(stage, shown);
        break;
    case PanelSide::Back:
        drawPanelBack(stage, shown);
        break;
    case PanelSide::Edge:
        drawPanelEdge(stage, shown);
        break;
    }
    painter.restore();
}

PanelView::PanelView(const Theme& theme, const QString& name, QWidget* parent) : QWidget(parent), m_theme(theme)
{
    setObjectName(name);
    sayIsPicture(*this);
}

void PanelView::setShown(PanelSide side, const Evidence& shown)
{
    m_side = side;
    m_shown = shown;
    update();
}

QSize PanelView::minimumSizeHint() const { return {m_theme.px(60), m_theme.px(30)}; }

void PanelView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paintPanelView(painter, rect(), m_side, m_shown, m_theme);
}

} // namespace strandbench
