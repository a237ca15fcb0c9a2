// SPDX-License-Identifier: GPL-3.0-or-later
// Where the quick card goes: a folder or a printer.
#pragma once

#include "screens/paper/paper_screen.h"

namespace strandbench {

class QuickCardScreen final : public PaperScreen {
    Q_OBJECT
public:
    explicit QuickCardScreen(const Surroundings& around, QWidget* parent = nullptr,
                             Printing printing = Printing::bySystem());
};

} // namespace strandbench
