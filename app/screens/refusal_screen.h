// SPDX-License-Identifier: GPL-3.0-or-later
// A refusal is a whole screen: what is wrong, why, what to do instead, who may override. The easy way on
// parks the job; assessing again takes a one-second hold.
#pragma once

#include "screens/screen.h"

namespace strandbench {

class RefusalScreen final : public Screen {
    Q_OBJECT
public:
    RefusalScreen(const Surroundings& around, const Repair& repair, const std::vector<Stop>& given,
                  QWidget* parent = nullptr);

private:
    void buildSide(QWidget* card, QBoxLayout* row);
    void buildWords(QBoxLayout* row, const std::vector<Stop>& stops);
};

} // namespace strandbench
