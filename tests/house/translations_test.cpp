// SPDX-License-Identifier: GPL-3.0-or-later
// The catalogues reach the program: they are carried as resources, and they load.
#include "languages.h"

#include <QTranslator>

#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;
using strandbench::carriedLanguages;

TEST(Translations, AreCarriedInAllFourLanguages)
{
    EXPECT_EQ(carriedLanguages(), (QStringList{u"de"_s, u"en"_s, u"es"_s, u"fr"_s}));
}

TEST(Translations, EachCatalogueLoadsAndSaysItsLanguage)
{
    for (const QString& language : carriedLanguages()) {
        QTranslator translator;
        ASSERT_TRUE(translator.load(u":/i18n/strandbench_%1.qm"_s.arg(language))) << language.toStdString();
        EXPECT_EQ(translator.language(), language);
    }
}

} // namespace
