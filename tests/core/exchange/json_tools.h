// SPDX-License-Identifier: GPL-3.0-or-later
// Changing one member of a JSON text, and reading faults in failed checks.
#pragma once

#include "quantity/fault.h"

#include <QByteArray>
#include <QJsonObject>
#include <QJsonValue>

#include <ostream>

namespace strandbench {

/// The text with the member at a dotted path set to a value; an undefined value takes the member away.
[[nodiscard]] QByteArray with(const QByteArray& json, const QString& path, const QJsonValue& value);
[[nodiscard]] QByteArray without(const QByteArray& json, const QString& path);

/// "field|value|kind|allowed,allowed".
[[nodiscard]] std::string textOf(const Fault& fault);

/// The faults of a reading, as texts; empty when it succeeded.
template <class T> [[nodiscard]] std::vector<std::string> faultsOf(const Checked<T>& checked)
{
    std::vector<std::string> texts;
    if (!checked)
        for (const Fault& fault : checked.error())
            texts.push_back(textOf(fault));
    return texts;
}

} // namespace strandbench
