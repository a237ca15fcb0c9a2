// SPDX-License-Identifier: GPL-3.0-or-later
// The product sheets of the shop's own, in every version that was kept, and the catalogue that they make with the demo
// sheets. Made from events alone; what bytes an event names, the caller has read.
#pragma once

#include "material/catalogue.h"
#include "repair/event.h"

#include <vector>

namespace strandbench {

/// One version of a sheet, as it was kept.
struct KeptSheet {
    ProductSheet sheet;
    Instant at;
    QString person; ///< empty: not told
};

class SheetBook {
public:
    /// Takes in one more event of the bench's own; most are none of its business. A sheet that is kept comes with its
    /// event.
    void add(const Event& event, const ProductSheet* kept = nullptr);
    /// A version that is not the shop's to plan with, but that something named: an earlier demo sheet, another bench's.
    void alsoKnown(const ProductSheet& sheet);

    /// The shop's products, those in use first, each group by the newest version kept.
    [[nodiscard]] std::vector<QString> products() const;
    /// False once it was laid aside, until a version is kept again.
    [[nodiscard]] bool inUse(const QString& sheetId) const;
    /// The versions of a product, the newest first; empty of one that the shop has not kept.
    [[nodiscard]] std::vector<KeptSheet> versions(const QString& sheetId) const;
    /// The shop's sheets in use, then those of `carried`; demo sheets after what is none. Every other version besides.
    [[nodiscard]] Catalogue catalogue(const Catalogue& carried) const;

private:
    struct Product {
        QString id;
        std::vector<KeptSheet> versions; ///< oldest first
        bool inUse = true;
    };
    [[nodiscard]] const Product* find(const QString& sheetId) const;

    std::vector<Product> m_products; ///< the one kept last is last
    std::vector<ProductSheet> m_alsoKnown;
};

} // namespace strandbench
