// SPDX-License-Identifier: GPL-3.0-or-later
#include "gsl_once.h"

#include "accuracy.h"
#include "solvers.h"

#include "cure/solve.h"

namespace strandbench::planbench {
namespace {

constexpr double converged = 1e-9; ///< tolerance of a step

} // namespace

GslOnce::GslOnce(const RepairPlan& plan)
{
    if (*curebench::gslVersion() == '\0')
        qFatal("GSL is not installed, and the plan has no other referee");
    for (const Lift& lift : plan.lifts)
        take(lift.cureCase.value());
    take(plan.finish.cureCase.value());
}

void GslOnce::take(const CureCase& cureCase)
{
    const int cells = cure::cellsFor(cureCase);
    Layer layer{cureCase, curebench::System(cureCase, cells)};
    const auto reference = curebench::solveWithEngine(cureCase, cells, converged);
    const double start = layer.system.airKelvin();
    const auto own = curebench::solveWithEngine(cureCase, cells, CureFineness{}.tolerance);
    const double share = curebench::accuracyOf(own, reference, start).share;
    const curebench::Contender gsl{
        "GSL", [&](double tolerance) { return curebench::solveWithGsl(layer.system, cureCase, tolerance); }};
    const auto tolerance = curebench::loosestFor(gsl, reference, start, share);
    if (!tolerance)
        qFatal("GSL never comes as near to a layer's solution as the engine does");
    layer.tolerance = *tolerance;
    m_layers.push_back(std::move(layer));
}

void GslOnce::solveAll() const
{
    for (const Layer& each : m_layers)
        static_cast<void>(curebench::solveWithGsl(each.system, each.cureCase, each.tolerance));
}

} // namespace strandbench::planbench
