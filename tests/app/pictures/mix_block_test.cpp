// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/mix_block.h"
#include "pictures/picture_text.h"
#include "pictures/phase_look.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

ClockFace faceOf(Phase phase, double gone)
{
    ClockFace face;
    face.phase = phase;
    face.phaseGone = Fraction::ofOne(gone);
    return face;
}

TEST(MixBlock, theFillRunsDownWithThePhase)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    MixBlock block(theme, u"block"_s);
    block.resize(400, 118);
    for (const Phase phase : {Phase::Spread, Phase::ClearEdges, Phase::HandsOff, Phase::Sand})
        for (const double gone : {0.1, 0.4, 0.75}) {
            block.setShown(faceOf(phase, gone), {u"4421"_s, u"Spread"_s, u"02:05"_s});
            const QImage image =
                pixels::grab(block, theme, Role::RibbonGround).copy(block.rect() - QMargins(6, 0, 6, 0)); // no edges
            // Between the lower edge's pen and the lowest word.
            const int row = image.height() - theme.px(1.0);
            const int filled = pixels::spanInRow(image, row, lookOf(phase, theme).ground);
            EXPECT_NEAR(filled, 400 * (1 - gone), theme.px(2)) << static_cast<int>(phase) << " " << gone;
        }
}

TEST(MixBlock, wordsAreWholeOnEveryGlassAndInBothThemes)
{
    for (const rules::Glass& glass : rules::glasses())
        for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
            const Theme theme = samples::themeFor(glass, dayNight);
            MixBlock block(theme, u"block"_s);
            for (const QSize& size : {block.sizeHint(), block.minimumSizeHint()}) {
                block.resize(size);
                block.setShown(faceOf(Phase::ClearEdges, 0.3), {u"4421"_s, u"Ränder frei"_s, u"12:05"_s});
                EXPECT_TRUE(block.textFits()) << glass.name.toStdString() << " " << size.width();
                EXPECT_GE(block.smallestTextMm(), 3.4);
            }
        }
}

TEST(MixBlock, isAsHighAsTheRibbonsBlocks)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const MixBlock block(theme, u"block"_s);
    EXPECT_EQ(block.sizeHint().height(), theme.px(20));
    EXPECT_EQ(block.minimumSizeHint().height(), theme.px(20));
}

TEST(MixBlock, saysSoWhenItsWordsDoNotFit)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    MixBlock block(theme, u"block"_s);
    block.resize(theme.px(22), theme.px(20));
    block.setShown(faceOf(Phase::Spread, 0.3), {u"4421"_s, u"Spread"_s, u"02:05"_s});
    EXPECT_FALSE(block.textFits());
}

/// "Fits" here: no more than so many characters.
TEST(Shortened, KeepsThePartThatTells)
{
    const QString job = u"WO-2026-11-26/000417-M84"_s;
    const auto upTo = [](qsizetype most) { return [most](const QString& text) { return text.size() <= most; }; };
    EXPECT_EQ(shortened(job, PartKept::End, upTo(24)), job);
    EXPECT_EQ(shortened(job, PartKept::End, upTo(11)), u"…000417-M84"_s);
    EXPECT_EQ(shortened(job, PartKept::Beginning, upTo(11)), u"WO-2026-11…"_s);
    EXPECT_EQ(shortened(job, PartKept::End, upTo(0)), u"…17-M84"_s) << "six stay";
    EXPECT_EQ(shortened(u"4421"_s, PartKept::End, upTo(0)), u"4421"_s);
}

} // namespace
} // namespace strandbench
