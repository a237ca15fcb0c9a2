// SPDX-License-Identifier: GPL-3.0-or-later
// Walks every code of the enumerations and of the data files: each has a text, and the text fits its place.
#include "readable.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "words/figure_words.h"
#include "words/found_words.h"
#include "words/log_trouble.h"
#include "words/stops.h"
#include "words/steps.h"
#include "words/words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Words words(UnitSystem::Metric, QLocale::c());

TEST(EveryCode, OfTheAssessmentHasANameAndAHint)
{
    const auto walk = [](const auto& table, auto name, auto hint) {
        QSet<QString> names;
        for (const auto& [value, code] : table) {
            EXPECT_TRUE(isReadable((words.*name)(value))) << code;
            EXPECT_TRUE(isReadable((words.*hint)(value))) << code;
            names.insert((words.*name)(value));
        }
        EXPECT_EQ(std::size_t(names.size()), table.size()) << "two answers with one name";
    };
    using W = Words;
    walk(Codes<Substrate>::table, &W::substrate, static_cast<QString (W::*)(Substrate) const>(&W::hint));
    walk(Codes<DamageKind>::table, &W::damage, static_cast<QString (W::*)(DamageKind) const>(&W::hint));
    walk(Codes<WeldKind>::table, &W::weld, static_cast<QString (W::*)(WeldKind) const>(&W::hint));
    walk(Codes<SurfaceState>::table, &W::surface, static_cast<QString (W::*)(SurfaceState) const>(&W::hint));
    walk(Codes<Zone>::table, &W::zone, static_cast<QString (W::*)(Zone) const>(&W::hint));
    walk(Codes<Moisture>::table, &W::moisture, static_cast<QString (W::*)(Moisture) const>(&W::hint));
    walk(Codes<CoreMaterial>::table, &W::core, static_cast<QString (W::*)(CoreMaterial) const>(&W::hint));
}

TEST(EveryCode, OfTheWalkHasAName)
{
    for (const auto& [value, code] : Codes<FoundBy>::table)
        EXPECT_TRUE(isReadable(foundByName(value))) << code;
    for (const auto& [value, code] : Codes<FillerClass>::table)
        EXPECT_TRUE(isReadable(words.filler(value))) << code;
    for (const auto& [value, code] : Codes<Face>::table)
        EXPECT_TRUE(isReadable(words.face(value))) << code;
    for (const auto& [value, code] : Codes<Phase>::table)
        EXPECT_TRUE(isReadable(words.phase(value))) << code;
    for (const auto& [value, code] : Codes<Station>::table)
        EXPECT_TRUE(isReadable(words.station(value))) << code;
}

TEST(EveryCode, OfAFigureHasAShortNameOfItsOwn)
{
    QSet<QString> names;
    for (const auto& [value, code] : Codes<DeviationKind>::table) {
        EXPECT_TRUE(isReadable(deviationName(value))) << code;
        EXPECT_LE(wordsIn(deviationName(value)), 4) << code << ": it stands below a bar";
        names.insert(deviationName(value));
    }
    EXPECT_EQ(std::size_t(names.size()), Codes<DeviationKind>::table.size()) << "two kinds with one name";
    for (const auto& [value, code] : Codes<JobPart>::table)
        EXPECT_TRUE(isReadable(jobPartName(value))) << code;
    for (const auto& [value, code] : Codes<RunRule>::table)
        EXPECT_TRUE(runText({value, 30}).contains(u"31"_s)) << code << ": gels are counted from 1";
}

TEST(EveryCode, OfAQuestionIsAskedInAtMostTenWords)
{
    for (const auto& [value, code] : Codes<Question>::table) {
        EXPECT_TRUE(isReadable(words.question(value))) << code;
        EXPECT_LE(wordsIn(words.question(value)), 10) << code;
        EXPECT_TRUE(isReadable(words.questionName(value))) << code;
    }
    for (const Question question : {Question::AdhesiveCured, Question::RearAccess})
        for (const bool yes : {true, false}) {
            EXPECT_TRUE(isReadable(words.answer(question, yes)));
            EXPECT_TRUE(isReadable(words.answerHint(question, yes)));
        }
}

void judgeStep(const StepText& text, const QString& code)
{
    const std::string where = code.toStdString();
    EXPECT_TRUE(isReadable(text.sentence)) << where;
    EXPECT_LE(wordsIn(text.sentence), 10) << where;
    EXPECT_FALSE(text.sentence.endsWith(u'.')) << where;
    EXPECT_TRUE(isReadable(text.detail)) << where;
    EXPECT_LE(text.detail.count(u". "_s), 1) << where << ": more than two sentences";
    EXPECT_TRUE(isReadable(text.wayOn)) << where;
    EXPECT_LE(wordsIn(text.wayOn), 6) << where;
}

TEST(EveryCode, OfAStepHasTextsAndItsPlaceholdersAreItsFigures)
{
    const StepBook& book = builtInSteps();
    for (const auto* rules : {&book.prepare, &book.finish}) {
        ASSERT_FALSE(rules->empty());
        for (const StepRule& rule : *rules) {
            const std::vector<Argument> figures(rule.arguments.size(), Argument(millimetres(3)));
            judgeStep(words.step({rule.code, seconds(0), seconds(0), rule.cautions, figures}), rule.code);
            EXPECT_EQ(placeholdersIn(words::stepDetail(rule.code)), placesUpTo(rule.arguments.size()))
                << rule.code.toStdString();
            EXPECT_TRUE(placeholdersIn(words::stepSentence(rule.code)).isEmpty()) << rule.code.toStdString();
        }
    }
}

TEST(EveryCode, OfACautionHasALeadAndALine)
{
    std::vector<CautionText> texts;
    const StepBook& book = builtInSteps();
    for (const auto* rules : {&book.prepare, &book.finish})
        for (const StepRule& rule : *rules)
            for (const QString& code : rule.cautions)
                texts.push_back(words.caution(code));
    for (const auto& [station, code] : Codes<Station>::table)
        for (const CautionText& each : words.cautionsAt(station))
            texts.push_back(each);
    for (const CautionText& each : texts) {
        EXPECT_TRUE(isReadable(each.lead));
        EXPECT_LE(wordsIn(each.lead), 6) << each.lead.toStdString();
        EXPECT_TRUE(isReadable(each.rest));
        EXPECT_LE(wordsIn(each.rest), 16) << each.rest.toStdString();
    }
    EXPECT_FALSE(words.cautionsAt(Station::Mix).empty());
    EXPECT_FALSE(words.cautionsAt(Station::Sand).empty());
}

TEST(EveryCode, OfTheHandOverIsATestWithAnAnswer)
{
    ASSERT_FALSE(handOverTests().empty());
    for (const QString& code : handOverTests())
        judgeStep(words.handOverTest(code), code);
}

TEST(EveryCode, OfTheDecisionTableHasAReason)
{
    for (const auto& [filler, code] : Codes<FillerClass>::table) {
        if (!isFibreReinforced(filler))
            continue;
        for (const QString& column : DecisionTable::columns())
            EXPECT_TRUE(isReadable(words.reason({builtInTable().cell(filler, column).reason, {}})))
                << code << ", " << column.toStdString();
    }
    for (const ProductSheet& sheet : demoCatalogue().sheets())
        for (const auto& [column, cell] : sheet.cells)
            EXPECT_TRUE(isReadable(words.reason({cell.reason, {}}))) << sheet.id.toStdString();
}

TEST(EveryCode, OfAStopFillsTheRefusalScreen)
{
    ASSERT_FALSE(knownStopCodes().empty());
    for (const QString& code : knownStopCodes()) {
        const std::string where = code.toStdString();
        const StopText text = words.stop(stopOf({code, {millimetres(7), millimetres(6)}}));
        for (const QString& each : {text.headline, text.wrong, text.why, text.instead, text.insteadDetail,
                                    text.overridable, text.park, text.precedence})
            EXPECT_TRUE(isReadable(each)) << where;
        EXPECT_LE(wordsIn(text.headline), 10) << where;
        EXPECT_LE(wordsIn(text.wrong), 12) << where;
        EXPECT_EQ(text.park.contains(text.place), true) << where;
        EXPECT_EQ(text.place.isEmpty(), stopOf({code, {}}).parkTo.isEmpty()) << where;
    }
}

TEST(EveryCode, OfWhoMayOverrideIsTold)
{
    EXPECT_NE(words.stop(stopOf({u"weld_spot"_s, {}})).overridable,
              words.stop(stopOf({u"zone_structural"_s, {}})).overridable);
}

TEST(EveryCode, OfALogTroubleSaysWhatToDo)
{
    QSet<QString> headlines;
    // The last enumerator bounds the walk, so that a new one before it is walked too.
    for (int i = 0; i <= int(LogTrouble::DoesNotFollow); ++i) {
        const LogTroubleText text = logTrouble(static_cast<LogTrouble>(i));
        EXPECT_TRUE(isReadable(text.headline)) << i;
        EXPECT_TRUE(isReadable(text.whatToDo)) << i;
        headlines.insert(text.headline);
    }
    EXPECT_EQ(headlines.size(), int(LogTrouble::DoesNotFollow) + 1) << "two troubles with one headline";
    for (const QString& code :
         {u"integrity"_s, u"schema"_s, u"chain"_s, u"event"_s, u"summary"_s, u"blob"_s, u"expected_head"_s})
        EXPECT_TRUE(isReadable(breakName(code))) << code.toStdString();
}

TEST(EveryCode, WithoutATextIsShownInBrackets)
{
    EXPECT_EQ(words.reason({u"nobody_wrote_this"_s, {}}), u"[nobody_wrote_this]"_s);
    EXPECT_EQ(words.nameOfCode(u"nobody_wrote_this"_s), u"[nobody_wrote_this]"_s);
    EXPECT_EQ(words.place(u"nobody_wrote_this"_s), u"[nobody_wrote_this]"_s);
    EXPECT_EQ(words.step({u"nobody_wrote_this"_s, seconds(0), seconds(0), {}, {}}).sentence, u"[nobody_wrote_this]"_s);
}

} // namespace
} // namespace strandbench
