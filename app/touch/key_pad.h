// SPDX-License-Identifier: GPL-3.0-or-later
// Ten digits, point and clear: two rows of six on a wide glass, more rows on an upright one.
#pragma once

#include "touch/tap_button.h"

#include <QString>

namespace strandbench {

class KeyPad final : public QWidget {
    Q_OBJECT
public:
    /// columns: 6 on a wide glass; 4 or 3 on an upright one. Keys are named key_0 … key_9, key_point, key_clear.
    KeyPad(const Theme& theme, int columns, QWidget* parent = nullptr);
    void setText(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }
    void setPointAllowed(bool allowed);
    void setLongest(int characters);
    /// The sign of the decimal point as the person's language writes it: only a look, text() has '.'.
    void setPointSign(const QString& sign);

Q_SIGNALS:
    void textChanged(const QString& text);

private:
    void tapped(QChar key);
    const Theme& m_theme;
    QString m_text;
    int m_longest = 8;
    bool m_pointAllowed = true;
    TapButton* m_point = nullptr;
};

} // namespace strandbench
