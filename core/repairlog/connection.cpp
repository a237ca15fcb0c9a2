// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/connection.h"

#include "repairlog/failure.h"

#include <QSqlError>
#include <QUrl>
#include <QUuid>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString nameFor(const QString& path, Access access)
{
    const QString uri = QUrl::fromLocalFile(path).toString(QUrl::FullyEncoded);
    switch (access) {
    case Access::ReadWrite:
        return path;
    case Access::ReadOnly:
        return uri + u"?mode=ro"_s;
    case Access::Still:
        return uri + u"?immutable=1"_s;
    case Access::Memory:
        return u":memory:"_s;
    }
    Q_UNREACHABLE();
}

/// Room for the pages that a question of a log of many years goes by again and again; taken only as they are read.
constexpr int cacheKiB = 64 * 1024;

QString optionsFor(Access access)
{
    const QString timeout = u"QSQLITE_BUSY_TIMEOUT=%1"_s.arg(SqlConnection::busyTimeoutMs);
    if (access == Access::ReadOnly || access == Access::Still)
        return timeout + u";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI"_s;
    return timeout;
}

/// Qt binds a null QString or QByteArray as NULL; what is meant by one is a text or bytes of no length.
QVariant bindable(const QVariant& value)
{
    if (value.typeId() == QMetaType::QString && value.toString().isNull())
        return u""_s;
    if (value.typeId() == QMetaType::QByteArray && value.toByteArray().isNull())
        return QByteArray("");
    return value;
}

/// Prepares if it is not yet, binds by position and runs. The one place where values meet SQL.
Logged<void> execute(QSqlQuery& query, const QString& sql, const QVariantList& binds)
{
    query.setForwardOnly(true);
    if (query.lastQuery().isEmpty() && !query.prepare(sql))
        return failed(query.lastError());
    for (qsizetype i = 0; i < binds.size(); ++i)
        query.bindValue(int(i), bindable(binds[i]));
    if (!query.exec())
        return failed(query.lastError());
    return {};
}

/// What is the same text each time. Of the PRAGMAs one that reads as it runs: some run while they are prepared and do
/// nothing the second time.
bool isKept(const QString& sql)
{
    return sql.startsWith(u"SELECT"_s) || sql.startsWith(u"WITH"_s) || sql.startsWith(u"INSERT"_s) ||
           sql == u"BEGIN IMMEDIATE"_s || sql == u"COMMIT"_s || sql == u"PRAGMA data_version"_s;
}

/// A kept query holds on to what was bound to it: a photo is too much for that.
bool isLarge(const QVariant& value)
{
    constexpr qsizetype most = 65536;
    return value.typeId() == QMetaType::QByteArray && value.toByteArray().size() > most;
}

} // namespace

QString Row::text(int column) const { return m_query.value(column).toString(); }

qint64 Row::integer(int column) const { return m_query.value(column).toLongLong(); }

QByteArray Row::bytes(int column) const { return m_query.value(column).toByteArray(); }

SqlConnection::SqlConnection(QSqlDatabase database, QString name)
    : m_database(std::move(database)), m_name(std::move(name))
{}

SqlConnection::~SqlConnection()
{
    m_idle.clear();
    m_database.close();
    m_database = QSqlDatabase(); // removeDatabase warns while a handle lives
    QSqlDatabase::removeDatabase(m_name);
}

Logged<std::unique_ptr<SqlConnection>> SqlConnection::open(const QString& path, Access access)
{
    if (!QSqlDatabase::isDriverAvailable(u"QSQLITE"_s))
        return failed(LogTrouble::IoError, u"the Qt SQL driver for SQLite is not installed"_s);
    const QString name = u"strandbench-log-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces);
    std::unique_ptr<SqlConnection> connection(new SqlConnection(QSqlDatabase::addDatabase(u"QSQLITE"_s, name), name));
    QSqlDatabase& database = connection->m_database;
    database.setConnectOptions(optionsFor(access));
    database.setDatabaseName(nameFor(path, access));
    if (!database.open())
        return failed(database.lastError());
    const QString timeout = QString::number(busyTimeoutMs);
    if (auto done = connection->set(u"busy_timeout"_s, timeout, timeout); !done)
        return tl::unexpected(done.error());
    if (auto done = connection->set(u"foreign_keys"_s, u"ON"_s, u"1"_s); !done)
        return tl::unexpected(done.error());
    return connection;
}

Logged<void> SqlConnection::keepPagesAtHand() const
{
    const QString cache = QString::number(-cacheKiB); // below nought: in KiB, not in pages
    return set(u"cache_size"_s, cache, cache);
}

Logged<void> SqlConnection::set(const QString& pragma, const QString& value, const QString& readsBackAs) const
{
    if (auto done = run(u"PRAGMA %1 = %2"_s.arg(pragma, value)); !done)
        return done;
    const auto held = this->value(u"PRAGMA "_s + pragma);
    if (!held)
        return tl::unexpected(held.error());
    if (held->toString() == readsBackAs)
        return {};
    return failed(LogTrouble::IoError,
                  u"%1 is %2 and would not become %3"_s.arg(pragma, held->toString(), readsBackAs));
}

QSqlQuery SqlConnection::take(const QString& sql) const
{
    auto idle = m_idle.extract(sql);
    return idle ? std::move(idle.mapped()) : QSqlQuery(m_database);
}

void SqlConnection::keep(const QString& sql, const QVariantList& binds, QSqlQuery query) const
{
    query.finish();
    if (isKept(sql) && std::none_of(binds.begin(), binds.end(), isLarge))
        m_idle.insert_or_assign(sql, std::move(query));
}

Logged<void> SqlConnection::run(const QString& sql, const QVariantList& binds) const
{
    QSqlQuery query = take(sql);
    if (auto done = execute(query, sql, binds); !done)
        return done;
    keep(sql, binds, std::move(query));
    return {};
}

Logged<void> SqlConnection::each(const QString& sql, const QVariantList& binds,
                                 const std::function<Logged<void>(const Row&)>& take) const
{
    QSqlQuery query = this->take(sql);
    if (auto done = execute(query, sql, binds); !done)
        return done;
    Logged<void> taken;
    const Row row(query);
    while (taken && query.next())
        taken = take(row);
    if (taken && query.lastError().isValid())
        return failed(query.lastError());
    keep(sql, binds, std::move(query));
    return taken;
}

Logged<QVariant> SqlConnection::value(const QString& sql, const QVariantList& binds) const
{
    QSqlQuery query = take(sql);
    if (auto done = execute(query, sql, binds); !done)
        return tl::unexpected(done.error());
    QVariant value;
    if (query.next())
        value = query.value(0);
    else if (query.lastError().isValid())
        return failed(query.lastError());
    keep(sql, binds, std::move(query));
    return value;
}

} // namespace strandbench
