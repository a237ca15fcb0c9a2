// SPDX-License-Identifier: GPL-3.0-or-later
// A foot switch sends a key: it does what a tap on the way on does, once.
#include "bench_fixture.h"

#include <QKeyEvent>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class AnyKeyOnTheBench : public BenchTest {
protected:
    void press(Qt::Key key)
    {
        QTest::keyClick(window().focusWidget() ? window().focusWidget() : &window(), key);
        bench().thumb().settle();
    }
    void later(double s) { bench().clock().advance(seconds(s)); }
    [[nodiscard]] int prepDone() { return bench().repair(u"4421"_s)->prepDone; }
};

TEST_F(AnyKeyOnTheBench, ConfirmsTheStepAsATapDoes)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const int before = prepDone();
    int done = before;
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Space, Qt::Key_B, Qt::Key_F5, Qt::Key_PageDown}) {
        later(2);
        press(key);
        EXPECT_EQ(prepDone(), ++done) << key;
    }
}

TEST_F(AnyKeyOnTheBench, ABouncingOrHeldSwitchConfirmsOnce)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const int before = prepDone();
    press(Qt::Key_B);
    later(0.1);
    press(Qt::Key_B);
    QKeyEvent held(QEvent::KeyPress, Qt::Key_B, Qt::NoModifier, u"b"_s, true);
    later(2);
    QCoreApplication::sendEvent(&window(), &held);
    bench().thumb().settle();
    EXPECT_EQ(prepDone(), before + 1);
}

TEST_F(AnyKeyOnTheBench, KeysWithAMeaningOfTheirOwnConfirmNothing)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const int before = prepDone();
    for (const Qt::Key key : {Qt::Key_Tab, Qt::Key_Escape, Qt::Key_Shift, Qt::Key_Left, Qt::Key_7, Qt::Key_Backspace}) {
        later(2);
        press(key);
    }
    later(2);
    QTest::keyClick(&window(), Qt::Key_B, Qt::ControlModifier);
    bench().thumb().settle();
    EXPECT_EQ(prepDone(), before);
}

TEST_F(AnyKeyOnTheBench, EnterMeansTheControlThatTabWentTo)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const int before = prepDone();
    bench().thumb().find(u"answer_stop"_s)->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(screen(), u"screen_ask"_s);
    EXPECT_EQ(prepDone(), before);
}

TEST_F(AnyKeyOnTheBench, StopsWhereTheWayOnIsClosed)
{
    open();
    walkTo(skirtPanel(), Station::Wait);
    later(2);
    press(Qt::Key_B); // it does not sand yet
    EXPECT_EQ(screen(), u"screen_wait"_s);
    EXPECT_FALSE(bench().repair(u"4421"_s)->runs.front().sands.has_value());
    window().showHome(); // no way on at all
    later(2);
    press(Qt::Key_B);
    EXPECT_EQ(screen(), u"screen_home"_s);
}

} // namespace
} // namespace strandbench::test
