// SPDX-License-Identifier: GPL-3.0-or-later
// The hand of somebody who knows SQL: reads and changes a log's cells as they are stored, past every guard.
#pragma once

#include <QByteArray>
#include <QString>

#include <tuple>
#include <vector>

struct sqlite3;

namespace strandbench::test {

/// A value as its column holds it: of a number `number`, else the bytes as stored, text in UTF-8.
struct Cell {
    enum class Kind { Null, Number, Text, Bytes };
    Kind kind = Kind::Null;
    long long number = 0;
    QByteArray bytes;
    bool operator==(const Cell&) const = default;
    bool operator<(const Cell& other) const
    {
        return std::tie(kind, number, bytes) < std::tie(other.kind, other.number, other.bytes);
    }
};
using CellRow = std::vector<Cell>;

class Hand {
public:
    /// Opens a file to change it: without triggers, foreign keys or journal. Or only to look.
    explicit Hand(const QString& path, bool looks = false);
    ~Hand();
    Hand(const Hand&) = delete;
    Hand& operator=(const Hand&) = delete;

    /// Every row; throws when that does not go.
    [[nodiscard]] std::vector<CellRow> rows(const QByteArray& sql, const CellRow& binds = {}) const;
    /// Runs one statement and gives the number of rows that it changed; throws when it is refused.
    int change(const QByteArray& sql, const CellRow& binds = {}) const;
    /// Likewise; false when a CHECK, a type or a key refuses it.
    [[nodiscard]] bool mayChange(const QByteArray& sql, const CellRow& binds) const;

private:
    int step(const QByteArray& sql, const CellRow& binds, std::vector<CellRow>* rows) const;

    sqlite3* m_handle = nullptr;
};

/// All that a log holds: each row behind its table's name, and the schema, sorted. Throws when a table does not read.
[[nodiscard]] std::vector<CellRow> everythingIn(const QString& path);

} // namespace strandbench::test
