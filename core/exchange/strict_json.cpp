// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/strict_json.h"

#include "exchange/json_keys.h"

#include <QJsonDocument>
#include <QLocale>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString kindName(QJsonValue::Type type)
{
    switch (type) {
    case QJsonValue::Bool:
        return u"true or false"_s;
    case QJsonValue::Double:
        return u"number"_s;
    case QJsonValue::String:
        return u"text"_s;
    case QJsonValue::Array:
        return u"list"_s;
    case QJsonValue::Object:
        return u"object"_s;
    default:
        return u"null"_s;
    }
}

QString shownValue(const QJsonValue& value)
{
    constexpr int longest = 80; // enough to recognise it by
    QString text = value.toString();
    if (!value.isString())
        text = QString::fromUtf8(compactJson(value));
    return text.size() > longest ? text.left(longest) + u'…' : text;
}

bool hasVisible(const QString& text)
{
    return std::any_of(text.cbegin(), text.cend(),
                       [](QChar c) { return !c.isSpace() && c.category() != QChar::Other_Control; });
}

/// What a key names, without the unit at its end: "density_g_per_ml" and "density_lb_per_ft3" are "density".
QString withoutUnit(const QString& key)
{
    static const QSet<QString> units{u"mm"_s,  u"cm"_s,  u"m"_s,    u"um"_s,      u"in"_s,       u"inch"_s, u"ft"_s,
                                     u"mil"_s, u"g"_s,   u"kg"_s,   u"mg"_s,      u"ug"_s,       u"lb"_s,   u"oz"_s,
                                     u"ml"_s,  u"l"_s,   u"ul"_s,   u"gal"_s,     u"cm3"_s,      u"m3"_s,   u"in3"_s,
                                     u"ft3"_s, u"s"_s,   u"ms"_s,   u"sec"_s,     u"min"_s,      u"h"_s,    u"c"_s,
                                     u"f"_s,   u"k"_s,   u"mk"_s,   u"percent"_s, u"fraction"_s, u"ppm"_s,  u"j"_s,
                                     u"kj"_s,  u"cal"_s, u"kcal"_s, u"btu"_s,     u"w"_s,        u"mol"_s,  u"per"_s};
    QStringList parts = key.split(u'_');
    while (parts.size() > 1 && units.contains(parts.constLast()))
        parts.removeLast();
    return parts.join(u'_');
}

QString placeOf(const QByteArray& json, qsizetype offset)
{
    const QByteArray before = json.left(offset);
    const qsizetype column = offset - before.lastIndexOf('\n');
    return u"%1:%2 %3"_s.arg(before.count('\n') + 1)
        .arg(column)
        .arg(QString::fromUtf8(json.mid(offset, 20)).simplified());
}

/// Where a text begins with a byte order mark. Qt drops it from a text stored as UTF-8 and keeps it in a key that is
/// looked for: "moisture" would be there and yet not be found.
std::optional<qsizetype> markBeforeText(const QByteArray& json)
{
    bool inside = false;
    for (qsizetype i = 0; i < json.size(); ++i) {
        if (inside && json.at(i) == '\\') {
            ++i;
            continue;
        }
        if (json.at(i) != '"')
            continue;
        inside = !inside;
        const QByteArrayView rest = QByteArrayView(json).sliced(i + 1);
        const QByteArrayView first = rest.first(std::min<qsizetype>(rest.size(), 6));
        const bool escaped = qstrnicmp(first.data(), first.size(), "\\ufeff", 6) == 0;
        if (inside && (escaped || first.startsWith("\xef\xbb\xbf")))
            return i;
    }
    return std::nullopt;
}

} // namespace

QByteArray compactJson(const QJsonValue& value)
{
    // Qt writes whole documents alone.
    return QJsonDocument(QJsonArray{value}).toJson(QJsonDocument::Compact).mid(1).chopped(1);
}

QString plainNumber(double value) { return QString::number(value, 'f', QLocale::FloatingPointShortest); }

Checked<QJsonObject> parseObject(const QByteArray& json)
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (error.error != QJsonParseError::NoError)
        return tl::unexpected(Faults{{{}, placeOf(json, error.offset), FaultKind::NotReadable, {u"{\"key\": 1.5}"_s}}});
    if (const auto at = markBeforeText(json))
        return tl::unexpected(Faults{{{}, placeOf(json, *at), FaultKind::NotReadable, {u"{\"key\": 1.5}"_s}}});
    if (!document.isObject())
        return tl::unexpected(Faults{{{}, shownValue(document.array()), FaultKind::WrongKind, {u"object"_s}}});
    if (Faults repeated = repeatedKeys(json); !repeated.empty())
        return tl::unexpected(std::move(repeated));
    return document.object();
}

StrictObject::StrictObject(const QJsonObject& object, QString path, Faults& faults)
    : m_object(object), m_path(std::move(path)), m_faults(faults)
{}

bool StrictObject::has(const QString& key) const { return m_object.contains(key); }

std::optional<QJsonValue> StrictObject::given(const QString& key, QJsonValue::Type type)
{
    known(key);
    const QJsonValue value = m_object.value(key);
    if (value.isUndefined())
        return std::nullopt;
    if (value.type() == type)
        return value;
    fault(key, shownValue(value), FaultKind::WrongKind, {kindName(type)});
    return std::nullopt;
}

std::optional<QJsonValue> StrictObject::required(const QString& key, QJsonValue::Type type, const QStringList& missing)
{
    if (!has(key))
        fault(key, {}, FaultKind::Missing, missing);
    return given(key, type);
}

std::optional<double> StrictObject::optionalNumber(const QString& key, double lowest, double highest,
                                                   const QString& unit)
{
    const auto value = given(key, QJsonValue::Double);
    if (!value)
        return std::nullopt;
    const double number = value->toDouble();
    if (std::isfinite(number) && number >= lowest && number <= highest)
        return number;
    fault(key, shownValue(*value), FaultKind::OutOfRange, {plainNumber(lowest), plainNumber(highest), unit});
    return std::nullopt;
}

double StrictObject::number(const QString& key, double lowest, double highest, const QString& unit)
{
    if (!has(key))
        fault(key, {}, FaultKind::Missing, unit.isEmpty() ? QStringList{u"number"_s} : QStringList{u"number"_s, unit});
    return optionalNumber(key, lowest, highest, unit).value_or(lowest);
}

std::optional<qint64> StrictObject::optionalInteger(const QString& key, qint64 lowest, qint64 highest,
                                                    const QString& unit)
{
    const auto value = given(key, QJsonValue::Double);
    if (!value)
        return std::nullopt;
    // toInteger() answers with its default for a number that is not whole: ask with two different ones.
    const qint64 whole = value->toInteger(0);
    if (whole != value->toInteger(1)) {
        fault(key, shownValue(*value), FaultKind::WrongKind, {u"whole number"_s});
        return std::nullopt;
    }
    if (whole >= lowest && whole <= highest)
        return whole;
    fault(key, shownValue(*value), FaultKind::OutOfRange, {QString::number(lowest), QString::number(highest), unit});
    return std::nullopt;
}

qint64 StrictObject::integer(const QString& key, qint64 lowest, qint64 highest, const QString& unit)
{
    if (!has(key))
        fault(key, {}, FaultKind::Missing,
              unit.isEmpty() ? QStringList{u"whole number"_s} : QStringList{u"whole number"_s, unit});
    return optionalInteger(key, lowest, highest, unit).value_or(lowest);
}

std::optional<QString> StrictObject::optionalText(const QString& key, int longest)
{
    const auto value = given(key, QJsonValue::String);
    if (!value)
        return std::nullopt;
    const QString text = value->toString();
    if (!hasVisible(text)) {
        fault(key, text, FaultKind::Empty, {u"text"_s});
        return std::nullopt;
    }
    if (text.size() > longest) {
        fault(key, shownValue(*value), FaultKind::TooLong, {QString::number(longest)});
        return std::nullopt;
    }
    return text;
}

QString StrictObject::text(const QString& key, int longest)
{
    if (!has(key))
        fault(key, {}, FaultKind::Missing, {u"text"_s});
    return optionalText(key, longest).value_or(QString());
}

QString StrictObject::textOrEmpty(const QString& key)
{
    const auto value = required(key, QJsonValue::String, {u"text"_s});
    return value ? value->toString() : QString();
}

std::optional<bool> StrictObject::optionalBoolean(const QString& key)
{
    const auto value = given(key, QJsonValue::Bool);
    return value ? std::optional(value->toBool()) : std::nullopt;
}

bool StrictObject::boolean(const QString& key)
{
    const auto value = required(key, QJsonValue::Bool, {u"true or false"_s});
    return value && value->toBool();
}

QString StrictObject::word(const QString& key, const QStringList& allowed)
{
    const auto value = required(key, QJsonValue::String, allowed);
    if (!value)
        return {};
    const QString text = value->toString();
    if (allowed.contains(text))
        return text;
    fault(key, shownValue(*value), FaultKind::NotOneOf, allowed);
    return {};
}

QJsonObject StrictObject::object(const QString& key)
{
    const auto value = required(key, QJsonValue::Object, {u"object"_s});
    return value ? value->toObject() : QJsonObject();
}

void StrictObject::nested(const QString& key, const std::function<void(StrictObject&)>& readMembers)
{
    const std::size_t before = m_faults.size();
    const QJsonObject json = object(key);
    if (m_faults.size() != before)
        return;
    StrictObject inner(json, pathOf(key), m_faults);
    readMembers(inner);
    inner.finish();
}

QJsonArray StrictObject::list(const QString& key)
{
    const auto value = required(key, QJsonValue::Array, {u"list"_s});
    return value ? value->toArray() : QJsonArray();
}

QStringList StrictObject::texts(const QString& key, int longest)
{
    QStringList texts;
    const QJsonArray items = list(key);
    for (qsizetype i = 0; i < items.size(); ++i) {
        const QString itemKey = u"%1[%2]"_s.arg(key).arg(i);
        const QString text = items.at(i).toString();
        if (!items.at(i).isString())
            fault(itemKey, shownValue(items.at(i)), FaultKind::WrongKind, {u"text"_s});
        else if (!hasVisible(text))
            fault(itemKey, text, FaultKind::Empty, {u"text"_s});
        else if (text.size() > longest)
            fault(itemKey, shownValue(items.at(i)), FaultKind::TooLong, {QString::number(longest)});
        else
            texts << text;
    }
    return texts;
}

std::vector<std::pair<QString, QJsonObject>> StrictObject::objects(const QString& key)
{
    std::vector<std::pair<QString, QJsonObject>> objects;
    const QJsonArray items = list(key);
    for (qsizetype i = 0; i < items.size(); ++i) {
        const QString itemKey = u"%1[%2]"_s.arg(key).arg(i);
        if (items.at(i).isObject())
            objects.emplace_back(pathOf(itemKey), items.at(i).toObject());
        else
            fault(itemKey, shownValue(items.at(i)), FaultKind::WrongKind, {u"object"_s});
    }
    return objects;
}

void StrictObject::known(const QString& key) { m_known.insert(key); }

void StrictObject::finish()
{
    QStringList names(m_known.cbegin(), m_known.cend());
    names.sort();
    for (auto each = m_object.constBegin(); each != m_object.constEnd(); ++each) {
        if (m_known.contains(each.key()))
            continue;
        QStringList allowed = names;
        const QString stem = withoutUnit(each.key());
        // The sort keeps its order but for the key that was meant.
        std::stable_partition(allowed.begin(), allowed.end(),
                              [&](const QString& name) { return withoutUnit(name) == stem; });
        fault(each.key(), shownValue(each.value()), FaultKind::UnknownKey, allowed);
    }
}

void StrictObject::fault(const QString& key, const QString& value, FaultKind kind, const QStringList& allowed)
{
    m_faults.push_back({pathOf(key), value, kind, allowed});
}

QString StrictObject::pathOf(const QString& key) const { return pathWith(m_path, key); }

QString StrictObject::shown(const QString& key) const { return shownValue(m_object.value(key)); }

} // namespace strandbench
