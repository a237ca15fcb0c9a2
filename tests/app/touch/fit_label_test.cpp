// SPDX-License-Identifier: GPL-3.0-or-later
// A line of parts that is too long for its place leaves parts out, and still says all of them aloud.
#include "touch/fit_label.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QString line = u"Job 4421 · Skirt panel, right rear · SMC · batch 1 of 2"_s;

class LineOfParts : public ::testing::TestWithParam<int> {
protected:
    Theme theme{Metrics(5.9), DayNight::Day, Hand::Right};
    FitLabel label{theme, u"line"_s, TextRole::Small};
    void SetUp() override
    {
        label.setLines(1);
        label.setText(line);
        label.resize(theme.px(GetParam()), theme.px(5));
    }
};

class WideEnough : public LineOfParts {};
class TooNarrow : public LineOfParts {};

TEST_P(WideEnough, IsShownWhole)
{
    const double before = label.smallestTextMm();
    ASSERT_TRUE(label.textFits());
    label.setLeavesOut(u" · "_s);
    EXPECT_TRUE(label.textFits());
    EXPECT_DOUBLE_EQ(label.smallestTextMm(), before);
}
INSTANTIATE_TEST_SUITE_P(Mm, WideEnough, ::testing::Values(110, 130, 200));

TEST_P(TooNarrow, LeavesPartsOutAndSaysThemAll)
{
    ASSERT_FALSE(label.textFits());
    label.setLeavesOut(u" · "_s);
    EXPECT_TRUE(label.textFits());
    EXPECT_GE(label.smallestTextMm(), Theme::size(TextRole::Small).leastMm);
    EXPECT_EQ(label.text(), line);
    EXPECT_EQ(label.accessibleName(), line);
    const double width = label.shownTexts().front().where.width();
    EXPECT_LE(width, label.width());
    EXPECT_GT(width, label.width() / 3.0) << "no more than must be";
}
INSTANTIATE_TEST_SUITE_P(Mm, TooNarrow, ::testing::Values(50, 60, 75));

TEST(LineOfParts, ThatIsTooLongWithoutThemSaysSo)
{
    const Theme theme{Metrics(5.9), DayNight::Day, Hand::Right};
    FitLabel label(theme, u"line"_s, TextRole::Small);
    label.setLines(1);
    label.setText(line);
    label.setLeavesOut(u" · "_s);
    label.resize(theme.px(8), theme.px(5));
    EXPECT_FALSE(label.textFits());
}

} // namespace
} // namespace strandbench
