// SPDX-License-Identifier: GPL-3.0-or-later
#include "hand.h"

#include <QFile>
#include <QUrl>

#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

void bind(sqlite3_stmt* statement, int at, const Cell& cell)
{
    const int size = int(cell.bytes.size());
    if (cell.kind == Cell::Kind::Number)
        sqlite3_bind_int64(statement, at, cell.number);
    else if (cell.kind == Cell::Kind::Text)
        sqlite3_bind_text(statement, at, cell.bytes.constData(), size, SQLITE_TRANSIENT);
    else if (cell.kind == Cell::Kind::Bytes)
        sqlite3_bind_blob(statement, at, cell.bytes.constData(), size, SQLITE_TRANSIENT);
}

Cell cellOf(sqlite3_stmt* statement, int column)
{
    const int type = sqlite3_column_type(statement, column);
    if (type == SQLITE_NULL)
        return {};
    if (type == SQLITE_INTEGER)
        return {Cell::Kind::Number, sqlite3_column_int64(statement, column), {}};
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, column));
    return {type == SQLITE_BLOB ? Cell::Kind::Bytes : Cell::Kind::Text, 0,
            QByteArray(bytes, sqlite3_column_bytes(statement, column))};
}

} // namespace

Hand::Hand(const QString& path, bool looks)
{
    const QByteArray uri = QUrl::fromLocalFile(path).toEncoded() + (looks ? "?immutable=1" : "");
    const int flags = (looks ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE) | SQLITE_OPEN_URI;
    if (sqlite3_open_v2(uri.constData(), &m_handle, flags, nullptr) != SQLITE_OK)
        throw std::runtime_error("the hand cannot open the file");
    if (looks)
        return;
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_ENABLE_FKEY, 0, nullptr);
    (void)rows("PRAGMA journal_mode = MEMORY");
    (void)rows("PRAGMA synchronous = OFF");
}

Hand::~Hand() { sqlite3_close(m_handle); }

int Hand::step(const QByteArray& sql, const CellRow& binds, std::vector<CellRow>* rows) const
{
    sqlite3_stmt* statement = nullptr;
    int code = sqlite3_prepare_v2(m_handle, sql.constData(), -1, &statement, nullptr);
    for (std::size_t i = 0; code == SQLITE_OK && i < binds.size(); ++i)
        bind(statement, int(i) + 1, binds[i]);
    while (code == SQLITE_OK || code == SQLITE_ROW) {
        code = sqlite3_step(statement);
        if (code != SQLITE_ROW || !rows)
            continue;
        rows->emplace_back();
        for (int column = 0; column < sqlite3_column_count(statement); ++column)
            rows->back().push_back(cellOf(statement, column));
    }
    sqlite3_finalize(statement);
    return code;
}

std::vector<CellRow> Hand::rows(const QByteArray& sql, const CellRow& binds) const
{
    std::vector<CellRow> found;
    if (step(sql, binds, &found) != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(m_handle) + (" in " + sql).toStdString());
    return found;
}

int Hand::change(const QByteArray& sql, const CellRow& binds) const
{
    if (step(sql, binds, nullptr) != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(m_handle) + (" in " + sql).toStdString());
    return sqlite3_changes(m_handle);
}

bool Hand::mayChange(const QByteArray& sql, const CellRow& binds) const
{
    const int code = step(sql, binds, nullptr);
    if (code != SQLITE_DONE && (code & 0xff) != SQLITE_CONSTRAINT)
        throw std::runtime_error(sqlite3_errmsg(m_handle) + (" in " + sql).toStdString());
    return code == SQLITE_DONE;
}

std::vector<CellRow> everythingIn(const QString& path)
{
    const Hand hand(path, true);
    std::vector<CellRow> all = hand.rows("SELECT 'schema', type, name, tbl_name, sql FROM sqlite_schema");
    for (const QByteArray table : {"meta", "event", "blob", "event_blob", "summary"})
        for (CellRow& row : hand.rows("SELECT '" + table + "', * FROM " + table + " NOT INDEXED"))
            all.push_back(std::move(row));
    std::sort(all.begin(), all.end());
    return all;
}

} // namespace strandbench::test
