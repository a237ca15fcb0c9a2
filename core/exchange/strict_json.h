// SPDX-License-Identifier: GPL-3.0-or-later
// Strict reading of JSON objects: every fault at once, by name. A key that nobody asked for is a fault,
// a number that is not finite or out of range is a fault, and nothing is ever filled in silently.
#pragma once

#include "quantity/codes.h"
#include "quantity/fault.h"

#include <QByteArray>
#include <QJsonArray>
#include <QJsonObject>
#include <QSet>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace strandbench {

/// Parses bytes as one JSON object. What does not parse is NotReadable, its value "line:column" and the text
/// there; a key given twice in one object is Conflicts, allowed naming the key and what it held first.
[[nodiscard]] Checked<QJsonObject> parseObject(const QByteArray& json);

/// A number as faults show it: plain digits and a decimal point, whatever the locale.
[[nodiscard]] QString plainNumber(double value);

/// One value as JSON writes it, whatever kind it is of: 1.45, "text", [1,2].
[[nodiscard]] QByteArray compactJson(const QJsonValue& value);

/// Reads one object key by key, collecting faults. Call finish() last: it adds the unknown keys.
/// 'allowed' of a missing key is its kind ("number", "whole number", "text", "object", "list",
/// "true or false") and for a number its unit after it, or the codes of an enumeration.
class StrictObject {
public:
    /// path: the object's own name in the input ("damage"), empty for the root. Faults go to `faults`.
    StrictObject(const QJsonObject& object, QString path, Faults& faults);

    [[nodiscard]] bool has(const QString& key) const;
    [[nodiscard]] bool holdsList(const QString& key) const { return m_object.value(key).isArray(); }
    /// Required readers: a missing key is a fault, and a harmless value comes back.
    double number(const QString& key, double lowest, double highest, const QString& unit);
    qint64 integer(const QString& key, qint64 lowest, qint64 highest, const QString& unit);
    QString text(const QString& key, int longest);
    /// Required, but may hold nothing; of any length.
    QString textOrEmpty(const QString& key);
    bool boolean(const QString& key);
    /// Optional readers: empty when the key is not there; a fault when it is and does not fit.
    std::optional<qint64> optionalInteger(const QString& key, qint64 lowest, qint64 highest, const QString& unit);
    std::optional<double> optionalNumber(const QString& key, double lowest, double highest, const QString& unit);
    std::optional<QString> optionalText(const QString& key, int longest);
    std::optional<bool> optionalBoolean(const QString& key);
    /// One of the codes of an enumeration.
    template <class E> E oneOf(const QString& key)
    {
        if (!has(key)) {
            word(key, allCodes<E>());
            return Codes<E>::table.front().first;
        }
        return optionalOneOf<E>(key).value_or(Codes<E>::table.front().first);
    }
    template <class E> std::optional<E> optionalOneOf(const QString& key)
    {
        if (!has(key)) {
            known(key);
            return std::nullopt;
        }
        return fromCode<E>(word(key, allCodes<E>()));
    }
    /// A nested object or list; a fault and an empty one when missing (required) or of another kind.
    QJsonObject object(const QString& key);
    QJsonArray list(const QString& key);
    /// Reads the nested object of a key to its end; nothing is asked of one that is not there.
    void nested(const QString& key, const std::function<void(StrictObject&)>& readMembers);
    /// A list of texts, none of them empty, each of at most `longest` characters.
    QStringList texts(const QString& key, int longest);
    /// Every item of a list that must hold objects, with its path ("prepare[2]"); others are faults.
    std::vector<std::pair<QString, QJsonObject>> objects(const QString& key);
    /// Says that a key is known without reading it.
    void known(const QString& key);
    /// Reports every key that was never asked for; first among 'allowed' stands the known key that differs
    /// in its unit's ending alone ("density_g_per_ml" for "density_lb_per_ft3").
    void finish();

    void fault(const QString& key, const QString& value, FaultKind kind, const QStringList& allowed);
    [[nodiscard]] QString pathOf(const QString& key) const;
    /// A value as a fault shows it: texts as they are, anything else as JSON.
    [[nodiscard]] QString shown(const QString& key) const;

private:
    QString word(const QString& key, const QStringList& allowed);
    /// The value when it is there and of the kind, else a fault and nothing.
    std::optional<QJsonValue> required(const QString& key, QJsonValue::Type type, const QStringList& missing);
    std::optional<QJsonValue> given(const QString& key, QJsonValue::Type type);

    QJsonObject m_object;
    QString m_path;
    Faults& m_faults;
    QSet<QString> m_known;
};

} // namespace strandbench
