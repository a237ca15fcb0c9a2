// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/keyboard_order.h"

#include <QPushButton>
#include <QWidget>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class KeyboardOrder : public ::testing::Test {
protected:
    QPushButton* button(const QString& name, const QRect& where, QWidget* parent)
    {
        auto* made = new QPushButton(parent);
        made->setObjectName(name);
        made->setGeometry(where);
        made->setFocusPolicy(Qt::TabFocus);
        return made;
    }
    QStringList order()
    {
        QStringList names;
        for (QWidget* next = root.nextInFocusChain(); next != &root; next = next->nextInFocusChain())
            if (!next->objectName().isEmpty() && next->isVisibleTo(&root))
                names << next->objectName();
        return names;
    }
    QWidget root;
};

TEST_F(KeyboardOrder, GoesRowByRowHoweverTheControlsWereMade)
{
    auto* group = new QWidget(&root);
    group->setGeometry(0, 100, 400, 100);
    button(u"below right"_s, {200, 10, 100, 60}, group);
    button(u"top right"_s, {200, 0, 100, 80}, &root);
    button(u"below left, set lower"_s, {0, 20, 100, 60}, group);
    button(u"top left"_s, {0, 0, 100, 80}, &root);
    orderKeyboard(root);
    EXPECT_EQ(order().join(u"; "), u"top left; top right; below left, set lower; below right"_s);
    orderKeyboard(root); // in order already
    EXPECT_EQ(order().join(u"; "), u"top left; top right; below left, set lower; below right"_s);
}

TEST_F(KeyboardOrder, ControlsThatAreNotLaidOutYetDoNoHarm)
{
    button(u"b"_s, {0, 50, 100, 0}, &root);
    button(u"c"_s, {0, 50, 0, 0}, &root);
    button(u"a"_s, {0, 0, 100, 40}, &root);
    orderKeyboard(root);
    EXPECT_EQ(order().size(), 3);
    EXPECT_EQ(order().constFirst(), u"a"_s);
}

TEST_F(KeyboardOrder, ATallKeyWaitsForTheLastRowThatItStandsBeside)
{
    button(u"arrow up"_s, {200, 0, 60, 95}, &root);
    button(u"arrow down"_s, {200, 105, 60, 95}, &root);
    for (int row = 0; row < 4; ++row)
        button(u"row %1"_s.arg(row), {0, row * 50, 180, 46}, &root);
    button(u"way on"_s, {0, 210, 260, 40}, &root);
    orderKeyboard(root);
    EXPECT_EQ(order().join(u"; "), u"row 0; row 1; arrow up; row 2; row 3; arrow down; way on"_s);
}

TEST_F(KeyboardOrder, WhatIsHiddenStaysOut)
{
    button(u"hidden"_s, {0, 0, 100, 40}, &root)->hide();
    button(u"b"_s, {200, 0, 100, 40}, &root);
    button(u"a"_s, {0, 0, 100, 40}, &root);
    orderKeyboard(root);
    EXPECT_EQ(order().join(u"; "), u"a; b"_s);
}

} // namespace
} // namespace strandbench
