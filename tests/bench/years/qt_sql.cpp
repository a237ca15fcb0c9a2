// SPDX-License-Identifier: GPL-3.0-or-later
#include "qt_sql.h"

#include <QSqlError>
#include <QUrl>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::yearsbench {

QtSql::QtSql(const QString& path, Reading reading)
    : m_name(u"years-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces)),
      m_database(QSqlDatabase::addDatabase(u"QSQLITE"_s, m_name))
{
    m_database.setConnectOptions(u"QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI"_s);
    m_database.setDatabaseName(QUrl::fromLocalFile(path).toString(QUrl::FullyEncoded) +
                               (reading == Reading::Still ? u"?immutable=1"_s : u"?mode=ro"_s));
    if (!m_database.open() || !QSqlQuery(m_database).exec(u"PRAGMA cache_size = -%1"_s.arg(cacheKiB)))
        throw std::runtime_error("it does not open: " + path.toStdString());
}

QtSql::~QtSql()
{
    m_database.close();
    m_database = QSqlDatabase(); // removeDatabase warns while a handle lives
    QSqlDatabase::removeDatabase(m_name);
}

QtSql::Statement::Statement(const QSqlDatabase& database, const char* sql) : m_query(database)
{
    m_query.setForwardOnly(true);
    if (!m_query.prepare(QString::fromLatin1(sql)))
        end();
}

void QtSql::Statement::end() const { throw std::runtime_error(m_query.lastError().text().toStdString()); }

} // namespace strandbench::yearsbench
