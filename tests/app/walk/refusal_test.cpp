// SPDX-License-Identifier: GPL-3.0-or-later
// A spot-welded seam is refused: common practice, no source.
#include "bench_fixture.h"
#include "shown.h"

#include "screens/frame/sign_widget.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Refusal : public BenchTest {
protected:
    void toRefusal()
    {
        open();
        walkTo(wheelArch(), Station::Decide);
        ASSERT_EQ(screen(), u"screen_refusal"_s);
    }
};

TEST_F(Refusal, TheWholeScreenSaysWhatIsWrongAndWhatToDoInstead)
{
    toRefusal();
    Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_EQ(shown(window(), u"sentence"_s), words.stopHeadline(u"weld_spot"_s));
    for (const QString& part : QStringList{u"stop_wrong"_s, u"stop_why"_s, u"stop_instead"_s, u"stop_override"_s})
        EXPECT_FALSE(shown(window(), part).isEmpty()) << part.toStdString();
    EXPECT_TRUE(shown(window(), u"stop_others"_s).isEmpty()) << "what was not asked any more is no reason";
    const auto* sign = window().screen()->findChild<SignWidget*>();
    ASSERT_NE(sign, nullptr);
    EXPECT_FALSE(sign->accessibleName().isEmpty());
}

TEST_F(Refusal, AssessingAgainTakesAHold)
{
    toRefusal();
    tap(u"assess_again"_s);
    EXPECT_EQ(screen(), u"screen_refusal"_s) << "a brush of the sleeve does nothing";
    ASSERT_TRUE(bench().thumb().hold(u"assess_again"_s));
    EXPECT_EQ(screen(), u"screen_assess_substrate"_s);
}

TEST_F(Refusal, TheEasyWayOnParksAndARestartFindsItParked)
{
    toRefusal();
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_parked"_s);
    const QString parked = shown(window(), u"message_headline"_s);
    open();
    const Repair* repair = bench().repair(u"4402"_s);
    ASSERT_NE(repair, nullptr);
    EXPECT_EQ(nextStep(*repair).station, Station::Parked);
    EXPECT_EQ(screen(), u"screen_home"_s);
    const auto* card = bench().thumb().find(u"job_card_0"_s);
    ASSERT_NE(card, nullptr);
    EXPECT_TRUE(card->accessibleDescription().contains(parked)) << card->accessibleDescription().toStdString();
    tap(u"job_card_0"_s);
    EXPECT_EQ(screen(), u"screen_parked"_s);
}

} // namespace
} // namespace strandbench::test
