// SPDX-License-Identifier: GPL-3.0-or-later
// The data files that the program carries (resources/), compiled in under ":/strandbench".
#pragma once

#include "quantity/fault.h"

#include <QByteArray>

#include <stdexcept>

namespace strandbench {

/// The bytes of a built-in file; throws std::logic_error when there is none of this path.
[[nodiscard]] QByteArray builtInBytes(const QString& path);

/// Throws std::logic_error naming a built-in file and its first fault: a defect of the build.
[[noreturn]] void throwBuiltInDefect(const QString& path, const Faults& faults);

/// Reads a built-in file with a strict reader; throws std::logic_error when it has faults.
template <class T> [[nodiscard]] T builtIn(const QString& path, Checked<T> (*read)(const QByteArray&))
{
    Checked<T> value = read(builtInBytes(path));
    if (!value)
        throwBuiltInDefect(path, value.error());
    return *std::move(value);
}

} // namespace strandbench
