// SPDX-License-Identifier: GPL-3.0-or-later
// Enumerations and the words that files and events use for them, kept side by side in one table each.
#pragma once

#include <QLatin1StringView>
#include <QString>
#include <QStringList>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace strandbench {

/// Specialise for an enumeration with `static constexpr std::array<std::pair<E, const char*>, N> table`.
template <class E> struct Codes;

/// The code of a value, as files and events spell it.
template <class E> [[nodiscard]] QString codeOf(E value)
{
    for (const auto& [each, code] : Codes<E>::table)
        if (each == value)
            return QString::fromLatin1(code);
    Q_UNREACHABLE();
}

/// The value that a code stands for; empty when there is none.
template <class E> [[nodiscard]] std::optional<E> fromCode(const QString& code)
{
    for (const auto& [each, word] : Codes<E>::table)
        if (code == QLatin1StringView(word))
            return each;
    return std::nullopt;
}

/// Every code of the enumeration, in the table's order.
template <class E> [[nodiscard]] QStringList allCodes()
{
    QStringList codes;
    for (const auto& entry : Codes<E>::table)
        codes << QString::fromLatin1(entry.second);
    return codes;
}

} // namespace strandbench
