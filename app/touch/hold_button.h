// SPDX-License-Identifier: GPL-3.0-or-later
// A button that acts only when held for one second, with a ring that fills (with reduced motion in quarters): a brush
// of the sleeve does nothing, and neither does Enter, which a foot switch may send. Never clicked(): use held().
#pragma once

#include "touch/tap_button.h"

#include <QElapsedTimer>
#include <QTimer>

namespace strandbench {

class HoldButton final : public TapButton {
    Q_OBJECT
public:
    HoldButton(const Theme& theme, const QString& name, Kind kind, QWidget* parent = nullptr);
    static constexpr int holdMs = 1000;
    [[nodiscard]] double progress() const; ///< 0..1

Q_SIGNALS:
    void held();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override; ///< leaving the button lets go
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override; ///< being disabled lets go
    void paintProgress(QPainter& painter, const QRectF& rect) override;

private:
    void begin();
    void letGo();
    void tick();

    QElapsedTimer m_since;
    QTimer m_timer;
    bool m_holding = false;
};

} // namespace strandbench
