// SPDX-License-Identifier: GPL-3.0-or-later
// The pseudo-language keeps what must be kept, of every text that the program has.
#include "touch_rules/pseudo_language.h"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using rules::pseudo;

/// Every source text, from a catalogue.
QStringList everySource()
{
    QFile file(QStringLiteral(STRANDBENCH_TRANSLATIONS "/strandbench_de.ts"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QStringList sources;
    while (!xml.atEnd())
        if (xml.readNextStartElement() && xml.name() == "source"_L1)
            sources << xml.readElementText();
        else if (xml.isEndElement())
            xml.readNext();
    return sources;
}

QStringList found(const QString& text, const QString& pattern)
{
    QStringList all;
    for (auto each = QRegularExpression(pattern).globalMatch(text); each.hasNext();)
        all << each.next().captured();
    return all;
}

qsizetype letters(const QString& text)
{
    return std::count_if(text.begin(), text.end(), [](QChar c) { return c.isLetter(); });
}

TEST(PseudoLanguage, KeepsFiguresKeysTagsAndLines)
{
    const QStringList sources = everySource();
    ASSERT_GT(sources.size(), 2000);
    for (const QString& source : sources) {
        const QString made = pseudo(source);
        for (const QString& pattern : {u"%L?(?:\\d{1,2}|n)"_s, u"</?\\w+[^>]*>"_s, u"&(?=\\w)"_s, u"\n"_s})
            EXPECT_EQ(found(made, pattern), found(source, pattern)) << source.toStdString();
        EXPECT_EQ(found(made, u"\\d+"_s), found(source, u"\\d+"_s)) << source.toStdString();
    }
}

TEST(PseudoLanguage, IsAThirdLongerAndNotMuchMore)
{
    double was = 0;
    double is = 0;
    for (const QString& source : everySource()) {
        const auto kept = found(source, u"%L?(?:\\d{1,2}|n)|</?\\w+[^>]*>"_s).join(QString()).size();
        const double before = double(source.size() - kept);
        const double after = double(pseudo(source).size() - kept);
        was += before;
        is += after;
        if (letters(source) >= 3) { // a text that is mostly signs has little that could grow
            EXPECT_GE(after, before + 0.15 * double(letters(source))) << pseudo(source).toStdString();
        }
        EXPECT_LE(after, 1.3 * before + 6) << pseudo(source).toStdString();
    }
    EXPECT_NEAR(is / was, 1.3, 0.02);
}

TEST(PseudoLanguage, LooksLikeThis)
{
    EXPECT_EQ(pseudo(u"Mix"_s), u"Mîîx"_s);
    EXPECT_TRUE(pseudo(u"&Go"_s).startsWith(u"&G"_s));
    EXPECT_EQ(pseudo(u"12:05"_s), u"12:05"_s);
}

TEST(PseudoLanguage, SpeaksForTheProgramAndCountsAsEnglish)
{
    rules::PseudoLanguage language;
    QCoreApplication::installTranslator(&language);
    const QString said = QCoreApplication::translate("AnySource", "Take in a panel");
    EXPECT_EQ(said, pseudo(u"Take in a panel"_s));
    EXPECT_EQ(QCoreApplication::translate("QDialogButtonBox", "OK"), u"OK"_s);
    QCoreApplication::removeTranslator(&language);
}

} // namespace
} // namespace strandbench
