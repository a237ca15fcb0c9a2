// SPDX-License-Identifier: GPL-3.0-or-later
// One product sheet: what it states, what the engine makes of it, its versions, and what may be done with it.
#pragma once

#include "plan/sheet_outlook.h"
#include "screens/frame/screen.h"

namespace strandbench {

/// What the engine makes of a sheet, computed beside the glass: a table of days, or why there is none.
class ProductOutlook final : public QWidget {
    Q_OBJECT
public:
    ProductOutlook(const Surroundings& around, QWidget* parent);
    /// Computes anew; says that it does.
    void show(const ProductSheet& sheet);
    /// Takes what was shown away, and says why.
    void showNone(const QString& why);

Q_SIGNALS:
    void shown(bool figures); ///< false: why there are none

private:
    void showFigures(const ProductSheet& sheet, const CureAnswer<SheetOutlook>& found);
    FitLabel* cell(const QString& name, TextRole role, const QString& text, Role ink = Role::Ink, bool bold = false);
    void clear();

    const Surroundings m_around;
    Worker m_worker;
    QWidget* m_inside = nullptr;
};

class ProductPageScreen final : public Screen {
    Q_OBJECT
public:
    /// told: what was done last, empty for nothing.
    ProductPageScreen(const Surroundings& around, const QString& sheetId, const QString& told,
                      QWidget* parent = nullptr);

Q_SIGNALS:
    void changeWanted();
    void exportWanted();
    void layAsideWanted();

private:
    void buildSide(const ProductSheet& sheet, const QString& told);
    [[nodiscard]] QString statedText(const ProductSheet& sheet) const;
    [[nodiscard]] QString versionsText(const QString& sheetId) const;
};

} // namespace strandbench
