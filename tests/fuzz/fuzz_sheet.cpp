// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet: what is accepted is within what sheets.cpp allows, and reads the same in another layout of its JSON.
#include "exchange/sheets.h"
#include "fuzz.h"
#include "substrate/decision.h"

#include <QJsonDocument>

namespace strandbench::fuzz {
namespace {

void checkTime(const StatedTime& time, double lowest, double highest)
{
    requireWithin(inMinutes(time.early), lowest, highest, "early");
    requireWithin(inMinutes(time.late), lowest, highest, "late");
    require(time.early <= time.nominal && time.nominal <= time.late, "early, nominal, late");
}

void checkShares(const ProductSheet& sheet)
{
    requireWithin(sheet.hardenerLowCaution.percent(), 0.1, 10, "hardener");
    requireWithin(sheet.hardenerHighCaution.percent(), 0.1, 10, "hardener");
    require(sheet.hardenerLowCaution <= sheet.hardenerLow && sheet.hardenerLow <= sheet.hardenerNominal,
            "hardener, up to nominal");
    require(sheet.hardenerNominal <= sheet.hardenerHigh && sheet.hardenerHigh <= sheet.hardenerHighCaution,
            "hardener, from nominal");
    requireWithin(sheet.peroxideInHardener.percent(), 1, 100, "peroxide");
    requireWithin(sheet.shrinkage.percent(), 0, 20, "shrinkage");
    requireWithin(sheet.styrene.percent(), 0, 60, "styrene");
}

void checkHeat(const ProductSheet& sheet)
{
    requireWithin(sheet.density.value(), 300, 4000, "density");
    requireWithin(sheet.heat.value(), 0, 1e6, "heat");
    requireWithin(sheet.specificHeat.value(), 500, 5000, "specific heat");
    requireWithin(sheet.heat.value() / sheet.specificHeat.value(), 0, 400, "rise");
    requireWithin(sheet.conductivity.value(), 0.02, 5, "conductivity");
    requireWithin(inCelsius(sheet.peakLimit), 40, 200, "peak limit");
    require(sheet.panelLowCaution <= sheet.panelLow && sheet.panelLow <= sheet.panelHigh, "panel limits");
    require(sheet.storeLow <= sheet.storeHigh, "store limits");
}

void check(const ProductSheet& sheet)
{
    require(!sheet.id.isEmpty() && sheet.id.size() <= 40, "id");
    require(!sheet.name.isEmpty() && sheet.name.size() <= 60, "name");
    require(isFibreReinforced(sheet.fillerClass) != sheet.finishInAll.has_value(), "a finishing filler has its limit");
    checkTime(sheet.working, 0.5, 120);
    checkTime(sheet.sanding, 1, 480);
    require(sheet.working.nominal < sheet.sanding.nominal, "it gels before it sands");
    checkShares(sheet);
    checkHeat(sheet);
    require(sheet.cure.m == 0 || (sheet.cure.m >= 0.05 && sheet.cure.m <= 5), "m");
    requireWithin(sheet.cure.n, 0.5, 5, "n");
    for (const auto& [column, cell] : sheet.cells)
        require(DecisionTable::columns().contains(column) && !cell.reason.isEmpty(), "a cell with its reason");
}

} // namespace
} // namespace strandbench::fuzz

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace strandbench;
    const QByteArray json = fuzz::bytesOf(data, size);
    const Checked<ProductSheet> sheet = readSheet(json);
    if (!sheet) {
        fuzz::requireTold(sheet.error());
        return 0;
    }
    fuzz::require(sheet->source == json && sheet->hash.size() == 32, "it keeps its bytes and their hash");
    fuzz::check(*sheet);
    const Checked<ProductSheet> again = readSheet(QJsonDocument::fromJson(json).toJson());
    fuzz::require(again.has_value() && again->id == sheet->id && again->cells == sheet->cells &&
                      again->cure == sheet->cure && again->density == sheet->density &&
                      again->working == sheet->working,
                  "it reads the same in another layout");
    return 0;
}
