// SPDX-License-Identifier: GPL-3.0-or-later
// What the technician went by is chosen beside the question and stands in the record with the answer.
#include "bench_fixture.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class WhatToldTheSubstrate : public BenchTest {
protected:
    [[nodiscard]] std::vector<FoundBy> inTheRecord()
    {
        const auto read = RepairLog::open(log(), LogMode::ReadOnly);
        const auto events = (*read)->events(bench().repair(roofCap().job)->id);
        for (const Event& each : *events)
            if (const auto* answered = std::get_if<Answered>(&each.payload))
                return answered->foundBy;
        return {};
    }
    [[nodiscard]] bool chosen(const QString& key) { return window().findChild<QAbstractButton*>(key)->isChecked(); }
};

TEST_F(WhatToldTheSubstrate, IsTakenDownWithTheAnswer)
{
    open();
    walkTo(roofCap(), Station::Assess);
    ASSERT_EQ(screen(), u"screen_assess_substrate"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_how_to_tell"_s);
    tap(u"answer_way_on"_s);
    tap(u"found_by_tap_sound"_s);
    tap(u"found_by_magnet"_s);
    tap(u"found_by_broken_edge"_s);
    tap(u"found_by_magnet"_s); // chosen by mistake
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_assess_substrate"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(chosen(u"found_by_tap_sound"_s)) << "still there when somebody looks again";
    EXPECT_FALSE(chosen(u"found_by_magnet"_s));
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    tap(u"answer_frp"_s);
    EXPECT_EQ(inTheRecord(), (std::vector<FoundBy>{FoundBy::BrokenEdge, FoundBy::TapSound}));
}

TEST_F(WhatToldTheSubstrate, IsNotAskedOfOtherQuestionsAndNeverNeeded)
{
    open();
    walkTo(roofCap(), Station::Assess);
    tap(u"answer_frp"_s);
    EXPECT_EQ(inTheRecord(), std::vector<FoundBy>());
    ASSERT_EQ(screen(), u"screen_assess_damage_kind"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_how_to_tell"_s);
    EXPECT_EQ(window().findChild<QAbstractButton*>(u"found_by_magnet"_s), nullptr);
}

} // namespace
} // namespace strandbench::test
