// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/csv.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString quoted(QString field)
{
    static const QString special = u",\"\r\n"_s;
    const bool needed = std::any_of(field.begin(), field.end(), [](QChar each) { return special.contains(each); });
    return needed ? u'"' + field.replace(u'"', u"\"\""_s) + u'"' : field;
}

} // namespace

QString csvRow(const QStringList& fields)
{
    QStringList all;
    for (const QString& each : fields)
        all << quoted(each);
    return all.join(u',') + u"\r\n"_s;
}

} // namespace strandbench
