// SPDX-License-Identifier: GPL-3.0-or-later
// What is keyed in wrong is said where it happened, and nothing is lost.
#include "bench_fixture.h"
#include "shown.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class InputTrouble : public BenchTest {
protected:
    QString trouble() { return window().screen()->troubleShown(); }
    void key(const QString& text)
    {
        for (const QChar each : text)
            tap(each == u'.' ? u"key_point"_s : u"key_"_s + each);
    }
    /// To the screen of a question of a repair, by answering those before it.
    void toQuestion(const DemoJob& job, const QString& wanted)
    {
        Walk walk(bench(), job);
        for (int i = 0; i < 60 && screen() != wanted; ++i)
            ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    }
};

TEST_F(InputTrouble, AnEmptyJobNumberIsNotTaken)
{
    open();
    tap(u"take_in"_s);
    ASSERT_EQ(screen(), u"screen_job_number"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_job_number"_s);
    EXPECT_TRUE(trouble().contains(u"job number"_s)) << trouble().toStdString();
    key(u"7"_s);
    EXPECT_TRUE(trouble().isEmpty()) << "it goes as soon as it is put right";
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_panel"_s);
}

TEST_F(InputTrouble, APanelThatIsOpenAlreadyIsNotTakenInTwice)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    window().showHome();
    tap(u"take_in"_s);
    key(u"4421"_s);
    tap(u"answer_way_on"_s);
    tap(u"name_0"_s); // the same panel
    EXPECT_EQ(screen(), u"screen_panel"_s);
    EXPECT_FALSE(trouble().isEmpty());
    EXPECT_EQ(bench().bench().openRepairs().size(), 1U);
    tap(u"name_1"_s); // another panel of the same job
    EXPECT_EQ(screen(), u"screen_assess_substrate"_s);
    EXPECT_EQ(bench().bench().openRepairs().size(), 2U);
}

TEST_F(InputTrouble, AFigureOutOfRangeIsNamedWithWhatIsAllowed)
{
    open();
    toQuestion(skirtPanel(), u"screen_assess_size"_s);
    const qint64 before = bench().repair(u"4421"_s)->lastSeq;
    tap(u"length_mm_figure"_s);
    key(u"5000"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(trouble().contains(u"5000"_s)) << trouble().toStdString();
    EXPECT_TRUE(trouble().contains(u"3000"_s)) << trouble().toStdString();
    EXPECT_TRUE(trouble().contains(u"ength"_s)) << trouble().toStdString();
    EXPECT_EQ(shown(window(), u"typed"_s).left(4), u"5000"_s) << "what was keyed in is still there";
    tap(u"key_clear"_s);
    key(u"52"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(trouble().isEmpty());
    EXPECT_EQ(shown(window(), u"length_mm_figure"_s), u"52"_s);
    EXPECT_EQ(bench().repair(u"4421"_s)->lastSeq, before);
}

TEST_F(InputTrouble, AFigureThatIsMissingIsNamed)
{
    open();
    toQuestion(skirtPanel(), u"screen_assess_size"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_assess_size"_s);
    EXPECT_TRUE(trouble().contains(u"Length"_s)) << trouble().toStdString();
}

TEST_F(InputTrouble, AGougeDeeperThanThePanelIsAHole)
{
    open();
    DemoJob job = roofCap();
    job.figures[u"depth_mm"_s] = u"9"_s;
    toQuestion(job, u"screen_assess_size"_s);
    Walk walk(bench(), job);
    while (screen() == u"screen_assess_size"_s && walk.step()) {
    }
    EXPECT_EQ(screen(), u"screen_assess_size"_s);
    EXPECT_FALSE(shown(window(), u"verdict"_s).isEmpty());
    EXPECT_FALSE(bench().thumb().find(u"answer_way_on"_s)->isEnabled());
}

TEST_F(InputTrouble, APanelAtTheDewPointIsRefused)
{
    open();
    DemoJob job = skirtPanel();
    job.figures[u"humidity_percent"_s] = u"95"_s; // dew point of 21 degC air: 20.2 degC, the panel has 20.5 degC
    walkTo(job, Station::Decide);
    EXPECT_EQ(screen(), u"screen_refusal"_s);
    EXPECT_FALSE(shown(window(), u"stop_instead"_s).isEmpty());
}

} // namespace
} // namespace strandbench::test
