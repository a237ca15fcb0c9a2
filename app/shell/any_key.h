// SPDX-License-Identifier: GPL-3.0-or-later
// A foot switch, or any key, stands for the way on while both hands are full.
#pragma once

#include "shell/key_rest.h"

class QKeyEvent;

namespace strandbench {

/// Tells which presses of a key are meant as the way on: not those that move the focus or type a figure, not
/// a key that is held down, and none within half a second of the one before, so that a foot switch that bounces
/// confirms one step and not two.
class AnyKey {
public:
    /// The Qt::Key of the foot switch, which then means the way on whatever else it would mean, and no other key
    /// does; 0: any key.
    void setFootSwitch(int key) { m_footSwitch = key; }
    [[nodiscard]] bool meansWayOn(const QKeyEvent& press, const Instant& now);

private:
    int m_footSwitch = 0;
    KeyRest m_rest;
};

} // namespace strandbench
