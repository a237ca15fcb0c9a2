// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of a product sheet in words: names, figures in the units that are set, what is wrong with one.
#pragma once

#include "exchange/sheet_fields.h"
#include "quantity/fault.h"
#include "words/words.h"

#include <QJsonValue>

namespace strandbench {

class SheetWords {
public:
    /// words must outlive it.
    explicit SheetWords(const Words& words) : m_words(words) {}

    /// "Working time, earliest"; the path in brackets where there is none.
    [[nodiscard]] static QString name(const QString& path);
    [[nodiscard]] static QString group(SheetGroup group);
    /// The unit of a field as it is shown: "lb/gal".
    [[nodiscard]] QString unit(const SheetField& field) const;
    /// A value as it is shown: "4.5 min", "yes", "mixed strand"; empty of none.
    [[nodiscard]] QString figure(const SheetField& field, const QJsonValue& value) const;
    /// A figure keyed in, in the unit that is shown, as the file's number, to a millionth. Faults: Empty, NotReadable.
    [[nodiscard]] Checked<double> parse(const SheetField& field, const QString& text) const;
    /// The number of a figure as the key pad begins with it: a decimal point, no unit.
    [[nodiscard]] QString keyed(const SheetField& field, const QJsonValue& value) const;
    /// One line naming field, value and what is allowed, in the units that are shown.
    [[nodiscard]] QString fault(const Fault& fault) const;
    /// A sheet's name with what says that it is a demo sheet, whatever its name says.
    [[nodiscard]] static QString sheetName(const ProductSheet& sheet);

private:
    [[nodiscard]] QString plain(const SheetField& field, double number) const;

    const Words& m_words;
};

} // namespace strandbench
