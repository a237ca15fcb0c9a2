// SPDX-License-Identifier: GPL-3.0-or-later
#include "mix/bead_calibration.h"

#include <boost/math/statistics/univariate_statistics.hpp>

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t atMost = 20;

/// Adds a fault when a number lies outside; whether it lies within.
bool within(double value, double lowest, double highest, const QString& field, const QString& unit, Faults& faults)
{
    if (value >= lowest && value <= highest) // not for a value that is no number
        return true;
    faults.push_back({field,
                      QString::number(value),
                      FaultKind::OutOfRange,
                      {QString::number(lowest), QString::number(highest), unit}});
    return false;
}

void check(const LaidBead& bead, const QString& at, Faults& faults)
{
    const bool length = within(inMillimetres(bead.length), 20, 1000, at + u".length_mm"_s, u"mm"_s, faults);
    const bool mass = within(inGrams(bead.mass), 0.05, 100, at + u".mass_g"_s, u"g"_s, faults);
    if (length && mass)
        (void)within(inMilligramsPerMillimetre(bead.mass / bead.length), 1, 500, at + u".mg_per_mm"_s, u"mg/mm"_s,
                     faults);
}

} // namespace

Checked<BeadCalibration> calibrateBead(const std::vector<LaidBead>& beads)
{
    Faults faults;
    if (beads.size() < BeadCalibration::atLeast || beads.size() > atMost)
        faults.push_back({u"beads"_s,
                          QString::number(beads.size()),
                          FaultKind::OutOfRange,
                          {QString::number(BeadCalibration::atLeast), QString::number(atMost), {}}});
    std::vector<double> perLength;
    for (std::size_t i = 0; i < beads.size(); ++i) {
        check(beads[i], u"beads[%1]"_s.arg(i), faults);
        perLength.push_back((beads[i].mass / beads[i].length).value());
    }
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    const double mean = boost::math::statistics::mean(perLength);
    const double deviation = std::sqrt(boost::math::statistics::sample_variance(perLength));
    const BeadCalibration found{mean * si::kilogram / si::metre, Fraction::ofOne(deviation / mean)};
    if (!within(found.spread.percent(), 0, widestBeadSpread().percent(), u"spread_percent"_s, u"%"_s, faults))
        return tl::unexpected(std::move(faults));
    return found;
}

} // namespace strandbench
