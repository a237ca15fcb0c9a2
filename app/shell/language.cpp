// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/language.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace strandbench {

Language::~Language() { QCoreApplication::removeTranslator(&m_translator); }

bool Language::speak(const QString& language)
{
    QCoreApplication::removeTranslator(&m_translator);
    if (!m_translator.load(u":/i18n/strandbench_"_s + language + u".qm"_s))
        return false;
    return QCoreApplication::installTranslator(&m_translator);
}

} // namespace strandbench
