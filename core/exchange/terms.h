// SPDX-License-Identifier: GPL-3.0-or-later
// The termbase: the trade's words in the four languages, each said in one way.
#pragma once

#include "quantity/fault.h"

#include <QLocale>

#include <map>
#include <vector>

namespace strandbench {

struct Term {
    QString id;
    QString en;
    QString es;
    QString fr;
    QString de;
    /// Stems that a translation may hold for the term, by language; where none is listed, the term itself.
    std::map<QString, QStringList> stems;
    /// In the locale's language; English where the program does not carry that language.
    [[nodiscard]] const QString& in(const QLocale& locale) const;
};

/// Reads the termbase. Every fault at once; an id given twice is one.
[[nodiscard]] Checked<std::vector<Term>> readTerms(const QByteArray& json);

/// resources/termbase/terms.json. Throws std::logic_error when it does not parse, which is a defect of the build.
[[nodiscard]] const std::vector<Term>& builtInTerms();

} // namespace strandbench
