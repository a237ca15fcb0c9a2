// SPDX-License-Identifier: GPL-3.0-or-later
#include "referee.h"

#include "referee_system.h"

#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>

namespace strandbench::test {
namespace {

int ratesOf(double, const double* y, double* out, void* system)
{
    static_cast<const System*>(system)->rates(y, out);
    return GSL_SUCCESS;
}

int jacobianOf(double, const double* y, double* out, double* byTime, void* system)
{
    const auto* self = static_cast<const System*>(system);
    self->jacobian(y, out);
    std::fill_n(byTime, self->unknowns(), 0.0);
    return GSL_SUCCESS;
}

/// One accepted step; the cubic of Hermite runs through its ends.
struct Step {
    double from = 0.0;
    double to = 0.0;
    std::vector<double> before;
    std::vector<double> beforeSlope;
    std::vector<double> after;
    std::vector<double> afterSlope;

    [[nodiscard]] std::vector<double> at(double share) const
    {
        const double rest = 1.0 - share;
        const double h = to - from;
        std::vector<double> y(before.size());
        for (std::size_t i = 0; i < y.size(); ++i)
            y[i] = rest * rest * (1.0 + 2.0 * share) * before[i] + share * rest * rest * h * beforeSlope[i] +
                   share * share * (3.0 - 2.0 * share) * after[i] - share * share * rest * h * afterSlope[i];
        return y;
    }
    /// When a rising watch comes to its mark, by bisection.
    [[nodiscard]] double when(const std::function<double(const double*)>& watch, double mark) const
    {
        double low = 0.0;
        double high = 1.0;
        for (int i = 0; i < 40; ++i) {
            const double middle = (low + high) / 2.0;
            (watch(at(middle).data()) < mark ? low : high) = middle;
        }
        return from + high * (to - from);
    }
};

/// Takes note of what the engine is asked for.
class Notes {
public:
    Notes(const System& system, const CureCase& cureCase)
        : m_system(system), m_case(cureCase), m_smoothFrom(system.secondsOfContact())
    {
        const std::vector<double> start = system.start();
        verdict.peak = system.hottestNode(start.data());
        if (system.mostCured(start.data()) >= cureCase.kinetics.gel.value())
            verdict.gel = 0.0;
        if (system.faceCured(start.data()) >= cureCase.kinetics.sand.value())
            verdict.sand = 0.0;
    }
    void take(const Step& step)
    {
        const double gel = m_case.kinetics.gel.value();
        if (!verdict.gel && m_system.mostCured(step.after.data()) >= gel)
            verdict.gel = step.when([this](const double* y) { return m_system.mostCured(y); }, gel);
        const double sand = m_case.kinetics.sand.value();
        if (!verdict.sand && m_system.faceCured(step.after.data()) >= sand)
            verdict.sand = step.when([this](const double* y) { return m_system.faceCured(y); }, sand);
        ++verdict.steps;
        // A polynomial rings beside the step at a contact. What is hottest then was so at the start: heat that only
        // spreads lifts nothing above it (the maximum principle), and the reaction's peak comes later.
        if (step.from >= m_smoothFrom)
            verdict.peak =
                std::max({verdict.peak, m_system.hottest(step.at(0.5).data()), m_system.hottest(step.after.data())});
    }
    Verdict verdict;

private:
    const System& m_system;
    const CureCase& m_case;
    double m_smoothFrom;
};

bool near(const std::optional<double>& one, const std::optional<double>& other, double share)
{
    return one.has_value() == other.has_value() && (!one || std::abs(*one - *other) <= share * *other);
}

} // namespace

Verdict judge(const CureCase& cureCase, int elements, double tolerance)
{
    // The library would end the program by itself; its answers are looked at below.
    gsl_set_error_handler_off();
    System system(cureCase, elements);
    gsl_odeiv2_system equations{ratesOf, jacobianOf, system.unknowns(), &system};
    const std::unique_ptr<gsl_odeiv2_driver, decltype(&gsl_odeiv2_driver_free)> driver(
        gsl_odeiv2_driver_alloc_y_new(&equations, gsl_odeiv2_step_msbdf, 1e-6, tolerance, tolerance),
        gsl_odeiv2_driver_free);
    Notes notes(system, cureCase);
    notes.verdict.unknowns = static_cast<int>(system.unknowns());
    Step step;
    step.after = system.start();
    step.afterSlope.resize(system.unknowns());
    system.rates(step.after.data(), step.afterSlope.data());
    step.before = step.after;
    step.beforeSlope = step.afterSlope;
    const double horizon = inSeconds(cureCase.horizon);
    double h = 1e-6;
    while (step.to < horizon) {
        step.from = step.to;
        step.before = step.after;
        step.beforeSlope = step.afterSlope;
        const int status = gsl_odeiv2_evolve_apply(driver->e, driver->c, driver->s, &equations, &step.to, horizon, &h,
                                                   step.after.data());
        if (status != GSL_SUCCESS)
            throw std::runtime_error(std::string("msbdf: ") + gsl_strerror(status));
        system.rates(step.after.data(), step.afterSlope.data());
        notes.take(step);
    }
    notes.verdict.hottestAtEnd = system.hottest(step.after.data());
    return notes.verdict;
}

Verdict convergedVerdict(const CureCase& cureCase)
{
    constexpr std::array elements{4, 6, 9, 13, 19, 28, 40};
    int agreed = 0; // once is not enough: two coarse ones can ring alike at a front
    Verdict coarse = judge(cureCase, elements.front());
    for (std::size_t i = 1; i < elements.size(); ++i) {
        const Verdict fine = judge(cureCase, elements[i]);
        const bool peakIsNear = std::abs(fine.peak - coarse.peak) <= 0.2 * allowedAtPeak(cureCase, fine.peak);
        agreed = peakIsNear && near(coarse.gel, fine.gel, 1e-3) && near(coarse.sand, fine.sand, 1e-3) ? agreed + 1 : 0;
        if (agreed == 2)
            return fine;
        coarse = fine;
    }
    throw std::runtime_error("the referee did not converge");
}

double allowedAtPeak(const CureCase& cureCase, double peak)
{
    double lowest = std::min(inKelvin(cureCase.temperature), inKelvin(cureCase.air.front().temperature));
    for (const StackLayer& layer : cureCase.stack)
        lowest = std::min(lowest, inKelvin(layer.temperature));
    return std::max(0.5, 0.01 * (peak - lowest));
}

} // namespace strandbench::test
