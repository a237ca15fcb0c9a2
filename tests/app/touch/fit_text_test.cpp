// SPDX-License-Identifier: GPL-3.0-or-later
// Text shrinks and wraps between words before anything is cut.
#include "touch/fit_text.h"

#include "touching.h"

#include <QFontMetricsF>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace strandbench {
namespace {

using namespace Qt::StringLiterals;
using testing::ElementsAre;

class FitText : public testing::Test {
protected:
    Theme theme = touching::bench();
    [[nodiscard]] QSizeF mm(double width, double height) const
    {
        const double ppmm = theme.metrics().pixelsPerMillimetre();
        return {width * ppmm, height * ppmm};
    }
};

TEST_F(FitText, takesThePreferredSizeWhenThereIsRoom)
{
    const FittedText text = fitText(theme, u"Sand"_s, TextRole::Title, mm(80, 24), true);
    EXPECT_TRUE(text.fits);
    EXPECT_NEAR(text.emMm, 6.0, 0.17); // one pixel
    EXPECT_THAT(text.lines, ElementsAre(u"Sand"_s));
}

TEST_F(FitText, wrapsBetweenWords)
{
    const FittedText text =
        fitText(theme, u"Press in firmly, wet the edges, fill to level"_s, TextRole::Sentence, mm(90, 40), true);
    EXPECT_TRUE(text.fits);
    EXPECT_GT(text.lines.size(), 1);
    EXPECT_EQ(text.lines.join(u' '), u"Press in firmly, wet the edges, fill to level"_s);
    for (const QString& line : text.lines)
        EXPECT_LE(QFontMetricsF(text.font).horizontalAdvance(line), mm(90, 0).width() + 1);
}

TEST_F(FitText, aLongWordShrinksAndIsNeverBroken)
{
    const QString word = u"Sicherheitsdatenblatt"_s;
    const FittedText text = fitText(theme, word, TextRole::Title, mm(56, 24), true);
    EXPECT_TRUE(text.fits);
    EXPECT_LT(text.emMm, 5.8);
    EXPECT_GE(text.emMm, 4.0);
    EXPECT_THAT(text.lines, ElementsAre(word));
}

TEST_F(FitText, saysWhenItDoesNotFitAndStaysAtTheLeastSize)
{
    const FittedText narrow = fitText(theme, u"Sicherheitsdatenblatt"_s, TextRole::Title, mm(20, 24), true);
    EXPECT_FALSE(narrow.fits);
    EXPECT_GE(narrow.emMm, 4.0);
    EXPECT_LT(narrow.emMm, 4.2);
    const FittedText low = fitText(theme, u"one two three four five six"_s, TextRole::Body, mm(20, 5));
    EXPECT_FALSE(low.fits);
}

TEST_F(FitText, neverFallsBelowTheLeastSizeOnAnyGlass)
{
    for (double ppmm = 3.0; ppmm < 12; ppmm += 0.37) {
        const Theme other(Metrics(ppmm), DayNight::Day, Hand::Right);
        const FittedText text =
            fitText(other, u"much too long for the little room"_s, TextRole::Small, {10 * ppmm, 4 * ppmm});
        EXPECT_GE(text.emMm, 3.4 - 1e-9) << ppmm;
    }
}

TEST_F(FitText, moreRoomNeverTurnsAFitIntoNone)
{
    bool fitted = false;
    for (double width = 10; width < 120; width += 1) {
        const FittedText text = fitText(theme, u"Anhalten und fragen"_s, TextRole::Title, mm(width, 18), true);
        EXPECT_TRUE(text.fits || !fitted) << width;
        fitted = text.fits;
    }
    EXPECT_TRUE(fitted);
}

TEST_F(FitText, oneLineIsTakenBeforeTwoWhenItCostsLittle)
{
    const FittedText close = fitText(theme, u"Stop and ask"_s, TextRole::Title, mm(37, 18), true);
    EXPECT_EQ(close.lines.size(), 1);
    EXPECT_GE(close.emMm, 5.0);
    const FittedText far = fitText(theme, u"Stop and ask"_s, TextRole::Title, mm(29, 18), true);
    EXPECT_EQ(far.lines.size(), 2);
    EXPECT_NEAR(far.emMm, 6.0, 0.17);
}

TEST_F(FitText, linesHaveRoomForAccentsAndDescenders)
{
    const QString tall = u"\u00c5\u00c4\u00d6\u00c9\u00c7gjpqy(|[\u00a7"_s;
    for (const bool bold : {false, true}) {
        const FittedText text = fitText(theme, tall, TextRole::Figure, mm(400, 60), bold);
        const QRectF inked = QFontMetricsF(text.font).tightBoundingRect(tall);
        EXPECT_GE(inked.top(), -text.baseline - 1);
        EXPECT_LE(inked.bottom(), text.lineHeight - text.baseline + 1);
    }
}

TEST_F(FitText, oneLineNeverWraps)
{
    const FittedText text = fitText(theme, u"Skirt panel, right rear"_s, TextRole::Body, mm(200, 40), false, 1);
    EXPECT_EQ(text.lines.size(), 1);
    EXPECT_FALSE(fitText(theme, u"Skirt panel, right rear"_s, TextRole::Body, mm(20, 40), false, 1).fits);
}

TEST_F(FitText, keepsALineBreakThatIsWritten)
{
    EXPECT_THAT(fitText(theme, u"until the edges\nmust be clear"_s, TextRole::Body, mm(100, 30)).lines,
                ElementsAre(u"until the edges"_s, u"must be clear"_s));
}

TEST_F(FitText, aStackShrinksInStep)
{
    const std::vector<TextItem> items{{u"Back"_s, Theme::size(TextRole::Title), true, 99},
                                      {u"clock runs on"_s, Theme::size(TextRole::Small), false, 99}};
    const FittedStack roomy = fitStack(theme, items, mm(60, 24), 4);
    const FittedStack tight = fitStack(theme, items, mm(27, 10.6), 4);
    ASSERT_TRUE(roomy.fits);
    ASSERT_TRUE(tight.fits);
    EXPECT_DOUBLE_EQ(roomy.shrink, 0);
    EXPECT_GT(tight.shrink, 0);
    EXPECT_LT(tight.texts[0].emMm, roomy.texts[0].emMm);
    EXPECT_LE(tight.height, mm(0, 10.6).height() + 0.1);
}

TEST_F(FitText, nothingFitsWithoutHarm)
{
    EXPECT_TRUE(fitText(theme, {}, TextRole::Body, mm(10, 1)).fits);
    EXPECT_FALSE(fitText(theme, u"x"_s, TextRole::Body, {0, 0}).fits);
}

} // namespace
} // namespace strandbench
