// SPDX-License-Identifier: GPL-3.0-or-later
#include "json_tools.h"

#include <QJsonDocument>

#include <array>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QJsonObject changed(QJsonObject object, const QStringList& path, const QJsonValue& value)
{
    const QString& key = path.constFirst();
    if (path.size() > 1)
        object[key] = changed(object.value(key).toObject(), path.mid(1), value);
    else if (value.isUndefined())
        object.remove(key);
    else
        object[key] = value;
    return object;
}

} // namespace

QByteArray with(const QByteArray& json, const QString& path, const QJsonValue& value)
{
    const QJsonObject object = QJsonDocument::fromJson(json).object();
    return QJsonDocument(changed(object, path.split(u'.'), value)).toJson();
}

QByteArray without(const QByteArray& json, const QString& path)
{
    return with(json, path, QJsonValue(QJsonValue::Undefined));
}

std::string textOf(const Fault& fault)
{
    static constexpr std::array names{"Missing",     "UnknownKey", "WrongKind", "OutOfRange", "NotOneOf",
                                      "NotReadable", "Empty",      "TooLong",   "Conflicts",  "NotFound"};
    return fault.field.toStdString() + '|' + fault.value.toStdString() + '|' +
           names.at(static_cast<std::size_t>(fault.kind)) + '|' + fault.allowed.join(u',').toStdString();
}

} // namespace strandbench
