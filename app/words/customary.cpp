// SPDX-License-Identifier: GPL-3.0-or-later
#include "words/customary.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::words {

const Customary* customaryOf(std::span<const Customary> table, const QString& unit, UnitSystem system)
{
    if (system == UnitSystem::Metric)
        return nullptr;
    const auto found =
        std::ranges::find_if(table, [&](const Customary& each) { return unit == QString::fromUtf8(each.from); });
    return found == table.end() ? nullptr : &*found;
}

QString plainFigure(double number, int decimals)
{
    QString text = QString::number(number, 'f', decimals);
    if (text.contains(u'.')) {
        while (text.endsWith(u'0'))
            text.chop(1);
        if (text.endsWith(u'.'))
            text.chop(1);
    }
    return text == u"-0"_s ? u"0"_s : text;
}

QString localFigure(QString plain, const QLocale& locale)
{
    plain.replace(u'.', locale.decimalPoint());
    plain.replace(u'-', u'−');
    return plain;
}

} // namespace strandbench::words
