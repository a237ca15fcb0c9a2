// SPDX-License-Identifier: GPL-3.0-or-later
// What can be lit at the bench, from which temperature on, and what lights it. It never says that nothing can.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class FireScreen final : public Screen {
    Q_OBJECT
public:
    explicit FireScreen(const Surroundings& around, QWidget* parent = nullptr);

private:
    [[nodiscard]] QWidget* flashPage(QWidget* parent) const;
    [[nodiscard]] QWidget* lightsPage(QWidget* parent) const;
};

} // namespace strandbench
