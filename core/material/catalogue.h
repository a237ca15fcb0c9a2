// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets that a bench knows.
#pragma once

#include "material/sheet.h"
#include "quantity/fault.h"

#include <optional>
#include <vector>

namespace strandbench {

class Catalogue {
public:
    Catalogue() = default;
    explicit Catalogue(std::vector<ProductSheet> sheets) : m_sheets(std::move(sheets)) {}

    [[nodiscard]] const std::vector<ProductSheet>& sheets() const { return m_sheets; }
    /// The sheet of this id; null when there is none.
    [[nodiscard]] const ProductSheet* byId(const QString& id) const;
    /// The first sheet of this class; null when there is none.
    [[nodiscard]] const ProductSheet* byClass(FillerClass filler) const;

    /// What the tube lays, for every sheet; empty: what each has of its own in `own`, of which this is a copy. Pointers
    /// to sheets go on to hold.
    void setBead(const std::optional<LinearDensity>& mass, const Catalogue& own);

private:
    std::vector<ProductSheet> m_sheets;
};

} // namespace strandbench
