// SPDX-License-Identifier: GPL-3.0-or-later
// Product sheets among the events of a log: what may be kept, what was, and whether it holds.
#pragma once

#include "repair/sheet_book.h"
#include "repairlog/connection.h"

namespace strandbench {

/// The bytes of a hash as the sheet that an event says they are; the fault says why they are not.
[[nodiscard]] Checked<ProductSheet> sheetFrom(const SheetKept& kept, const QByteArray& bytes);

/// Why a sheet may not be kept or laid aside: the draft's bytes are not those that it names, they do not read as that
/// sheet, its id is one of a demo sheet, or there is none of this bench to lay aside.
[[nodiscard]] Logged<void> refuseSheet(const SqlConnection& connection, const Event& event,
                                       const std::vector<QByteArray>& bytes);

/// See RepairLog::sheets().
[[nodiscard]] Logged<SheetBook> sheetBookOf(const SqlConnection& connection, const QString& ownOrigin);

} // namespace strandbench
