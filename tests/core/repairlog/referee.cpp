// SPDX-License-Identifier: GPL-3.0-or-later
#include "referee.h"

#include <sqlite3.h>

#include <stdexcept>

namespace strandbench::test {

Referee::Referee(const QString& path) : m_owns(true)
{
    if (sqlite3_open(path.toUtf8().constData(), &m_handle) != SQLITE_OK)
        throw std::runtime_error("the referee cannot open the file");
}

Referee::Referee(sqlite3* handle) : m_handle(handle) {}

Referee::~Referee()
{
    if (m_owns)
        sqlite3_close(m_handle);
}

QByteArray Referee::run(const QByteArray& sql) const
{
    char* message = nullptr;
    if (sqlite3_exec(m_handle, sql.constData(), nullptr, nullptr, &message) == SQLITE_OK)
        return {};
    QByteArray said = message ? QByteArray(message) : QByteArray("failed");
    sqlite3_free(message);
    return said;
}

QByteArray Referee::value(const QByteArray& sql) const
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_handle, sql.constData(), -1, &statement, nullptr) != SQLITE_OK)
        return sqlite3_errmsg(m_handle);
    QByteArray text;
    if (sqlite3_step(statement) == SQLITE_ROW)
        text = QByteArray(reinterpret_cast<const char*>(sqlite3_column_text(statement, 0)));
    sqlite3_finalize(statement);
    return text;
}

std::vector<QByteArray> Referee::rows(const QByteArray& sql) const
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_handle, sql.constData(), -1, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    std::vector<QByteArray> rows;
    int code = SQLITE_ROW;
    while ((code = sqlite3_step(statement)) == SQLITE_ROW) {
        QByteArray row;
        for (int column = 0; column < sqlite3_column_count(statement); ++column) {
            const int type = sqlite3_column_type(statement, column);
            const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, column));
            const int size = sqlite3_column_bytes(statement, column);
            row += QByteArray::number(type) + ':' + QByteArray::number(size) + ':' + QByteArray(bytes, size) + ' ';
        }
        rows.push_back(row);
    }
    sqlite3_finalize(statement);
    if (code != SQLITE_DONE)
        throw std::runtime_error(sqlite3_errmsg(m_handle));
    return rows;
}

} // namespace strandbench::test
