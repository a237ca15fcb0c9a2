// SPDX-License-Identifier: GPL-3.0-or-later
// Tables from a code to its English text, marked for translation. Only app/words includes this.
#pragma once

#include <QString>
#include <QStringList>

#include <span>

namespace strandbench::words {

/// A code and its text. The text stands in QT_TRANSLATE_NOOP, so that lupdate finds it.
struct Line {
    const char* code;
    const char* text;
};

/// The text of a code in the application's language, its placeholders not filled in. A code without a text
/// comes back in brackets: it can be read on the bench, and a check that walks all codes finds it.
[[nodiscard]] QString lookUp(const char* context, std::span<const Line> lines, const QString& code);

/// True when the table has the code.
[[nodiscard]] bool holds(std::span<const Line> lines, const QString& code);

/// One text in the application's language.
[[nodiscard]] QString inLanguage(const char* context, const char* text);

/// Puts arguments into %1, %2 and so on, all at once, so that a '%1' within an argument stays as it is.
[[nodiscard]] QString fillIn(const QString& text, const QStringList& arguments);

/// The text with control characters and line ends made spaces: whatever an input held, a message is one line.
[[nodiscard]] QString oneLine(QString text);

} // namespace strandbench::words
