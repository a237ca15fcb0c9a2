// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/event_io.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// What tells an argument's kind: the key of the one member of its object.
/// Without the byte order marks it begins with, which no JSON text keeps (see parseObject()).
QString withoutMark(const QString& text)
{
    const auto first = std::find_if(text.cbegin(), text.cend(), [](QChar c) { return c != QChar::ByteOrderMark; });
    return text.mid(first - text.cbegin());
}

QJsonObject writtenArgument(const Argument& argument)
{
    struct Visitor {
        QJsonObject operator()(Length q) const { return {{u"length_um"_s, grid::micrometres(q)}}; }
        QJsonObject operator()(Mass q) const { return {{u"mass_ug"_s, grid::micrograms(q)}}; }
        QJsonObject operator()(Volume q) const { return {{u"volume_ul"_s, grid::microlitres(q)}}; }
        QJsonObject operator()(Duration q) const { return {{u"duration_ms"_s, grid::milliseconds(q)}}; }
        QJsonObject operator()(Temperature q) const { return {{u"temperature_mk"_s, grid::millikelvin(q)}}; }
        QJsonObject operator()(TemperatureStep q) const { return {{u"step_mk"_s, grid::millikelvin(q)}}; }
        QJsonObject operator()(Fraction q) const { return {{u"share_ppm"_s, grid::millionths(q)}}; }
        QJsonObject operator()(Count n) const { return {{u"count"_s, n.value}}; }
        QJsonObject operator()(const QString& code) const { return {{u"code"_s, withoutMark(code)}}; }
    };
    return std::visit(Visitor{}, argument);
}

Argument quantityOf(const QString& key, qint64 n)
{
    if (key == "length_um"_L1)
        return grid::fromMicrometres(n);
    if (key == "mass_ug"_L1)
        return grid::fromMicrograms(n);
    if (key == "volume_ul"_L1)
        return grid::fromMicrolitres(n);
    if (key == "duration_ms"_L1)
        return grid::fromMilliseconds(n);
    if (key == "temperature_mk"_L1)
        return grid::fromMillikelvin(n);
    if (key == "step_mk"_L1)
        return grid::stepFromMillikelvin(n);
    return grid::fromMillionths(n);
}

/// Arguments may be below 0 (a margin to the dew point).
Argument readArgument(const QJsonObject& json, const QString& path, Faults& faults)
{
    static const QStringList quantities{u"length_um"_s,      u"mass_ug"_s, u"volume_ul"_s, u"duration_ms"_s,
                                        u"temperature_mk"_s, u"step_mk"_s, u"share_ppm"_s};
    const QStringList all = quantities + QStringList{u"count"_s, u"code"_s};
    const QStringList keys = json.keys();
    StrictObject object(json, path, faults);
    if (keys.size() != 1 || !all.contains(keys.constFirst())) {
        faults.push_back({path, keys.join(u", "_s), FaultKind::NotOneOf, all});
        return Count{};
    }
    const QString& key = keys.constFirst();
    if (key == "code"_L1)
        return object.textOrEmpty(key);
    if (key == "count"_L1) {
        constexpr int most = std::numeric_limits<int>::max();
        return Count{static_cast<int>(object.integer(key, -most, most, {}))};
    }
    return quantityOf(key, object.integer(key, -grid::greatest, grid::greatest, {}));
}

bool isHex(const QString& text)
{
    return text.size() % 2 == 0 && std::all_of(text.cbegin(), text.cend(), [](QChar c) {
               return (c >= u'0' && c <= u'9') || (c >= u'a' && c <= u'f');
           });
}

} // namespace

void EventWriter::quantity(const QString& key, qint64 n)
{
    if (n < 0)
        throw std::logic_error("a stored quantity below 0: " + key.toStdString());
    m_json[key] = n;
}

void EventWriter::humidity(const QString& key, Fraction q)
{
    const qint64 n = grid::millionths(q);
    if (n < 1 || n > grid::one)
        throw std::logic_error("a humidity that no air has");
    m_json[key] = n;
}

void EventWriter::seq(const QString& key, qint64 v)
{
    if (v < 1)
        throw std::logic_error("a place in the chain below 1");
    quantity(key, v);
}

void EventWriter::text(const QString& key, const QString& v) { m_json[key] = withoutMark(v); }

void EventWriter::maybeDate(const QString& key, const std::optional<QDate>& v)
{
    if (!v)
        return;
    if (!v->isValid())
        throw std::logic_error("a date that is none is not stored");
    m_json[key] = v->toString(Qt::ISODate);
}

void EventWriter::texts(const QString& key, const std::vector<QString>& v)
{
    QJsonArray list;
    for (const QString& text : v)
        list << withoutMark(text);
    m_json[key] = list;
}

void EventWriter::arguments(const QString& key, const std::vector<Argument>& v)
{
    QJsonArray list;
    for (const Argument& argument : v)
        list << writtenArgument(argument);
    m_json[key] = list;
}

qint64 EventReader::quantity(const QString& key, const char16_t* unit)
{
    return m_json.integer(key, 0, grid::greatest, QString::fromUtf16(unit));
}

void EventReader::count(const QString& key, int& v)
{
    v = static_cast<int>(m_json.integer(key, 0, std::numeric_limits<int>::max(), {}));
}

void EventReader::wide(const QString& key, qint64& v)
{
    v = m_json.integer(key, 0, std::numeric_limits<qint64>::max(), {});
}

void EventReader::hash(const QString& key, QByteArray& v)
{
    const QString text = m_json.textOrEmpty(key);
    if (isHex(text))
        v = QByteArray::fromHex(text.toLatin1());
    else
        m_json.fault(key, text, FaultKind::NotReadable, {u"00ff"_s});
}

/// As it is written, and no other spelling of it: the bytes of an event are what is chained.
void EventReader::uuid(const QString& key, QUuid& v)
{
    const QString text = m_json.textOrEmpty(key);
    v = QUuid::fromString(text);
    if (v.isNull() || v.toString(QUuid::WithoutBraces) != text)
        m_json.fault(key, text, FaultKind::NotReadable, {u"6ba7b810-9dad-41d1-80b4-00c04fd430c8"_s});
}

void EventReader::texts(const QString& key, std::vector<QString>& v)
{
    const QJsonArray items = m_json.list(key);
    for (qsizetype i = 0; i < items.size(); ++i) {
        if (items.at(i).isString())
            v.push_back(items.at(i).toString());
        else
            m_json.fault(u"%1[%2]"_s.arg(key).arg(i), {}, FaultKind::WrongKind, {u"text"_s});
    }
}

void EventReader::arguments(const QString& key, std::vector<Argument>& v)
{
    for (const auto& [path, json] : m_json.objects(key))
        v.push_back(readArgument(json, path, m_faults));
}

void EventReader::maybeTemperature(const QString& key, std::optional<Temperature>& v)
{
    if (const auto n = m_json.optionalInteger(key, 0, grid::greatest, u"mK"_s))
        v = grid::fromMillikelvin(*n);
}

void EventReader::maybeDate(const QString& key, std::optional<QDate>& v)
{
    m_json.known(key);
    if (!m_json.has(key))
        return;
    const QString text = m_json.text(key, 10);
    // Only as it is written: "2027-3-1" would read back as another text.
    const QDate date = QDate::fromString(text, Qt::ISODate);
    if (date.isValid() && date.toString(Qt::ISODate) == text)
        v = date;
    else
        m_json.fault(key, text, FaultKind::NotReadable, {QStringLiteral("2027-03-01")});
}

void EventReader::seq(const QString& key, qint64& v)
{
    v = m_json.integer(key, 1, std::numeric_limits<qint64>::max(), {});
}

void EventReader::maybeSeq(const QString& key, std::optional<qint64>& v)
{
    v = m_json.optionalInteger(key, 1, std::numeric_limits<qint64>::max(), {});
}

} // namespace strandbench
