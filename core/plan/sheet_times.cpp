// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cure_times.h"

#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// CODATA 2018, exact since the SI of 2019, J/(mol K).
constexpr double gasConstant = 8.314462618;

} // namespace

double rateFactor(const ProductSheet& sheet, Temperature temperature, Fraction hardener)
{
    const double overR = sheet.cure.activationEnergyJoulesPerMole / gasConstant;
    const double byTemperature = std::exp(-overR * (1.0 / inKelvin(temperature) - 1.0 / inKelvin(sheet.reference)));
    const double byHardener = std::pow(hardener.value() / sheet.hardenerNominal.value(), sheet.cure.hardenerExponent);
    return byTemperature * byHardener;
}

BatchTimes SheetTimes::times(const CureQuestion& question) const
{
    const ProductSheet& sheet = question.sheet;
    const double onBoard = rateFactor(sheet, question.air, question.hardener);
    const double onPanel = rateFactor(sheet, question.panel, question.hardener);
    return {sheet.working.nominal / onBoard, sheet.working.nominal / onPanel, sheet.sanding.nominal / onPanel,
            sheet.easySanding / onPanel};
}

QString SheetTimes::name() const { return u"sheet-scaled-1"_s; }

} // namespace strandbench
