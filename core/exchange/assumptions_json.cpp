// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/assumptions_json.h"

#include "exchange/strict_json.h"
#include "plan/assumption_table.h"

#include <QJsonDocument>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr qint64 formatNumber = 1;
constexpr qint64 latestUtcMs = 4'102'444'800'000; // the year 2100

/// Both sides of what contradicts each other go back to the default.
void settle(Assumptions& assumptions, StrictObject& object)
{
    const Assumptions defaults;
    for (const Fault& each : contradictions(assumptions)) {
        object.fault(each.field, each.value, each.kind, {object.pathOf(each.allowed[0]), each.allowed[1]});
        for (const QString& code : {each.field, each.allowed[0]}) {
            const AssumptionEntry* entry = findAssumption(code);
            entry->put(assumptions, entry->get(defaults));
        }
    }
    // A default put back may meet a third value: then nothing of them is sure.
    if (!contradictions(assumptions).empty())
        assumptions = defaults;
}

Assumptions readChanged(StrictObject& object)
{
    Assumptions read;
    for (const AssumptionEntry& each : assumptionTable()) {
        const auto number =
            object.optionalNumber(each.code, each.number(each.least), each.number(each.most), each.unit);
        if (number)
            each.put(read, each.value(*number));
    }
    settle(read, object);
    return read;
}

Assumptions changedIn(StrictObject& object)
{
    Assumptions read;
    object.nested(u"changed"_s, [&](StrictObject& members) { read = readChanged(members); });
    return read;
}

void readEarlier(StrictObject& root, ReadAssumptions& into)
{
    if (!root.has(u"earlier"_s))
        return root.known(u"earlier"_s);
    for (const auto& [path, json] : root.objects(u"earlier"_s)) {
        const std::size_t before = into.faults.size();
        StrictObject object(json, path, into.faults);
        AssumptionBook::Earlier each;
        each.untilUtcMs = object.integer(u"until_utc_ms"_s, 0, latestUtcMs, u"ms"_s);
        each.assumptions = changedIn(object);
        object.finish();
        if (into.faults.size() == before && !into.book.earlier.empty() &&
            each.untilUtcMs < into.book.earlier.back().untilUtcMs)
            object.fault(u"until_utc_ms"_s, object.shown(u"until_utc_ms"_s), FaultKind::OutOfRange,
                         {plainNumber(static_cast<double>(into.book.earlier.back().untilUtcMs)),
                          plainNumber(static_cast<double>(latestUtcMs)), u"ms"_s});
        if (into.faults.size() == before)
            into.book.earlier.push_back(each);
    }
}

QJsonObject changedToJson(const Assumptions& assumptions)
{
    QJsonObject json;
    for (const AssumptionEntry& each : assumptionTable())
        if (!each.isDefault(assumptions))
            json.insert(each.code, each.numberOf(assumptions));
    return json;
}

} // namespace

ReadAssumptions readAssumptions(const QByteArray& json)
{
    ReadAssumptions read;
    const Checked<QJsonObject> object = parseObject(json);
    if (!object) {
        read.faults = object.error();
        return read;
    }
    StrictObject root(*object, {}, read.faults);
    root.integer(u"format"_s, formatNumber, formatNumber, {});
    read.book.now = changedIn(root);
    readEarlier(root, read);
    root.finish();
    return read;
}

QByteArray writeAssumptions(const AssumptionBook& book)
{
    QJsonArray earlier;
    for (const AssumptionBook::Earlier& each : book.earlier)
        earlier.append(
            QJsonObject{{u"until_utc_ms"_s, each.untilUtcMs}, {u"changed"_s, changedToJson(each.assumptions)}});
    return QJsonDocument(QJsonObject{{u"format"_s, formatNumber},
                                     {u"changed"_s, changedToJson(book.now)},
                                     {u"earlier"_s, earlier}})
        .toJson();
}

} // namespace strandbench
