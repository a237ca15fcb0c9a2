// SPDX-License-Identifier: GPL-3.0-or-later
#include "spectral_elements.h"

#include <boost/math/special_functions/legendre.hpp>
#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>

namespace strandbench::test {
namespace {

/// The zeros of P'_p between -1 and 1, bracketed on a fine raster.
std::vector<double> zerosOfSlope(int degree)
{
    const auto slope = [degree](double x) { return boost::math::legendre_p_prime(degree, x); };
    std::vector<double> zeros;
    constexpr int raster = 997; // odd, so that a zero at 0 lies within a slot
    for (int i = 0; i < raster; ++i) {
        const double left = -0.9999 + 1.9998 * i / raster;
        const double right = -0.9999 + 1.9998 * (i + 1) / raster;
        if (slope(left) * slope(right) >= 0.0)
            continue;
        std::uintmax_t most = 100;
        const auto [below, above] =
            boost::math::tools::toms748_solve(slope, left, right, boost::math::tools::eps_tolerance<double>(50), most);
        zeros.push_back((below + above) / 2.0);
    }
    return zeros;
}

} // namespace

Lobatto::Lobatto(int degree) : points(zerosOfSlope(degree))
{
    points.insert(points.begin(), -1.0);
    points.push_back(1.0);
    for (const double point : points)
        weights.push_back(2.0 / (degree * (degree + 1) * std::pow(boost::math::legendre_p(degree, point), 2)));
    const std::size_t count = points.size();
    slope.assign(count, std::vector<double>(count, 0.0));
    for (std::size_t i = 0; i < count; ++i)
        for (std::size_t j = 0; j < count; ++j) {
            if (i == j)
                continue;
            slope[i][j] = boost::math::legendre_p(degree, points[i]) /
                          (boost::math::legendre_p(degree, points[j]) * (points[i] - points[j]));
            slope[i][i] -= slope[i][j];
        }
}

std::vector<double> Lobatto::weightsAt(double place) const
{
    std::vector<double> result(points.size(), 1.0);
    for (std::size_t node = 0; node < points.size(); ++node)
        for (std::size_t other = 0; other < points.size(); ++other)
            if (other != node)
                result[node] *= (place - points[other]) / (points[node] - points[other]);
    return result;
}

} // namespace strandbench::test
