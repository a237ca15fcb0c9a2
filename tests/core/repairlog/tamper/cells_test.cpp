// SPDX-License-Identifier: GPL-3.0-or-later
// Every byte of every column of every row of every table changed, one at a time, by somebody whom no guard stops.
#include "tampered_log.h"

#include <algorithm>
#include <iostream>
#include <memory>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

/// Which bytes: of the rows whose number leaves `part` when divided by `parts`.
struct Share {
    const char* table;
    int part;
    int parts;
    const char* name;
};

/// What a byte is changed by: its lowest bit; and the bit that makes of a lead byte of two another that SQLite reads as
/// the same letter.
constexpr std::array<int, 2> changes{0x01, 0x20};

class TamperedCells : public TamperedLog, public ::testing::WithParamInterface<Share> {
protected:
    [[nodiscard]] static QByteArray table() { return GetParam().table; }

    static Cell flipped(const Cell& cell, int byte, int change)
    {
        Cell other = cell;
        if (cell.kind == Cell::Kind::Number)
            other.number = static_cast<long long>(static_cast<unsigned long long>(cell.number) ^
                                                  (static_cast<unsigned long long>(change) << (8 * byte)));
        else
            other.bytes[byte] = char(other.bytes[byte] ^ change);
        return other;
    }

    /// SQL and binds that set one column of one row, which is found by what it held.
    struct Setting {
        QByteArray sql;
        CellRow binds;
    };
    [[nodiscard]] Setting setting(std::size_t column, const Cell& to, const CellRow& row, const Cell& held) const
    {
        Setting made{"UPDATE " + table() + " SET " + names[column] + " = ? WHERE ", {to}};
        for (std::size_t i = 0; i < names.size(); ++i) {
            made.sql += (i == 0 ? "" : " AND ") + names[i] + " IS ?";
            made.binds.push_back(i == column ? held : row[i]);
        }
        return made;
    }

    /// How a change was got past the schema.
    enum class Past { Nothing, Checks, Key };

    /// Stores a change in the gentlest way that goes.
    Past store(const Setting& change) const
    {
        if (hand->mayChange(change.sql, change.binds))
            return Past::Nothing;
        (void)hand->rows("PRAGMA ignore_check_constraints = ON");
        const bool stored = hand->mayChange(change.sql, change.binds);
        (void)hand->rows("PRAGMA ignore_check_constraints = OFF");
        if (stored)
            return Past::Checks;
        storeWithoutKey(change);
        return Past::Key;
    }

    void storeWithoutKey(const Setting& change) const
    {
        (void)hand->rows("PRAGMA ignore_check_constraints = ON");
        withoutKey([&] { ASSERT_EQ(hand->change(change.sql, change.binds), 1); });
        (void)hand->rows("PRAGMA ignore_check_constraints = OFF");
    }

    /// The table's key and its indexes are taken out of the schema and put back as they were, knowing nothing.
    void withoutKey(const std::function<void()>& run) const
    {
        const Cell name{Cell::Kind::Text, 0, table()};
        const auto kept = hand->rows("SELECT rowid, * FROM sqlite_schema WHERE tbl_name = ?", {name});
        (void)hand->rows("PRAGMA writable_schema = ON");
        hand->change("DELETE FROM sqlite_schema WHERE tbl_name = ? AND type <> 'table'", {name});
        hand->change(
            "UPDATE sqlite_schema SET sql = replace(replace(sql, ?, ''), ' PRIMARY KEY NOT NULL', ' NOT NULL') "
            "WHERE tbl_name = ?",
            {{Cell::Kind::Text, 0, ",\n            PRIMARY KEY (origin, seq)"}, name});
        (void)hand->rows("PRAGMA writable_schema = RESET");
        run();
        (void)hand->rows("PRAGMA writable_schema = ON");
        hand->change("DELETE FROM sqlite_schema WHERE tbl_name = ?", {name});
        for (const CellRow& row : kept)
            hand->change("INSERT INTO sqlite_schema (rowid, type, name, tbl_name, rootpage, sql) VALUES (?,?,?,?,?,?)",
                         row);
        (void)hand->rows("PRAGMA writable_schema = RESET");
    }

    void flip(const CellRow& row, std::size_t column, int byte, int change)
    {
        const Cell other = flipped(row[column], byte, change);
        const Setting there = setting(column, other, row, row[column]);
        const Setting back = setting(column, row[column], row, other);
        const Past past = store(there);
        refused += past == Past::Nothing ? 0 : 1;
        if (isLinkNobodyKnows(row, column, other)) {
            ++unknowable;
            expectClean("a link of a sheet, given to another event");
        } else
            expectFound((table() + '.' + names[column] + " byte ").toStdString() + std::to_string(byte) + " by " +
                        std::to_string(change) + " of '" + row[column].bytes.left(60).toStdString() + "'");
        if (past == Past::Key)
            storeWithoutKey(back);
        else
            (void)store(back);
    }

    /// Only of a photo an event says that its bytes belong to it. Of a sheet or a table nothing says which event it was
    /// stored with, but that it was with one.
    [[nodiscard]] bool isLinkNobodyKnows(const CellRow& row, std::size_t column, const Cell& other) const
    {
        if (table() != "event_blob" || names[column] != "seq" || other.number < 1 || other.number > head.count)
            return false;
        const auto kind = hand->rows("SELECT kind FROM event WHERE seq = ?", {row[column]});
        return kind.front().front().bytes != "photo_taken";
    }

    std::unique_ptr<Hand> hand;
    std::vector<QByteArray> names;
    int refused = 0;
    int unknowable = 0;
};

TEST_P(TamperedCells, EveryByteOfEveryColumnIsFound)
{
    hand = std::make_unique<Hand>(place());
    for (const CellRow& row : hand->rows("SELECT name FROM pragma_table_info(?)", {{Cell::Kind::Text, 0, table()}}))
        names.push_back(row.front().bytes);
    expectClean("before");
    const auto before = everythingIn(place());
    const auto rows = hand->rows("SELECT * FROM " + table());
    int bytes = 0;
    for (std::size_t i = std::size_t(GetParam().part); i < rows.size(); i += std::size_t(GetParam().parts))
        for (std::size_t column = 0; column < names.size(); ++column) {
            const Cell& cell = rows[i][column];
            const int size = cell.kind == Cell::Kind::Number ? 8 : int(cell.bytes.size());
            bytes += size;
            for (int byte = 0; byte < size; ++byte)
                for (const int change : changes)
                    ASSERT_NO_FATAL_FAILURE(flip(rows[i], column, byte, change));
        }
    EXPECT_TRUE(everythingIn(place()) == before) << "all was put back";
    expectClean("after");
    EXPECT_EQ(missed, 0);
    EXPECT_EQ(found + missed + unknowable, bytes * int(changes.size()));
    EXPECT_GT(bytes, 0);
    std::cout << rows.size() << " rows in all, " << bytes << " bytes, " << found << " changes found, of which "
              << refused << " refused by the schema at first; " << missed << " missed; " << unknowable
              << " that nothing could tell\n";
}

constexpr int parts = 8;
std::vector<Share> shares()
{
    std::vector<Share> all{{"meta", 0, 1, "Meta"},
                           {"blob", 0, 1, "Blob"},
                           {"event_blob", 0, 1, "EventBlob"},
                           {"summary", 0, 1, "Summary"}};
    static constexpr std::array<const char*, parts> names{"Event0", "Event1", "Event2", "Event3",
                                                          "Event4", "Event5", "Event6", "Event7"};
    for (int part = 0; part < parts; ++part)
        all.push_back({"event", part, parts, names[std::size_t(part)]});
    return all;
}

INSTANTIATE_TEST_SUITE_P(Of, TamperedCells, ::testing::ValuesIn(shares()),
                         [](const auto& each) { return each.param.name; });

} // namespace
