// SPDX-License-Identifier: GPL-3.0-or-later
// A practice panel as eye and mirror find it: from the front, from the back, and its broken edge. What is drawn is what
// is shown, never what it means.
#pragma once

#include "practice/evidence.h"
#include "theme/theme.h"

#include <QWidget>

class QPainter;

namespace strandbench {

enum class PanelSide { Front, Back, Edge };

/// Draws one side of a panel into a rectangle, twice as wide as high at best. Not to scale.
void paintPanelView(QPainter& painter, const QRectF& rect, PanelSide side, const Evidence& shown, const Theme& theme);

/// The same as a widget; its accessible name is what it shows, set by the screen.
class PanelView final : public QWidget {
    Q_OBJECT
public:
    PanelView(const Theme& theme, const QString& name, QWidget* parent = nullptr);
    void setShown(PanelSide side, const Evidence& shown);
    [[nodiscard]] PanelSide side() const { return m_side; }
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    PanelSide m_side = PanelSide::Front;
    Evidence m_shown;
};

} // namespace strandbench
