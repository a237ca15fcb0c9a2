// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/checks.h"
#include "repairlog/failure.h"
#include "repairlog/rows.h"
#include "repairlog/schema.h"

#include <QRegularExpression>
#include <QUuid>

#include <map>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Object ("table event") to the table it is of and its SQL, as stored, and what types these are stored as. The indexes
/// that SQLite makes for a key count.
using Objects = std::map<QString, QByteArray>;

Logged<Objects> objectsOf(const SqlConnection& connection, const QString& which)
{
    Objects objects;
    const auto take = [&](const Row& row) -> Logged<void> {
        objects[QString::fromUtf8(row.bytes(0) + ' ' + row.bytes(1))] =
            row.bytes(2) + ' ' + row.bytes(3) + ' ' + row.bytes(4);
        return {};
    };
    const QString texts = storedTexts({u"type"_s, u"name"_s, u"tbl_name"_s, u"sql"_s});
    return connection
        .each(
            u"SELECT %1, typeof(type) || typeof(name) || typeof(tbl_name) || typeof(sql) FROM sqlite_schema WHERE %2"_s
                .arg(texts, which),
            {}, take)
        .map([&] { return objects; });
}

std::optional<Break> difference(const Objects& found, const Objects& wanted)
{
    for (const auto& [name, sql] : wanted) {
        const auto held = found.find(name);
        if (held == found.end())
            return Break{u"schema"_s, name + u" is missing"_s};
        if (held->second != sql)
            return Break{u"schema"_s, name + u" is not as this program makes it"_s};
    }
    for (const auto& [name, sql] : found)
        if (!wanted.contains(name))
            return Break{u"schema"_s, name + u" is not of this program"_s};
    return std::nullopt;
}

/// The steps that a file of this version has had: one that was not written to since is as it was then.
std::vector<Migration> stepsTo(int version)
{
    std::vector<Migration> steps = migrations();
    std::erase_if(steps, [version](const Migration& each) { return version >= 1 && each.version > version; });
    return steps;
}

/// SQLite's check puts a page that the disk would not give among the pages that do not hold. In its words the two are
/// told apart: by the code of the error (the low byte 10 is SQLITE_IOERR), or, of a page in a list of pages, by its not
/// coming at all, since a number beyond the file is called an invalid one.
bool diskFailed(const QString& said)
{
    static const QRegularExpression code(u"unable to get the page. error code=(\\d+)"_s);
    const auto found = code.match(said);
    return found.hasMatch() ? (found.captured(1).toInt() & 0xff) == 10 : said.contains(u"failed to get page"_s);
}

/// Compares with a schema made afresh in memory, so that the statements stand in one place.
Finding compare(const SqlConnection& connection, const QString& which)
{
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version)
        return tl::unexpected(version.error());
    const auto fresh = SqlConnection::open({}, Access::Memory);
    if (!fresh)
        return tl::unexpected(fresh.error());
    if (auto made = migrate(**fresh, stepsTo(version->toInt())); !made)
        return tl::unexpected(made.error());
    const auto wanted = objectsOf(**fresh, which);
    if (!wanted)
        return tl::unexpected(wanted.error());
    return objectsOf(connection, which).map([&](const Objects& found) { return difference(found, *wanted); });
}

} // namespace

Finding checkIntegrity(const SqlConnection& connection)
{
    const auto said = connection.value(u"PRAGMA integrity_check(1)"_s);
    if (!said)
        return tl::unexpected(said.error());
    if (said->toString() == u"ok"_s)
        return std::nullopt;
    if (diskFailed(said->toString()))
        return failed(LogTrouble::IoError, said->toString());
    return Break{u"integrity"_s, said->toString()};
}

Finding checkTables(const SqlConnection& connection)
{
    auto tables = compare(connection, u"type IN ('table', 'index')"_s);
    if (!tables || *tables)
        return tables;
    const auto stamped = metaValue(connection, u"schema_version"_s);
    if (!stamped)
        return tl::unexpected(stamped.error());
    return connection.value(u"PRAGMA user_version"_s).map([&](const QVariant& version) -> std::optional<Break> {
        if (version.toString() == *stamped)
            return std::nullopt;
        return Break{u"schema"_s, u"user_version is %1, meta says '%2'"_s.arg(version.toString(), *stamped)};
    });
}

Finding checkMeta(const SqlConnection& connection)
{
    const auto version = connection.value(u"PRAGMA user_version"_s);
    if (!version)
        return tl::unexpected(version.error());
    const auto steps = stepsTo(version->toInt());
    std::map<QByteArray, QByteArray> held;
    const auto take = [&](const Row& row) -> Logged<void> {
        held[row.bytes(0)] = row.bytes(1);
        return {};
    };
    if (auto done = connection.each(u"SELECT %1 FROM meta"_s.arg(storedTexts({u"key"_s, u"value"_s})), {}, take); !done)
        return tl::unexpected(done.error());
    const QString origin = QString::fromUtf8(held["origin"]);
    held.erase(photosLostKey().toUtf8()); // checkBlobs() counts them
    const std::map<QByteArray, QByteArray> wanted{
        {"schema_version", QByteArray::number(steps.back().version)},
        {"min_compatible_version", QByteArray::number(steps.back().oldestProgram)},
        {"origin", QUuid::fromString(origin).toByteArray(QUuid::WithoutBraces)},
    };
    if (held != wanted)
        return Break{u"schema"_s, u"meta is not as this program makes it"_s};
    const auto stray = connection.value(
        u"SELECT 1 FROM event WHERE NOT EXISTS (SELECT 1 FROM event WHERE origin = ?) LIMIT 1"_s, {origin});
    return stray.map([&](const QVariant& any) -> std::optional<Break> {
        if (!any.isValid())
            return std::nullopt;
        return Break{u"schema"_s, u"meta: origin is '%1', of which no event is there"_s.arg(origin)};
    });
}

Finding checkGuards(const SqlConnection& connection)
{
    return compare(connection, u"type NOT IN ('table', 'index')"_s);
}

} // namespace strandbench
