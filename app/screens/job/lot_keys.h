// SPDX-License-Identifier: GPL-3.0-or-later
// A lot as it is keyed in: digits and a dash by large keys, anything else from a keyboard or a scanner.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class LotKeys final : public QWidget {
    Q_OBJECT
public:
    LotKeys(const Surroundings& around, QWidget* parent);

    /// At most inhand::longestLot characters; longer ones are not taken.
    void setText(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }

Q_SIGNALS:
    void textChanged(const QString& text);
    void entered(); ///< Enter on a keyboard

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QWidget* pad(const Surroundings& around);

    QString m_text;
    FitLabel* m_shown = nullptr;
};

} // namespace strandbench
