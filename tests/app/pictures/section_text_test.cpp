// SPDX-License-Identifier: GPL-3.0-or-later
// The section's words: whole, legible, and honest when they are not; and that each kind has its own picture.
#include "pictures/section_layout.h"
#include "pixels.h"
#include "samples.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

class SectionOnEveryGlass : public testing::TestWithParam<rules::Glass> {};

void expectWhole(const PictureText& text, const QRectF& room)
{
    if (text.empty())
        return;
    EXPECT_TRUE(text.fits) << text.text.toStdString();
    EXPECT_GE(text.emMm, 3.4) << text.text.toStdString();
    EXPECT_TRUE(room.contains(inkOf(text))) << text.text.toStdString();
}

TEST_P(SectionOnEveryGlass, everyWordIsWholeAndLargeEnough)
{
    const Theme theme = samples::themeFor(GetParam());
    for (const SectionDrawing& drawing : samples::everyKind())
        for (const bool longer : {false, true})
            for (const QSizeF& mm : {QSizeF(140, 62), QSizeF(120, 60), QSizeF(126, 90)}) {
                const SectionLabels labels = longer ? samples::longLabels(drawing) : samples::labels(drawing);
                SectionPicture picture(theme, u"section"_s);
                picture.resize(theme.px(mm.width()), theme.px(mm.height()));
                picture.setDrawing(drawing, labels);
                EXPECT_TRUE(picture.textFits()) << mm.width() << " mm, kind " << static_cast<int>(drawing.damage.kind);
                EXPECT_GE(picture.smallestTextMm(), 3.4);
                const QRectF room(picture.rect());
                const SectionLayout layout = layOutSection(room, drawing, labels, theme);
                for (const SectionInside& each : layout.inside)
                    expectWhole(each.text, room);
                for (const SectionCallout& each : layout.callouts)
                    expectWhole(each.text, room);
                expectWhole(layout.opening, room);
                for (const PictureText& each : layout.note)
                    expectWhole(each, room);
            }
}

TEST_P(SectionOnEveryGlass, noTwoTextsOverlap)
{
    const Theme theme = samples::themeFor(GetParam());
    for (const SectionDrawing& drawing : samples::everyKind()) {
        const SectionLayout layout =
            layOutSection(QRectF(0, 0, theme.px(140), theme.px(62)), drawing, samples::longLabels(drawing), theme);
        std::vector<QRectF> inks{inkOf(layout.opening)};
        for (const PictureText& each : layout.note)
            inks.push_back(inkOf(each));
        for (const SectionInside& each : layout.inside)
            inks.push_back(inkOf(each.text));
        for (const SectionCallout& each : layout.callouts)
            inks.push_back(inkOf(each.text));
        for (std::size_t i = 0; i < inks.size(); ++i)
            for (std::size_t j = i + 1; j < inks.size(); ++j)
                EXPECT_LT(inks[i].intersected(inks[j]).height(), theme.px(0.6)) << i << " and " << j;
    }
}

INSTANTIATE_TEST_SUITE_P(Glasses, SectionOnEveryGlass, testing::ValuesIn(rules::glasses()));

TEST(SectionText, everyLabelIsShownOnce)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    for (const SectionDrawing& drawing : samples::everyKind()) {
        const SectionLayout layout = layOutSection(QRectF(0, 0, 820, 370), drawing, samples::labels(drawing), theme);
        EXPECT_EQ(layout.inside.size() + layout.callouts.size(), drawing.lifts.size() + 1);
    }
}

TEST(SectionText, theNoteStatesTheExaggerationThatIsDrawn)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    const SectionDrawing drawing = samples::smcHole();
    SectionPicture picture(theme, u"section"_s);
    picture.resize(1000, 400);
    picture.setDrawing(drawing, samples::labels(drawing));
    const SectionLayout layout = layOutSection(QRectF(picture.rect()), drawing, samples::labels(drawing), theme);
    EXPECT_EQ(picture.depthExaggeration(), layout.exaggeration);
    ASSERT_EQ(layout.note.size(), 1U);
    EXPECT_EQ(layout.note.front().text.toStdString(),
              u"3.5 mm panel; depth drawn %1 times as large as width"_s.arg(layout.exaggeration).toStdString());
    EXPECT_NEAR(layout.toPixels.m22() / layout.toPixels.m11(), layout.exaggeration, 1e-9);
}

TEST(SectionText, theDimensionIsAsLongAsTheOpening)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    for (const SectionDrawing& drawing : samples::everyKind()) {
        const SectionLayout layout = layOutSection(QRectF(0, 0, 820, 370), drawing, samples::labels(drawing), theme);
        EXPECT_NEAR(layout.openingLine.length() / layout.toPixels.m11(), inMillimetres(drawing.drawnOpening()), 1e-6);
    }
}

TEST(SectionText, saysSoWhenItsWordsDoNotFit)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    SectionPicture picture(theme, u"section"_s);
    picture.resize(theme.px(30), theme.px(30));
    picture.setDrawing(samples::smcHole(), samples::labels(samples::smcHole()));
    EXPECT_FALSE(picture.textFits());
    picture.setSmall(true);
    EXPECT_TRUE(picture.textFits()); // a card has no words to clip
    EXPECT_EQ(picture.smallestTextMm(), 0);
}

TEST(SectionText, nothingUnmeasuredIsDimensioned)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    Assessment found;
    found.damage = Damage{};
    found.damage->kind = DamageKind::Dent;
    const SectionDrawing drawing = SectionDrawing::of(found);
    EXPECT_FALSE(drawing.measured);
    EXPECT_FALSE(drawing.substrateKnown);
    const SectionLayout layout = layOutSection(QRectF(0, 0, 820, 370), drawing, samples::labels(drawing), theme);
    EXPECT_TRUE(layout.opening.empty());
    EXPECT_TRUE(layout.openingLine.isNull());
}

TEST(SectionKinds, noTwoDamagesShareAPicture)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    std::vector<QImage> pictures;
    for (const auto& entry : Codes<DamageKind>::table)
        pictures.push_back(pixels::paint({240, 90}, theme, [&](QPainter& painter) {
            paintDamage(painter, QRectF(0, 0, 240, 90), entry.first, std::nullopt, theme);
        }));
    for (const auto& entry : Codes<WeldKind>::table)
        pictures.push_back(pixels::paint({240, 90}, theme, [&](QPainter& painter) {
            paintDamage(painter, QRectF(0, 0, 240, 90), DamageKind::WeldSeam, entry.first, theme);
        }));
    for (std::size_t i = 0; i < pictures.size(); ++i)
        for (std::size_t j = i + 1; j < pictures.size(); ++j)
            EXPECT_GT(pixels::difference(pictures[i], pictures[j]), 0.01) << i << " and " << j;
}

TEST(SectionKinds, noTwoSubstratesShareAPicture)
{
    const Theme theme(Metrics(5.9), DayNight::Day, Hand::Right);
    std::vector<QImage> pictures;
    for (const auto& entry : Codes<Substrate>::table)
        pictures.push_back(pixels::paint({200, 60}, theme, [&](QPainter& painter) {
            paintSubstrate(painter, QRectF(0, 0, 200, 60), entry.first, theme);
        }));
    for (std::size_t i = 0; i < pictures.size(); ++i)
        for (std::size_t j = i + 1; j < pictures.size(); ++j)
            EXPECT_GT(pixels::difference(pictures[i], pictures[j]), 0.01) << i << " and " << j;
}

} // namespace
} // namespace strandbench
