// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/statement.h"

#include "repairlog/failure.h"

#include <sqlite3.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// SQLite binds a null pointer as NULL; what is meant by one is a text or bytes of no length.
int bindOne(sqlite3_stmt* statement, int place, const QVariant& value)
{
    switch (value.typeId()) {
    case QMetaType::QString: {
        const QString text = value.toString();
        const void* letters = text.isNull() ? u"" : static_cast<const void*>(text.utf16());
        return sqlite3_bind_text16(statement, place, letters, int(text.size() * 2), SQLITE_TRANSIENT);
    }
    case QMetaType::QByteArray: {
        const QByteArray bytes = value.toByteArray();
        return sqlite3_bind_blob64(statement, place, bytes.constData(), quint64(bytes.size()), SQLITE_TRANSIENT);
    }
    default:
        return sqlite3_bind_int64(statement, place, value.toLongLong());
    }
}

} // namespace

QString Row::text(int column) const
{
    // First the text, then its length: asking for the text may turn the value over.
    const auto* letters = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column));
    return QString::fromUtf8(letters, sqlite3_column_bytes(m_statement, column));
}

qint64 Row::integer(int column) const { return sqlite3_column_int64(m_statement, column); }

QByteArray Row::bytes(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement, column));
    return {bytes, sqlite3_column_bytes(m_statement, column)};
}

QVariant Row::value(int column) const
{
    switch (sqlite3_column_type(m_statement, column)) {
    case SQLITE_INTEGER:
        return integer(column);
    case SQLITE_FLOAT:
        return sqlite3_column_double(m_statement, column);
    case SQLITE_BLOB:
        return bytes(column);
    case SQLITE_NULL:
        return QVariant(QMetaType::fromType<QString>());
    default:
        return text(column);
    }
}

void Statement::Finalize::operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }

Logged<Statement> Statement::prepare(sqlite3* database, const QString& sql)
{
    const QByteArray text = sql.toUtf8();
    sqlite3_stmt* made = nullptr;
    const char* rest = nullptr;
    if (sqlite3_prepare_v3(database, text.constData(), int(text.size()), SQLITE_PREPARE_PERSISTENT, &made, &rest) !=
        SQLITE_OK)
        return failed(database);
    Statement statement(made);
    if (!QByteArray(rest).trimmed().isEmpty())
        return failed(LogTrouble::IoError, u"more than one statement: "_s + sql);
    return statement;
}

Logged<void> Statement::bind(const QVariantList& binds)
{
    for (qsizetype i = 0; i < binds.size(); ++i)
        if (bindOne(m_statement.get(), int(i) + 1, binds[i]) != SQLITE_OK)
            return failed(sqlite3_db_handle(m_statement.get()));
    return {};
}

Logged<bool> Statement::step()
{
    switch (sqlite3_step(m_statement.get())) {
    case SQLITE_ROW:
        return true;
    case SQLITE_DONE:
        return false;
    default:
        return failed(sqlite3_db_handle(m_statement.get()));
    }
}

void Statement::reset() { sqlite3_reset(m_statement.get()); }

} // namespace strandbench
