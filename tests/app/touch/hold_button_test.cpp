// SPDX-License-Identifier: GPL-3.0-or-later
// Held for one second, or nothing.
#include "touch/hold_button.h"

#include "touching.h"

#include <QElapsedTimer>
#include <QImage>
#include <QSet>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;

class Hold : public testing::Test {
protected:
    void SetUp() override
    {
        button.setTitle(u"Assess again"_s);
        button.setSecondLine(u"hold 1 s"_s);
        button.setGeometry(20, 20, theme.px(40), theme.px(24));
        ASSERT_TRUE(touching::show(window, {600, 400}));
    }
    Theme theme = touching::bench();
    QWidget window;
    HoldButton button{theme, u"assess_again"_s, TapButton::Kind::Plain, &window};
    QSignalSpy held{&button, &HoldButton::held};
    QSignalSpy clicked{&button, &HoldButton::clicked};
    const QPoint middle{100, 60};
};

TEST_F(Hold, actsAfterOneSecondAndNotBefore)
{
    QElapsedTimer since;
    since.start();
    touching::press(&button, middle);
    ASSERT_TRUE(held.wait(3000));
    EXPECT_GE(since.elapsed(), HoldButton::holdMs);
    EXPECT_EQ(held.count(), 1);
    QTest::qWait(300); // still down: not a second time
    touching::release(&button, middle);
    EXPECT_EQ(held.count(), 1);
    EXPECT_EQ(clicked.count(), 0);
}

TEST_F(Hold, aBrushOfTheSleeveDoesNothing)
{
    for (int i = 0; i < 6; ++i) {
        touching::press(&button, middle);
        QTest::qWait(300);
        touching::release(&button, middle);
    }
    QTest::qWait(200);
    EXPECT_EQ(held.count(), 0);
    EXPECT_EQ(clicked.count(), 0);
    EXPECT_DOUBLE_EQ(button.progress(), 0);
}

TEST_F(Hold, leavingTheButtonLetsGo)
{
    touching::press(&button, middle);
    QTest::qWait(200);
    QTest::touchEvent(&window, touching::panel()).move(0, QPoint(550, 350));
    EXPECT_DOUBLE_EQ(button.progress(), 0);
    QTest::touchEvent(&window, touching::panel()).move(0, button.mapTo(&window, middle));
    QTest::qWait(1200);
    QTest::touchEvent(&window, touching::panel()).release(0, button.mapTo(&window, middle));
    EXPECT_EQ(held.count(), 0);
}

TEST_F(Hold, aKeyHeldActsAndItsRepeatsDoNotBeginAgain)
{
    button.setFocus(Qt::TabFocusReason);
    QTest::keyPress(&button, Qt::Key_Space);
    QTest::qWait(200);
    QKeyEvent repeat(QEvent::KeyPress, Qt::Key_Space, Qt::NoModifier, u" "_s, true);
    QCoreApplication::sendEvent(&button, &repeat);
    EXPECT_GT(button.progress(), 0.15);
    ASSERT_TRUE(held.wait(3000));
    QCoreApplication::sendEvent(&button, &repeat);
    EXPECT_DOUBLE_EQ(button.progress(), 0);
    QTest::keyRelease(&button, Qt::Key_Space);
    EXPECT_EQ(held.count(), 1);
    EXPECT_EQ(clicked.count(), 0);
}

TEST_F(Hold, enterHeldIsNoHold)
{
    // A foot that rests on a switch which sends Enter overrides nothing.
    button.setFocus(Qt::TabFocusReason);
    QTest::keyPress(&button, Qt::Key_Return);
    EXPECT_DOUBLE_EQ(button.progress(), 0);
    QTest::qWait(1200);
    QTest::keyRelease(&button, Qt::Key_Return);
    EXPECT_EQ(held.count(), 0);
}

TEST_F(Hold, withReducedMotionTheRingGoesByQuarters)
{
    const Theme calm = touching::bench(DayNight::Day, Hand::Right, true);
    HoldButton still(calm, u"still"_s, TapButton::Kind::Plain, &window);
    still.setGeometry(300, 20, calm.px(40), calm.px(24));
    still.show();
    QSignalSpy ended(&still, &HoldButton::held);
    QSet<QByteArray> looks;
    touching::press(&still, middle);
    while (ended.isEmpty()) {
        const QImage image = still.grab().toImage();
        looks.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
        QTest::qWait(10);
    }
    touching::release(&still, middle);
    EXPECT_GE(looks.size(), 2); // it says that it counts
    EXPECT_LE(looks.size(), 5); // nothing, three quarters one by one, the whole: no sweep
}

TEST_F(Hold, aShortKeyDoesNothing)
{
    button.setFocus(Qt::TabFocusReason);
    QTest::keyClick(&button, Qt::Key_Return);
    QTest::keyClick(&button, Qt::Key_Space);
    QTest::qWait(1200);
    EXPECT_EQ(held.count(), 0);
    EXPECT_EQ(clicked.count(), 0);
}

TEST_F(Hold, hidingOrDisablingLetsGo)
{
    touching::press(&button, middle);
    button.hide();
    QTest::qWait(1200);
    button.show();
    touching::release(&button, middle);
    touching::press(&button, middle);
    button.setEnabled(false);
    EXPECT_DOUBLE_EQ(button.progress(), 0);
    QTest::qWait(1200);
    touching::release(&button, middle);
    EXPECT_EQ(held.count(), 0);
}

TEST_F(Hold, theRingFills)
{
    const auto inked = [this] {
        const QImage image = button.grab().toImage();
        const QRgb action = theme.color(Role::Action).rgb();
        int count = 0;
        for (int x = 0; x < image.width(); ++x)
            for (int y = 0; y < image.height(); ++y)
                count += image.pixel(x, y) == action ? 1 : 0;
        return count;
    };
    button.clearFocus(); // the keyboard's ring has the same colour
    EXPECT_EQ(inked(), 0);
    touching::press(&button, middle);
    QTest::qWait(300);
    const int early = inked();
    touching::keepLook(button, u"hold_early"_s);
    QTest::qWait(400);
    const int late = inked();
    touching::release(&button, middle);
    EXPECT_GT(early, 0);
    EXPECT_GT(late, early * 3 / 2);
    EXPECT_EQ(inked(), 0);
}

TEST_F(Hold, reducedMotionActsAfterOneSecondToo)
{
    const Theme calm = touching::bench(DayNight::Day, Hand::Right, true);
    HoldButton still(calm, u"still"_s, TapButton::Kind::Plain, &window);
    still.setGeometry(300, 20, 200, 150);
    still.show();
    QSignalSpy spy(&still, &HoldButton::held);
    QElapsedTimer since;
    since.start();
    touching::press(&still, middle);
    ASSERT_TRUE(spy.wait(3000));
    EXPECT_GE(since.elapsed(), HoldButton::holdMs);
    EXPECT_LT(since.elapsed(), 1500);
    touching::release(&still, middle);
}

} // namespace
} // namespace strandbench
