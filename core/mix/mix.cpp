// SPDX-License-Identifier: GPL-3.0-or-later
#include "mix/mix.h"

#include <array>
#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The trade's points, inches: puddle across and bead (common practice, no source).
struct TradePoint {
    double puddle;
    double bead;
};
constexpr std::array<TradePoint, 3> tradePoints{{{2, 1}, {4, 4}, {8, 12}}};

/// Log-log interpolation through the trade's points, the end slopes carried on. `from` and `to` pick the
/// way: puddle to bead or back. At a point the answer is the point, to the last bit.
double through(double value, double TradePoint::*from, double TradePoint::*to)
{
    for (const TradePoint& each : tradePoints)
        if (value == each.*from)
            return each.*to;
    const std::size_t segment = value < tradePoints[1].*from ? 0 : 1;
    const TradePoint& low = tradePoints[segment];
    const TradePoint& high = tradePoints[segment + 1];
    const double slope = std::log(high.*to / low.*to) / std::log(high.*from / low.*from);
    return low.*to * std::pow(value / low.*from, slope);
}

/// What is exactly at a bound is within it; this share absorbs what converting a unit rounds away.
constexpr double hair = 1e-9;

Mix mixFor(Length puddle, Length bead, const ProductSheet& sheet)
{
    Mix mix;
    mix.puddle = puddle;
    mix.bead = bead;
    mix.hardener = bead * sheet.beadMass;
    mix.hardenerShare = sheet.hardenerNominal;
    mix.filler = mix.hardener / sheet.hardenerNominal.value();
    const Area base = puddle * puddle * (std::numbers::pi / 4.0);
    mix.puddleHeight = mix.filler / sheet.density / base;
    return mix;
}

} // namespace

Length beadForPuddle(Length puddle)
{
    return inches(through(inInches(puddle), &TradePoint::puddle, &TradePoint::bead));
}

Length puddleForBead(Length bead) { return inches(through(inInches(bead), &TradePoint::bead, &TradePoint::puddle)); }

Mix mixForPuddle(Length puddle, const ProductSheet& sheet) { return mixFor(puddle, beadForPuddle(puddle), sheet); }

Mix mixForFiller(Mass filler, const ProductSheet& sheet)
{
    const Length bead = filler * sheet.hardenerNominal.value() / sheet.beadMass;
    Mix mix = mixFor(puddleForBead(bead), bead, sheet);
    mix.filler = filler; // as it was asked for, to the last bit
    return mix;
}

Mix laidAgain(Mix mix, const ProductSheet& sheet)
{
    mix.bead = mix.hardener / sheet.beadMass;
    mix.puddle = puddleForBead(mix.bead);
    mix.puddleHeight = mix.filler / sheet.density / (mix.puddle * mix.puddle * (std::numbers::pi / 4.0));
    return mix;
}

Mass smallestBeadMix(const ProductSheet& sheet) { return mixForPuddle(inches(2), sheet).filler; }

Reasons mixAdvice(const Mix& mix, const ProductSheet& sheet, Length board)
{
    Reasons advice;
    const Mass smallest = smallestBeadMix(sheet);
    if (mix.puddle < inches(1) * (1.0 - hair))
        advice.push_back({u"puddle_small"_s, {mix.puddle, inches(1)}});
    if (mix.filler < smallest * (1.0 - hair))
        advice.push_back({u"weigh_small"_s, {mix.filler, smallest}});
    if (mix.puddle > inches(10) * (1.0 + hair))
        advice.push_back({u"split_large"_s, {mix.puddle, inches(10)}});
    if (mix.puddle > board * (1.0 + hair))
        advice.push_back({u"wider_than_board"_s, {mix.puddle, board}});
    return advice;
}

HardenerVerdict judgeHardener(Fraction share, const ProductSheet& sheet)
{
    const double value = share.value();
    if (value >= sheet.hardenerLow.value() - hair && value <= sheet.hardenerHigh.value() + hair)
        return HardenerVerdict::Within;
    if (value >= sheet.hardenerLowCaution.value() - hair && value <= sheet.hardenerHighCaution.value() + hair)
        return HardenerVerdict::Caution;
    return HardenerVerdict::Refused;
}

} // namespace strandbench
