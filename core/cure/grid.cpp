// SPDX-License-Identifier: GPL-3.0-or-later
#include "cure/grid.h"

#include "cure/kinetics.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace strandbench::cure {
namespace {

/// How much the spacing leans to the faces: 0 is even, 1 the Chebyshev points.
constexpr double crowding = 0.8;
/// Each stack cell may be so much wider than its neighbour nearer the contact. At 1.4 a thick, cold laminate under a
/// warm layer was half a percent off in the sanding time.
constexpr double growth = 1.25;
/// A stack layer that conducts badly is split into at least so many.
constexpr int leastStackCells = 4;

/// Cells of the fresh layer for each thickness of a reaction front, sqrt(diffusivity / highest rate) when the
/// layer goes through adiabatically. Found by trial over random bench cases against 288 cells: at 1.25 a front that
/// runs towards a cold panel pulsed where it should not and gave a peak 6 K too high; from 1.6 on the worst stays
/// within 0.4 of what is allowed.
constexpr double cellsAFront = 1.8;
constexpr int leastCells = 16;
constexpr int mostCells = 192;
/// Kelvins between two layers at the start from which on their contact is resolved.
constexpr double leastContactStep = 0.25;

/// One cell between two nodes, from the back to the front.
struct Cell {
    double width;
    double density;
    double specificHeat;
    double conductivity;
    double temperature;
    bool reacts;
};

double diffusivity(const ThermalMaterial& material)
{
    return material.conductivity.value() / (material.density.value() * material.specificHeat.value());
}

std::vector<double> freshPlaces(double thickness, int cells)
{
    std::vector<double> places;
    for (int i = 0; i <= cells; ++i) {
        const double even = static_cast<double>(i) / cells;
        const double crowded = (1.0 - std::cos(std::numbers::pi * even)) / 2.0;
        places.push_back(thickness * ((1.0 - crowding) * even + crowding * crowded));
    }
    places.back() = thickness;
    return places;
}

/// Splits the stack from the contact backwards. `first` is the fresh layer's first cell.
std::vector<Cell> stackCells(const CureCase& cureCase, double first)
{
    std::vector<Cell> cells; // front to back
    const double fillerSpread = std::sqrt(diffusivity(cureCase.filler));
    const double resistance = first / cureCase.filler.conductivity.value();
    double reach = first / fillerSpread; // a cell's width over the root of its diffusivity
    double neighbour = inKelvin(cureCase.temperature);
    for (auto layer = cureCase.stack.rbegin(); layer != cureCase.stack.rend(); ++layer) {
        const double thickness = layer->thickness.value();
        const double spread = std::sqrt(diffusivity(layer->material));
        std::vector<double> widths;
        const double kelvin = inKelvin(layer->temperature);
        // Where layers meet at unlike temperatures, cells alike in width over the root of their diffusivity start
        // the shared node at the contact temperature of two half-spaces (Incropera, eq. 5.63).
        const bool alike = std::abs(kelvin - neighbour) < leastContactStep;
        neighbour = kelvin;
        if (alike && thickness / layer->material.conductivity.value() < resistance) {
            widths.push_back(thickness);
        } else {
            const double widest = thickness / leastStackCells;
            double left = thickness;
            while (left > 0.0) {
                const double width = std::min(reach * spread, widest);
                const bool last = left < 1.5 * width;
                widths.push_back(last ? left : width);
                left = last ? 0.0 : left - width;
                reach *= growth;
            }
            reach = std::max(first / fillerSpread, widths.back() / spread);
        }
        for (const double width : widths)
            cells.push_back({width, layer->material.density.value(), layer->material.specificHeat.value(),
                             layer->material.conductivity.value(), kelvin, false});
    }
    std::reverse(cells.begin(), cells.end());
    return cells;
}

} // namespace

int cellsFor(const CureCase& cureCase)
{
    double warmest = inKelvin(cureCase.temperature);
    for (const StackLayer& layer : cureCase.stack)
        warmest = std::max(warmest, inKelvin(layer.temperature));
    for (const AirPoint& point : cureCase.air)
        warmest = std::max(warmest, inKelvin(point.temperature));
    const double adiabatic = warmest + cureCase.heat.value() / cureCase.filler.specificHeat.value();
    const double rate = Kinetics(cureCase.kinetics, cureCase.hardener).highestRate(adiabatic);
    const double front = std::sqrt(diffusivity(cureCase.filler) / rate);
    const double wanted = cellsAFront * cureCase.thickness.value() / front;
    return wanted < leastCells ? leastCells : wanted > mostCells ? mostCells : static_cast<int>(std::ceil(wanted));
}

Grid makeGrid(const CureCase& cureCase, int freshCells)
{
    Grid grid;
    grid.place = freshPlaces(cureCase.thickness.value(), freshCells);
    std::vector<Cell> cells = stackCells(cureCase, grid.place[1]);
    grid.fresh = cells.size();
    const double density = cureCase.filler.density.value();
    for (std::size_t i = 0; i + 1 < grid.place.size(); ++i)
        cells.push_back({grid.place[i + 1] - grid.place[i], density, cureCase.filler.specificHeat.value(),
                         cureCase.filler.conductivity.value(), inKelvin(cureCase.temperature), true});
    grid.capacity.assign(cells.size() + 1, 0.0);
    grid.start.assign(cells.size() + 1, 0.0);
    grid.reacting.assign(grid.place.size(), 0.0);
    grid.share.assign(grid.place.size(), 0.0);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const Cell& cell = cells[i];
        grid.conductance.push_back(cell.conductivity / cell.width);
        for (const std::size_t node : {i, i + 1}) {
            const double half = cell.density * cell.specificHeat * cell.width / 2.0;
            grid.capacity[node] += half;
            grid.start[node] += half * cell.temperature;
            if (!cell.reacts)
                continue;
            grid.reacting[node - grid.fresh] += density * cell.width / 2.0 * cureCase.heat.value();
            grid.share[node - grid.fresh] += cell.width / 2.0 / cureCase.thickness.value();
        }
    }
    for (std::size_t i = 0; i < grid.nodes(); ++i)
        grid.start[i] /= grid.capacity[i];
    return grid;
}

} // namespace strandbench::cure
