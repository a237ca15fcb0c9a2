// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the trade, in the order of the alphabet, page by page.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class GlossaryScreen final : public Screen {
    Q_OBJECT
public:
    explicit GlossaryScreen(const Surroundings& around, QWidget* parent = nullptr);

Q_SIGNALS:
    void jobWanted();
};

} // namespace strandbench
