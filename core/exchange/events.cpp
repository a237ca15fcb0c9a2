// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/events.h"

#include "exchange/event_payload_fields.h"

#include <QJsonDocument>

#include <stdexcept>
#include <utility>

namespace strandbench {
namespace {

struct Kind {
    QString code;
    int version = 0;
    Payload (*read)(const QJsonObject& json, Faults& faults) = nullptr;
};

template <class T> Payload readAs(const QJsonObject& json, Faults& faults)
{
    T payload;
    EventReader::readInto(payload, json, {}, faults);
    return payload;
}

/// What is alike in all payloads of one type.
template <class T> Kind kindOfAll()
{
    const Payload empty = T{};
    return {kindOf(empty), kindVersionOf(empty), readAs<T>};
}

/// One entry for every alternative of Payload, so that none can be forgotten.
template <std::size_t... I> std::vector<Kind> kindsOf(std::index_sequence<I...>)
{
    return {kindOfAll<std::variant_alternative_t<I, Payload>>()...};
}

const std::vector<Kind>& kinds()
{
    static const std::vector<Kind> all = kindsOf(std::make_index_sequence<std::variant_size_v<Payload>>());
    return all;
}

Checked<Payload> unknownKind(const QString& kind)
{
    QStringList known;
    for (const Kind& each : kinds())
        known << each.code;
    return tl::unexpected(Faults{{u"kind"_s, kind, FaultKind::NotOneOf, known}});
}

Checked<Payload> unknownVersion(int version, int newest)
{
    QStringList known;
    for (int each = 1; each <= newest; ++each)
        known << QString::number(each);
    return tl::unexpected(Faults{{u"version"_s, QString::number(version), FaultKind::NotOneOf, known}});
}

} // namespace

QByteArray encodePayload(const Payload& payload)
{
    const QJsonObject json = std::visit([](const auto& each) { return EventWriter::written(each); }, payload);
    return QJsonDocument(json).toJson(QJsonDocument::Compact);
}

Checked<Payload> decodePayload(const QString& kind, int version, const QByteArray& bytes)
{
    const auto known =
        std::find_if(kinds().cbegin(), kinds().cend(), [&](const Kind& each) { return each.code == kind; });
    if (known == kinds().cend())
        return unknownKind(kind);
    // What a newer layout holds beyond an older one may be left out, so that the older reads the same.
    if (version < 1 || version > known->version)
        return unknownVersion(version, known->version);
    const auto json = parseObject(bytes);
    if (!json)
        return tl::unexpected(json.error());
    Faults faults;
    Payload payload = known->read(*json, faults);
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return payload;
}

Payload stored(const Payload& payload)
{
    auto read = decodePayload(kindOf(payload), kindVersionOf(payload), encodePayload(payload));
    if (!read)
        throw std::logic_error("a payload that was written does not read back: " +
                               read.error().front().field.toStdString());
    return *std::move(read);
}

} // namespace strandbench
