// SPDX-License-Identifier: GPL-3.0-or-later
#include "solvers.h"

#ifdef BENCH_WITH_CVODE

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_config.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>

#include <cmath>
#include <memory>
#include <type_traits>

namespace strandbench::curebench {
namespace {

struct Problem {
    const System& system;
    double tolerance;
};

int rates(realtype /*second*/, N_Vector y, N_Vector out, void* problem)
{
    static_cast<const Problem*>(problem)->system.rates(N_VGetArrayPointer(y), N_VGetArrayPointer(out));
    return 0;
}

int jacobian(realtype /*second*/, N_Vector y, N_Vector /*rates*/, SUNMatrix out, void* problem, N_Vector /*scratch*/,
             N_Vector /*scratch*/, N_Vector /*scratch*/)
{
    // CVODE has zeroed it.
    static_cast<const Problem*>(problem)->system.jacobian(
        N_VGetArrayPointer(y), [&](std::size_t row, std::size_t column, double value) {
            SM_ELEMENT_B(out, static_cast<sunindextype>(row), static_cast<sunindextype>(column)) = value;
        });
    return 0;
}

int weights(N_Vector y, N_Vector out, void* of)
{
    const Problem& problem = *static_cast<const Problem*>(of);
    const double* value = N_VGetArrayPointer(y);
    double* weight = N_VGetArrayPointer(out);
    for (std::size_t i = 0; i < problem.system.size(); ++i) {
        const double scale = problem.system.isConversion(i) ? conversionScale : kelvinScale;
        weight[i] = 1.0 / (problem.tolerance * (scale + std::abs(value[i])));
    }
    return 0;
}

template <auto release> struct Release {
    template <class Handle> void operator()(Handle* handle) const { release(handle); }
};
void freeCvode(void* memory) { CVodeFree(&memory); }
void freeContext(SUNContext context) { SUNContext_Free(&context); }

using Context = std::unique_ptr<std::remove_pointer_t<SUNContext>, Release<freeContext>>;
using Vector = std::unique_ptr<std::remove_pointer_t<N_Vector>, Release<N_VDestroy>>;
using Matrix = std::unique_ptr<std::remove_pointer_t<SUNMatrix>, Release<SUNMatDestroy>>;
using LinearSolver = std::unique_ptr<std::remove_pointer_t<SUNLinearSolver>, Release<SUNLinSolFree>>;
using Memory = std::unique_ptr<void, Release<freeCvode>>;

class CvodeStep : public LastStep {
public:
    CvodeStep(void* memory, N_Vector wrapper, N_Vector slope) : m_memory(memory), m_wrapper(wrapper), m_slope(slope) {}

    void end(double second) { m_to = second; }
    void at(double second, double* y) const override
    {
        N_VSetArrayPointer(y, m_wrapper);
        CVodeGetDky(m_memory, second, 0, m_wrapper);
    }
    [[nodiscard]] const double* slope() const override
    {
        CVodeGetDky(m_memory, m_to, 1, m_slope);
        return N_VGetArrayPointer(m_slope);
    }

private:
    void* m_memory;
    N_Vector m_wrapper;
    N_Vector m_slope;
    double m_to = 0.0;
};

SUNContext onlyContext()
{
    static const Context only = [] {
        SUNContext context = nullptr;
        SUNContext_Create(nullptr, &context);
        return Context(context);
    }();
    return only.get();
}

} // namespace

const char* cvodeVersion() { return SUNDIALS_VERSION; }

Found solveWithCvode(const System& system, const CureCase& cureCase, double tolerance, CvodeJacobian jacobianBy)
{
    const SUNContext context = onlyContext();
    const auto size = static_cast<sunindextype>(system.size());
    Problem problem{system, tolerance};
    std::vector<double> y = system.start();
    const Vector state(N_VMake_Serial(size, y.data(), context));
    const Vector wrapper(N_VMake_Serial(size, nullptr, context));
    const Vector slope(N_VNew_Serial(size, context));
    const Matrix matrix(SUNBandMatrix(size, System::band, System::band, context));
    const LinearSolver linear(SUNLinSol_Band(state.get(), matrix.get(), context));
    const Memory memory(CVodeCreate(CV_BDF, context));
    const double horizon = inSeconds(cureCase.horizon);
    CVodeInit(memory.get(), rates, 0.0, state.get());
    CVodeSetErrFile(memory.get(), nullptr);
    CVodeSetUserData(memory.get(), &problem);
    CVodeWFtolerances(memory.get(), weights);
    CVodeSetLinearSolver(memory.get(), linear.get(), matrix.get());
    if (jacobianBy == CvodeJacobian::Exact)
        CVodeSetJacFn(memory.get(), jacobian);
    CVodeSetStopTime(memory.get(), horizon);
    CvodeStep step(memory.get(), wrapper.get(), slope.get());
    Watch watch(system, cureCase);
    watch.begin(y.data());
    double second = 0.0;
    while (second < horizon) {
        const double from = second;
        if (CVode(memory.get(), horizon, state.get(), &second, CV_ONE_STEP) < 0)
            return Watch::nothing();
        step.end(second);
        watch.take(step, from, second, y.data());
    }
    return watch.found();
}

} // namespace strandbench::curebench

#else

namespace strandbench::curebench {
const char* cvodeVersion() { return ""; }
Found solveWithCvode(const System& /*system*/, const CureCase& /*cureCase*/, double /*tolerance*/, CvodeJacobian /*by*/)
{
    return Watch::nothing();
}
} // namespace strandbench::curebench

#endif
