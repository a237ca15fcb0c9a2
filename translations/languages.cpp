// SPDX-License-Identifier: GPL-3.0-or-later
#include "languages.h"

#include <QDir>

namespace strandbench {

using namespace Qt::StringLiterals;

QStringList carriedLanguages()
{
    QStringList languages;
    for (const QString& name : QDir(u":/i18n"_s).entryList({u"strandbench_*.qm"_s}, QDir::Files, QDir::Name))
        languages << name.section(u'_', 1).section(u'.', 0, 0);
    return languages;
}

} // namespace strandbench
