// SPDX-License-Identifier: GPL-3.0-or-later
// Events and summaries to rows and back.
#pragma once

#include "repairlog/chain.h"
#include "repairlog/connection.h"

namespace strandbench {

/// The columns of `event` that readRecord() takes, in its order.
[[nodiscard]] QString recordColumns();
[[nodiscard]] EventRecord readRecord(const Row& row);
/// Text columns as the bytes that are stored, separated by commas. SQLite and Qt turn bytes that are no UTF-8 into
/// letters that others have too, so that a text may read as before and yet have been changed.
[[nodiscard]] QString storedTexts(const QStringList& columns);
/// The text columns of `event`, and whether what storedTexts() gives of them, from column `firstText` on after
/// recordColumns(), is what a record reads; so also of the one number that does not fit whole into a record.
[[nodiscard]] QStringList recordTexts();
[[nodiscard]] bool readsAsStored(const EventRecord& record, const Row& row, int firstText);
/// The newest record of a chain; nothing of an empty one.
[[nodiscard]] Logged<std::optional<EventRecord>> lastRecord(const SqlConnection& connection, const QString& origin);
/// Whether two records are of one tap: all is the same but the place in the chain, and the day that follows from it.
[[nodiscard]] bool isSameAct(const EventRecord& one, const EventRecord& other);
/// The end of a bench's chain.
[[nodiscard]] Logged<ChainHead> headOf(const SqlConnection& connection, const QString& origin);
[[nodiscard]] Logged<void> insertRecord(const SqlConnection& connection, const EventRecord& record);

/// The event that a record holds; Damaged when its payload does not read.
[[nodiscard]] Logged<Event> readEvent(const EventRecord& record);
/// The events of a condition, read; in the order that it asks for.
[[nodiscard]] Logged<std::vector<Event>> eventsWhere(const SqlConnection& connection, const QString& condition,
                                                     const QVariantList& binds);
[[nodiscard]] Logged<std::vector<Event>> eventsOf(const SqlConnection& connection, const QUuid& repair);
/// Of all benches; test pats of this bench alone, since one that waits is told by the clock of its machine.
[[nodiscard]] Logged<std::vector<Event>> eventsOfLots(const SqlConnection& connection, const QString& fromLocalDay,
                                                      const QString& ownOrigin);

/// What StockBook is made from, of this bench: acts of stock of the last years, and the batches and pats that took from
/// the lots among them. Oldest first.
[[nodiscard]] Logged<std::vector<Event>> eventsOfStock(const SqlConnection& connection, const QString& fromLocalDay,
                                                       const QString& ownOrigin);

/// Of this bench, of the days from one to another.
[[nodiscard]] Logged<std::vector<Event>> eventsOfAir(const SqlConnection& connection, const QString& fromLocalDay,
                                                     const QString& toLocalDay, const QString& ownOrigin);

/// Stores the bytes by their SHA-256, once, and links them to the event.
[[nodiscard]] Logged<void> insertBlob(const SqlConnection& connection, const EventRecord& record,
                                      const QByteArray& bytes);
/// Whether all of these bytes are linked to the event.
[[nodiscard]] Logged<bool> hasBlobs(const SqlConnection& connection, const EventRecord& record,
                                    const std::vector<QByteArray>& blobs);

/// What the fold says of a repair, as its summary. `person` is the newest event's.
[[nodiscard]] RepairSummary summaryOf(const Repair& repair, const QString& person);
/// The columns of `summary` that readSummary() takes, in its order.
[[nodiscard]] QString summaryColumns();
[[nodiscard]] RepairSummary readSummary(const Row& row);
[[nodiscard]] Logged<void> putSummary(const SqlConnection& connection, const RepairSummary& summary);

/// A job's or a panel's name as it is compared: no case, no blanks around, single blanks within.
[[nodiscard]] QString comparable(const QString& name);

[[nodiscard]] QString textOf(const QUuid& id);

} // namespace strandbench
