// SPDX-License-Identifier: GPL-3.0-or-later
// Every code that practice tells has its words, and every argument its place in them.
#include "readable.h"

#include "words/evidence_words.h"
#include "words/practice_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Words words(UnitSystem::Metric, QLocale::c());

/// An argument of that kind; for a code, one that has a name.
Argument argumentOf(const QString& kind)
{
    if (kind == u"length"_s)
        return millimetres(12.5);
    if (kind == u"mass"_s)
        return grams(31);
    if (kind == u"duration"_s)
        return minutes(7);
    if (kind == u"temperature"_s)
        return celsius(93);
    if (kind == u"step"_s)
        return kelvinStep(2.5);
    if (kind == u"share"_s)
        return Fraction::ofOne(0.012);
    if (kind == u"count"_s)
        return Count{3};
    return u"weld_spot"_s;
}

std::vector<Argument> argumentsOf(const CodeWithArguments& code)
{
    std::vector<Argument> all;
    for (const QString& each : code.arguments)
        all.insert(all.end(), each.endsWith(u'*') ? 4 : 1, argumentOf(QString(each).remove(u'*')));
    return all;
}

/// No code in brackets, and no place left open.
void expectTold(const QString& text, const QString& code)
{
    EXPECT_TRUE(isReadable(text)) << code.toStdString() << ": " << text.toStdString();
    EXPECT_FALSE(text.contains(u'%' + QString::number(1)) || text.contains(u"%2"_s) || text.contains(u"%3"_s) ||
                 text.contains(u"%4"_s))
        << code.toStdString() << ": " << text.toStdString();
}

TEST(PracticeWords, EveryConsequenceIsASentence)
{
    for (const CodeWithArguments& each : knownConsequences()) {
        Consequence consequence;
        consequence.what = {each.code, argumentsOf(each)};
        consequence.sheetsWord = consequence.what;
        const bool sheets = each.code == u"soft_film"_s || each.code == u"bleeds_and_pinholes"_s;
        expectTold(sheets ? sheetsWordTold(consequence, words) : consequenceTold(consequence.what, words), each.code);
    }
}

TEST(PracticeWords, EveryRuleIsASentence)
{
    for (const CodeWithArguments& each : knownRules()) {
        Mark mark;
        mark.rule = {each.code, argumentsOf(each)};
        expectTold(ruleTold(mark, words), each.code);
    }
}

TEST(PracticeWords, ARuleWithoutItsFiguresSaysNothing)
{
    Mark mark;
    mark.rule = {u"hardener_dose"_s, {}};
    EXPECT_EQ(ruleTold(mark, words), QString());
}

TEST(PracticeWords, EveryCodeHasAName)
{
    for (const auto& [value, code] : Codes<DecisionPoint>::table)
        expectTold(decisionName(value), QString::fromLatin1(code));
    for (const auto& [value, code] : Codes<Skill>::table)
        expectTold(skillName(value), QString::fromLatin1(code));
    for (const auto& [value, code] : Codes<TrapKind>::table)
        expectTold(trapTold(value), QString::fromLatin1(code));
    for (const auto& [value, code] : Codes<InspectionTest>::table)
        expectTold(testTold(value), QString::fromLatin1(code));
    for (const QString& each : harmfulSteps())
        expectTold(stepTold(each, {}, words), each);
}

/// Whatever a panel may show is told; a panel by its evidence's codes one after another.
TEST(PracticeWords, EverythingAPanelShowsIsTold)
{
    PracticePanel panel;
    panel.truth.damage = Damage{};
    Evidence& shown = panel.shown;
    const auto tell = [&](PanelTry what) { expectTold(tryFinds(what, panel, words), codeOf(what)); };
    for (const auto& [what, code] : Codes<PanelTry>::table) {
        expectTold(tryName(what), QString::fromLatin1(code));
        tell(what); // with nothing to find
    }
    for (const auto& [each, code] : Codes<FrontMark>::table)
        shown.front.push_back(each);
    for (const auto& [each, code] : Codes<BackMark>::table)
        shown.back.push_back(each);
    for (const auto& [each, code] : Codes<Neighbour>::table)
        shown.near.push_back({each, millimetres(120)});
    for (const auto& [each, code] : Codes<FilmLook>::table) {
        shown.film = each;
        tell(PanelTry::Front);
    }
    for (const auto& [each, code] : Codes<BackReach>::table) {
        shown.reach = each;
        tell(PanelTry::Back);
    }
    for (const auto& [each, code] : Codes<BackMarking>::table) {
        shown.marking = each;
        tell(PanelTry::Back);
    }
    for (const auto& [each, code] : Codes<EdgeLook>::table)
        for (const auto& [inside, name] : Codes<InsideLook>::table) {
            shown.edge = each;
            shown.inside = inside;
            tell(PanelTry::Edge);
        }
    for (const auto& [each, code] : Codes<MagnetPull>::table) {
        shown.magnetHere = each;
        shown.magnetBare = each;
        tell(PanelTry::Magnet);
    }
    for (const auto& [each, code] : Codes<TapSound>::table) {
        shown.tap = each;
        tell(PanelTry::TapIt);
    }
    for (const auto& [each, code] : Codes<SandedTo>::table) {
        shown.sanded = each;
        tell(PanelTry::SandSpot);
    }
    for (const auto& [each, code] : Codes<ClothRub>::table) {
        shown.rub = each;
        tell(PanelTry::Cloth);
    }
    for (const auto& [each, code] : Codes<AdhesiveFeel>::table) {
        shown.adhesive = each;
        tell(PanelTry::Adhesive);
    }
    tell(PanelTry::Around);
}

} // namespace
} // namespace strandbench
