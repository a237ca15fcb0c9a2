// SPDX-License-Identifier: GPL-3.0-or-later
#include "material/catalogue.h"

#include <algorithm>

namespace strandbench {
namespace {

template <class Wanted> const ProductSheet* firstWhere(const std::vector<ProductSheet>& sheets, Wanted wanted)
{
    const auto found = std::find_if(sheets.begin(), sheets.end(), wanted);
    return found == sheets.end() ? nullptr : &*found;
}

} // namespace

const ProductSheet* Catalogue::byId(const QString& id) const
{
    return firstWhere(m_sheets, [&id](const ProductSheet& each) { return each.id == id; });
}

const ProductSheet* Catalogue::byClass(FillerClass filler) const
{
    return firstWhere(m_sheets, [filler](const ProductSheet& each) { return each.fillerClass == filler; });
}

void Catalogue::setBead(const std::optional<LinearDensity>& mass, const Catalogue& own)
{
    for (ProductSheet& each : m_sheets) {
        const ProductSheet* sheet = own.byId(each.id);
        each.beadMass = mass ? *mass : sheet ? sheet->beadMass : each.beadMass;
    }
}

} // namespace strandbench
