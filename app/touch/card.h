// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet that holds other things: rounded, card colour, soft edge; not a control.
#pragma once

#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

class Card final : public QWidget {
    Q_OBJECT
public:
    explicit Card(const Theme& theme, QWidget* parent = nullptr);
    void setEdge(Role edge);   ///< Role::Stop for a refusal, drawn thick; default SoftEdge
    void setFilled(Role fill); ///< default Card

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    Role m_edge = Role::SoftEdge;
    Role m_fill = Role::Card;
};

} // namespace strandbench
