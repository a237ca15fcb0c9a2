// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/drawing.h"

#include "exchange/rules.h"
#include "harm/harm.h"
#include "material/hazards.h"
#include "pictures/drawing_keys.h"
#include "pictures/pictogram.h"
#include "repair/repair.h"
#include "words/words.h"
#include "pixels.h"
#include "touch_rules/contrast.h"

#include <QSvgRenderer>
#include <gtest/gtest.h>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const QStringList& folders()
{
    static const QStringList all{u"signs"_s, u"iso"_s,        u"cautions"_s, u"ghs"_s,  u"tools"_s,
                                 u"acts"_s,  u"substrates"_s, u"damages"_s,  u"steps"_s};
    return all;
}

QStringList everyDrawing()
{
    QStringList names;
    for (const QString& folder : folders())
        names += drawingsIn(folder);
    return names;
}

Theme themeOf(DayNight dayNight) { return Theme(Metrics(5.9), dayNight, Hand::Right); }

QImage painted(const QString& name, DayNight dayNight, const DrawingLook& look = {})
{
    const Theme theme = themeOf(dayNight);
    return pixels::paint({240, 120}, theme,
                         [&](QPainter& painter) { paintDrawing(painter, QRectF(0, 0, 240, 120), name, theme, look); });
}

template <typename Enum> void expectEach(const QString& folder)
{
    for (const auto& entry : Codes<Enum>::table)
        EXPECT_TRUE(hasDrawing(folder + u'/' + QLatin1StringView(entry.second).toString().toLower())) << entry.second;
}

TEST(Drawing, everyFolderHoldsDrawings)
{
    for (const QString& folder : folders())
        EXPECT_FALSE(drawingsIn(folder).isEmpty()) << folder.toStdString();
}

TEST(Drawing, everyKindOfPanelDamageHazardAndMeasureHasOne)
{
    expectEach<Substrate>(u"substrates"_s);
    expectEach<DamageKind>(u"damages"_s);
    expectEach<GhsPictogram>(u"ghs"_s);
    expectEach<Measure>(u"cautions"_s);
    for (const auto& entry : Codes<WeldKind>::table)
        EXPECT_TRUE(hasDrawing(u"damages/weld_"_s + QLatin1StringView(entry.second))) << entry.second;
    for (const Pictogram sign : allPictograms())
        EXPECT_TRUE(hasDrawing(drawingOf(sign))) << drawingOf(sign).toStdString();
}

TEST(Drawing, everyCautionHasOneAndNoneIsOfNoCaution)
{
    std::set<QString> codes;
    const StepBook book = builtInSteps();
    for (const auto& steps : {book.prepare, book.finish})
        for (const auto& step : steps)
            codes.insert(step.cautions.begin(), step.cautions.end());
    const Words words(UnitSystem::Metric, QLocale::c());
    for (const auto& entry : Codes<Station>::table)
        for (const CautionText& each : words.cautionsAt(entry.first))
            codes.insert(each.code);
    for (const auto& entry : Codes<Measure>::table)
        codes.insert(QString::fromLatin1(entry.second));
    QStringList wanted;
    for (const QString& code : codes)
        wanted << u"cautions/"_s + code;
    wanted.sort();
    EXPECT_EQ(drawingsIn(u"cautions"_s), wanted);
}

TEST(Drawing, everyOneIsReadAndShowsInBothThemesAtFigureContrast)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const QColor card = themeOf(dayNight).color(Role::Card);
        for (const QString& name : everyDrawing()) {
            const QImage image = painted(name, dayNight);
            int clear = 0;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x)
                    clear += rules::contrastRatio(image.pixelColor(x, y), card) >= 4.5 ? 1 : 0;
            EXPECT_GT(clear, 0.005 * image.width() * image.height()) << name.toStdString();
        }
    }
}

TEST(Drawing, theThemeColoursAllButWhatTheLawColours)
{
    for (const QString& name : everyDrawing())
        EXPECT_EQ(pixels::difference(painted(name, DayNight::Day), painted(name, DayNight::Night)) > 0.01, true)
            << name.toStdString();
    const QImage day = painted(u"ghs/ghs02"_s, DayNight::Day);
    const QImage night = painted(u"ghs/ghs02"_s, DayNight::Night);
    EXPECT_EQ(day.pixel(120, 30), night.pixel(120, 30)); // the white within the red square
    EXPECT_TRUE(pixels::near(night.pixel(120, 30), QColor(Qt::white), 2));
}

TEST(Drawing, everyInkOfADrawingIsReadOnTheCard)
{
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme = themeOf(dayNight);
        for (const Role ink : {Role::Ink, Role::MutedInk, Role::Action, Role::Stop, Role::Go})
            EXPECT_GE(rules::contrastRatio(theme.color(ink), theme.color(Role::Card)), 4.5) << static_cast<int>(ink);
        for (const auto& [on, ground] : {std::pair{Role::OnAction, Role::Action},
                                         {Role::OnStop, Role::Stop},
                                         {Role::OnGo, Role::Go},
                                         {Role::OnCaution, Role::Caution}})
            EXPECT_GE(rules::contrastRatio(theme.color(on), theme.color(ground)), 4.5) << static_cast<int>(on);
    }
}

TEST(Drawing, byDayTheFileLooksAsOnTheGlass)
{
    // Each key is at most two steps from the role's colour by day: any viewer shows the drawing as it is.
    const Theme day = themeOf(DayNight::Day);
    for (const auto& [key, role] : drawingKeys())
        EXPECT_TRUE(pixels::near(QColor(key).rgb(), day.color(role), 3)) << key.toStdString();
}

TEST(Drawing, anInkOfItsOwnIsDrawnInIt)
{
    const QImage image = painted(u"signs/minus"_s, DayNight::Day, {QColor(Qt::magenta)});
    EXPECT_TRUE(pixels::near(image.pixel(120, 60), QColor(Qt::magenta), 2));
}

TEST(Drawing, keepsItsShapeAndItsRoom)
{
    const Theme theme = themeOf(DayNight::Day);
    for (const QString& name : everyDrawing()) {
        const QSizeF size = drawingSize(name).scaled(QSizeF(200, 100), Qt::KeepAspectRatio);
        const QRectF room(130 - size.width() / 2, 80 - size.height() / 2, size.width(), size.height());
        const QImage image = pixels::paint({260, 160}, theme, [&](QPainter& painter) {
            paintDrawing(painter, QRectF(30, 30, 200, 100), name, theme);
        });
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_TRUE(room.adjusted(-2, -2, 2, 2).contains(x, y) ||
                            pixels::near(image.pixel(x, y), theme.color(Role::Card), 4))
                    << name.toStdString() << " at " << x << ", " << y;
    }
}

TEST(Drawing, noTwoOfAFolderLookAlike)
{
    for (const QString& folder : {u"substrates"_s, u"damages"_s, u"tools"_s, u"ghs"_s, u"iso"_s, u"acts"_s}) {
        const QStringList names = drawingsIn(folder);
        std::vector<QImage> images;
        for (const QString& name : names)
            images.push_back(painted(name, DayNight::Day));
        for (std::size_t i = 0; i < images.size(); ++i)
            for (std::size_t j = i + 1; j < images.size(); ++j)
                EXPECT_GT(pixels::difference(images[i], images[j]), 0.008)
                    << names[static_cast<qsizetype>(i)].toStdString() << " and "
                    << names[static_cast<qsizetype>(j)].toStdString();
    }
}

TEST(Drawing, aFaultIsNeverSilent)
{
    EXPECT_THROW((void)painted(u"tools/never_drawn"_s, DayNight::Day), std::logic_error);
    EXPECT_THROW((void)painted(u"signs/plus"_s, DayNight::Day, {std::nullopt, 2}), std::logic_error);
    EXPECT_THROW((void)painted(u"acts/knead"_s, DayNight::Day, {std::nullopt, 0}), std::logic_error);
    EXPECT_THROW((void)drawingSize(u"tools/never_drawn"_s), std::logic_error);
    const Theme theme = themeOf(DayNight::Night);
    EXPECT_THROW((void)recoloured(u"<path stroke=\"#123456\"/>"_s, theme, Qt::black), std::logic_error);
    EXPECT_FALSE(hasDrawing(u"tools/never_drawn"_s));
}

TEST(Drawing, whatItUsesStandsInItsPlace)
{
    const QString text = drawingText(u"steps/sand_180"_s);
    EXPECT_FALSE(text.contains(u"<use"_s));
    EXPECT_TRUE(QSvgRenderer(text.toUtf8()).isValid());
    EXPECT_GT(text.size(), drawingText(u"tools/block_180"_s).size());
}

} // namespace
} // namespace strandbench
