// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/sheet_outlook.h"

#include "cure/greatest_lift.h"
#include "cure/test_piece.h"

#include <array>

namespace strandbench {
namespace {

/// The days that a workshop knows, cold to hot.
const std::array<Temperature, 4> days{celsius(10), celsius(18), celsius(25), celsius(32)};
/// No sheet may state a greater lift (exchange/sheets.cpp).
const Length most = millimetres(20);
const Duration aDay = minutes(24.0 * 60.0);

CureCase at(CureCase piece, Temperature temperature)
{
    piece.temperature = temperature;
    piece.air = {{seconds(0), temperature}};
    for (StackLayer& each : piece.stack)
        each.temperature = temperature;
    piece.horizon = aDay;
    return piece;
}

SheetOutlook::At timesOf(const ProductSheet& sheet, const CureKinetics& kinetics, Temperature temperature,
                         const CureEngine& engine)
{
    SheetOutlook::At times{temperature, {}, {}, {}};
    if (const auto gel = engine.solveBoard(at(gelTestPiece(sheet, kinetics), temperature)))
        times.gel = *gel;
    if (const auto layer = engine.solve(at(sandTestPiece(sheet, kinetics), temperature), CureUntil::Marks))
        times.sand = layer->sand;
    return times;
}

} // namespace

CureAnswer<SheetOutlook> outlookOf(const ProductSheet& sheet, const CureEngine& engine)
{
    const CureAnswer<CureKinetics> kinetics = engine.kineticsOf(sheet);
    if (!kinetics)
        return tl::unexpected(kinetics.error());
    SheetOutlook outlook{{}, most};
    for (const Temperature& day : days) {
        SheetOutlook::At found = timesOf(sheet, *kinetics, day, engine);
        const auto lift = [&](Length thickness) {
            CureCase piece = at(sandTestPiece(sheet, *kinetics), day);
            piece.thickness = thickness;
            return piece;
        };
        found.greatest = greatestLift(lift, sheet.peakLimit, most);
        outlook.at.push_back(found);
    }
    return outlook;
}

CureAnswer<SheetOutlook::At> timesAt(const ProductSheet& sheet, Temperature temperature, const CureEngine& engine)
{
    return engine.kineticsOf(sheet).map(
        [&](const CureKinetics& kinetics) { return timesOf(sheet, kinetics, temperature, engine); });
}

} // namespace strandbench
