// SPDX-License-Identifier: GPL-3.0-or-later
// Keys that stand twice in one JSON object. Qt's reader keeps the last of them without a word.
#pragma once

#include "quantity/fault.h"

#include <QByteArray>

namespace strandbench {

/// One Conflicts fault for every key given twice. `json` must have parsed already.
[[nodiscard]] Faults repeatedKeys(const QByteArray& json);

} // namespace strandbench
