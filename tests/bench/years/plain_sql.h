// SPDX-License-Identifier: GPL-3.0-or-later
// SQL through SQLite's own C library, as somebody would ask it who wants nothing but the values: prepared once, bound,
// stepped, every column read as it lies.
#pragma once

#include <QByteArray>
#include <QString>
#include <QUuid>

#include <sqlite3.h>

#include <memory>

namespace strandbench::yearsbench {

/// How a file is opened: Still is for a log that nobody has open, without locks, as the program reads it then.
enum class Reading { Beside, Still };

/// Pages kept in memory, as the program keeps them.
inline constexpr int cacheKiB = 64 * 1024;

class PlainSql {
public:
    /// Only reads. Throws std::runtime_error when the file does not open.
    PlainSql(const QString& path, Reading reading);
    ~PlainSql();
    PlainSql(const PlainSql&) = delete;
    PlainSql& operator=(const PlainSql&) = delete;

    /// The present row. Columns count from 0.
    class Row {
    public:
        explicit Row(sqlite3_stmt* statement) : m_statement(statement) {}
        [[nodiscard]] qint64 integer(int column) const { return sqlite3_column_int64(m_statement, column); }
        [[nodiscard]] QString text(int column) const { return QString::fromUtf8(lying(column)); }
        [[nodiscard]] QByteArray bytes(int column) const { return {at(column), size(column)}; }
        /// The bytes where they lie, as long as this row is the present one.
        [[nodiscard]] QByteArray lying(int column) const { return QByteArray::fromRawData(at(column), size(column)); }
        [[nodiscard]] QUuid uuid(int column) const
        {
            return QUuid::fromString(QLatin1StringView(at(column), size(column)));
        }

    private:
        [[nodiscard]] const char* at(int column) const
        {
            return static_cast<const char*>(sqlite3_column_blob(m_statement, column));
        }
        [[nodiscard]] qsizetype size(int column) const { return sqlite3_column_bytes(m_statement, column); }
        sqlite3_stmt* m_statement;
    };

    class Statement {
    public:
        Statement(sqlite3* database, const char* sql);
        /// Binds by position, hands every row over. Throws std::runtime_error when SQLite does not answer.
        template <class Take, class... Bound> void each(const Take& take, const Bound&... bound) const
        {
            int place = 0;
            (bind(++place, bound), ...);
            const Row row(m_statement.get());
            while (step())
                take(row);
            sqlite3_reset(m_statement.get());
        }

    private:
        void bind(int place, qint64 value) const;
        void bind(int place, const QString& value) const;
        [[nodiscard]] bool step() const;
        std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> m_statement;
    };
    [[nodiscard]] Statement prepare(const char* sql) const { return {m_database, sql}; }

private:
    sqlite3* m_database = nullptr;
};

} // namespace strandbench::yearsbench
