// SPDX-License-Identifier: GPL-3.0-or-later
// The layers of a plan, each solved once by GSL.
#pragma once

#include "system.h"

#include "plan/repair_plan.h"

#include <deque>

namespace strandbench::planbench {

/// Every lift and the finishing coat of a plan, ready to be solved by GSL's `msbdf` on the engine's own grid, at the
/// loosest tolerance that comes as near to the converged solution as the engine's own does.
class GslOnce {
public:
    /// Ends the program where GSL is not there, or never gets as near.
    explicit GslOnce(const RepairPlan& plan);
    void solveAll() const;
    [[nodiscard]] std::size_t layers() const { return m_layers.size(); }

private:
    struct Layer {
        CureCase cureCase;
        curebench::System system;
        double tolerance = 0;
    };
    void take(const CureCase& cureCase);

    std::deque<Layer> m_layers;
};

} // namespace strandbench::planbench
