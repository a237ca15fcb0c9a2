// SPDX-License-Identifier: GPL-3.0-or-later
// Assumptions in both systems of units, against the conversion factors of NIST SP 811 (2008), appendix B.9, which
// gives them to seven figures.
#include "words/assumption_words.h"

#include <QSet>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const AssumptionEntry& entryOf(const char* code) { return *findAssumption(QString::fromLatin1(code)); }

TEST(AssumptionWords, NameEveryAssumption)
{
    QSet<QString> names;
    for (const AssumptionEntry& each : assumptionTable()) {
        const QString name = AssumptionWords::name(each.code);
        EXPECT_FALSE(name.contains(u'[')) << each.code.toStdString();
        EXPECT_FALSE(names.contains(name)) << name.toStdString();
        names.insert(name);
    }
}

TEST(AssumptionWords, ConvertAsPublished)
{
    const Words words(UnitSystem::UsCustomary, QLocale::c());
    const AssumptionWords us(words);
    // Btu_IT ft / (h ft2 °F), Btu_IT / (lb °F), Btu_IT / (h ft2 °F), lb / ft3.
    EXPECT_NEAR(us.storedNumber(entryOf("steel_w_per_m_k"), 1), 1.730735, 1e-6);
    EXPECT_NEAR(us.storedNumber(entryOf("steel_j_per_kg_k"), 1), 4186.8, 1e-3);
    EXPECT_NEAR(us.storedNumber(entryOf("face_front_w_per_m2_k"), 1), 5.678263, 1e-6);
    EXPECT_NEAR(us.storedNumber(entryOf("steel_kg_per_m3"), 1), 16.01846, 1e-5);
    EXPECT_NEAR(us.storedNumber(entryOf("board_mm"), 10), 254, 1e-9);
    EXPECT_NEAR(us.storedNumber(entryOf("board_loss_g"), 1), 28.34952, 1e-5);
    EXPECT_NEAR(us.shownNumber(entryOf("panel_high_c"), 30), 86, 1e-9);
    EXPECT_NEAR(us.shownNumber(entryOf("dew_margin_k"), 5), 9, 1e-9); // a difference has no offset
    EXPECT_EQ(us.unit(entryOf("kneading_s")), u"s"_s);
}

TEST(AssumptionWords, ReadWhatTheyShow)
{
    for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::UsCustomary}) {
        const Words words(units, QLocale(u"de"_s));
        const AssumptionWords say(words);
        for (const AssumptionEntry& each : assumptionTable()) {
            for (const AssumptionValue& value : {each.least, each.most, each.byDefault()}) {
                const double number = each.number(value);
                QString shown = say.printed(each, number).figure;
                shown.replace(u'−', u'-');
                const Checked<double> read = say.parse(each, shown);
                ASSERT_TRUE(read.has_value()) << each.code.toStdString() << ' ' << shown.toStdString();
                EXPECT_DOUBLE_EQ(*read, number) << each.code.toStdString();
            }
            EXPECT_GT(say.step(each), 0);
        }
    }
}

TEST(AssumptionWords, RefuseInTheUnitsThatAreSet)
{
    const Words words(UnitSystem::UsCustomary, QLocale::c());
    const AssumptionWords us(words);
    const AssumptionEntry& board = entryOf("board_mm");
    const Checked<double> small = us.parse(board, u"3"_s);
    ASSERT_FALSE(small.has_value());
    EXPECT_EQ(us.fault(small.error().front()), u"Mixing board, side: 3 is out of range; allowed is 3.94 to 23.6 in"_s);
    EXPECT_EQ(us.parse(board, u"x"_s).error().front().kind, FaultKind::NotReadable);
    EXPECT_EQ(us.parse(board, {}).error().front().kind, FaultKind::Empty);
    // A file's number is in the file's unit, and is told in the person's.
    const Fault filed{u"changed.board_mm"_s, u"50.8"_s, FaultKind::OutOfRange, {u"100"_s, u"600"_s, u"mm"_s}};
    EXPECT_EQ(us.fault(filed), u"Mixing board, side: 2 is out of range; allowed is 3.94 to 23.6 in"_s);
}

} // namespace
} // namespace strandbench
