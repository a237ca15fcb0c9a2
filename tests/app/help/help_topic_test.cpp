// SPDX-License-Identifier: GPL-3.0-or-later
// Every place and every step has its topic, every topic its text; every term of the termbase its meaning.
#include "exchange/rules.h"
#include "exchange/terms.h"
#include "shell/help_topic.h"
#include "words/glossary.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

std::vector<QString> everyStepCode()
{
    std::vector<QString> codes;
    const StepBook& book = builtInSteps();
    for (const auto* stage : {&book.prepare, &book.finish})
        for (const auto& each : *stage)
            codes.push_back(each.code);
    for (const QString& each : handOverTests())
        codes.push_back(each);
    return codes;
}

TEST(HelpTopics, EveryStepOfTheBookAndEveryTestOfTheHandOverHasOne)
{
    ASSERT_GT(everyStepCode().size(), 35U);
    for (const QString& code : everyStepCode())
        EXPECT_TRUE(topicOfStep(code)) << code.toStdString();
    EXPECT_FALSE(topicOfStep(u"no_such_step"_s));
}

TEST(HelpTopics, EveryOneIsReachedFromSomewhere)
{
    std::set<HelpTopic> reached;
    for (int place = 0; place <= static_cast<int>(Place::QuickCard); ++place)
        reached.insert(topicOf(static_cast<Place>(place)));
    for (const auto& [question, code] : Codes<Question>::table)
        reached.insert(topicOf(question));
    for (const QString& code : everyStepCode())
        reached.insert(*topicOfStep(code));
    const Repair none;
    for (const auto& [station, code] : Codes<Station>::table)
        if (station != Station::Assess && station != Station::Prepare && station != Station::Finish)
            reached.insert(topicOf(NextStep{station, {}, 0, {}}, none, u"screen_refusal"_s));
    for (const auto& [topic, code] : Codes<HelpTopic>::table)
        EXPECT_TRUE(reached.contains(topic)) << code;
}

/// Short, plain, no praise, no promise. That nothing is called safe: "safety data sheet" is the one word of that stem.
TEST(HelpTopics, TheTextsAreShortAndPromiseNothing)
{
    static const QRegularExpression promises(u"\\b(safe|safely|guarantee\\w*|great|well done)\\b|!"_s,
                                             QRegularExpression::CaseInsensitiveOption);
    for (const auto& [topic, code] : Codes<HelpTopic>::table) {
        const HelpText text = helpText(topic);
        EXPECT_FALSE(text.title.isEmpty() || text.title.endsWith(u'.')) << code;
        for (const QString& line : {text.purpose, text.how, text.wrong, text.limit}) {
            EXPECT_TRUE(line.endsWith(u'.')) << code << ": " << line.toStdString();
            EXPECT_LE(line.size(), 100) << code << ": " << line.toStdString();
            EXPECT_FALSE(line.contains(promises)) << code << ": " << line.toStdString();
            EXPECT_FALSE(line.contains(QRegularExpression(u"\\d"_s))) << code << ": a figure is the program's to tell";
        }
    }
}

TEST(HelpTopics, WhatCanHurtDefersToWhatComesFirst)
{
    for (const HelpTopic topic : {HelpTopic::Gear, HelpTopic::Clean, HelpTopic::OpenUp, HelpTopic::BackUp,
                                  HelpTopic::Abrade, HelpTopic::Hazards, HelpTopic::StockChange})
        EXPECT_TRUE(helpText(topic).limit.contains(u"safety data sheet"_s)) << codeOf(topic).toStdString();
    for (const HelpTopic topic : {HelpTopic::Stop, HelpTopic::AskDamage, HelpTopic::AskSurface, HelpTopic::Ask})
        EXPECT_TRUE(helpText(topic).limit.contains(u"licensed practice"_s)) << codeOf(topic).toStdString();
}

TEST(Termbase, EveryTermHasItsMeaningAndStandsInTheOrderOfItsAlphabet)
{
    const std::size_t terms = builtInTerms().size();
    EXPECT_GE(terms, 45U);
    for (const QString& language : {u"en"_s, u"es"_s, u"fr"_s, u"de"_s}) {
        const std::vector<GlossaryEntry> entries = glossary(QLocale(language));
        ASSERT_EQ(entries.size(), terms);
        for (const GlossaryEntry& each : entries) {
            EXPECT_FALSE(each.term.isEmpty()) << each.id.toStdString();
            EXPECT_TRUE(each.definition.endsWith(u'.')) << each.id.toStdString();
            EXPECT_FALSE(each.definition.startsWith(u'[')) << each.id.toStdString();
            EXPECT_EQ(each.definition.count(u". "_s), 0) << each.id.toStdString() << ": one sentence";
        }
        EXPECT_LE(entries.front().term.at(0).toLower(), entries.back().term.at(0).toLower());
    }
}

TEST(Termbase, AFaultIsNamed)
{
    const auto twice = readTerms(R"({"terms":[{"id":"a","en":"a","es":"a","fr":"a","de":"a"},
                                             {"id":"a","en":"b","es":"b","fr":"b","de":"b"}]})");
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().front().field, u"terms[1].id"_s);
    const auto lacking = readTerms(R"({"terms":[{"id":"a","en":"a","es":"a","fr":"a"}]})");
    ASSERT_FALSE(lacking);
    EXPECT_EQ(lacking.error().front().field, u"terms[0].de"_s);
    const auto odd = readTerms(R"({"terms":[{"id":"a","en":"a","es":"a","fr":"a","de":"a","it":"a"}]})");
    ASSERT_FALSE(odd);
    EXPECT_EQ(odd.error().front().field, u"terms[0].it"_s);
}

} // namespace
} // namespace strandbench::test
