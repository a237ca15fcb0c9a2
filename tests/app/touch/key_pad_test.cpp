// SPDX-License-Identifier: GPL-3.0-or-later
// The key pad: what it writes, what it refuses, how large its keys are.
#include "touch/key_pad.h"

#include "theme/sizes.h"
#include "touch_rules/rule_check.h"
#include "touching.h"

#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;
using testing::IsEmpty;

class Pad : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(touching::show(pad, {theme.px(180), theme.px(44)})); }
    void tap(const QString& key)
    {
        auto* button = pad.findChild<TapButton*>(u"key_"_s + key);
        ASSERT_NE(button, nullptr) << key.toStdString();
        touching::tap(button, button->rect().center());
    }
    Theme theme = touching::bench();
    KeyPad pad{theme, 6};
};

TEST_F(Pad, writesWhatIsTapped)
{
    QSignalSpy changed(&pad, &KeyPad::textChanged);
    for (const QString& key : {u"1"_s, u"2"_s, u"point"_s, u"5"_s})
        tap(key);
    EXPECT_EQ(pad.text(), u"12.5"_s);
    ASSERT_EQ(changed.count(), 4);
    EXPECT_EQ(changed.last().first().toString(), u"12.5"_s);
}

TEST_F(Pad, twoTapsOnOneKeyAreTwoDigits)
{
    tap(u"7"_s);
    tap(u"7"_s);
    EXPECT_EQ(pad.text(), u"77"_s);
}

TEST_F(Pad, clearEmpties)
{
    tap(u"4"_s);
    tap(u"clear"_s);
    EXPECT_EQ(pad.text(), QString());
}

TEST_F(Pad, keepsAZeroInFrontWhereItIsToStay)
{
    pad.setZeroInFrontKept(true);
    pad.setLongest(3);
    for (const QString& key : {u"0"_s, u"0"_s, u"7"_s})
        tap(key);
    EXPECT_EQ(pad.text(), u"007"_s);
    EXPECT_FALSE(pad.findChild<TapButton*>(u"key_1"_s)->isEnabled());
    tap(u"clear"_s);
    pad.setLongest(1);
    tap(u"0"_s);
    EXPECT_FALSE(pad.findChild<TapButton*>(u"key_1"_s)->isEnabled()); // it would be no digit in its place
}

TEST_F(Pad, allowsOnePointAndNoLeadingZero)
{
    tap(u"0"_s);
    tap(u"5"_s);
    EXPECT_EQ(pad.text(), u"5"_s);
    tap(u"clear"_s);
    tap(u"point"_s);
    EXPECT_EQ(pad.text(), u"0."_s);
    EXPECT_FALSE(pad.findChild<TapButton*>(u"key_point"_s)->isEnabled());
    tap(u"point"_s);
    tap(u"7"_s);
    EXPECT_EQ(pad.text(), u"0.7"_s);
}

TEST_F(Pad, withoutAPointThereIsNone)
{
    pad.setPointAllowed(false);
    tap(u"3"_s);
    tap(u"point"_s);
    QTest::keyClicks(&pad, u"."_s);
    EXPECT_EQ(pad.text(), u"3"_s);
    EXPECT_FALSE(pad.setText(u"1.5"_s));
}

TEST_F(Pad, stopsAtTheLongest)
{
    pad.setLongest(3);
    for (int i = 0; i < 5; ++i)
        tap(u"9"_s);
    EXPECT_EQ(pad.text(), u"999"_s);
    EXPECT_FALSE(pad.findChild<TapButton*>(u"key_1"_s)->isEnabled());
    EXPECT_TRUE(pad.findChild<TapButton*>(u"key_clear"_s)->isEnabled());
}

TEST_F(Pad, takesATextWithoutASignalAndRefusesWhatIsNoNumber)
{
    QSignalSpy changed(&pad, &KeyPad::textChanged);
    EXPECT_TRUE(pad.setText(u"42"_s));
    EXPECT_FALSE(pad.setText(u"4a"_s));
    EXPECT_FALSE(pad.setText(u"1.2.3"_s));
    EXPECT_FALSE(pad.setText(u"123456789"_s));
    EXPECT_FALSE(pad.setText(u"-1"_s));
    EXPECT_EQ(pad.text(), u"42"_s);
    EXPECT_EQ(changed.count(), 0);
    tap(u"1"_s);
    EXPECT_EQ(pad.text(), u"421"_s);
}

TEST_F(Pad, aKeyboardWritesToo)
{
    QTest::keyClicks(&pad, u"12,5x"_s);
    EXPECT_EQ(pad.text(), u"12.5"_s);
    QTest::keyClick(&pad, Qt::Key_Backspace);
    EXPECT_EQ(pad.text(), u"12."_s);
    QTest::keyClick(&pad, Qt::Key_Delete);
    QTest::keyClick(&pad, Qt::Key_Backspace);
    EXPECT_EQ(pad.text(), QString());
}

TEST_F(Pad, theSignOfThePointIsOnlyALook)
{
    pad.setPointSign(u","_s);
    EXPECT_EQ(pad.findChild<TapButton*>(u"key_point"_s)->title(), u","_s);
    EXPECT_EQ(pad.findChild<TapButton*>(u"key_point"_s)->accessibleName(), u"Decimal point"_s);
    tap(u"1"_s);
    tap(u"point"_s);
    EXPECT_EQ(pad.text(), u"1."_s);
}

TEST_F(Pad, refusesAnotherNumberOfColumns) { EXPECT_THROW(KeyPad(theme, 5), std::invalid_argument); }

TEST_F(Pad, keepsTheRulesInEveryShape)
{
    for (const int columns : {6, 4, 3}) {
        QWidget window;
        window.setPalette(QPalette(theme.color(Role::Ground)));
        KeyPad shaped(theme, columns, &window);
        shaped.setGeometry(QRect(QPoint(20, 20), shaped.minimumSizeHint()));
        EXPECT_LE(theme.metrics().mm(shaped.width()), 20 * columns + 4 * (columns - 1) + 1);
        ASSERT_TRUE(touching::show(window, {shaped.width() + 40, shaped.height() + 40}));
        EXPECT_THAT(rules::checkScreen(&window, theme), IsEmpty()) << columns;
        shaped.findChild<TapButton*>(u"key_clear"_s)->setTitle(u"L\u00f6schen"_s);
        EXPECT_TRUE(shaped.findChild<TapButton*>(u"key_clear"_s)->textFits());
        touching::keepLook(window, u"pad_%1"_s.arg(columns));
    }
}

} // namespace
} // namespace strandbench
