// SPDX-License-Identifier: GPL-3.0-or-later
// Every field of a product sheet with its place in the file, its unit and what a paper data sheet rarely states: one
// list, from which a sheet is typed, written and read as CSV.
#pragma once

#include "material/sheet.h"

#include <QString>

#include <optional>
#include <vector>

namespace strandbench {

/// In the order in which they are typed.
enum class SheetGroup { Product, Times, Hardener, Limits, Heat, Law };
template <> struct Codes<SheetGroup> {
    static constexpr std::array<std::pair<SheetGroup, const char*>, 6> table{{
        {SheetGroup::Product, "product"},
        {SheetGroup::Times, "times"},
        {SheetGroup::Hardener, "hardener"},
        {SheetGroup::Limits, "limits"},
        {SheetGroup::Heat, "heat"},
        {SheetGroup::Law, "law"},
    }};
};

enum class SheetFieldKind { Text, Filler, Number, Whole, Flag };

struct SheetField {
    QString path; ///< as faults name it: "working_min.nominal"
    SheetFieldKind kind = SheetFieldKind::Number;
    QString unit;                    ///< of its number as the file has it: "min"; empty for none
    std::optional<SheetGroup> group; ///< empty: not typed (its id, and whether it is a demo sheet)
    /// What fillers of this trade commonly have, where a paper sheet rarely states it; ours, with no source. Of a flag
    /// 0 or 1.
    std::optional<double> assumed;
    bool finishingOnly = false;
    bool mayBeLeftOut = false; ///< the model's own value then stands
};

/// In the order of the file.
[[nodiscard]] const std::vector<SheetField>& sheetFields();
/// Null when there is none of this path.
[[nodiscard]] const SheetField* findSheetField(const QString& path);
/// Whether a sheet of this class has the field.
[[nodiscard]] bool belongs(const SheetField& field, FillerClass filler);

} // namespace strandbench
