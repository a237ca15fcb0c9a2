// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/even_out.h"

#include <boost/math/constants/constants.hpp>
#include <boost/math/special_functions/bessel.hpp>
#include <boost/math/tools/roots.hpp>

#include <cmath>
#include <cstdint>

namespace strandbench {
namespace {

/// The first zero of J0, beyond which no first root lies.
constexpr double firstZeroOfJ0 = 2.404825557695773;

} // namespace

CylinderTerm firstTermOfCylinder(double biot)
{
    using boost::math::cyl_bessel_j;
    const auto balance = [biot](double zeta) { return zeta * cyl_bessel_j(1, zeta) - biot * cyl_bessel_j(0, zeta); };
    std::uintmax_t steps = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(balance, 0.0, firstZeroOfJ0,
                                                               boost::math::tools::eps_tolerance<double>(48), steps);
    const double zeta = (low + high) / 2;
    const double j0 = cyl_bessel_j(0, zeta);
    const double j1 = cyl_bessel_j(1, zeta);
    return {zeta, 2 / zeta * j1 / (j0 * j0 + j1 * j1)};
}

Duration evenAfter(const Package& package, Temperature from, Temperature air, TemperatureStep within,
                   HeatTransfer faces)
{
    const double volume = (package.mass / package.density).value();
    const double radius = std::cbrt(volume / (2 * boost::math::constants::pi<double>()));
    const CylinderTerm term = firstTermOfCylinder(faces.value() * radius / package.conductivity.value());
    const double apart = std::abs(inKelvin(from) - inKelvin(air)) / inKelvinStep(within);
    if (apart <= 1)
        return seconds(0);
    const double diffusivity = package.conductivity.value() / (package.density.value() * package.specificHeat.value());
    return seconds(radius * radius / diffusivity * std::log(term.c1 * apart) / (term.zeta * term.zeta));
}

} // namespace strandbench
