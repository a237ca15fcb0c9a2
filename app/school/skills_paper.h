// SPDX-License-Identifier: GPL-3.0-or-later
// A person's practice on paper: every skill, and every panel that was worked.
#pragma once

#include "school/practice_home.h"
#include "screens/paper/paper_screen.h"

namespace strandbench {

class SkillsPaperScreen final : public PaperScreen {
    Q_OBJECT
public:
    SkillsPaperScreen(const Surroundings& around, const QString& person, const std::vector<PracticeEntry>& entries,
                      QWidget* parent, Printing printing = Printing::bySystem());
};

} // namespace strandbench
