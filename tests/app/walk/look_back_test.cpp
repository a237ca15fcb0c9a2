// SPDX-License-Identifier: GPL-3.0-or-later
// Back only looks: whatever is looked at, the repair stays where it was.
#include "bench_fixture.h"
#include "shown.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class LookBack : public BenchTest {};

TEST_F(LookBack, BackFromAnyStepLeadsHomeInTheEndAndChangesNothing)
{
    open();
    for (const Station station : {Station::Decide, Station::Prepare, Station::Mix, Station::Spread, Station::Wait,
                                  Station::Turn, Station::Finish, Station::HandOver}) {
        walkTo(skirtPanel(), station);
        const Repair before = *bench().repair(u"4421"_s);
        int backs = 0;
        while (screen() != u"screen_home"_s && backs < 60) {
            tap(u"answer_back"_s);
            ++backs;
        }
        EXPECT_EQ(screen(), u"screen_home"_s) << codeOf(station).toStdString();
        EXPECT_TRUE(*bench().repair(u"4421"_s) == before) << codeOf(station).toStdString();
        EXPECT_EQ(nextStep(*bench().repair(u"4421"_s)).station, station);
    }
}

TEST_F(LookBack, AKeptAnswerIsKeptAndAnotherOneCorrects)
{
    open();
    walkTo(skirtPanel(), Station::Decide);
    for (int i = 0; i < 20 && screen() != u"screen_assess_zone"_s; ++i)
        tap(u"answer_back"_s);
    ASSERT_EQ(screen(), u"screen_assess_zone"_s);
    const std::size_t before = eventsInLog(bench().repair(u"4421"_s)->id);
    tap(u"answer_way_on"_s); // keep
    EXPECT_EQ(screen(), u"screen_plan"_s);
    EXPECT_EQ(eventsInLog(bench().repair(u"4421"_s)->id), before);
    for (int i = 0; i < 20 && screen() != u"screen_assess_zone"_s; ++i)
        tap(u"answer_back"_s);
    tap(u"answer_structural"_s);
    EXPECT_EQ(screen(), u"screen_refusal"_s);
    EXPECT_EQ(eventsInLog(bench().repair(u"4421"_s)->id), before + 1);
}

} // namespace
} // namespace strandbench::test
