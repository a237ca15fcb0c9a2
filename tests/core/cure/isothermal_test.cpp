// SPDX-License-Identifier: GPL-3.0-or-later
// A film that stays at the air's temperature: the law of cure by itself, against exact solutions and against a
// general-purpose library.
#include "cases.h"

#include <boost/numeric/odeint/integrate/integrate_adaptive.hpp>
#include <boost/numeric/odeint/stepper/controlled_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/generation.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace strandbench::test {
namespace {

constexpr double gasConstant = 8.314462618; ///< J/(mol K): CODATA 2018, exact (from memory)
constexpr double timeTolerance = 0.002;

CureCase filmWithMarks(double degreesCelsius, double gel, double sand, double horizon)
{
    CureCase cureCase = heldFilm(degreesCelsius);
    cureCase.kinetics.gel = Fraction::ofOne(gel);
    cureCase.kinetics.sand = Fraction::ofOne(sand);
    cureCase.horizon = seconds(horizon);
    return cureCase;
}

struct Autocatalytic {
    double celsius;
    double rate;                 ///< 1/s, tabulated
    std::array<double, 5> times; ///< s to `conversions` from nothing, tabulated
};
constexpr std::array conversions{0.05, 0.262, 0.50, 0.90, 0.99};
constexpr double seed = 1e-3;

class CureIsothermalAutocatalytic : public testing::TestWithParam<Autocatalytic> {};

// m + n = 2: with u = a/(1-a), u^(1-m) = u0^(1-m) + (1-m) k t, exactly. The figures of the law are those of a
// glass/polyester slab (Bogetti and Gillespie, J. Compos. Mater. 25 (1991) 239-273); the times were computed apart.
TEST_P(CureIsothermalAutocatalytic, TakesTheExactTimes)
{
    const Autocatalytic& row = GetParam();
    constexpr double m = 0.524;
    const double rate = 6.167e20 * std::exp(-167'400.0 / (gasConstant * (row.celsius + 273.15)));
    EXPECT_NEAR(rate / row.rate, 1.0, 1e-4);
    const auto timeTo = [&](double conversion) {
        return std::pow(conversion / (1.0 - conversion), 1.0 - m) / ((1.0 - m) * rate);
    };
    for (std::size_t i = 0; i < conversions.size(); ++i) {
        EXPECT_NEAR(timeTo(conversions[i]), row.times[i], 0.002 * row.times[i]) << "table";
        CureCase film = filmWithMarks(row.celsius, conversions[i], conversions[i], 1.2 * row.times[i]);
        film.kinetics.k1 = perSecond(0);
        film.kinetics.k2 = perSecond(rate);
        film.kinetics.reference = celsius(row.celsius);
        film.kinetics.law.m = m;
        film.kinetics.law.n = 2.0 - m;
        film.kinetics.law.maxConversionAtReference = 1.0;
        film.kinetics.law.maxConversionPerKelvin = 0.0;
        film.initialConversion = Fraction::ofOne(seed);
        const CureResult result = solved(film);
        const double expected = timeTo(conversions[i]) - timeTo(seed);
        EXPECT_NEAR(secondsOf(result.gel), expected, timeTolerance * expected) << "to " << conversions[i];
        EXPECT_NEAR(secondsOf(result.sand), expected, timeTolerance * expected) << "to " << conversions[i];
    }
}

INSTANTIATE_TEST_SUITE_P(Exact, CureIsothermalAutocatalytic,
                         testing::Values(Autocatalytic{90, 5.1537e-4, {1003.7, 2489.9, 4076.3, 11600.9, 36323.9}},
                                         Autocatalytic{100, 2.27711e-3, {227.2, 563.5, 922.6, 2625.6, 8221.1}},
                                         Autocatalytic{110, 9.31032e-3, {55.6, 137.8, 225.6, 642.2, 2010.7}},
                                         Autocatalytic{120, 3.54350e-2, {14.6, 36.2, 59.3, 168.7, 528.3}}));

CureCase autocatalytic(double horizon)
{
    CureCase film = filmWithMarks(100, 0.5, 0.9, horizon);
    film.kinetics.k1 = perSecond(0);
    film.kinetics.k2 = perSecond(2.27711e-3);
    film.kinetics.reference = celsius(100);
    film.kinetics.law = {.activationEnergyJoulesPerMole = 167'400,
                         .m = 0.524,
                         .n = 1.476,
                         .maxConversionAtReference = 1,
                         .maxConversionPerKelvin = 0};
    film.initialConversion = Fraction::ofOne(seed);
    return film;
}

// The same at 100 degC from 1e-3: conversions at a time, computed apart.
TEST(CureIsothermal, AutocatalyticConversions)
{
    const std::pair<double, double> rows[] = {{300, 0.106050}, {600, 0.312891}, {1200, 0.648334}, {3600, 0.946863}};
    for (const auto& [second, conversion] : rows)
        EXPECT_NEAR(solved(autocatalytic(second)).finalMean.value(), conversion, 0.002 * conversion) << second << " s";
}

// From nothing, where the law by itself would never begin: the seed is what nothing has come to after its own time.
TEST(CureIsothermal, AutocatalyticConversionsFromNothing)
{
    const double toSeed = std::pow(seed / (1 - seed), 1 - 0.524) / ((1 - 0.524) * 2.27711e-3);
    const std::pair<double, double> rows[] = {{300, 0.086267}, {600, 0.288251}, {1200, 0.634668}, {3600, 0.945849}};
    for (const auto& [second, conversion] : rows)
        EXPECT_NEAR(solved(autocatalytic(second - toSeed)).finalMean.value(), conversion, 0.002 * conversion)
            << second << " s";
}

/// m = n = 1: da/dt = (k1 + k2 a)(1 - a), a(0) = 0.
CureCase kamal(double horizon, double gel, double sand)
{
    CureCase film = filmWithMarks(25, gel, sand, horizon);
    film.kinetics.k1 = perSecond(1e-4);
    film.kinetics.k2 = perSecond(2e-3);
    film.kinetics.law.m = film.kinetics.law.n = 1.0;
    film.kinetics.law.maxConversionAtReference = 1.0;
    film.kinetics.law.maxConversionPerKelvin = 0.0;
    return film;
}

// a = (1 - e)/(1 + (k2/k1) e), e = exp(-(k1 + k2) t), exactly; the conversions were computed apart.
TEST(CureIsothermal, KamalWithWholeExponents)
{
    const std::pair<double, double> rows[] = {
        {300, 0.040115}, {600, 0.107349}, {1200, 0.352423}, {1800, 0.670929}, {3600, 0.989174}};
    for (const auto& [second, conversion] : rows) {
        EXPECT_NEAR(solved(kamal(second, 0.1, 0.6)).finalMean.value(), conversion, 0.002 * conversion);
        // The other way about: that conversion as the mark comes at that time.
        const CureResult result = solved(kamal(4000, conversion, conversion));
        EXPECT_NEAR(secondsOf(result.gel), second, timeTolerance * second);
        EXPECT_NEAR(secondsOf(result.sand), second, timeTolerance * second);
    }
    // Fastest at ln(k2/k1)/(k1 + k2) = 1426.5 s, where a = (k2 - k1)/(2 k2) = 0.475.
    EXPECT_NEAR(secondsOf(solved(kamal(4000, 0.475, 0.475)).gel), 1426.5, timeTolerance * 1426.5);
}

/// The law written down once more.
double lawOf(const CureCase& film, double conversion)
{
    const CureKinetics& kinetics = film.kinetics;
    const CureLaw& law = kinetics.law;
    const double kelvins = inKelvin(film.temperature);
    const double reference = inKelvin(kinetics.reference);
    const double top = std::min(1.0, law.maxConversionAtReference + law.maxConversionPerKelvin * (kelvins - reference));
    if (conversion >= top)
        return 0.0;
    const double phi = std::pow(film.hardener.percent() / kinetics.referenceHardener.percent(), law.hardenerExponent);
    return phi * std::exp(-law.activationEnergyJoulesPerMole / gasConstant * (1.0 / kelvins - 1.0 / reference)) *
           (inPerSecond(kinetics.k1) + inPerSecond(kinetics.k2) * std::pow(conversion, law.m)) *
           std::pow(top - conversion, law.n);
}

namespace odeint = boost::numeric::odeint;
auto libraryStepper() { return odeint::make_controlled<odeint::runge_kutta_dopri5<double>>(1e-10, 1e-10); }

/// Time as the unknown, conversion as what runs.
double libraryTimeTo(const CureCase& film, double conversion)
{
    double second = 0.0;
    odeint::integrate_adaptive(
        libraryStepper(), [&](const double, double& slope, double a) { slope = 1.0 / lawOf(film, a); }, second, 0.0,
        conversion, 1e-6);
    return second;
}

double libraryConversionAt(const CureCase& film, double second)
{
    double conversion = 0.0;
    odeint::integrate_adaptive(
        libraryStepper(), [&](const double a, double& slope, double) { slope = lawOf(film, std::max(a, 0.0)); },
        conversion, 0.0, second, 1e-3);
    return conversion;
}

struct Film {
    double celsius;
    double hardener; ///< percent
};
class CureIsothermalVitrifying : public testing::TestWithParam<Film> {};

// Default exponents and the ceiling that rises with temperature, by Boost.Odeint (Dormand and Prince).
TEST_P(CureIsothermalVitrifying, AgreesWithTheLibrary)
{
    CureCase film = filmWithMarks(GetParam().celsius, 0.10, 0.60, 12 * 3600);
    film.hardener = Fraction::ofHundred(GetParam().hardener);
    const CureResult result = solved(film);
    const double gel = libraryTimeTo(film, 0.10);
    const double sand = libraryTimeTo(film, 0.60);
    EXPECT_NEAR(secondsOf(result.gel), gel, timeTolerance * gel);
    EXPECT_NEAR(secondsOf(result.sand), sand, timeTolerance * sand);
    const double last = libraryConversionAt(film, 12 * 3600);
    EXPECT_NEAR(result.finalMean.value(), last, 0.001);
    // It stops at its ceiling: glass.
    const double ceiling = 0.85 + 0.003 * (GetParam().celsius - 25.0);
    EXPECT_LE(result.finalMean.value(), ceiling + 1e-4);
    EXPECT_GE(result.finalMean.value(), ceiling - 0.05);
    EXPECT_NEAR(inCelsius(result.peak), GetParam().celsius, 0.01) << "the film did not stay at the air's temperature";
}

INSTANTIATE_TEST_SUITE_P(Library, CureIsothermalVitrifying,
                         testing::Values(Film{5, 2}, Film{10, 1}, Film{18, 2.5}, Film{25, 2}, Film{25, 4},
                                         Film{32, 1.5}, Film{40, 3}));

} // namespace
} // namespace strandbench::test
