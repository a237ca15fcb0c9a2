// SPDX-License-Identifier: GPL-3.0-or-later
#include "qt_log.h"

#include "statements.h"

#include <QSqlError>
#include <QUuid>

#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench::commitbench {
namespace {

QVariant variantOf(sqlite3_value* value)
{
    const auto* lying = static_cast<const char*>(sqlite3_value_blob(value));
    const char* bytes = lying ? lying : ""; // empty is not null
    const qsizetype size = sqlite3_value_bytes(value);
    switch (sqlite3_value_type(value)) {
    case SQLITE_INTEGER:
        return qint64(sqlite3_value_int64(value));
    case SQLITE_TEXT:
        return QString::fromUtf8(bytes, size);
    case SQLITE_BLOB:
        return QByteArray(bytes, size);
    case SQLITE_NULL:
        return {};
    default:
        throw std::runtime_error("a log holds no such value");
    }
}

std::vector<QVariantList> variantsOf(const std::vector<Cells>& rows)
{
    std::vector<QVariantList> all;
    for (const Cells& row : rows) {
        QVariantList& values = all.emplace_back();
        for (const Cell& each : row)
            values << variantOf(each.get());
    }
    return all;
}

} // namespace

QtActRows forQt(const ActRows& act)
{
    return {variantsOf(act.event), variantsOf(act.blobs), variantsOf(act.links), variantsOf(act.summary)};
}

QtLog::QtLog(const QString& path)
    : m_name(u"commit-"_s + QUuid::createUuid().toString(QUuid::WithoutBraces)),
      m_database(QSqlDatabase::addDatabase(u"QSQLITE"_s, m_name))
{
    m_database.setDatabaseName(path);
    if (!m_database.open())
        throw std::runtime_error("the log does not open: " + path.toStdString());
    for (const char* pragma : allPragmas)
        if (!QSqlQuery(m_database).exec(QString::fromLatin1(pragma)))
            throw std::runtime_error(pragma);
    for (const char* sql : allStatements) {
        QSqlQuery& query = m_statements.emplace_back(m_database);
        if (!query.prepare(QString::fromLatin1(sql)))
            throw std::runtime_error(query.lastError().text().toStdString());
    }
}

QtLog::~QtLog()
{
    m_statements.clear();
    m_database.close();
    m_database = QSqlDatabase(); // removeDatabase warns while a handle lives
    QSqlDatabase::removeDatabase(m_name);
}

void QtLog::run(QSqlQuery& query, const QVariantList& values)
{
    for (int place = 0; place < values.size(); ++place)
        query.bindValue(place, values[place]);
    if (!query.exec())
        throw std::runtime_error(query.lastError().text().toStdString());
    query.finish();
}

void QtLog::write(const QtActRows& act)
{
    run(m_statements[Begin]);
    for (const QVariantList& each : act.event)
        run(m_statements[InsertEvent], each);
    for (const QVariantList& each : act.blobs)
        run(m_statements[InsertBlob], each);
    for (const QVariantList& each : act.links)
        run(m_statements[InsertLink], each);
    for (const QVariantList& each : act.summary)
        run(m_statements[PutSummary], each);
    run(m_statements[Commit]);
}

qint64 QtLog::events() const
{
    QSqlQuery query(u"SELECT count(*) FROM event"_s, m_database);
    return query.next() ? query.value(0).toLongLong() : -1;
}

} // namespace strandbench::commitbench
