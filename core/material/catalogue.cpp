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

template <class Wanted> const ProductSheet* lastWhere(const std::vector<ProductSheet>& sheets, Wanted wanted)
{
    const auto found = std::find_if(sheets.rbegin(), sheets.rend(), wanted);
    return found == sheets.rend() ? nullptr : &*found;
}

} // namespace

const ProductSheet* Catalogue::byId(const QString& id) const
{
    const auto named = [&id](const ProductSheet& each) { return each.id == id; };
    const ProductSheet* inUse = firstWhere(m_sheets, named);
    return inUse ? inUse : lastWhere(m_others, named);
}

const ProductSheet* Catalogue::version(const QString& id, const QByteArray& hash) const
{
    const auto meant = [&](const ProductSheet& each) { return each.id == id && each.hash == hash; };
    if (const ProductSheet* inUse = firstWhere(m_sheets, meant))
        return inUse;
    const ProductSheet* other = firstWhere(m_others, meant);
    return other ? other : byId(id);
}

const ProductSheet* Catalogue::byClass(FillerClass filler) const
{
    return firstWhere(m_sheets, [filler](const ProductSheet& each) { return each.fillerClass == filler; });
}

void Catalogue::setBead(const std::optional<LinearDensity>& mass, const Catalogue& own)
{
    for (std::vector<ProductSheet>* sheets : {&m_sheets, &m_others})
        for (ProductSheet& each : *sheets) {
            const ProductSheet* sheet = own.version(each.id, each.hash);
            each.beadMass = mass ? *mass : sheet ? sheet->beadMass : each.beadMass;
        }
}

Catalogue Catalogue::goingOnWith(const std::vector<SheetVersion>& planned) const
{
    std::vector<ProductSheet> first;
    const auto taken = [&](const QString& id) {
        return std::ranges::any_of(first, [&](const ProductSheet& each) { return each.id == id; });
    };
    for (const SheetVersion& each : planned)
        if (const ProductSheet* sheet = version(each.id, each.hash); sheet && !taken(each.id))
            first.push_back(*sheet);
    std::vector<ProductSheet> rest;
    std::vector<ProductSheet> others = m_others;
    for (const ProductSheet& each : m_sheets)
        (taken(each.id) ? others : rest).push_back(each);
    first.insert(first.end(), rest.begin(), rest.end());
    return Catalogue(std::move(first), std::move(others));
}

} // namespace strandbench
