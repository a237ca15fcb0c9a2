// SPDX-License-Identifier: GPL-3.0-or-later
// A thumb on the glass: touches as the panel sends them, on the widgets that are really there.
#pragma once

#include "shell/bench_window.h"

namespace strandbench {

class Thumb {
public:
    explicit Thumb(BenchWindow& window) : m_window(window) {}

    /// The control of this object name on the present screen or the ribbon; null when it is not to be seen.
    [[nodiscard]] QAbstractButton* find(const QString& name) const;
    /// Presses and lets go. False, and nothing is touched, when the control is not there, not enabled or
    /// covered by something else.
    [[nodiscard]] bool tap(const QString& name);
    /// Rests on the control until its ring has filled.
    [[nodiscard]] bool hold(const QString& name);
    /// Waits until a control is there and enabled: what is read from the log comes a moment after its screen. False
    /// when it does not come.
    [[nodiscard]] bool waitFor(const QString& name);
    /// Waits until what was begun is done: the act is written, the next screen is there and painted.
    void settle();

private:
    [[nodiscard]] bool reaches(const QWidget& control) const;

    BenchWindow& m_window;
};

} // namespace strandbench
