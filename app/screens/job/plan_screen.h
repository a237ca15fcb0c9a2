// SPDX-License-Identifier: GPL-3.0-or-later
// The plan: section to scale, filler, mix, ready for primer; and why this filler, why not the others.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

class PlanScreen final : public Screen {
    Q_OBJECT
public:
    /// accepted: the plan is only looked at; the way on leads back to the present step.
    PlanScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, bool accepted,
               QWidget* parent = nullptr);

Q_SIGNALS:
    void whyWanted();
    void answersWanted();
    void stockWanted(); ///< what the shelf says of it
    void presentWanted();

private:
    [[nodiscard]] bool keepsStock() const; ///< then there is a key more
    void buildSection(const Repair& repair, const RepairPlan& plan);
    void buildFigures(const Repair& repair, const RepairPlan& plan, const Instant& from);
};

/// Why this filler and why not the others, and what to mind: read, then back.
class WhyScreen final : public Screen {
    Q_OBJECT
public:
    WhyScreen(const Surroundings& around, const Repair& repair, const RepairPlan& plan, QWidget* parent = nullptr);
};

} // namespace strandbench
