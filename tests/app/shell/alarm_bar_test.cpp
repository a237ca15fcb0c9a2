// SPDX-License-Identifier: GPL-3.0-or-later
// The alarm bar under a thumb, a key and a screen reader: who comes first, and which tap counts.
#include "alarm_glass.h"
#include "theme/sizes.h"

#include <QAccessible>
#include <QImage>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace strandbench {
namespace {

class Bar : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(glass.show()); }
    Glass glass;
    QSignalSpy answered{glass.bar, &AlarmBar::answered};
};

TEST_F(Bar, oneTakesTheWholeWidthAndTheRibbonsHeight)
{
    glass.set({gels});
    const Theme& theme = glass.theme;
    EXPECT_EQ(glass.bar->height(), theme.px(sizes::ribbon) + 2 * theme.px(1.2));
    EXPECT_TRUE(glass.button(0)->isVisible());
    EXPECT_FALSE(glass.button(1)->isVisible());
    EXPECT_EQ(glass.button(0)->width(), glass.pixels.width() - 2 * theme.px(sizes::margin));
    EXPECT_EQ(glass.button(0)->height(), glass.bar->height() - 2 * theme.px(1.2));
}

TEST_F(Bar, aTapAnswersTheAlarmUnderIt)
{
    glass.set({edges, sandFrom});
    glass.later(500);
    glass.tap(1);
    ASSERT_EQ(answered.count(), 1);
    EXPECT_EQ(answered[0][0].value<std::size_t>(), 1U);
    glass.tap(0);
    ASSERT_EQ(answered.count(), 2);
    EXPECT_EQ(answered[1][0].value<std::size_t>(), 0U);
}

TEST_F(Bar, aMouseAndTheKeyboardAnswerToo)
{
    glass.set({edges});
    glass.later(500);
    QTest::mouseClick(glass.button(0), Qt::LeftButton);
    EXPECT_EQ(answered.count(), 1);
    glass.later(500);
    glass.button(0)->setFocus(Qt::TabFocusReason);
    QTest::keyClick(glass.button(0), Qt::Key_Return); // the window's
    EXPECT_EQ(answered.count(), 1);
    QTest::keyClick(glass.button(0), Qt::Key_Space);
    EXPECT_EQ(answered.count(), 2);
}

TEST_F(Bar, theFirstOfTwoIsTheLeftOneWhicheverHand)
{
    for (const Hand hand : {Hand::Right, Hand::Left}) {
        Glass other(rules::glasses()[3], DayNight::Day, hand);
        ASSERT_TRUE(other.show());
        other.set({edges, sandFrom, gels}); // the third has no place: the caller counts it
        EXPECT_LT(other.button(0)->geometry().right(), other.button(1)->geometry().left());
        EXPECT_EQ(other.button(0)->width(), other.button(1)->width());
        EXPECT_EQ(other.button(0)->spoken(), edges.headline + u", "_s + edges.second);
        EXPECT_EQ(other.button(1)->spoken(), sandFrom.headline + u", "_s + sandFrom.second);
    }
}

TEST_F(Bar, aTapMeantForWhatLayThereIsNotTaken)
{
    glass.set({gels});
    glass.tap(0);
    QTest::keyClick(glass.button(0), Qt::Key_Space);
    glass.later(499);
    glass.tap(0);
    EXPECT_EQ(answered.count(), 0);
    glass.later(1);
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, takesTapsAfterHalfASecondThoughNoTickCame)
{
    glass.set({gels});
    QTest::qWait(600); // the glass's own time: the window ticks once a second only
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, anAlarmThatPushesInIsNotAnsweredForTheOther)
{
    glass.set({sandFrom});
    glass.later(1000);
    glass.set({gels, sandFrom});
    glass.tap(0);
    glass.tap(1); // it came from under the other's place
    EXPECT_EQ(answered.count(), 0);
    glass.later(500);
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, aFingerThatWasDownWhenItPushedInAnswersNothing)
{
    glass.set({sandFrom});
    glass.later(1000);
    const QPoint at = glass.button(0)->rect().center();
    touching::press(glass.button(0), at);
    glass.set({gels});
    glass.later(1000); // held for longer than the rest
    QTest::touchEvent(&glass.window, touching::panel())
        .move(0, glass.button(0)->mapTo(&glass.window, at) + QPoint(3, 0));
    touching::release(glass.button(0), at);
    EXPECT_EQ(answered.count(), 0);
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, aSecondTapIsNotTakenForTheOneThatGrewThere)
{
    glass.set({gels, sandFrom});
    glass.later(1000);
    glass.tap(1);
    ASSERT_EQ(answered.count(), 1);
    const QPoint there = glass.button(1)->geometry().center();
    glass.set({gels});
    touching::tap(glass.bar, there);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, aFingerThatBouncesAnswersOnce)
{
    glass.set({gels});
    glass.later(1000);
    glass.tap(0);
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
}

TEST_F(Bar, aHeadlineThatCountsIsTheSameAlarm)
{
    glass.set({edges});
    glass.later(1000);
    AlarmShown counted = edges;
    counted.headline = u"Clear the edges: 0:19"_s;
    glass.set({counted});
    glass.tap(0);
    EXPECT_EQ(answered.count(), 1);
    EXPECT_TRUE(glass.button(0)->spoken().startsWith(counted.headline));
}

TEST_F(Bar, theSameAlarmComesNewAfterAllWereAnswered)
{
    glass.set({gels});
    glass.later(1000);
    glass.set({});
    EXPECT_FALSE(glass.button(0)->isVisible());
    glass.set({gels});
    glass.tap(0);
    EXPECT_EQ(answered.count(), 0);
}

TEST_F(Bar, theKeyboardsRingAndAPressAreSeen)
{
    glass.set({gels});
    glass.later(500);
    const QImage plain = glass.bar->grab().toImage();
    glass.button(0)->setFocus(Qt::TabFocusReason);
    EXPECT_NE(glass.bar->grab().toImage(), plain);
    glass.button(0)->clearFocus();
    EXPECT_EQ(glass.bar->grab().toImage(), plain);
    touching::press(glass.button(0), glass.button(0)->rect().center());
    EXPECT_NE(glass.bar->grab().toImage(), plain);
    touching::release(glass.button(0), glass.button(0)->rect().center());
}

TEST_F(Bar, isAnAlertOfButtonsForAScreenReader)
{
    glass.set({edges, sandFrom});
    glass.later(500);
    QAccessibleInterface* whole = QAccessible::queryAccessibleInterface(glass.bar);
    ASSERT_NE(whole, nullptr);
    EXPECT_EQ(whole->role(), QAccessible::AlertMessage);
    EXPECT_TRUE(whole->text(QAccessible::Name).contains(edges.headline));
    EXPECT_TRUE(whole->text(QAccessible::Name).contains(sandFrom.headline));
    QAccessibleInterface* one = QAccessible::queryAccessibleInterface(glass.button(1));
    ASSERT_NE(one, nullptr);
    EXPECT_EQ(one->role(), QAccessible::Button);
    EXPECT_EQ(one->text(QAccessible::Name), sandFrom.headline + u", "_s + sandFrom.second);
    ASSERT_NE(one->actionInterface(), nullptr);
    one->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(answered.count(), 1);
    EXPECT_EQ(answered[0][0].value<std::size_t>(), 1U);
}

} // namespace
} // namespace strandbench
