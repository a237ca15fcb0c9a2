// SPDX-License-Identifier: GPL-3.0-or-later
// One prepared statement, through SQLite's own C library: Qt's way of handing values over takes more than half as long
// again as SQLite takes to find them.
#pragma once

#include "repairlog/repair_log.h"

#include <QVariant>

#include <memory>

struct sqlite3;
struct sqlite3_stmt;

namespace strandbench {

/// One row of a result, while it is the present one. Columns count from 0.
class Row {
public:
    explicit Row(sqlite3_stmt* statement) : m_statement(statement) {}
    [[nodiscard]] QString text(int column) const;
    [[nodiscard]] qint64 integer(int column) const;
    [[nodiscard]] QByteArray bytes(int column) const;
    /// By its stored type; of NULL a null QString.
    [[nodiscard]] QVariant value(int column) const;

private:
    sqlite3_stmt* m_statement;
};

class Statement {
public:
    /// One statement; IoError when more come after it.
    [[nodiscard]] static Logged<Statement> prepare(sqlite3* database, const QString& sql);

    /// By position: texts, bytes and whole numbers; a null text or null bytes are ones of no length.
    [[nodiscard]] Logged<void> bind(const QVariantList& binds);
    /// On to the next row; false after the last.
    [[nodiscard]] Logged<bool> step();
    [[nodiscard]] Row row() const { return Row(m_statement.get()); }
    /// Ends it, so that it holds no lock and can run again.
    void reset();

private:
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    explicit Statement(sqlite3_stmt* statement) : m_statement(statement) {}
    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
};

} // namespace strandbench
