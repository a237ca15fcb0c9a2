// SPDX-License-Identifier: GPL-3.0-or-later
// The trade's words as the termbase has them, each with what it means.
#pragma once

#include <QLocale>
#include <QString>

#include <vector>

namespace strandbench {

struct GlossaryEntry {
    QString id;
    QString term; ///< in the locale's language
    QString definition;
};

/// Every term, in the order of the locale's alphabet.
[[nodiscard]] std::vector<GlossaryEntry> glossary(const QLocale& locale);

} // namespace strandbench
