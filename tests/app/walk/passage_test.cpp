// SPDX-License-Identifier: GPL-3.0-or-later
// One screen after another: the motion tells where the work leads, and no tap waits for it.
#include "bench_fixture.h"

#include "theme/sizes.h"

#include <QTemporaryDir>

#include <array>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Passing : public ::testing::Test {
protected:
    void open(bool reduced = false)
    {
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = workingMorning();
        spec.settings = demoSettings();
        spec.settings.reducedMotion = reduced;
        spec.moves = true;
        m_bench = std::make_unique<ScriptedBench>(spec);
        m_bench->thumb().settle();
        window().passage().setLasting(3'600'000); // so slow that it is still seen after any tap
    }
    BenchWindow& window() { return m_bench->window(); }
    void tap(const QString& control) { ASSERT_TRUE(m_bench->thumb().tap(control)) << control.toStdString(); }
    /// How far the screen is from where it stands in the end.
    QPoint away()
    {
        const QPoint now = window().screen()->pos();
        window().passage().stand();
        return now - window().screen()->pos();
    }

    QTemporaryDir m_folder;
    std::unique_ptr<ScriptedBench> m_bench;
};

/// Reading order is that of the work: what comes next comes from the right, what is gone back to from the left.
TEST(Heading, TellsWhereTheWorkLeads)
{
    struct Case {
        Place from;
        Place to;
        bool back;
        bool same;
        Heading expected;
    };
    constexpr std::array cases{
        Case{Place::Home, Place::JobNumber, false, false, Heading::On},
        Case{Place::Repair, Place::Repair, false, false, Heading::On},
        Case{Place::Repair, Place::Repair, false, true, Heading::None},
        Case{Place::Panel, Place::JobNumber, true, false, Heading::Back},
        Case{Place::Repair, Place::Home, false, false, Heading::Back},
        Case{Place::Repair, Place::Help, false, false, Heading::Into},
        Case{Place::Help, Place::Glossary, false, false, Heading::On},
        Case{Place::Glossary, Place::Help, true, false, Heading::Back},
        Case{Place::Help, Place::Repair, true, false, Heading::Out},
    };
    for (const Case& each : cases)
        EXPECT_EQ(headingTo(each.from, each.to, each.back, each.same), each.expected)
            << int(each.from) << " to " << int(each.to);
}

TEST_F(Passing, AScreenComesFromWhereTheWorkLeads)
{
    open();
    tap(u"take_in"_s);
    EXPECT_EQ(window().passage().heading(), Heading::On);
    EXPECT_GT(away().x(), 0);
    tap(u"help"_s);
    EXPECT_EQ(window().passage().heading(), Heading::Into);
    EXPECT_GT(away().y(), 0);
    tap(u"help"_s);
    EXPECT_EQ(window().passage().heading(), Heading::Out);
    EXPECT_LT(away().y(), 0);
    tap(u"answer_back"_s);
    EXPECT_EQ(window().passage().heading(), Heading::Back);
    EXPECT_LT(away().x(), 0);
}

/// Each tap follows while the screen before still moves.
TEST_F(Passing, NoTapWaits)
{
    open();
    tap(u"take_in"_s);
    ASSERT_TRUE(window().passage().isMoving());
    for (const QString& key : {u"key_4"_s, u"key_4"_s, u"key_1"_s, u"key_7"_s, u"answer_way_on"_s}) {
        tap(key);
        EXPECT_TRUE(window().passage().isMoving());
    }
    EXPECT_EQ(window().screen()->objectName(), u"screen_panel"_s);
}

/// As far as it moves, a thumb that aims at the middle of where a key will stand meets that key.
TEST_F(Passing, AKeyIsHitWhereItWillStand)
{
    open();
    EXPECT_LE(Passage::shiftMm, sizes::target / 2);
    tap(u"take_in"_s);
    const QWidget* key = m_bench->thumb().find(u"key_4"_s);
    ASSERT_TRUE(key);
    (void)away();
    const QPoint aim = key->mapTo(&window(), key->rect().center());
    window().passage().begin(window().screen(), Heading::On, window().theme());
    EXPECT_EQ(window().childAt(aim), key);
}

TEST_F(Passing, UnderReducedMotionEachStandsAtOnce)
{
    open(true);
    tap(u"take_in"_s);
    EXPECT_EQ(window().passage().heading(), Heading::On);
    EXPECT_FALSE(window().passage().isMoving());
    EXPECT_EQ(away(), QPoint());
}

/// What is laid out anew while it moves stands where that puts it.
TEST_F(Passing, AScreenThatIsLaidOutAnewStandsThere)
{
    open();
    tap(u"take_in"_s);
    ASSERT_TRUE(window().passage().isMoving());
    window().setFixedSize(1024, 600);
    m_bench->thumb().settle();
    EXPECT_FALSE(window().passage().isMoving());
    EXPECT_EQ(window().screen()->x(), 0);
    EXPECT_EQ(window().screen()->width(), 1024);
}

} // namespace
} // namespace strandbench::test
