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

#include <optional>

namespace strandbench {

/// Parses bytes as one JSON object; a fault (NotReadable) names the place where it breaks.
[[nodiscard]] Checked<QJsonObject> parseObject(const QByteArray& json);

/// Reads one object key by key, collecting faults. Call finish() last: it adds the unknown keys.
class StrictObject {
public:
    /// path: the object's own name in the input ("damage"), empty for the root. Faults go to `faults`.
    StrictObject(const QJsonObject& object, QString path, Faults& faults);

    [[nodiscard]] bool has(const QString& key) const;
    /// Required readers: a missing key is a fault, and a harmless value comes back.
    double number(const QString& key, double lowest, double highest, const QString& unit);
    qint64 integer(const QString& key, qint64 lowest, qint64 highest, const QString& unit);
    QString text(const QString& key, int longest);
    bool boolean(const QString& key);
    /// Optional readers: empty when the key is not there; a fault when it is and does not fit.
    std::optional<double> optionalNumber(const QString& key, double lowest, double highest, const QString& unit);
    std::optional<QString> optionalText(const QString& key, int longest);
    std::optional<bool> optionalBoolean(const QString& key);
    /// One of the codes of an enumeration.
    template <class E> E oneOf(const QString& key)
    {
        if (!has(key)) { word(key, allCodes<E>()); return Codes<E>::table.front().first; }
        return optionalOneOf<E>(key).value_or(Codes<E>::table.front().first);
    }
    template <class E> std::optional<E> optionalOneOf(const QString& key)
    {
        if (!has(key)) { known(key); return std::nullopt; }
        return fromCode<E>(word(key, allCodes<E>()));
    }
    /// A nested object or list; a fault and an empty one when missing (required) or of another kind.
    QJsonObject object(const QString& key);
    QJsonArray list(const QString& key);
    /// Says that a key is known without reading it.
    void known(const QString& key);
    /// Reports every key that was never asked for.
    void finish();

    void fault(const QString& key, const QString& value, FaultKind kind, const QStringList& allowed);
    [[nodiscard]] QString pathOf(const QString& key) const;

private:
    QString word(const QString& key, const QStringList& allowed);

    QJsonObject m_object;
    QString m_path;
    Faults& m_faults;
    QSet<QString> m_known;
};

} // namespace strandbench
