// SPDX-License-Identifier: GPL-3.0-or-later
// A writer and a reader of stored values with the same members, so that one list of fields a type
// (event_fields.h) serves both ways and the two cannot drift apart.
#pragma once

#include "exchange/event_grid.h"
#include "exchange/strict_json.h"
#include "quantity/reason.h"

#include <QDate>

#include <concepts>
#include <type_traits>

namespace strandbench {

/// V is T or const T: fields are listed once for both.
template <class V, class T>
concept Is = std::same_as<std::remove_const_t<V>, T>;

class EventWriter {
public:
    static constexpr bool reads = false;

    void length(const QString& key, Length q) { quantity(key, grid::micrometres(q)); }
    void filler(const QString& key, Mass q) { quantity(key, grid::milligrams(q)); }
    void hardener(const QString& key, Mass q) { quantity(key, grid::micrograms(q)); }
    void volume(const QString& key, Volume q) { quantity(key, grid::microlitres(q)); }
    void duration(const QString& key, Duration q) { quantity(key, grid::milliseconds(q)); }
    void temperature(const QString& key, Temperature q) { quantity(key, grid::millikelvin(q)); }
    void share(const QString& key, Fraction q) { quantity(key, grid::millionths(q)); }
    /// Throws std::logic_error for one that is not above 0 and at most 1, which the reader would refuse.
    void humidity(const QString& key, Fraction q);
    void thousandths(const QString& key, double v) { quantity(key, grid::whole(v * 1e3)); }
    /// A number or a quantity in SI units, in whole parts of which the key names the size.
    void number(const QString& key, double v, double partsInOne) { quantity(key, grid::whole(v * partsInOne)); }
    template <class Q> void scaled(const QString& key, Q q, double partsInOne) { number(key, q.value(), partsInOne); }
    /// The same, where it may be below 0.
    void signedNumber(const QString& key, double v, double partsInOne) { m_json[key] = grid::whole(v * partsInOne); }
    void count(const QString& key, int v) { quantity(key, v); }
    void wide(const QString& key, qint64 v) { quantity(key, v); }
    void text(const QString& key, const QString& v);
    void flag(const QString& key, bool v) { m_json[key] = v; }
    void hash(const QString& key, const QByteArray& v) { m_json[key] = QString::fromLatin1(v.toHex()); }
    /// Left out when empty, as older layouts do.
    void maybeText(const QString& key, const QString& v)
    {
        if (!v.isEmpty())
            text(key, v);
    }
    void maybeHash(const QString& key, const QByteArray& v)
    {
        if (!v.isEmpty())
            hash(key, v);
    }
    void uuid(const QString& key, const QUuid& v) { m_json[key] = v.toString(QUuid::WithoutBraces); }
    void maybeUuid(const QString& key, const QUuid& v)
    {
        if (!v.isNull())
            uuid(key, v);
    }
    void texts(const QString& key, const std::vector<QString>& v);
    void maybeTexts(const QString& key, const std::vector<QString>& v)
    {
        if (!v.empty())
            texts(key, v);
    }
    void arguments(const QString& key, const std::vector<Argument>& v);

    template <class E> void code(const QString& key, E v) { m_json[key] = codeOf(v); }
    template <class E> void maybeCode(const QString& key, const std::optional<E>& v)
    {
        if (v)
            code(key, *v);
    }
    template <class E> void maybeCodes(const QString& key, const std::vector<E>& v)
    {
        std::vector<QString> codes;
        for (const E each : v)
            codes.push_back(codeOf(each));
        maybeTexts(key, codes);
    }
    void maybeFlag(const QString& key, const std::optional<bool>& v)
    {
        if (v)
            flag(key, *v);
    }
    void maybeTemperature(const QString& key, const std::optional<Temperature>& v)
    {
        if (v)
            temperature(key, *v);
    }
    /// As ISO 8601 writes it; a date that is none throws std::logic_error.
    void maybeDate(const QString& key, const std::optional<QDate>& v);
    /// An event's place in its chain, from 1.
    void seq(const QString& key, qint64 v);
    void maybeSeq(const QString& key, const std::optional<qint64>& v)
    {
        if (v)
            seq(key, *v);
    }

    template <class T> void part(const QString& key, const T& v) { m_json[key] = written(v); }
    template <class T> void maybePart(const QString& key, const std::optional<T>& v)
    {
        if (v)
            part(key, *v);
    }
    template <class T> void each(const QString& key, const std::vector<T>& v)
    {
        QJsonArray list;
        for (const T& item : v)
            list << written(item);
        m_json[key] = list;
    }
    /// Left out when empty, as older layouts do.
    template <class T> void maybeEach(const QString& key, const std::vector<T>& v)
    {
        if (!v.empty())
            each(key, v);
    }

    template <class T> [[nodiscard]] static QJsonObject written(const T& v)
    {
        EventWriter writer;
        fields(writer, v);
        return writer.m_json;
    }

private:
    /// Throws std::logic_error for a number below 0, which the reader would refuse.
    void quantity(const QString& key, qint64 n);

    QJsonObject m_json;
};

class EventReader {
public:
    static constexpr bool reads = true;

    EventReader(const QJsonObject& json, const QString& path, Faults& faults)
        : m_json(json, path, faults), m_faults(faults)
    {}

    void length(const QString& key, Length& q) { q = grid::fromMicrometres(quantity(key, u"um")); }
    void filler(const QString& key, Mass& q) { q = grid::fromMilligrams(quantity(key, u"mg")); }
    void hardener(const QString& key, Mass& q) { q = grid::fromMicrograms(quantity(key, u"ug")); }
    void volume(const QString& key, Volume& q) { q = grid::fromMicrolitres(quantity(key, u"ul")); }
    void duration(const QString& key, Duration& q) { q = grid::fromMilliseconds(quantity(key, u"ms")); }
    void temperature(const QString& key, Temperature& q) { q = grid::fromMillikelvin(quantity(key, u"mK")); }
    void share(const QString& key, Fraction& q) { q = grid::fromMillionths(quantity(key, u"ppm")); }
    /// Above 0 and at most 1: of any other air there is no dew point, and no event was ever written with one.
    void humidity(const QString& key, Fraction& q)
    {
        q = grid::fromMillionths(m_json.integer(key, 1, grid::one, QStringLiteral("ppm")));
    }
    void thousandths(const QString& key, double& v) { v = static_cast<double>(quantity(key, u"")) / 1e3; }
    void number(const QString& key, double& v, double partsInOne)
    {
        v = static_cast<double>(quantity(key, u"")) / partsInOne;
    }
    void signedNumber(const QString& key, double& v, double partsInOne)
    {
        v = static_cast<double>(m_json.integer(key, -grid::greatest, grid::greatest, {})) / partsInOne;
    }
    template <class Q> void scaled(const QString& key, Q& q, double partsInOne)
    {
        double v = 0;
        number(key, v, partsInOne);
        q = Q::from_value(v);
    }
    void count(const QString& key, int& v);
    void wide(const QString& key, qint64& v); ///< a count of a log's events
    void text(const QString& key, QString& v) { v = m_json.textOrEmpty(key); }
    void flag(const QString& key, bool& v) { v = m_json.boolean(key); }
    void hash(const QString& key, QByteArray& v);
    void maybeText(const QString& key, QString& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            text(key, v);
    }
    void maybeHash(const QString& key, QByteArray& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            hash(key, v);
    }
    void uuid(const QString& key, QUuid& v);
    void maybeUuid(const QString& key, QUuid& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            uuid(key, v);
    }
    void texts(const QString& key, std::vector<QString>& v);
    void maybeTexts(const QString& key, std::vector<QString>& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            texts(key, v);
    }
    void arguments(const QString& key, std::vector<Argument>& v);

    template <class E> void code(const QString& key, E& v) { v = m_json.oneOf<E>(key); }
    template <class E> void maybeCode(const QString& key, std::optional<E>& v) { v = m_json.optionalOneOf<E>(key); }
    template <class E> void maybeCodes(const QString& key, std::vector<E>& v)
    {
        std::vector<QString> codes;
        maybeTexts(key, codes);
        for (std::size_t i = 0; i < codes.size(); ++i)
            if (const auto value = fromCode<E>(codes[i]))
                v.push_back(*value);
            else
                m_json.fault(QStringLiteral("%1[%2]").arg(key).arg(i), codes[i], FaultKind::NotOneOf, allCodes<E>());
    }
    void maybeFlag(const QString& key, std::optional<bool>& v) { v = m_json.optionalBoolean(key); }
    void maybeTemperature(const QString& key, std::optional<Temperature>& v);
    void maybeDate(const QString& key, std::optional<QDate>& v);
    void seq(const QString& key, qint64& v);
    void maybeSeq(const QString& key, std::optional<qint64>& v);

    template <class T> void part(const QString& key, T& v)
    {
        const std::size_t before = m_faults.size();
        const QJsonObject json = m_json.object(key);
        if (m_faults.size() == before)
            readInto(v, json, m_json.pathOf(key), m_faults);
    }
    template <class T> void maybePart(const QString& key, std::optional<T>& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            part(key, v.emplace());
    }
    template <class T> void each(const QString& key, std::vector<T>& v)
    {
        for (const auto& [path, json] : m_json.objects(key))
            readInto(v.emplace_back(), json, path, m_faults);
    }
    template <class T> void maybeEach(const QString& key, std::vector<T>& v)
    {
        m_json.known(key);
        if (m_json.has(key))
            each(key, v);
    }

    template <class T> static void readInto(T& v, const QJsonObject& json, const QString& path, Faults& faults)
    {
        EventReader reader(json, path, faults);
        fields(reader, v);
        reader.m_json.finish();
    }

private:
    qint64 quantity(const QString& key, const char16_t* unit);

    StrictObject m_json;
    Faults& m_faults;
};

} // namespace strandbench
