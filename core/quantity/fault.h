// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with an input: the field, the value and what is allowed. Core returns codes and
// arguments; app/words turns them into sentences.
#pragma once

#include <QString>
#include <QStringList>

#include <tl/expected.hpp>

#include <vector>

namespace strandbench {

enum class FaultKind {
    Missing,     ///< the field must be there; allowed: what it would hold
    UnknownKey,  ///< no field of this name; allowed: the names known at this place
    WrongKind,   ///< another kind of value; allowed: "number", "text", "object", "list", "true or false"
    OutOfRange,  ///< allowed: lowest, highest, unit
    NotOneOf,    ///< allowed: the words that are
    NotReadable, ///< the text does not parse; allowed: an example
    Empty,       ///< a text without a visible character
    TooLong,     ///< allowed: the greatest number of characters
    Conflicts,   ///< disagrees with another field; allowed: that field and its value
    NotFound,    ///< a file, a sheet or a repair that is not there; allowed: what is
};

struct Fault {
    QString field; ///< as the input names it, nested with dots: "damage.length_mm"
    QString value; ///< as it was given; empty when missing
    FaultKind kind = FaultKind::Missing;
    QStringList allowed; ///< by kind, see FaultKind
    bool operator==(const Fault&) const = default;
};

using Faults = std::vector<Fault>;

/// A value, or every fault that kept it from being one.
template <class T> using Checked = tl::expected<T, Faults>;

} // namespace strandbench
