// SPDX-License-Identifier: GPL-3.0-or-later
#include "solvers.h"

#ifdef BENCH_WITH_GSL

#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>
#include <gsl/gsl_version.h>

#include <algorithm>
#include <memory>

namespace strandbench::curebench {
namespace {

constexpr double firstStep = 0.1;

/// What the library hands back to the functions, by a pointer that is not to a const.
struct Problem {
    const System& system;
};

int rates(double /*second*/, const double y[], double out[], void* problem)
{
    static_cast<const Problem*>(problem)->system.rates(y, out);
    return GSL_SUCCESS;
}

int jacobian(double /*second*/, const double y[], double* byUnknown, double byTime[], void* problem)
{
    const System& system = static_cast<const Problem*>(problem)->system;
    const std::size_t size = system.size();
    std::fill_n(byUnknown, size * size, 0.0);
    std::fill_n(byTime, size, 0.0);
    system.jacobian(y,
                    [&](std::size_t row, std::size_t column, double value) { byUnknown[row * size + column] = value; });
    return GSL_SUCCESS;
}

class HermiteStep : public LastStep {
public:
    explicit HermiteStep(std::size_t size) : m_before(size), m_slopeBefore(size) {}

    void begin(double second, const double* y, const double* slope)
    {
        m_from = second;
        std::copy_n(y, m_before.size(), m_before.begin());
        std::copy_n(slope, m_before.size(), m_slopeBefore.begin());
    }
    void end(double second, const double* y, const double* slope)
    {
        m_to = second;
        m_after = y;
        m_slopeAfter = slope;
    }
    void at(double second, double* y) const override
    {
        const double h = m_to - m_from;
        const double share = (second - m_from) / h;
        const double rest = 1.0 - share;
        const double toBefore = rest * rest * (1.0 + 2.0 * share);
        const double toAfter = share * share * (3.0 - 2.0 * share);
        for (std::size_t i = 0; i < m_before.size(); ++i)
            y[i] = toBefore * m_before[i] + toAfter * m_after[i] +
                   h * share * rest * (rest * m_slopeBefore[i] - share * m_slopeAfter[i]);
    }
    [[nodiscard]] const double* slope() const override { return m_slopeAfter; }

private:
    double m_from = 0.0;
    double m_to = 0.0;
    std::vector<double> m_before;
    std::vector<double> m_slopeBefore;
    const double* m_after = nullptr;
    const double* m_slopeAfter = nullptr;
};

} // namespace

const char* gslVersion() { return gsl_version; }

Found solveWithGsl(const System& system, const CureCase& cureCase, double tolerance)
{
    gsl_set_error_handler_off();
    const std::size_t size = system.size();
    Problem ours{system};
    gsl_odeiv2_system problem{rates, jacobian, size, &ours};
    std::vector<double> scale(size);
    for (std::size_t i = 0; i < size; ++i)
        scale[i] = system.isConversion(i) ? conversionScale : kelvinScale;
    const std::unique_ptr<gsl_odeiv2_driver, decltype(&gsl_odeiv2_driver_free)> driver(
        gsl_odeiv2_driver_alloc_scaled_new(&problem, gsl_odeiv2_step_msbdf, firstStep, tolerance, tolerance, 1.0, 0.0,
                                           scale.data()),
        gsl_odeiv2_driver_free);
    std::vector<double> y = system.start();
    std::vector<double> slope(size);
    system.rates(y.data(), slope.data());
    HermiteStep step(size);
    Watch watch(system, cureCase);
    watch.begin(y.data());
    const double horizon = inSeconds(cureCase.horizon);
    double second = 0.0;
    double h = firstStep;
    while (second < horizon) {
        const double from = second;
        step.begin(from, y.data(), second > 0.0 ? driver->e->dydt_out : slope.data());
        if (gsl_odeiv2_evolve_apply(driver->e, driver->c, driver->s, &problem, &second, horizon, &h, y.data()) !=
            GSL_SUCCESS)
            return Watch::nothing();
        step.end(second, y.data(), driver->e->dydt_out);
        watch.take(step, from, second, y.data());
    }
    return watch.found();
}

} // namespace strandbench::curebench

#else

namespace strandbench::curebench {
const char* gslVersion() { return ""; }
Found solveWithGsl(const System& /*system*/, const CureCase& /*cureCase*/, double /*tolerance*/)
{
    return Watch::nothing();
}
} // namespace strandbench::curebench

#endif
