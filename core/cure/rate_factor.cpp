// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/rate_factor.h"

#include "cure/kinetics.h"

#include <cmath>

namespace strandbench {

double rateFactor(const ProductSheet& sheet, Temperature temperature, Fraction hardener)
{
    const double overR = sheet.cure.activationEnergyJoulesPerMole / cure::gasConstant;
    const double byTemperature = std::exp(-overR * (1.0 / inKelvin(temperature) - 1.0 / inKelvin(sheet.reference)));
    const double byHardener = std::pow(hardener.value() / sheet.hardenerNominal.value(), sheet.cure.hardenerExponent);
    return byTemperature * byHardener;
}

} // namespace strandbench
