// SPDX-License-Identifier: GPL-3.0-or-later
// Repairs to plan: a few by hand, and a seeded crowd of all that a bench may fill.
#pragma once

#include "plan/planner.h"

#include <QStringList>

#include <functional>

namespace strandbench::test {

/// What the program plans with: its own table, steps, demo sheets and assumptions.
class Bench {
public:
    Bench();
    explicit Bench(std::vector<ProductSheet> sheets);
    [[nodiscard]] RepairPlan plan(const Assessment& assessment) const;
    [[nodiscard]] RepairPlan replan(const Assessment& assessment, const RepairPlan& before,
                                    const PlanProgress& done) const;
    [[nodiscard]] const Catalogue& catalogue() const { return m_catalogue; }
    [[nodiscard]] const ProductSheet& sheetOf(const RepairPlan& plan) const { return *m_catalogue.byId(plan.sheetId); }
    [[nodiscard]] const ProductSheet& finishOf(const RepairPlan& plan) const
    {
        return *m_catalogue.byId(plan.finishSheetId);
    }
    Assumptions assumptions;

private:
    Catalogue m_catalogue;
    CureEngine m_engine;
};

/// A damage with everything that its kind asks for. Lengths in mm; a hole is as deep as the panel is thick.
[[nodiscard]] Assessment repairOf(Substrate substrate, DamageKind kind, double length, double width, double depth);
/// The through hole of 60 by 40 mm in SMC, 3.5 mm thick, bevelled 4 : 1, reached from behind.
[[nodiscard]] Assessment sampleHole();

/// Plans a crowd of valid repairs (seeded) and looks at every plan. Those that the air stops are passed over.
void forManyPlans(const std::function<void(const Assessment&, const RepairPlan&, const Bench&)>& look);

[[nodiscard]] QStringList codesOf(const std::vector<Step>& steps);
/// What one repair is called in a failure.
[[nodiscard]] std::string nameOf(const Assessment& assessment);

/// The lifts of a face.
[[nodiscard]] std::vector<Lift> liftsOf(const RepairPlan& plan, Face face);
/// True when a lift is of another filler than the rest.
[[nodiscard]] bool isBridged(const RepairPlan& plan);
/// True for the last lift of its face, which is built proud.
[[nodiscard]] bool lastOfFace(const RepairPlan& plan, std::size_t lift);

} // namespace strandbench::test
