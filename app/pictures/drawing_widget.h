// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing as large as its place; one that has frames plays them round and round.
#pragma once

#include "pictures/loop.h"
#include "theme/theme.h"

#include <QWidget>

namespace strandbench {

class DrawingWidget final : public QWidget {
    Q_OBJECT
public:
    /// `drawing` as paintDrawing names it; it must be there.
    DrawingWidget(const Theme& theme, const QString& drawing, const QString& accessibleName, QWidget* parent = nullptr);
    void setDrawing(const QString& drawing);
    [[nodiscard]] const QString& drawing() const { return m_drawing; }
    [[nodiscard]] Loop& loop() { return m_loop; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    QString m_drawing;
    Loop m_loop;
};

} // namespace strandbench
