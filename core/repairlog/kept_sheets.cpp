// SPDX-License-Identifier: GPL-3.0-or-later
#include "repairlog/kept_sheets.h"

#include "exchange/sheets.h"
#include "repairlog/failure.h"
#include "repairlog/rows.h"

#include <QCryptographicHash>
#include <QSet>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// The sheet of a hash, if the log still has its bytes and they read as one.
Logged<std::optional<ProductSheet>> sheetOf(const SqlConnection& connection, const QByteArray& hash)
{
    const auto bytes = connection.value(u"SELECT bytes FROM blob WHERE hash = ?"_s, {hash});
    if (!bytes)
        return tl::unexpected(bytes.error());
    auto sheet = bytes->isValid() ? readSheet(bytes->toByteArray()) : Checked<ProductSheet>(tl::unexpected(Faults{}));
    return sheet ? std::optional(*std::move(sheet)) : std::nullopt;
}

Logged<void> refuseKept(const SheetKept& kept, const std::vector<QByteArray>& bytes)
{
    const QString what = kindOf(kept) + u": "_s;
    if (demoCatalogue().byId(kept.sheetId))
        return failed(LogTrouble::DoesNotFollow, what + kept.sheetId + u" is a demo sheet's"_s);
    for (const QByteArray& each : bytes) {
        if (const auto sheet = sheetFrom(kept, each))
            return {};
        else if (sheet.error().front().field != u"sha256")
            return failed(LogTrouble::DoesNotFollow, what + inWords(sheet.error().front()));
    }
    return failed(LogTrouble::DoesNotFollow, what + u"its bytes did not come with it"_s);
}

/// The versions that plans of open repairs name.
Logged<QSet<QByteArray>> planned(const SqlConnection& connection)
{
    QSet<QByteArray> hashes;
    const auto take = [&](const Row& row) -> Logged<void> {
        hashes << row.bytes(0);
        return {};
    };
    return connection
        .each(u"SELECT DISTINCT event_blob.hash FROM event_blob JOIN event USING (origin, seq) JOIN summary "
              "ON summary.repair = event.repair WHERE summary.open = 1 AND event.kind IN (?, ?)"_s,
              {kindOf(PlanAccepted{}), kindOf(HardenerIn{})}, take)
        .map([&] { return std::move(hashes); });
}

} // namespace

Checked<ProductSheet> sheetFrom(const SheetKept& kept, const QByteArray& bytes)
{
    const auto fault = [](const QString& field, const QString& value, const QString& allowed) {
        return tl::unexpected(Faults{{field, value, FaultKind::Conflicts, {field, allowed}}});
    };
    const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    if (hash != kept.hash)
        return fault(u"sha256"_s, QString::fromLatin1(kept.hash.toHex()), QString::fromLatin1(hash.toHex()));
    auto sheet = readSheet(bytes);
    if (sheet && sheet->id != kept.sheetId)
        return fault(u"id"_s, sheet->id, kept.sheetId);
    return sheet;
}

Logged<void> refuseSheet(const SqlConnection& connection, const Event& event, const std::vector<QByteArray>& bytes)
{
    if (const auto* kept = std::get_if<SheetKept>(&event.payload))
        return refuseKept(*kept, bytes);
    const auto* aside = std::get_if<SheetLaidAside>(&event.payload);
    if (!aside)
        return {};
    const auto book = sheetBookOf(connection, event.origin);
    if (!book)
        return tl::unexpected(book.error());
    if (!book->inUse(aside->sheetId))
        return failed(LogTrouble::DoesNotFollow, kindOf(*aside) + u": "_s + aside->sheetId + u" is not in use"_s);
    return {};
}

Logged<SheetBook> sheetBookOf(const SqlConnection& connection, const QString& ownOrigin)
{
    SheetBook book;
    const auto events = eventsWhere(connection, u"repair = ? AND kind IN (?, ?) ORDER BY origin, seq"_s,
                                    {textOf(benchSubject()), kindOf(SheetKept{}), kindOf(SheetLaidAside{})});
    if (!events)
        return tl::unexpected(events.error());
    for (const Event& each : *events) {
        const auto* kept = std::get_if<SheetKept>(&each.payload);
        const auto sheet = kept ? sheetOf(connection, kept->hash) : Logged<std::optional<ProductSheet>>();
        if (!sheet)
            return tl::unexpected(sheet.error());
        if (each.origin == ownOrigin)
            book.add(each, *sheet ? &**sheet : nullptr);
        else if (*sheet)
            book.alsoKnown(**sheet);
    }
    const auto named = planned(connection);
    if (!named)
        return tl::unexpected(named.error());
    for (const QByteArray& hash : *named) {
        const auto sheet = sheetOf(connection, hash);
        if (!sheet)
            return tl::unexpected(sheet.error());
        if (*sheet)
            book.alsoKnown(**sheet);
    }
    return book;
}

} // namespace strandbench
