// SPDX-License-Identifier: GPL-3.0-or-later
// The legend draws what the pictures draw: each hatch is told from the others without colour.
#include "screens/help/legend_screen.h"

#include <QImage>

#include <gtest/gtest.h>

#include <set>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

QImage drawn(const std::function<void(QPainter&)>& draw)
{
    QImage image(160, 100, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    draw(painter);
    return image;
}

TEST(Legend, EverySubstrateThatASectionShowsStandsInItAsTheSectionDrawsIt)
{
    const Theme theme(Metrics(5.87), DayNight::Day, Hand::Right);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    const std::vector<LegendEntry> entries = legend(words);
    const QRectF room(0, 0, 160, 100);
    for (const auto& [substrate, code] : Codes<Substrate>::table) {
        const QImage section = drawn([&, material = materialOf(substrate)](QPainter& painter) {
            QPainterPath area;
            area.addRect(room.adjusted(1, 1, -1, -1));
            paintPiece(painter, area, material, theme);
            if (material == Material::Galvanised)
                paintZincSkin(painter, area, theme);
        });
        EXPECT_TRUE(std::ranges::any_of(entries, [&](const LegendEntry& each) {
            return drawn([&](QPainter& painter) { each.draw(painter, room, theme); }) == section;
        })) << code;
    }
}

/// As one sees it who sees no colour, or on a photocopy.
TEST(Legend, NoTwoSwatchesLookAlikeInGrey)
{
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    for (const DayNight dayNight : {DayNight::Day, DayNight::Night}) {
        const Theme theme(Metrics(5.87), dayNight, Hand::Right);
        std::vector<std::pair<QString, QImage>> seen;
        for (const LegendEntry& each : legend(words)) {
            const QImage grey = drawn([&](QPainter& painter) {
                                    each.draw(painter, QRectF(0, 0, 160, 100), theme);
                                }).convertToFormat(QImage::Format_Grayscale8);
            for (const auto& [name, other] : seen)
                EXPECT_NE(grey, other) << each.name.toStdString() << " and " << name.toStdString();
            seen.emplace_back(each.name, grey);
        }
    }
}

TEST(Legend, EveryEntryHasAWordOfItsOwn)
{
    std::set<QString> words;
    const std::vector<LegendEntry> entries = legend(Words(UnitSystem::Metric, QLocale(u"en"_s)));
    for (const LegendEntry& each : entries) {
        EXPECT_TRUE(words.insert(each.word).second) << each.word.toStdString();
        EXPECT_FALSE(each.told.isEmpty()) << each.word.toStdString();
    }
}

} // namespace
} // namespace strandbench::test
