// SPDX-License-Identifier: GPL-3.0-or-later
// The quick card, read back with poppler: one page on both papers in every language, and the program's own limits.
#include "bench_fixture.h"
#include "report/pdf_reader.h"

#include "exchange/sheets.h"
#include "report/quick_card.h"
#include "screens/paper/paper_screen.h"

#include <QDir>
#include <QFile>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class QuickCard : public BenchTest {
protected:
    void SetUp() override { qputenv("HOME", QFile::encodeName(folder())); } // the documents of this test
    void TearDown() override { qputenv("HOME", m_home); }
    [[nodiscard]] QuickCardFacts facts(UnitSystem units, const QString& language = u"en"_s)
    {
        return {bench().bench().planning().catalogue.sheets(), bench().bench().assumptions(),
                Words(units, QLocale(language)), u"2026-09-14"_s};
    }

private:
    QByteArray m_home = qgetenv("HOME");
};

TEST_F(QuickCard, IsOnePageOnBothPapersInEveryLanguage)
{
    for (const QString& language : {u"en"_s, u"es"_s, u"fr"_s, u"de"_s}) {
        Settings settings = demoSettings();
        settings.language = language;
        open(settings);
        for (const Paper paper : {Paper::A4, Paper::Letter})
            for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::UsCustomary}) {
                QuickCardFacts many = facts(units, language);
                while (many.sheets.size() < 3 * productsOnCard)
                    many.sheets.push_back(many.sheets.front());
                const QByteArray card = quickCardPdf(paper, facts(units, language));
                EXPECT_EQ(PdfReader(card).pages().size(), 1);
                if (const QString look = qEnvironmentVariable("LOOK_PICTURES"); !look.isEmpty()) {
                    QFile kept(u"%1/card_%2_%3.pdf"_s.arg(look, language, codeOf(paper)));
                    ASSERT_TRUE(kept.open(QIODevice::WriteOnly) && kept.write(card) == card.size());
                }
                EXPECT_EQ(PdfReader(quickCardPdf(paper, many)).pages().size(), 1) << language.toStdString();
            }
    }
}

TEST_F(QuickCard, TellsTheLimitsThatAreSetAndNotSomeOthers)
{
    open();
    QuickCardFacts set = facts(UnitSystem::Metric);
    set.assumptions.decision.filling.dewMargin = kelvinStep(4.5);
    set.assumptions.decision.filling.panelHigh = celsius(31);
    set.assumptions.decision.holeGreatest = millimetres(66);
    const PdfReader card(quickCardPdf(Paper::A4, set));
    for (const QString& figure : {u"4.5"_s, u"31"_s, u"66"_s})
        EXPECT_EQ(card.count(figure), 1) << figure.toStdString() << "\n" << card.text().toStdString();
    const PdfReader before(quickCardPdf(Paper::A4, facts(UnitSystem::Metric)));
    EXPECT_EQ(before.count(u"4.5"_s), 0);
    EXPECT_EQ(before.count(u"66"_s), 0);
}

TEST_F(QuickCard, EachProductHasTheHardenerRangeAndTheLiftOfItsSheet)
{
    open();
    for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::UsCustomary}) {
        const QuickCardFacts card = facts(units);
        const QString text = PdfReader(quickCardPdf(Paper::A4, card)).text().simplified();
        ASSERT_FALSE(card.sheets.empty());
        for (const ProductSheet& each : card.sheets) {
            const QString range = u"%1 to %2"_s.arg(card.words.percent(each.hardenerLow).replace(u'\u00a0', u' '),
                                                    card.words.percent(each.hardenerHigh).replace(u'\u00a0', u' '));
            const QString row = range + u' ' + card.words.fineLength(each.greatestLift).replace(u'\u00a0', u' ');
            EXPECT_TRUE(text.contains(row)) << row.toStdString() << "\n" << text.toStdString();
        }
    }
}

TEST_F(QuickCard, IsWrittenAndPrintedByTaps)
{
    open();
    tap(u"help"_s);
    tap(u"help_card"_s);
    tap(u"paper_a4"_s);
    tap(u"sheet_folder_0"_s);
    const QDir documents(sheetFolders().front().path);
    const QStringList written = documents.entryList({u"quick-card-*.pdf"_s}, QDir::Files);
    ASSERT_EQ(written.size(), 1);
    QFile file(documents.filePath(written.front()));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const PdfReader card(file.readAll());
    EXPECT_EQ(card.pages().size(), 1);
    EXPECT_NEAR(card.pageSizePoints().width(), 595, 1);
    EXPECT_TRUE(card.text().contains(u"licensed practice"_s));
    tap(u"help"_s);
    EXPECT_EQ(screen(), u"screen_home"_s);
}

} // namespace
} // namespace strandbench::test
