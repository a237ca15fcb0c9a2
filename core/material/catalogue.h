// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets that a bench knows, in every version that anything still goes by.
#pragma once

#include "material/sheet.h"
#include "quantity/fault.h"

#include <optional>
#include <vector>

namespace strandbench {

class Catalogue {
public:
    Catalogue() = default;
    /// sheets: those in use, one a product, in the order in which a product of their class is chosen. others: further
    /// versions of these and of products laid aside, the older before the newer.
    explicit Catalogue(std::vector<ProductSheet> sheets, std::vector<ProductSheet> others = {})
        : m_sheets(std::move(sheets)), m_others(std::move(others))
    {}

    /// What is planned with now.
    [[nodiscard]] const std::vector<ProductSheet>& sheets() const { return m_sheets; }
    [[nodiscard]] const std::vector<ProductSheet>& others() const { return m_others; }
    /// The sheet of this id: the one in use, else the newest of one laid aside; null when there is none.
    [[nodiscard]] const ProductSheet* byId(const QString& id) const;
    /// That very version; where it is not known, byId(). An empty hash stands for a plan that names none.
    [[nodiscard]] const ProductSheet* version(const QString& id, const QByteArray& hash) const;
    /// The first sheet of this class; null when there is none.
    [[nodiscard]] const ProductSheet* byClass(FillerClass filler) const;
    /// The same sheets as a repair needs them that goes on with what it was planned with: these versions stand first,
    /// each in the place of its product's newest.
    [[nodiscard]] Catalogue goingOnWith(const std::vector<SheetVersion>& planned) const;

    /// What the tube lays, for every sheet; empty: what each has of its own in `own`, of which this is a copy. Pointers
    /// to sheets go on to hold.
    void setBead(const std::optional<LinearDensity>& mass, const Catalogue& own);

private:
    std::vector<ProductSheet> m_sheets;
    std::vector<ProductSheet> m_others;
};

} // namespace strandbench
