// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/day_json.h"

#include "report/record_json.h"

#include <QJsonArray>

using namespace Qt::StringLiterals;

namespace strandbench {

QJsonObject headToJson(const ChainHead& head)
{
    return {{u"origin"_s, head.origin}, {u"count"_s, head.count}, {u"hash"_s, QString::fromLatin1(head.hash.toHex())}};
}

QJsonObject dayToJson(const QString& day, const std::vector<DayEntry>& entries, const ChainHead& head,
                      const Words& words)
{
    QJsonArray repairs;
    for (const DayEntry& each : entries)
        repairs << recordToJson(each.record, each.deviations, words);
    return {{u"day"_s, day}, {u"chain_head"_s, headToJson(head)}, {u"repairs"_s, repairs}};
}

} // namespace strandbench
