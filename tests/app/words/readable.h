// SPDX-License-Identifier: GPL-3.0-or-later
// What every text must hold to be shown on the bench.
#pragma once

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <QString>

#include <ostream>

/// GoogleTest shows a text as text (it looks for this beside the type, in the global namespace).
inline void PrintTo(const QString& text, std::ostream* stream) { *stream << '"' << text.toStdString() << '"'; }

namespace strandbench {

inline int wordsIn(const QString& text)
{
    return int(text.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts).size());
}

/// The placeholders of a text that is not filled in: {"1", "2"}.
inline QSet<QString> placeholdersIn(const QString& text)
{
    QSet<QString> found;
    auto each = QRegularExpression(QStringLiteral("%([1-9])")).globalMatch(text);
    while (each.hasNext())
        found.insert(each.next().captured(1));
    return found;
}

/// {"1", …} up to count.
inline QSet<QString> placesUpTo(std::size_t count)
{
    QSet<QString> places;
    for (std::size_t i = 1; i <= count; ++i)
        places.insert(QString::number(i));
    return places;
}

/// There, without a code that nobody wrote a text for, without an unfilled placeholder, calm.
inline testing::AssertionResult isReadable(const QString& text)
{
    if (text.trimmed().isEmpty())
        return testing::AssertionFailure() << "an empty text";
    if (text.contains(u'['))
        return testing::AssertionFailure() << "a code without a text: " << text.toStdString();
    if (text.contains(u'!'))
        return testing::AssertionFailure() << "an exclamation mark: " << text.toStdString();
    if (!placeholdersIn(text).isEmpty())
        return testing::AssertionFailure() << "an open placeholder: " << text.toStdString();
    if (QRegularExpression(QStringLiteral("\\bsafe\\b"), QRegularExpression::CaseInsensitiveOption)
            .match(text)
            .hasMatch())
        return testing::AssertionFailure() << "says that something is safe: " << text.toStdString();
    return testing::AssertionSuccess();
}

} // namespace strandbench
