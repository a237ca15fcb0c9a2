// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/rules.h"

#include "exchange/built_in.h"
#include "json_tools.h"

#include <QCryptographicHash>

#include <gmock/gmock.h>

#include <set>

using namespace Qt::StringLiterals;
using testing::AllOf;
using testing::Contains;
using testing::Each;
using testing::ElementsAre;
using testing::EndsWith;
using testing::IsEmpty;
using testing::SizeIs;
using testing::StartsWith;

namespace strandbench {
namespace {

QByteArray table() { return builtInBytes(u"decision/table.json"_s); }

/// The trade's table, row by row: frp, smc, steel, galvanised, aluminium, weld_seam, bond_seam, hole.
/// Common practice, no source.
TEST(DecisionTableFile, HoldsTheTradesTable)
{
    const std::map<FillerClass, QString> rows{
        {FillerClass::ShortStrand, u"yes yes yes if_named yes best best to_12_mm"_s},
        {FillerClass::ShortStrandLight, u"yes no yes no no second yes no"_s},
        {FillerClass::MixedStrand, u"yes best yes if_named yes yes yes best"_s},
        {FillerClass::LongStrand, u"yes_bulk no yes_bulk no no no no bridging"_s},
    };
    for (const auto& [filler, row] : rows) {
        QStringList found;
        for (const QString& column : DecisionTable::columns()) {
            const TableCell cell = builtInTable().cell(filler, column);
            found << codeOf(cell.suitability);
            EXPECT_FALSE(cell.reason.isEmpty());
            EXPECT_NE(cell.reason, u"no_cell"_s);
        }
        EXPECT_EQ(found.join(u' '), row) << codeOf(filler).toStdString();
    }
    EXPECT_EQ(builtInTable().source(), table());
    EXPECT_EQ(builtInTable().hash(), QCryptographicHash::hash(table(), QCryptographicHash::Sha256));
}

/// Why each cell is what it is, in the order of the table above. What a person is told: common practice, no source.
TEST(DecisionTableFile, HoldsTheTradesReasons)
{
    const std::map<FillerClass, QString> rows{
        {FillerClass::ShortStrand, u"wets_laminate holds_on_smc holds_on_steel zinc_must_be_named holds_on_aluminium "
                                   "dense_seals_weld dense_resists_bond_line strands_too_short_for_hole"_s},
        {FillerClass::ShortStrandLight,
         u"wets_laminate light_weak_on_smc holds_on_steel light_lets_water_to_zinc light_lets_water_to_aluminium "
         "light_only_over_dense_weld takes_bond_seam light_cannot_bridge"_s},
        {FillerClass::MixedStrand,
         u"wets_laminate mixed_bonds_to_smc holds_on_steel zinc_must_be_named holds_on_aluminium "
         "takes_weld_seam takes_bond_seam mixed_bridges_hole"_s},
        {FillerClass::LongStrand,
         u"long_for_bulk long_leaves_smc_dry long_for_bulk long_lets_water_to_zinc long_lets_water_to_aluminium "
         "long_bridges_over_weld long_bridges_over_bond long_only_bridges"_s},
    };
    for (const auto& [filler, row] : rows) {
        QStringList found;
        for (const QString& column : DecisionTable::columns())
            found << builtInTable().cell(filler, column).reason;
        EXPECT_EQ(found.join(u' ').toStdString(), row.toStdString());
    }
}

TEST(DecisionTableFile, NeedsEveryRowCellAndReason)
{
    EXPECT_THAT(faultsOf(readDecisionTable(without(table(), u"long_strand"_s))),
                ElementsAre("long_strand||Missing|object"));
    EXPECT_THAT(faultsOf(readDecisionTable(without(table(), u"mixed_strand.smc"_s))),
                ElementsAre("mixed_strand.smc||Missing|object"));
    EXPECT_THAT(faultsOf(readDecisionTable(without(table(), u"mixed_strand.smc.reason"_s))),
                ElementsAre("mixed_strand.smc.reason||Missing|text"));
    EXPECT_THAT(faultsOf(readDecisionTable(with(table(), u"mixed_strand.smc.reason"_s, u""_s))),
                ElementsAre("mixed_strand.smc.reason||Empty|text"));
    EXPECT_THAT(faultsOf(readDecisionTable(with(table(), u"mixed_strand.smc.suitability"_s, u"always"_s))),
                ElementsAre(StartsWith("mixed_strand.smc.suitability|always|NotOneOf|best,yes,")));
    EXPECT_THAT(faultsOf(readDecisionTable(with(table(), u"finish_fine"_s, QJsonObject()))),
                ElementsAre(StartsWith("finish_fine|{}|UnknownKey|")));
    EXPECT_THAT(faultsOf(readDecisionTable(with(table(), u"mixed_strand.oak"_s, QJsonObject()))),
                ElementsAre(StartsWith("mixed_strand.oak|{}|UnknownKey|")));
    // 4 rows of an empty table, every one named.
    EXPECT_THAT(faultsOf(readDecisionTable("{}")), SizeIs(4));
    EXPECT_THAT(faultsOf(readDecisionTable("")), SizeIs(1));
}

QByteArray book(const QByteArray& prepare, const QByteArray& finish = {})
{
    return "{\"prepare\":[" + prepare + "],\"finish\":[" + finish + "]}";
}

QByteArray step(const QByteArray& code, const QByteArray& when = {}, const QByteArray& arguments = {})
{
    return "{\"code\":\"" + code + "\",\"hands_on_s\":30,\"waiting_s\":90,\"cautions\":[\"dust\"],\"when\":[" + when +
           "],\"arguments\":[" + arguments + "]}";
}

TEST(StepBookFile, IsReadInItsOrder)
{
    const QByteArray json =
        book(step("wash") + ',' + step("drill", "\"!metal\",\"hole\"", "\"drill_small\""), step("inspect"));
    const auto steps = readStepBook(json);
    ASSERT_THAT(faultsOf(steps), IsEmpty());
    ASSERT_EQ(steps->prepare.size(), 2u);
    ASSERT_EQ(steps->finish.size(), 1u);
    const StepRule& drill = steps->prepare[1];
    EXPECT_EQ(drill.code, u"drill"_s);
    EXPECT_DOUBLE_EQ(inSeconds(drill.handsOn), 30);
    EXPECT_DOUBLE_EQ(inSeconds(drill.waiting), 90);
    EXPECT_THAT(drill.cautions, ElementsAre(u"dust"_s));
    EXPECT_THAT(drill.when, ElementsAre(u"!metal"_s, u"hole"_s));
    EXPECT_THAT(drill.arguments, ElementsAre(u"drill_small"_s));
    EXPECT_EQ(steps->source, json);
    EXPECT_EQ(steps->hash, QCryptographicHash::hash(json, QCryptographicHash::Sha256));
}

TEST(StepBookFile, RefusesWhatThePlannerDoesNotKnow)
{
    EXPECT_THAT(faultsOf(readStepBook(book(step("a", "\"raining\"")))),
                ElementsAre(StartsWith("prepare[0].when[0]|raining|NotOneOf|")));
    EXPECT_THAT(faultsOf(readStepBook(book(step("a", "\"!!metal\"")))),
                ElementsAre(StartsWith("prepare[0].when[0]|!!metal|NotOneOf|")));
    EXPECT_THAT(faultsOf(readStepBook(book({}, step("a", {}, "\"!drill_small\"")))),
                ElementsAre(StartsWith("finish[0].arguments[0]|!drill_small|NotOneOf|")));
    EXPECT_THAT(faultsOf(readStepBook(book(step("a"), step("b") + ',' + step("a")))),
                ElementsAre("finish[1].code|a|Conflicts|prepare[0].code,a"));
    EXPECT_THAT(faultsOf(readStepBook("{\"prepare\":[3],\"finish\":{}}")),
                ElementsAre("prepare[0]|3|WrongKind|object", "finish|{}|WrongKind|list"));
    EXPECT_THAT(faultsOf(readStepBook(book("{\"code\":\"a\",\"hands_on_min\":1}"))),
                ElementsAre("prepare[0].hands_on_s||Missing|number,s", "prepare[0].waiting_s||Missing|number,s",
                            "prepare[0].cautions||Missing|list", "prepare[0].when||Missing|list",
                            "prepare[0].arguments||Missing|list",
                            StartsWith("prepare[0].hands_on_min|1|UnknownKey|hands_on_s,")));
}

/// Up to four hours of work and a week of waiting; words of up to sixty letters. One more is named.
TEST(StepBookFile, HoldsTimesAndWordsWithinTheirBounds)
{
    const auto faultsWith = [](const QByteArray& was, const QByteArray& becomes) {
        return faultsOf(readStepBook(book(step("a").replace(was, becomes))));
    };
    EXPECT_THAT(faultsWith(":30", ":14400"), IsEmpty());
    EXPECT_THAT(faultsWith(":30", ":14401"), ElementsAre("prepare[0].hands_on_s|14401|OutOfRange|0,14400,s"));
    EXPECT_THAT(faultsWith(":30", ":0"), IsEmpty());
    EXPECT_THAT(faultsWith(":30", ":-1"), ElementsAre("prepare[0].hands_on_s|-1|OutOfRange|0,14400,s"));
    EXPECT_THAT(faultsWith(":90", ":604800"), IsEmpty());
    EXPECT_THAT(faultsWith(":90", ":604801"), ElementsAre("prepare[0].waiting_s|604801|OutOfRange|0,604800,s"));
    EXPECT_THAT(faultsWith(":90", ":0"), IsEmpty());
    EXPECT_THAT(faultsWith(":90", ":-1"), ElementsAre("prepare[0].waiting_s|-1|OutOfRange|0,604800,s"));
    EXPECT_THAT(faultsOf(readStepBook(book(step(QByteArray(60, 'a'))))), IsEmpty());
    EXPECT_THAT(faultsOf(readStepBook(book(step(QByteArray(61, 'a'))))),
                ElementsAre(AllOf(StartsWith("prepare[0].code|"), EndsWith("|TooLong|60"))));
}

/// The order of the trade: what must not come before what (common practice, no source).
TEST(StepBookFile, OursKeepsTheTradesOrder)
{
    QStringList codes;
    for (const StepRule& rule : builtInSteps().prepare)
        codes << rule.code;
    ASSERT_FALSE(codes.isEmpty());
    EXPECT_EQ(codes.constFirst(), u"gear_on"_s);
    const QStringList order{u"gear_on"_s,      u"wash"_s,        u"degrease"_s,  u"strip_paint"_s,
                            u"cut_to_sound"_s, u"find_cracks"_s, u"stop_drill"_s};
    for (qsizetype i = 1; i < order.size(); ++i) {
        EXPECT_THAT(codes, Contains(order[i]));
        EXPECT_LT(codes.indexOf(order[i - 1]), codes.indexOf(order[i])) << order[i].toStdString();
    }
    EXPECT_FALSE(builtInSteps().finish.empty());
}

} // namespace
} // namespace strandbench
