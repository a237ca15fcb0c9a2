// SPDX-License-Identifier: GPL-3.0-or-later
// A language that nobody speaks: English with accents on its letters and a third longer, so that a screen shows before
// its translation whether it has room for one.
#pragma once

#include <QTranslator>

namespace strandbench::rules {

/// The code that stands for it in settings; no catalogue has it, and the locale is that of C.
inline constexpr char16_t pseudoCode[] = u"zz";

/// The text with accents on its letters, at least 30 % longer where it has letters at all: words grow by a letter or
/// two and short words come between them, as in a real translation; a single word takes it all. What is put in for
/// figures (%1, %L1, %n), keyboard keys (&), tags, line breaks and digits stay as they are.
[[nodiscard]] QString pseudo(const QString& text);

/// Every text of the program in it; plurals as in English.
class PseudoLanguage final : public QTranslator {
public:
    PseudoLanguage();
    [[nodiscard]] bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation, int n) const override;

private:
    QTranslator m_english; ///< holds the plurals
};

} // namespace strandbench::rules
