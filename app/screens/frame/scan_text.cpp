// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/frame/scan_text.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

std::optional<ScanTrouble> scanTrouble(const QString& text)
{
    if (text.isEmpty())
        return ScanTrouble::Empty;
    if (!isShowable(text))
        return ScanTrouble::ControlCharacter;
    if (text.size() > longestScan)
        return ScanTrouble::TooLong;
    return std::nullopt;
}

bool isShowable(const QString& text)
{
    return std::all_of(text.begin(), text.end(), [](QChar c) { return c.isPrint(); });
}

QString shownScan(QString text)
{
    for (QChar& each : text)
        if (!each.isPrint())
            each = u' ';
    return text.size() <= longestScan ? text : text.left(longestScan) + u'…';
}

Checked<QString> inhand::readLot(const QString& text)
{
    const QString lot = text.trimmed();
    const auto refuse = [&](FaultKind kind, const QString& allowed) {
        return tl::unexpected(Faults{{u"lot"_s, lot, kind, {allowed}}});
    };
    if (lot.isEmpty())
        return refuse(FaultKind::Empty, {});
    if (lot.size() > longestLot)
        return refuse(FaultKind::TooLong, QString::number(longestLot));
    if (!isShowable(lot))
        return refuse(FaultKind::NotReadable, u"L7"_s);
    return lot;
}

} // namespace strandbench
