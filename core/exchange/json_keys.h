// SPDX-License-Identifier: GPL-3.0-or-later
// Keys that stand twice in one JSON object. Qt's reader keeps the last of them without a word.
#pragma once

#include "quantity/fault.h"

#include <QByteArray>

namespace strandbench {

/// A key with the path of its object before it; one without any letter is shown as "".
[[nodiscard]] QString pathWith(const QString& path, const QString& key);

/// One Conflicts fault for every key given twice. `json` must have parsed already. Long paths and values are
/// cut short with an ellipsis.
[[nodiscard]] Faults repeatedKeys(const QByteArray& json);

} // namespace strandbench
