// SPDX-License-Identifier: GPL-3.0-or-later
// A page of texts: cards side by side, or below each other on an upright glass, each a column that shrinks in step.
#pragma once

#include "screens/frame/screen.h"
#include "touch/fit_column.h"

namespace strandbench {

struct PageColumn {
    static constexpr double rowGapMm = 1;

    const Theme& theme;
    Card* card;
    FitColumn* lines;

    PageColumn(const Theme& of, const QString& name, QWidget* parent);
    /// A text of the card that stands in no row yet.
    [[nodiscard]] FitLabel* text(const QString& name, TextRole role, const QString& said, bool bold = false) const;
    FitLabel* add(const QString& name, TextRole role, const QString& said, bool bold = false) const;
    /// A bold line with a small one below it, and a sign beside them. The small one may be empty.
    void addPair(const QString& name, const QString& lead, const QString& rest, QWidget* sign = nullptr) const;
    /// A sign as large as a row of text has room for.
    [[nodiscard]] QWidget* sign(Pictogram of, const QString& spoken) const;
    /// A drawing of that size, as paintDrawing names it.
    [[nodiscard]] QWidget* drawing(const QString& name, const QString& spoken) const;
    /// The drawing of a caution or a measure by its code, likewise.
    [[nodiscard]] QWidget* cautionSign(const QString& code, const QString& spoken) const;
};

/// Columns side by side, or below each other on an upright glass.
[[nodiscard]] QBoxLayout* columnsIn(QWidget* page, const Surroundings& around);
/// A text by itself.
[[nodiscard]] FitLabel* textIn(const Theme& theme, const QString& name, TextRole role, const QString& text,
                               QWidget* parent);

} // namespace strandbench
