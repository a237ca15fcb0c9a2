// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/sheet_book.h"

#include <algorithm>

namespace strandbench {

const SheetBook::Product* SheetBook::find(const QString& sheetId) const
{
    const auto found = std::ranges::find(m_products, sheetId, &Product::id);
    return found == m_products.end() ? nullptr : &*found;
}

void SheetBook::add(const Event& event, const ProductSheet* kept)
{
    if (const auto* aside = std::get_if<SheetLaidAside>(&event.payload)) {
        const auto found = std::ranges::find(m_products, aside->sheetId, &Product::id);
        if (found != m_products.end())
            found->inUse = false;
    }
    if (!kept || !std::holds_alternative<SheetKept>(event.payload))
        return;
    Product product{kept->id, {}, true};
    if (const auto found = std::ranges::find(m_products, kept->id, &Product::id); found != m_products.end()) {
        product.versions = std::move(found->versions);
        m_products.erase(found);
    }
    product.versions.push_back({*kept, event.at, event.person});
    m_products.push_back(std::move(product));
}

void SheetBook::alsoKnown(const ProductSheet& sheet)
{
    const auto same = [&](const ProductSheet& each) { return versionOf(each) == versionOf(sheet); };
    if (std::ranges::none_of(m_alsoKnown, same))
        m_alsoKnown.push_back(sheet);
}

std::vector<QString> SheetBook::products() const
{
    std::vector<QString> ids;
    for (const bool inUse : {true, false})
        for (auto each = m_products.rbegin(); each != m_products.rend(); ++each)
            if (each->inUse == inUse)
                ids.push_back(each->id);
    return ids;
}

bool SheetBook::inUse(const QString& sheetId) const
{
    const Product* product = find(sheetId);
    return product && product->inUse;
}

std::vector<KeptSheet> SheetBook::versions(const QString& sheetId) const
{
    const Product* product = find(sheetId);
    return product ? std::vector<KeptSheet>(product->versions.rbegin(), product->versions.rend())
                   : std::vector<KeptSheet>();
}

Catalogue SheetBook::catalogue(const Catalogue& carried) const
{
    std::vector<ProductSheet> sheets;
    std::vector<ProductSheet> others = carried.others();
    others.insert(others.end(), m_alsoKnown.begin(), m_alsoKnown.end());
    for (auto each = m_products.rbegin(); each != m_products.rend(); ++each) {
        const auto newest = each->versions.end() - 1;
        for (auto version = each->versions.begin(); version != newest; ++version)
            others.push_back(version->sheet);
        (each->inUse ? sheets : others).push_back(newest->sheet);
    }
    sheets.insert(sheets.end(), carried.sheets().begin(), carried.sheets().end());
    std::stable_partition(sheets.begin(), sheets.end(), [](const ProductSheet& each) { return !each.demo; });
    return Catalogue(std::move(sheets), std::move(others));
}

} // namespace strandbench
