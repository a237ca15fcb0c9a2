// SPDX-License-Identifier: GPL-3.0-or-later
// Where practice begins: the next panel, the skills, the tour.
#pragma once

#include "practice/practice_progress.h"
#include "screens/frame/paged_rows.h"

namespace strandbench {

struct PracticeHomeWays {
    std::function<void()> next;
    std::function<void()> made; ///< a panel made up by the generator
    std::function<void()> goOn; ///< with the panel that was begun; empty: none was
    std::function<void()> skills;
    std::function<void()> tour;
};

[[nodiscard]] Screen* practiceHome(const Surroundings& around, const SkillRecord& skills, const PracticeHomeWays& ways,
                                   QWidget* parent);

/// Every skill of a person, with what stands behind it; and of everybody, one tap away.
class SkillsScreen final : public Screen {
    Q_OBJECT
public:
    SkillsScreen(const Surroundings& around, const QString& person, const std::vector<PracticeEntry>& entries,
                 QWidget* parent = nullptr);

Q_SIGNALS:
    void personWanted(const QString& person); ///< somebody else's
    void paperWanted();
    void panelWanted(); ///< where none was worked yet

private:
    [[nodiscard]] PagedRows::MakeRow rowOf(const SkillState& state);
};

/// "8 of 10 right, not mastered yet": of one skill.
[[nodiscard]] QString skillTold(const SkillState& state);

} // namespace strandbench
