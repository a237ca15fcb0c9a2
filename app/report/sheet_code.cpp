// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/sheet_code.h"

#include <QStringList>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QString withHead(QStringList lines, const ChainHead& head)
{
    lines.prepend(u"strandbench 1"_s);
    lines << u"head "_s + head.origin + u' ' + QString::number(head.count) + u' ' +
                 QString::fromLatin1(head.hash.toHex());
    return lines.join(u'\n');
}

} // namespace

QString jobSheetCode(const Repair& repair, const ChainHead& head)
{
    return withHead({u"repair "_s + repair.id.toString(QUuid::WithoutBraces), u"job "_s + repair.job.simplified()},
                    head);
}

QString daySheetCode(const QString& day, const ChainHead& head) { return withHead({u"day "_s + day}, head); }

} // namespace strandbench
