// SPDX-License-Identifier: GPL-3.0-or-later
// The grid through the thickness: nodes at every face, control volumes halfway between. Inside cure only.
#pragma once

#include "cure/cure_case.h"

#include <vector>

namespace strandbench::cure {

/// Per square metre of panel, in SI units, from the back face to the front. The fresh layer's nodes are the
/// last ones; the first of them is shared with the stack, the last is the exposed face itself.
struct Grid {
    std::vector<double> capacity;    ///< J/(m2 K) a node
    std::vector<double> conductance; ///< W/(m2 K) from node i to i + 1
    std::vector<double> start;       ///< K a node: at a contact the mean by capacity, so that no heat is made
    std::size_t fresh = 0;           ///< index of the first node of the fresh layer
    std::vector<double> place;       ///< m from the back of the fresh layer, a fresh node each
    std::vector<double> reacting;    ///< J/m2 a fresh node: its heat of reaction in all
    std::vector<double> share;       ///< of the layer's volume a fresh node; they add up to 1

    [[nodiscard]] std::size_t nodes() const { return capacity.size(); }
    [[nodiscard]] std::size_t freshNodes() const { return place.size(); }
};

/// Cells of the fresh layer that this case needs: finer where the reaction's front is thin against the layer.
[[nodiscard]] int cellsFor(const CureCase& cureCase);

/// The grid with so many cells in the fresh layer, finer towards both faces; the stack's cells grow from the
/// contact, and a layer that conducts far better than the first cell of filler is one cell.
[[nodiscard]] Grid makeGrid(const CureCase& cureCase, int freshCells);

} // namespace strandbench::cure
