// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/assumptions_json.h"

#include "plan/assumption_table.h"

#include <gtest/gtest.h>

#include <random>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QStringList fields(const Faults& faults)
{
    QStringList names;
    for (const Fault& each : faults)
        names << each.field;
    return names;
}

TEST(AssumptionsJson, ComesBackAsItWas)
{
    std::mt19937 dice(20260914);
    for (int round = 0; round < 200; ++round) {
        AssumptionBook book;
        for (Assumptions* each :
             {&book.now, &book.earlier.emplace_back(AssumptionBook::Earlier{round, {}}).assumptions})
            for (const AssumptionEntry& entry : assumptionTable()) {
                std::uniform_real_distribution<double> between(entry.number(entry.least), entry.number(entry.most));
                if (dice() % 2 == 0)
                    if (const auto next = changed(*each, entry, between(dice)))
                        *each = *next;
            }
        const ReadAssumptions read = readAssumptions(writeAssumptions(book));
        ASSERT_TRUE(read.faults.empty()) << fields(read.faults).join(u", "_s).toStdString();
        EXPECT_TRUE(sameAssumptions(read.book.now, book.now));
        ASSERT_EQ(read.book.earlier.size(), 1U);
        EXPECT_TRUE(sameAssumptions(read.book.earlier.front().assumptions, book.earlier.front().assumptions));
        EXPECT_EQ(read.book.earlier.front().untilUtcMs, round);
        // And not only to six decimals: the quantities are the same to the bit once they have been through the file.
        EXPECT_EQ(writeAssumptions(read.book), writeAssumptions(book));
        EXPECT_EQ(read.book.now.spreading, readAssumptions(writeAssumptions(read.book)).book.now.spreading);
    }
}

TEST(AssumptionsJson, KeepsOnlyWhatWasChanged)
{
    const QByteArray json = writeAssumptions({});
    for (const AssumptionEntry& each : assumptionTable())
        EXPECT_FALSE(json.contains(each.code.toUtf8())) << each.code.toStdString();
}

TEST(AssumptionsJson, NamesABadValueAndTakesTheGoodOnes)
{
    const ReadAssumptions read = readAssumptions(
        R"({"format": 1, "changed": {"kneading_s": 900, "board_mm": 300, "proud_mm": "2", "thickness": 3}})");
    ASSERT_EQ(read.faults.size(), 3U);
    const auto fault = [&](const QString& field) {
        for (const Fault& each : read.faults)
            if (each.field == field)
                return each;
        return Fault{};
    };
    EXPECT_EQ(fault(u"changed.kneading_s"_s),
              (Fault{u"changed.kneading_s"_s, u"900"_s, FaultKind::OutOfRange, {u"10"_s, u"180"_s, u"s"_s}}));
    EXPECT_EQ(fault(u"changed.proud_mm"_s).kind, FaultKind::WrongKind);
    EXPECT_EQ(fault(u"changed.thickness"_s).kind, FaultKind::UnknownKey);
    EXPECT_EQ(read.book.now.kneading, seconds(45)); // the default for what is bad
    EXPECT_EQ(read.book.now.proud, millimetres(1));
    EXPECT_EQ(read.book.now.board, millimetres(300)); // and what is good
}

TEST(AssumptionsJson, EveryValueBeyondItsRangeIsNamed)
{
    for (const AssumptionEntry& each : assumptionTable()) {
        for (const double bad : {each.number(each.least) - 0.001, each.number(each.most) + 0.001}) {
            const QByteArray json = "{\"format\": 1, \"changed\": {\"" + each.code.toUtf8() +
                                    "\": " + QByteArray::number(bad, 'f', 6) + "}}";
            const ReadAssumptions read = readAssumptions(json);
            ASSERT_EQ(read.faults.size(), 1U) << json.toStdString();
            EXPECT_EQ(read.faults.front().field, u"changed."_s + each.code);
            EXPECT_TRUE(sameAssumptions(read.book.now, {}));
        }
    }
}

TEST(AssumptionsJson, NamesBothSidesOfAContradiction)
{
    const ReadAssumptions read =
        readAssumptions(R"({"format": 1, "changed": {"dent_aim_mm": 3, "dent_deepest_mm": 2, "kneading_s": 60}})");
    ASSERT_EQ(read.faults.size(), 1U);
    EXPECT_EQ(read.faults.front(),
              (Fault{u"changed.dent_aim_mm"_s, u"3"_s, FaultKind::Conflicts, {u"changed.dent_deepest_mm"_s, u"2"_s}}));
    EXPECT_EQ(read.book.now.decision.dentDeepest, millimetres(6));
    EXPECT_EQ(read.book.now.kneading, seconds(60));
}

TEST(AssumptionsJson, WhatIsNoSuchFileIsTheDefaultAndSaysSo)
{
    for (const char* bad : {"", "[]", "{", "{\"format\": 2, \"changed\": {}}", "{\"changed\": {}}", "{\"format\": 1}",
                            R"({"format": 1, "changed": {"kneading_s": 50, "kneading_s": 60}})"}) {
        const ReadAssumptions read = readAssumptions(bad);
        EXPECT_FALSE(read.faults.empty()) << bad;
        EXPECT_TRUE(sameAssumptions(read.book.now, {})) << bad;
    }
}

TEST(AssumptionsJson, EarlierOnesStandInOrder)
{
    const ReadAssumptions read = readAssumptions(R"({"format": 1, "changed": {}, "earlier": [
        {"until_utc_ms": 2000, "changed": {}}, {"until_utc_ms": 1000, "changed": {}}, {"changed": {}}]})");
    EXPECT_EQ(fields(read.faults), (QStringList{u"earlier[1].until_utc_ms"_s, u"earlier[2].until_utc_ms"_s}));
    EXPECT_EQ(read.book.earlier.size(), 1U);
}

} // namespace
} // namespace strandbench
