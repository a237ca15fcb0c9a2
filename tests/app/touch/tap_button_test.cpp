// SPDX-License-Identifier: GPL-3.0-or-later
// One tap, one click; seen at once; reached and named for those who do not see or touch.
#include "touch/tap_button.h"

#include "touch/fit_label.h"
#include "touch_rules/contrast.h"
#include "touching.h"

#include <QAccessible>
#include <QButtonGroup>
#include <QKeyEvent>
#include <QImage>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;

class Tap : public testing::Test {
protected:
    void SetUp() override
    {
        button = new TapButton(theme, u"sand"_s, TapButton::Kind::Plain, &window);
        button->setTitle(u"It has gelled"_s);
        button->setSecondLine(u"tap when it pulls and will not smear"_s);
        button->setGeometry(20, 20, theme.px(60), theme.px(30));
        ASSERT_TRUE(touching::show(window, {600, 400}));
    }
    Theme theme = touching::bench();
    QWidget window;
    TapButton* button = nullptr;
    const QPoint middle{100, 60};
};

TEST_F(Tap, oneTouchIsOneClick)
{
    QSignalSpy clicks(button, &TapButton::clicked);
    touching::tap(button, middle);
    EXPECT_EQ(clicks.count(), 1);
}

TEST_F(Tap, twoTouchesOnTheSamePixelAreTwoClicks)
{
    QSignalSpy clicks(button, &TapButton::clicked);
    touching::tap(button, middle);
    touching::tap(button, middle);
    EXPECT_EQ(clicks.count(), 2);
    QTest::qWait(600); // longer than a double click takes
    touching::tap(button, middle);
    EXPECT_EQ(clicks.count(), 3);
}

TEST_F(Tap, oneTouchIsOneClickForOneThatTakesTouchesToo)
{
    button->setAttribute(Qt::WA_AcceptTouchEvents);
    QSignalSpy clicks(button, &TapButton::clicked);
    touching::tap(button, middle);
    touching::tap(button, middle);
    EXPECT_EQ(clicks.count(), 2);
}

TEST_F(Tap, aDoubleClickIsASecondPressWithoutAMeaningOfItsOwn)
{
    QSignalSpy clicks(button, &TapButton::clicked);
    QTest::mouseClick(button, Qt::LeftButton, {}, middle);
    QTest::mouseDClick(button, Qt::LeftButton, {}, middle); // the press of a second click comes as this
    QTest::mouseRelease(button, Qt::LeftButton, {}, middle);
    EXPECT_EQ(clicks.count(), 2);
}

TEST_F(Tap, slidingOffDoesNothing)
{
    QSignalSpy clicks(button, &TapButton::clicked);
    touching::press(button, middle);
    QTest::touchEvent(&window, touching::panel()).move(0, QPoint(550, 350));
    QTest::touchEvent(&window, touching::panel()).release(0, QPoint(550, 350));
    EXPECT_EQ(clicks.count(), 0);
}

TEST_F(Tap, aPressIsSeenBeforeItIsLetGo)
{
    for (const TapButton::Kind kind : {TapButton::Kind::Plain, TapButton::Kind::Way, TapButton::Kind::Go,
                                       TapButton::Kind::Stop, TapButton::Kind::Quiet}) {
        button->setKind(kind);
        const QImage before = button->grab().toImage();
        touching::press(button, middle);
        const QImage pressed = button->grab().toImage();
        touching::release(button, middle);
        EXPECT_NE(before, pressed) << static_cast<int>(kind);
        EXPECT_NE(before.pixel(middle.x(), 30), pressed.pixel(middle.x(), 30)) << static_cast<int>(kind);
        EXPECT_EQ(before, button->grab().toImage()) << static_cast<int>(kind);
    }
}

TEST_F(Tap, spaceActsOnceAndEnterIsLeftToTheWindow)
{
    QSignalSpy clicks(button, &TapButton::clicked);
    button->setFocus(Qt::TabFocusReason);
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_EQ(clicks.count(), 1);
    for (const Qt::Key enter : {Qt::Key_Return, Qt::Key_Enter}) {
        QKeyEvent press(QEvent::KeyPress, enter, Qt::NoModifier);
        QCoreApplication::sendEvent(button, &press);
        EXPECT_FALSE(press.isAccepted());
        EXPECT_FALSE(button->isDown());
    }
    // A foot switch let go while a finger rests on the button does not click it.
    touching::press(button, middle);
    QKeyEvent release(QEvent::KeyRelease, Qt::Key_Return, Qt::NoModifier);
    QCoreApplication::sendEvent(button, &release);
    EXPECT_EQ(clicks.count(), 1);
    touching::release(button, middle);
    EXPECT_EQ(clicks.count(), 2);
}

TEST_F(Tap, aDisabledOneDoesNothingAndIsStillRead)
{
    button->setEnabled(false);
    QSignalSpy clicks(button, &TapButton::clicked);
    touching::tap(button, middle);
    EXPECT_EQ(clicks.count(), 0);
    EXPECT_TRUE(button->textFits());
}

TEST_F(Tap, aTapLeavesTheKeyboardWhereItWas)
{
    auto* other = new TapButton(theme, u"other"_s, TapButton::Kind::Plain, &window);
    other->setGeometry(20, 250, 150, 130);
    other->show();
    other->setFocus(Qt::TabFocusReason);
    touching::tap(button, middle);
    EXPECT_TRUE(other->hasFocus());
}

TEST_F(Tap, theKeyboardsRingIsSeen)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        for (const TapButton::Kind kind :
             {TapButton::Kind::Plain, TapButton::Kind::Way, TapButton::Kind::Go, TapButton::Kind::Stop}) {
            const Theme other = touching::bench(dayNight);
            TapButton ringed(other, u"ringed"_s, kind, &window);
            ringed.setGeometry(300, 20, 200, 150);
            ringed.show();
            const QImage without = ringed.grab().toImage();
            ringed.setFocus(Qt::TabFocusReason);
            const QImage with = ringed.grab().toImage();
            int changed = 0;
            for (int x = 50; x < 150; ++x)
                for (int y = 0; y < 40; ++y)
                    if (rules::contrastRatio(QColor(with.pixel(x, y)), QColor(without.pixel(x, y))) >= 3)
                        ++changed;
            EXPECT_GE(changed, 100 * 2) << static_cast<int>(kind); // two pixels thick over the length looked at
        }
    }
}

TEST_F(Tap, isAButtonWithItsNameForAScreenReader)
{
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(button);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::Button);
    EXPECT_EQ(spoken->text(QAccessible::Name), u"It has gelled"_s);
    EXPECT_EQ(spoken->text(QAccessible::Description), u"tap when it pulls and will not smear"_s);
    QSignalSpy clicks(button, &TapButton::clicked);
    ASSERT_NE(spoken->actionInterface(), nullptr);
    spoken->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(clicks.count(), 1);
}

TEST_F(Tap, aChoiceIsACheckOrOneOfMany)
{
    TapButton choice(theme, u"choice"_s, TapButton::Kind::Choice);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&choice);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::CheckBox);
    QButtonGroup group;
    group.addButton(&choice);
    EXPECT_EQ(spoken->role(), QAccessible::RadioButton);
    EXPECT_FALSE(spoken->state().checked);
    choice.click();
    EXPECT_TRUE(spoken->state().checked);
}

TEST_F(Tap, aChosenOneDiffersByMoreThanColour)
{
    TapButton choice(theme, u"choice"_s, TapButton::Kind::Choice, &window);
    choice.setTitle(u"Laminate"_s);
    choice.setGeometry(300, 200, 250, 150);
    choice.show();
    const QImage open = choice.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    choice.setChecked(true);
    const QImage chosen = choice.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
    int tick = 0;
    for (int x = 200; x < 245; ++x)
        for (int y = 8; y < 42; ++y)
            tick += qAbs(qGray(open.pixel(x, y)) - qGray(chosen.pixel(x, y))) > 100 ? 1 : 0;
    EXPECT_GT(tick, 200);
}

TEST_F(Tap, anAmpersandIsText)
{
    button->setTitle(u"Wash & dry"_s);
    EXPECT_EQ(button->title(), u"Wash & dry"_s);
    EXPECT_EQ(button->accessibleName(), u"Wash & dry"_s);
    EXPECT_TRUE(button->shortcut().isEmpty());
}

TEST_F(Tap, saysWhenItsTextIsTooLong)
{
    button->setTitle(u"Donaudampfschifffahrtsgesellschaft"_s);
    button->setGeometry(0, 0, theme.px(20), theme.px(20));
    EXPECT_FALSE(button->textFits());
    EXPECT_GE(button->smallestTextMm(), 3.4);
}

TEST_F(Tap, aSignGoesAboveWhereBesideWouldNotFit)
{
    TapButton stop(theme, u"stop"_s, TapButton::Kind::Stop, &window);
    stop.setTitle(u"Anhalten und fragen"_s);
    stop.setSign(Pictogram::StopHand);
    stop.setGeometry(0, 0, theme.px(32), theme.px(24));
    EXPECT_TRUE(stop.textFits());
    EXPECT_GE(stop.smallestTextMm(), 4.0);
}

TEST(FitLabelSpoken, isStaticTextWithItsText)
{
    const Theme theme = touching::bench();
    FitLabel label(theme, u"sentence"_s, TextRole::Sentence);
    label.setText(u"Press in firmly"_s);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&label);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->role(), QAccessible::StaticText);
    EXPECT_EQ(spoken->text(QAccessible::Name), u"Press in firmly"_s);
    label.setText(u"Hands off"_s);
    EXPECT_EQ(spoken->text(QAccessible::Name), u"Hands off"_s);
}

TEST(FitLabelSize, growsInHeightAsItNarrows)
{
    const Theme theme = touching::bench();
    FitLabel label(theme, u"body"_s, TextRole::Body);
    label.setText(u"The crack runs on under the gel coat: look for the tip with light from the side."_s);
    EXPECT_GT(label.heightForWidth(theme.px(40)), 2 * label.heightForWidth(theme.px(150)));
    label.resize(theme.px(40), label.heightForWidth(theme.px(40)));
    EXPECT_TRUE(label.textFits());
    EXPECT_NEAR(label.smallestTextMm(), 4.6, 0.17);
    label.resize(theme.px(40), theme.px(6));
    EXPECT_FALSE(label.textFits());
}

} // namespace
} // namespace strandbench
