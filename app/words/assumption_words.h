// SPDX-License-Identifier: GPL-3.0-or-later
// Assumptions as a person reads and keys them in: name, figure in the units that are set, and the range.
#pragma once

#include "plan/assumption_table.h"
#include "quantity/units.h"
#include "words/words.h"

namespace strandbench {

class AssumptionWords {
public:
    /// words must outlive it.
    explicit AssumptionWords(const Words& words) : m_words(words) {}

    /// "Kneading, from hardener in to spreading"; the code in brackets where there is none.
    [[nodiscard]] static QString name(const QString& code);
    [[nodiscard]] QString unit(const AssumptionEntry& entry) const;
    /// The number of a value in the units that are set, and back. A stored number is in the entry's own unit.
    [[nodiscard]] double shownNumber(const AssumptionEntry& entry, double number) const;
    [[nodiscard]] double storedNumber(const AssumptionEntry& entry, double shown) const;
    /// A figure to four significant digits, three in other units than the entry's, with the locale's decimal sign.
    [[nodiscard]] Printed printed(const AssumptionEntry& entry, double number) const;
    [[nodiscard]] QString figure(const AssumptionEntry& entry, double number) const; ///< "45 s"
    [[nodiscard]] QString range(const AssumptionEntry& entry) const;                 ///< "10 to 180 s"
    /// What one tap on a large key is worth, in the units that are set: 1, 2 or 5 of some place, about a fortieth of
    /// the range.
    [[nodiscard]] double step(const AssumptionEntry& entry) const;

    /// A keyed figure in the units that are set, as a number in the entry's unit. Faults: Empty, NotReadable, and
    /// OutOfRange with the ends as shown.
    [[nodiscard]] Checked<double> parse(const AssumptionEntry& entry, const QString& text) const;
    /// One line naming the assumption, the value and what is allowed, whether it was keyed in or stood in the file.
    [[nodiscard]] QString fault(const Fault& fault) const;

private:
    [[nodiscard]] QString plain(const AssumptionEntry& entry, double number) const;

    const Words& m_words;
};

} // namespace strandbench
