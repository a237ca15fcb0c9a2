// SPDX-License-Identifier: GPL-3.0-or-later
// The ribbon's reading: a key to the air, as large as a block; a notice stands in its place while there is one.
#pragma once

#include "touch/fit_label.h"

#include <QAbstractButton>

namespace strandbench {

class ReadingButton final : public QAbstractButton {
    Q_OBJECT
public:
    explicit ReadingButton(const Theme& theme, QWidget* parent = nullptr);

    void setReading(const QString& lines);
    /// On yellow, and no key: what it says may be about what is shown.
    void setNotice(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override; ///< Space acts; Enter is the window's
    void keyReleaseEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override; ///< a second press, never a meaning of its own

private:
    void dress(bool notice);
    void showText(const QString& text, bool notice);

    const Theme& m_theme;
    FitLabel* m_label;
};

} // namespace strandbench
