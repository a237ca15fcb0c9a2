// SPDX-License-Identifier: GPL-3.0-or-later
// A thumb on the glass: touches as the panel sends them, on the widgets that are really there; or, for who cannot
// touch, the keys Tab and space alone.
#pragma once

#include "shell/bench_window.h"

namespace strandbench {

class Thumb {
public:
    enum class Means { Touch, Keys };
    explicit Thumb(BenchWindow& window, Means means = Means::Touch) : m_window(window), m_means(means) {}

    /// The control of this object name on the present screen or the ribbon; null when it is not to be seen.
    [[nodiscard]] QAbstractButton* find(const QString& name) const;
    /// Presses and lets go. False, and nothing is touched, when the control is not there, not enabled or
    /// covered by something else; by keys, when Tab does not come to it.
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
    /// Lets go after so many milliseconds.
    [[nodiscard]] bool press(const QString& name, int forMs);
    /// Goes round by Tab until the control has the focus. False once all had it.
    [[nodiscard]] bool tabTo(const QWidget& control);

    BenchWindow& m_window;
    Means m_means;
};

} // namespace strandbench
