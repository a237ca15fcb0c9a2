// SPDX-License-Identifier: GPL-3.0-or-later
// Ten digits, point and clear: two rows of six on a wide glass, more rows on an upright one.
#pragma once

#include "touch/tap_button.h"

#include <QString>

#include <vector>

namespace strandbench {

class KeyPad final : public QWidget {
    Q_OBJECT
public:
    /// columns: 6 on a wide glass; 4 or 3 on an upright one. Keys are named key_0 … key_9, key_point, key_clear.
    KeyPad(const Theme& theme, int columns, QWidget* parent = nullptr);
    /// Shown text without a signal; a key goes on from here. At most as long as allowed, else refused as false.
    bool setText(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }
    void setPointAllowed(bool allowed);
    void setLongest(int characters);
    /// Whether a zero in front stays when a digit follows, as in a PIN; not allowed at first, as in a number.
    void setZeroInFrontKept(bool kept);
    /// The sign of the decimal point as the person's language writes it: only a look, text() has '.'.
    void setPointSign(const QString& sign);

Q_SIGNALS:
    void textChanged(const QString& text);

protected:
    void keyPressEvent(QKeyEvent* event) override; ///< digits, '.', ',', Backspace and Delete of a keyboard

private:
    TapButton* addKey(const QString& name, const QString& title, QChar key);
    void tapped(QChar key);
    void change(const QString& text);
    void enableKeys();

    const Theme& m_theme;
    QString m_text;
    int m_longest = 8;
    bool m_pointAllowed = true;
    bool m_zeroKept = false;
    TapButton* m_point = nullptr;
    TapButton* m_clear = nullptr;
    std::vector<TapButton*> m_digits;
};

} // namespace strandbench
