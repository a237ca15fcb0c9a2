// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet on paper, read back: every figure of the record is on it, whole.
#include "pdf_reader.h"
#include "record_figures.h"
#include "sample_record.h"

#include "exchange/sheets.h"
#include "shell/language.h"
#include "words/deviation_words.h"

#include <gtest/gtest.h>

#include <QMap>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

struct Print {
    Paper paper;
    UnitSystem units;
    const char* language;
};

void PrintTo(const Print& print, std::ostream* out)
{
    *out << codeOf(print.paper).toStdString() << '_' << codeOf(print.units).toStdString() << '_' << print.language;
}

class JobSheet : public ::testing::TestWithParam<Print> {
protected:
    void SetUp() override { m_language.speak(QString::fromLatin1(GetParam().language)); }
    [[nodiscard]] Words words() const
    {
        return Words(GetParam().units, QLocale(QString::fromLatin1(GetParam().language)));
    }

private:
    Language m_language;
};

TEST_P(JobSheet, HoldsEveryFigureOfTheRecord)
{
    const JobRecord record = sampleRecord();
    const Words said = words();
    const PdfReader pdf(jobSheetPdf(record, sampleFacts(GetParam().paper), said));
    QMap<QString, qsizetype> wanted;
    for (const QString& each : figuresOf(record, said))
        ++wanted[each];
    EXPECT_GT(wanted.size(), 40);
    for (const auto& [figure, times] : wanted.asKeyValueRange())
        EXPECT_GE(pdf.count(figure), times) << figure.toStdString() << "\n" << pdf.text().toStdString();
    for (const Deviation& each : deviationsOf(record, demoCatalogue()))
        for (const QString& word : deviationText(each, said).split(u' '))
            EXPECT_TRUE(pdf.text().contains(QString(word).replace(QChar(QChar::Nbsp), u' '))) << word.toStdString();
}

TEST_P(JobSheet, IsOnItsPaperWithHeadAndFootOnEveryPage)
{
    const SheetFacts facts = sampleFacts(GetParam().paper);
    const PdfReader pdf(jobSheetPdf(sampleRecord(), facts, words()));
    // ISO 216: 210 x 297 mm; ANSI/ASME Y14.1: 8.5 x 11 in; 72 points to the inch.
    const QSizeF size = GetParam().paper == Paper::A4 ? QSizeF(210 / 25.4 * 72, 297 / 25.4 * 72) : QSizeF(612, 792);
    EXPECT_NEAR(pdf.pageSizePoints().width(), size.width(), 0.6);
    EXPECT_NEAR(pdf.pageSizePoints().height(), size.height(), 0.6);
    ASSERT_GE(pdf.pages().size(), 2);
    const QString head = QString::fromLatin1(facts.head.hash.toHex());
    int number = 0;
    for (const QString& page : pdf.pages()) {
        ++number;
        EXPECT_TRUE(page.contains(head.left(16) + u'…')) << page.toStdString();
        EXPECT_TRUE(page.contains(u"131"_s));
        EXPECT_TRUE(page.contains(u"4421"_s));
        if (QString::fromLatin1(GetParam().language) == u"en"_s) {
            EXPECT_TRUE(page.contains(u"%1 of %2"_s.arg(number).arg(pdf.pages().size())));
            EXPECT_TRUE(page.contains(u"safety data sheet"_s));
        }
    }
    EXPECT_EQ(pdf.text().count(head), 1) << "the whole hash stands once";
    // Nothing runs off the paper or into its margins.
    const QRectF inside = QRectF(QPointF(), size).adjusted(28, 20, -28, -20);
    for (const QRectF& word : pdf.words())
        EXPECT_TRUE(inside.contains(word)) << word.left() << ' ' << word.top() << ' ' << word.right();
}

TEST_P(JobSheet, NeverSaysSafe)
{
    const PdfReader pdf(jobSheetPdf(sampleRecord(), sampleFacts(GetParam().paper), words()));
    static const QRegularExpression safe(u"\\bsafe\\b|\\bsicher\\b"_s, QRegularExpression::CaseInsensitiveOption);
    EXPECT_FALSE(pdf.text().contains(safe));
}

INSTANTIATE_TEST_SUITE_P(OnPaper, JobSheet,
                         ::testing::Values(Print{Paper::A4, UnitSystem::Metric, "en"},
                                           Print{Paper::A4, UnitSystem::UsCustomary, "de"},
                                           Print{Paper::Letter, UnitSystem::Metric, "de"},
                                           Print{Paper::Letter, UnitSystem::UsCustomary, "en"}));

const Words& metric()
{
    static const Words words(UnitSystem::Metric, QLocale::c());
    return words;
}

TEST(JobSheetEdges, ALongNameWithoutASpaceIsNotCut)
{
    JobRecord record = sampleRecord();
    record.repair.panel = QString(60, u'W');
    record.people = QStringList{QString(40, u'M')};
    PdfReader pdf(jobSheetPdf(record, sampleFacts(Paper::Letter), metric()));
    EXPECT_GE(pdf.text().count(u'W'), 2 * 60 * pdf.pages().size() / pdf.pages().size())
        << "once in the head, once below";
    EXPECT_GE(pdf.text().count(u'M'), 40);
    for (const QRectF& word : pdf.words())
        EXPECT_LE(word.right(), 612 - 28);
}

TEST(JobSheetEdges, AnOpenRepairAndOneJustTakenInHaveASheet)
{
    auto events = walkedEvents();
    events.resize(1);
    const JobRecord first = *recordOf(events, demoCatalogue());
    const PdfReader taken(jobSheetPdf(first, sampleFacts(Paper::A4), metric()));
    EXPECT_EQ(taken.pages().size(), 1);
    EXPECT_TRUE(taken.text().contains(u"4421"_s));
    EXPECT_FALSE(taken.text().contains(u"Deviations"_s));
}

TEST(JobSheetEdges, APictureThatCannotBeReadIsNamed)
{
    SheetFacts facts = sampleFacts(Paper::A4);
    facts.picture = [](const QByteArray&) { return QByteArray("no picture"); };
    const PdfReader pdf(jobSheetPdf(sampleRecord(), facts, metric()));
    EXPECT_TRUE(pdf.text().simplified().contains(u"cannot be read"_s)) << pdf.text().toStdString();
}

TEST(DaySheet, ListsEachJobAndThenGivesItsSheet)
{
    const JobRecord one = sampleRecord();
    JobRecord other = one;
    other.repair.job = u"4499"_s;
    const PdfReader pdf(dayPdf(u"2026-09-14"_s, {one, other}, sampleFacts(Paper::A4), metric()));
    EXPECT_TRUE(pdf.pages().front().contains(u"2026-09-14"_s));
    EXPECT_TRUE(pdf.pages().front().contains(u"4421"_s));
    EXPECT_TRUE(pdf.pages().front().contains(u"4499"_s));
    qsizetype sheets = 0;
    for (const QString& page : pdf.pages())
        sheets += page.count(u"What was found"_s);
    EXPECT_EQ(sheets, 2);
    const PdfReader none(dayPdf(u"2026-09-14"_s, {}, sampleFacts(Paper::A4), metric()));
    EXPECT_TRUE(none.text().contains(u"Nothing was recorded on this day."_s));
}

} // namespace
} // namespace strandbench::test
