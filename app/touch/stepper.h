// SPDX-License-Identifier: GPL-3.0-or-later
// A figure with a large minus and a large plus for a small change; a tap on the figure opens the key pad, a
// tap on the unit changes the system of units.
#pragma once

#include "touch/fit_label.h"
#include "touch/tap_button.h"

#include <QTimer>

namespace strandbench {

class Stepper final : public QWidget {
    Q_OBJECT
public:
    /// name: stem of the object names: <name>_minus, <name>_plus, <name>_figure (TapButton), <name>_unit (TapButton).
    Stepper(const Theme& theme, const QString& name, const QString& caption, QWidget* parent = nullptr);
    /// What is shown; the owner formats. An empty figure shows a dash: not answered yet. An empty unit leaves
    /// its key out.
    void setShown(const QString& figure, const QString& unit);
    void setChosen(bool chosen); ///< the one that the key pad writes into: thick outline

Q_SIGNALS:
    void stepped(int direction); ///< -1 or +1; repeats while held after 0.5 s
    void figureTapped();
    void unitTapped();

private:
    void wireStep(TapButton* key, int direction);
    void repeat();

    const Theme& m_theme;
    QString m_caption;
    TapButton* m_minus;
    TapButton* m_figure;
    TapButton* m_unit;
    TapButton* m_plus;
    QTimer m_repeat;
    TapButton* m_heldKey = nullptr;
    int m_heldDirection = 0;
    bool m_repeated = false; ///< the release after repeats is not one step more
};

} // namespace strandbench
