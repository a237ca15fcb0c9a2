// SPDX-License-Identifier: GPL-3.0-or-later
#include "touch/fit_column.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class Column : public ::testing::Test {
protected:
    FitLabel* text(const QString& name, TextRole role, const QString& words)
    {
        auto* made = new FitLabel(theme, name, role, &box);
        made->setText(words);
        return made;
    }
    void show(double widthMm, double heightMm)
    {
        box.resize(theme.px(widthMm), theme.px(heightMm));
        box.show();
        column->activate();
    }

    Theme theme{Metrics(5.9), DayNight::Day, Hand::Right};
    QWidget box;
    FitColumn* column = [this] {
        auto* made = new FitColumn;
        box.setLayout(made);
        made->setContentsMargins(0, 0, 0, 0);
        return made;
    }();
    const QString sentence = u"Cloth and resin, or an offcut, lapping all round. Let it cure."_s;
};

TEST_F(Column, TextsWithRoomHaveTheirPreferredSizeInTheMiddle)
{
    FitLabel* first = text(u"first"_s, TextRole::Title, u"Styrene vapour"_s);
    FitLabel* second = text(u"second"_s, TextRole::Small, u"Fresh air"_s);
    column->addText(first);
    column->addText(second);
    show(60, 60);
    EXPECT_NEAR(first->smallestTextMm(), 6.0, 0.2);
    EXPECT_NEAR(second->smallestTextMm(), 4.2, 0.2);
    EXPECT_EQ(second->geometry().top(), first->geometry().bottom() + 1);
    EXPECT_NEAR(first->geometry().top(), box.height() - 1 - second->geometry().bottom(), 1);
}

TEST_F(Column, TextsShrinkTogetherUntilAllAreWhole)
{
    FitLabel* first = text(u"first"_s, TextRole::Body, sentence);
    FitLabel* second = text(u"second"_s, TextRole::Body, sentence);
    column->addText(first);
    column->addText(second);
    show(44, 36);
    EXPECT_TRUE(first->textFits());
    EXPECT_TRUE(second->textFits());
    EXPECT_LT(first->smallestTextMm(), 4.5); // of 4.6
    EXPECT_DOUBLE_EQ(first->smallestTextMm(), second->smallestTextMm());
    EXPECT_GE(first->geometry().top(), 0);
    EXPECT_LE(second->geometry().bottom(), box.height());
}

TEST_F(Column, WhatIsHiddenOrEmptyTakesNoRoom)
{
    FitLabel* first = text(u"first"_s, TextRole::Body, u"Styrene vapour"_s);
    FitLabel* hidden = text(u"hidden"_s, TextRole::Body, sentence);
    FitLabel* empty = text(u"empty"_s, TextRole::Body, {});
    FitLabel* last = text(u"last"_s, TextRole::Body, u"Fresh air"_s);
    for (FitLabel* each : {first, hidden, empty, last})
        column->addText(each);
    hidden->hide();
    show(60, 40);
    EXPECT_EQ(last->geometry().top(), first->geometry().bottom() + 1);
}

TEST_F(Column, ASignStandsBesideTheMiddleOfItsTexts)
{
    auto* sign = new QWidget(&box);
    sign->setFixedSize(40, 40);
    FitLabel* first = text(u"first"_s, TextRole::Body, sentence);
    FitLabel* second = text(u"second"_s, TextRole::Body, sentence);
    column->addRow({first, second}, sign, 10);
    show(60, 60);
    EXPECT_EQ(sign->geometry().left(), 0);
    EXPECT_EQ(first->geometry().left(), 50);
    const int middle = (first->geometry().top() + second->geometry().bottom()) / 2;
    EXPECT_NEAR(sign->geometry().center().y(), middle, 1);
}

TEST_F(Column, AskedForItsHeightItAnswersForTheWidth)
{
    FitLabel* only = text(u"only"_s, TextRole::Body, sentence);
    column->addText(only);
    EXPECT_EQ(column->heightForWidth(theme.px(30)), only->heightForWidth(theme.px(30)));
    EXPECT_GT(column->heightForWidth(theme.px(30)), column->heightForWidth(theme.px(120)));
}

TEST_F(Column, ATextThatIsTakenOutIsLaidOutNoMore)
{
    column->addText(text(u"first"_s, TextRole::Body, u"Styrene vapour"_s));
    column->addText(text(u"second"_s, TextRole::Body, u"Fresh air"_s));
    const int both = column->heightForWidth(400);
    delete column->takeAt(0);
    EXPECT_EQ(column->count(), 1);
    EXPECT_LT(column->heightForWidth(400), both);
    EXPECT_EQ(column->takeAt(7), nullptr);
}

} // namespace
} // namespace strandbench
