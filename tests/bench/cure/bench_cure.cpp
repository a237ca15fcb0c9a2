// SPDX-License-Identifier: GPL-3.0-or-later
// The cure engine beside GSL and SUNDIALS, on the same grid at equal accuracy. Prints one table; judges nothing.
//
// bench_cure [--rows FILE]    which gets the times at the engine's own accuracy
#include "accuracy.h"
#include "bench_cases.h"
#include "rows.h"
#include "solvers.h"

#include "cure/solve.h"
#include "exchange/sheets.h"
#include "learning/learning_rules.h"
#include "plan/forecast.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <map>

using namespace Qt::StringLiterals;

namespace strandbench::curebench {
namespace {

constexpr double aim = 1; ///< of either: not slower than a general-purpose solver
constexpr int leastCells = 32;
constexpr int rounds = 101;
/// The engine's own error is the greatest at its tolerance and at these beside it, so that luck at one does not count.
constexpr std::array besides{0.7, 0.8, 0.9, 1.0, 1.1, 1.25, 1.4};
/// So tight that what is left is small against every target.
constexpr double referenceTolerance = 1e-9;
/// Of a batch whose lot three others have told of.
const LotBelief toldLot{ofTheNext({LogRate::ofLogarithm(0.05), 0.04}, LearningRules().batch), 3, 0};

/// A contender at the accuracy asked for.
struct Set {
    Contender contender;
    std::optional<double> tolerance;
    double milliseconds = std::numeric_limits<double>::quiet_NaN();
};

std::vector<Contender> generalSolvers(const System& system, const CureCase& cureCase)
{
    std::vector<Contender> all;
    if (*gslVersion() != '\0')
        all.push_back({"GSL", [&](double tolerance) { return solveWithGsl(system, cureCase, tolerance); }});
    if (*cvodeVersion() != '\0')
        for (const auto by : {CvodeJacobian::Exact, CvodeJacobian::Differences})
            all.push_back({by == CvodeJacobian::Exact ? "CVODE exact" : "CVODE differences",
                           [&, by](double tolerance) { return solveWithCvode(system, cureCase, tolerance, by); }});
    return all;
}

struct Ratios {
    std::vector<double> gsl;
    std::vector<double> cvode;
};

class CaseRun {
public:
    explicit CaseRun(const BenchCase& benchCase)
        : m_case(benchCase),
          m_cells(std::max(leastCells, cure::cellsFor(benchCase.cureCase))),
          m_system(benchCase.cureCase, m_cells),
          m_engine{"engine", [this](double t) { return solveWithEngine(m_case.cureCase, m_cells, t); }},
          m_others(generalSolvers(m_system, m_case.cureCase)),
          m_reference(m_engine.solve(referenceTolerance))
    {}

    void run(Ratios& ratios, const bench::Rows& rows) const
    {
        checkEquations();
        const double fineness = CureFineness{}.tolerance;
        double own = 0.0;
        for (const double beside : besides)
            own = std::max(own, shareOf(m_engine.solve(fineness * beside)));
        checkReference(own / 10.0);
        tell(runAt(own, fineness, ratios), rows);
        runAt(own / 10.0, loosestFor(m_engine, m_reference, start(), own / 10.0), ratios);
    }

private:
    [[nodiscard]] double start() const { return m_system.airKelvin(); }
    [[nodiscard]] double shareOf(const Found& found) const { return accuracyOf(found, m_reference, start()).share; }

    /// The general solvers must be given the engine's equations, or the table compares nothing.
    void checkEquations() const
    {
        std::vector<double> y = m_system.start();
        for (std::size_t i = 0; i < y.size(); ++i)
            y[i] += m_system.isConversion(i) ? 0.01 + 0.8 * static_cast<double>(i) / static_cast<double>(y.size())
                                             : 30.0 * std::sin(static_cast<double>(i));
        const double difference = m_system.differenceFromEngine(m_case.cureCase, y);
        if (difference < 1e-10)
            return;
        std::fprintf(stderr, "%s: the equations differ by %g\n", m_case.name().c_str(), difference);
        std::exit(1);
    }

    void checkReference(double target) const
    {
        for (const Contender& other : m_others) {
            const double apart = shareOf(other.solve(referenceTolerance));
            if (!(apart < target / 2.0))
                std::fprintf(stderr, "%s: at %.0e %s is %.4f %% off the reference\n", m_case.name().c_str(),
                             referenceTolerance, other.name.c_str(), 100.0 * apart);
        }
    }

    std::vector<Set> runAt(double target, std::optional<double> engineTolerance, Ratios& ratios) const
    {
        std::vector<Set> sets{{m_engine, engineTolerance}};
        for (const Contender& other : m_others)
            sets.push_back({other, loosestFor(other, m_reference, start(), target)});
        std::vector<std::function<void()>> runs;
        for (const Set& set : sets)
            runs.emplace_back([&set] {
                if (set.tolerance)
                    static_cast<void>(set.contender.solve(*set.tolerance));
            });
        const std::vector<double> times = timesOf(runs, rounds);
        for (std::size_t i = 0; i < sets.size(); ++i)
            if (sets[i].tolerance)
                sets[i].milliseconds = times[i];
        for (const Set& set : sets)
            print(target, set, set.milliseconds / sets.front().milliseconds);
        note(sets, ratios);
        return sets;
    }

    /// The engine beside each library that is installed; of CVODE's two Jacobians the faster one.
    void tell(const std::vector<Set>& sets, const bench::Rows& rows) const
    {
        std::map<QString, double> best;
        for (std::size_t i = 1; i < sets.size(); ++i) {
            if (!sets[i].tolerance)
                continue;
            const QString referee = sets[i].contender.name == "GSL" ? u"GSL, msbdf"_s : u"CVODE, banded"_s;
            const auto [place, isNew] = best.emplace(referee, sets[i].milliseconds);
            place->second = std::min(place->second, sets[i].milliseconds);
        }
        for (const auto& [referee, theirs] : best)
            rows.add({u"cure"_s, u"filler "_s + QString::fromStdString(m_case.where), sets.front().milliseconds,
                      u"ms"_s, referee, theirs, aim, m_case.millimetres, u"mm"_s});
    }

    static void note(const std::vector<Set>& sets, Ratios& ratios)
    {
        double fastest = std::numeric_limits<double>::infinity();
        for (const Set& set : sets) {
            const double ratio = set.milliseconds / sets.front().milliseconds;
            if (set.contender.name == "GSL")
                ratios.gsl.push_back(ratio);
            else if (set.contender.name != "engine")
                fastest = std::min(fastest, ratio);
        }
        if (std::isfinite(fastest))
            ratios.cvode.push_back(fastest);
    }

    void print(double target, const Set& set, double ratio) const
    {
        std::printf("%-22s %5d %5zu  %7.3f %%  %-17s", m_case.name().c_str(), m_cells, m_system.size(), 100.0 * target,
                    set.contender.name.c_str());
        if (!set.tolerance) {
            std::printf("  never as accurate\n");
            return;
        }
        const Found found = set.contender.solve(*set.tolerance);
        const Accuracy off = accuracyOf(found, m_reference, start());
        std::printf("  %7.1e  %9.5f s %9.5f s %9.6f K  %7.3f %%  %5d  %10.3f ms %9.2f\n", *set.tolerance, off.gel,
                    off.sand, off.peak, 100.0 * off.share, found.steps, set.milliseconds, ratio);
        std::fflush(stdout);
    }

    const BenchCase& m_case;
    int m_cells;
    System m_system;
    Contender m_engine;
    std::vector<Contender> m_others;
    Found m_reference;
};

void printRatios(const char* name, const char* version, std::vector<double> ratios)
{
    if (*version == '\0') {
        std::printf("%s is not installed.\n", name);
        return;
    }
    std::erase_if(ratios, [](double ratio) { return !std::isfinite(ratio); });
    if (ratios.empty())
        return;
    std::sort(ratios.begin(), ratios.end());
    std::printf("%s %s takes %.1f to %.1f times the engine's time, median %.1f.\n", name, version, ratios.front(),
                ratios.back(), ratios[ratios.size() / 2]);
}

/// What a mix screen asks: layer and puddle, each at middle, ends and the sheet's own rate.
void printPredictions(const std::vector<BenchCase>& cases)
{
    std::printf(
        "\nA whole prediction of a batch, layer and 12 mm puddle with their interval and by the sheet, beside one\n"
        "solve of its layer\n");
    const CureEngine engine;
    const ProductSheet& sheet = *demoCatalogue().byClass(FillerClass::MixedStrand);
    for (const BenchCase& each : cases) {
        const BatchCases both{each.cureCase, cases.back().cureCase};
        const std::vector<double> times =
            timesOf({[&] { static_cast<void>(solveCure(each.cureCase)); },
                     [&] {
                         static_cast<void>(solveForecast({both, both, both}, sheet, engine, toldLot));
                     }},
                    rounds);
        std::printf("  %-22s %3d cells  %7.3f ms  %5.2f times\n", each.name().c_str(), cure::cellsFor(each.cureCase),
                    times[1], times[1] / times[0]);
    }
}

void run(const bench::Rows& rows)
{
    const std::vector<BenchCase> cases = benchCases();
    std::printf(
        "Each solver is set to the loosest tolerance that is as accurate as the target. What counts is the worst\n"
        "of gel, sand and peak against a solution at %.0e on the same grid, as a share of what the engine may\n"
        "be off. The first target is the engine's own error, the greatest at its tolerance and close beside it;\n"
        "the second is a tenth of that. Times are medians of up to %d, ratios are to the engine's time.\n\n",
        referenceTolerance, rounds);
    std::printf("%-22s %5s %5s  %9s  %-17s  %7s  %11s %11s %11s  %9s  %5s  %13s %9s\n", "case", "cells", "size",
                "target", "solver", "tol", "gel off", "sand off", "peak off", "worst", "steps", "time", "ratio");
    Ratios ratios;
    for (const BenchCase& each : cases)
        CaseRun(each).run(ratios, rows);
    std::printf("\n");
    printRatios("GSL msbdf (dense)", gslVersion(), ratios.gsl);
    printRatios("SUNDIALS CVODE (banded, the faster Jacobian)", cvodeVersion(), ratios.cvode);
    printPredictions(cases);
}

} // namespace
} // namespace strandbench::curebench

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    QStringList given = QCoreApplication::arguments().mid(1);
    const auto rows = strandbench::bench::Rows::takenFrom(given);
    if (!given.isEmpty()) {
        std::fputs("Usage: bench_cure [--rows FILE]\n", stderr);
        return 2;
    }
    strandbench::curebench::run(rows);
    return 0;
}
