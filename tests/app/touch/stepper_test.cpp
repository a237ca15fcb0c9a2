// SPDX-License-Identifier: GPL-3.0-or-later
// A figure with a small change on either side.
#include "touch/stepper.h"

#include "theme/sizes.h"
#include "touch_rules/rule_check.h"
#include "touching.h"

#include <QAccessible>
#include <QImage>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;
using testing::IsEmpty;

class Steps : public testing::Test {
protected:
    void SetUp() override
    {
        window.setPalette(QPalette(theme.color(Role::Ground)));
        stepper.setShown(u"60"_s, u"mm"_s);
        stepper.setGeometry(20, 20, theme.px(104), theme.px(20));
        ASSERT_TRUE(touching::show(window, {700, 200}));
    }
    [[nodiscard]] TapButton* part(const char* name)
    {
        return stepper.findChild<TapButton*>(u"hole_"_s + QString::fromLatin1(name));
    }
    void tap(const char* name) { touching::tap(part(name), part(name)->rect().center()); }
    Theme theme = touching::bench();
    QWidget window;
    Stepper stepper{theme, u"hole"_s, u"Hole length"_s, &window};
    QSignalSpy stepped{&stepper, &Stepper::stepped};
};

TEST_F(Steps, stepsOnceATap)
{
    tap("plus");
    tap("plus");
    tap("minus");
    ASSERT_EQ(stepped.count(), 3);
    EXPECT_EQ(stepped[0][0].toInt(), 1);
    EXPECT_EQ(stepped[1][0].toInt(), 1);
    EXPECT_EQ(stepped[2][0].toInt(), -1);
}

TEST_F(Steps, repeatsWhileHeldAndStopsWithTheHand)
{
    TapButton* plus = part("plus");
    touching::press(plus, plus->rect().center());
    QTest::qWait(300);
    EXPECT_EQ(stepped.count(), 0);
    QTest::qWait(800);
    const auto held = stepped.count();
    EXPECT_GE(held, 3);
    EXPECT_LE(held, 6);
    touching::release(plus, plus->rect().center());
    QTest::qWait(400);
    EXPECT_EQ(stepped.count(), held); // and not one more for letting go
    tap("plus");
    EXPECT_EQ(stepped.count(), held + 1);
}

TEST_F(Steps, repeatsEndWhenTheKeyGoesAway)
{
    TapButton* plus = part("plus");
    touching::press(plus, plus->rect().center());
    QTest::qWait(700);
    stepper.hide();
    const auto held = stepped.count();
    QTest::qWait(500);
    EXPECT_EQ(stepped.count(), held);
    touching::release(plus, plus->rect().center());
}

TEST_F(Steps, theFigureAndTheUnitAreTargets)
{
    QSignalSpy figure(&stepper, &Stepper::figureTapped);
    QSignalSpy unit(&stepper, &Stepper::unitTapped);
    tap("figure");
    tap("unit");
    EXPECT_EQ(figure.count(), 1);
    EXPECT_EQ(unit.count(), 1);
    EXPECT_EQ(stepped.count(), 0);
}

TEST_F(Steps, speaksCaptionFigureAndUnit)
{
    const auto spoken = [this](const char* name) {
        return QAccessible::queryAccessibleInterface(part(name))->text(QAccessible::Name);
    };
    EXPECT_EQ(spoken("figure"), u"Hole length, 60 mm"_s);
    EXPECT_EQ(spoken("minus"), u"Hole length: less"_s);
    EXPECT_EQ(spoken("plus"), u"Hole length: more"_s);
    EXPECT_EQ(spoken("unit"), u"Hole length, unit: mm"_s);
    stepper.setShown({}, u"mm"_s);
    EXPECT_EQ(part("figure")->title(), u"\u2013"_s);
    EXPECT_EQ(spoken("figure"), u"Hole length, not answered yet"_s);
}

TEST_F(Steps, withoutAUnitThereIsNoKeyForIt)
{
    stepper.setShown(u"3"_s, {});
    EXPECT_FALSE(part("unit")->isVisible());
    stepper.setShown(u"3"_s, u"in"_s);
    EXPECT_TRUE(part("unit")->isVisible());
}

TEST_F(Steps, theChosenOneIsSeen)
{
    const QImage before = stepper.grab().toImage();
    stepper.setChosen(true);
    EXPECT_NE(stepper.grab().toImage(), before);
    stepper.setChosen(false);
    EXPECT_EQ(stepper.grab().toImage(), before);
}

TEST_F(Steps, keepsTheRulesAtItsLeastSize)
{
    stepper.setGeometry(20, 20, stepper.minimumSizeHint().width(), stepper.minimumSizeHint().height());
    EXPECT_LE(theme.metrics().mm(stepper.width()), 92.5);
    stepper.setShown(u"120"_s, u"mm"_s);
    QCoreApplication::processEvents();
    EXPECT_THAT(rules::checkScreen(&window, theme), IsEmpty());
    touching::keepLook(window, u"stepper_least"_s);
}

} // namespace
} // namespace strandbench
