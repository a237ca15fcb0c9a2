// SPDX-License-Identifier: GPL-3.0-or-later
// The values that the program gives, made of a row: once for each kind, of a row of either library, so that all who are
// asked make the same. Columns in the order that questions.cpp selects them.
#pragma once

#include "exchange/events.h"
#include "repairlog/digest_bytes.h"
#include "repairlog/find_documents.h"
#include "repairlog/find_index.h"
#include "stock/ledger.h"

namespace strandbench::yearsbench {

template <class Row> RepairSummary summaryIn(const Row& row)
{
    return {row.uuid(0), row.text(1),         row.text(2),    row.text(3),    row.text(4),    row.text(5),
            row.text(6), row.integer(7) != 0, row.integer(8), row.integer(9), row.integer(10)};
}

/// Throws std::bad_expected_access when the payload does not read.
template <class Row> Event eventIn(const Row& row)
{
    return {row.text(0),
            row.integer(1),
            row.uuid(2),
            row.text(3),
            decodePayload(row.text(4), int(row.integer(5)), row.lying(6)).value(),
            {row.integer(7), row.integer(8), row.text(9), int(row.integer(10))},
            row.bytes(11)};
}

/// Throws std::bad_optional_access when the bytes do not read.
template <class Row> RepairDigest digestIn(const Row& row) { return digestFrom(row.lying(0)).value(); }

template <class Row> FoundRepair foundIn(const Row& row)
{
    const qint64 place = row.integer(0);
    return {row.uuid(1),
            row.text(2),
            row.text(3),
            row.text(4).split(u'\n', Qt::SkipEmptyParts),
            row.text(5).split(u'\n', Qt::SkipEmptyParts),
            place / FindDocuments::placesInAMillisecond,
            place};
}

template <class Row> LotUse useIn(const StockLot& lot, const Row& row)
{
    return {lot,
            row.uuid(0),
            row.text(1),
            row.text(2),
            row.text(3),
            row.text(4),
            row.integer(5),
            fromMicrogramsOfStock(row.integer(6)),
            row.integer(7) != 0,
            int(row.integer(8))};
}

/// All rows of a statement, each as `make` makes it.
template <class Value, class Statement, class Make, class... Bound>
std::vector<Value> valuesOf(Statement& statement, const Make& make, const Bound&... bound)
{
    std::vector<Value> values;
    statement.each([&](const auto& row) { values.push_back(make(row)); }, bound...);
    return values;
}

} // namespace strandbench::yearsbench
