// SPDX-License-Identifier: GPL-3.0-or-later
// What can hurt here: one tap from the steps that meet a material, and back to the same step; a sheet's own hazards
// stand in the place of the general ones, and say so.
#include "bench_fixture.h"
#include "shown.h"

#include "exchange/harm.h"
#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "pictures/ghs_pictogram.h"
#include "screens/beside/ghs_sign.h"
#include "words/harm_words.h"

#include <QImage>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Harm : public BenchTest {
protected:
    /// Every text of every page that the key leads to; then back to the step.
    QStringList readPages()
    {
        const QString step = screen();
        tap(u"harm"_s);
        EXPECT_EQ(screen(), u"screen_harm"_s) << step.toStdString();
        EXPECT_FALSE(shown(window(), u"harm_first"_s).isEmpty()) << "who comes first stands on every page";
        QStringList texts = pageTexts();
        while (true) {
            const auto* more = window().findChild<TapButton*>(u"rows_more"_s);
            if (!more || !more->isVisible() || !more->isEnabled())
                break;
            tap(u"rows_more"_s);
            texts << pageTexts();
        }
        tap(u"answer_way_on"_s);
        EXPECT_EQ(screen(), step);
        return texts;
    }
    QStringList pageTexts()
    {
        QStringList texts;
        for (const FitLabel* each : window().screen()->findChildren<FitLabel*>())
            if (each->isVisible())
                texts << each->text();
        for (const GhsSign* each : window().screen()->findChildren<GhsSign*>())
            for (const GhsPictogram pictogram : each->pictograms())
                texts << codeOf(pictogram);
        return texts;
    }
    /// Confirms step after step until this one shows.
    void toStep(const QString& name)
    {
        for (int steps = 0; screen() != name && steps < 20; ++steps)
            tap(u"answer_way_on"_s);
        ASSERT_EQ(screen(), name);
    }
    [[nodiscard]] bool hasKey()
    {
        const auto* key = window().findChild<TapButton*>(u"harm"_s);
        return key && key->isVisible();
    }
    [[nodiscard]] PlanningSet planningWith(const QByteArray& hazards)
    {
        std::vector<ProductSheet> sheets;
        for (const ProductSheet& each : demoCatalogue().sheets()) {
            QByteArray json = each.source;
            const Checked<ProductSheet> sheet =
                readSheet(json.replace("\"demo\": true,", "\"demo\": true, \"hazards\": " + hazards + ","));
            EXPECT_TRUE(sheet);
            sheets.push_back(*sheet);
        }
        m_catalogue = Catalogue(std::move(sheets));
        return {builtInTable(), m_catalogue, builtInSteps(), Assumptions{}, m_engine};
    }

    Catalogue m_catalogue;
    CureEngine m_engine;
};

TEST_F(Harm, IsOneTapFromEachStepThatMeetsAMaterial)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    EXPECT_FALSE(hasKey()) << "gear on: nothing is met yet";
    toStep(u"screen_prepare_degrease_little"_s);
    QStringList read = readPages();
    EXPECT_TRUE(read.contains(words::statement(u"H225"_s))) << "acetone burns";
    EXPECT_TRUE(read.contains(u"GHS02"_s));
    EXPECT_TRUE(read.contains(words::measure(Measure::NoIgnition).lead));
    toStep(u"screen_prepare_strip_paint"_s);
    read = readPages();
    EXPECT_TRUE(read.contains(words::measure(Measure::ExtractionOn).lead));
    EXPECT_TRUE(read.contains(words::harmMaterial(u"old_paint_dust"_s)));
    EXPECT_FALSE(read.contains(words::harmMaterial(u"steel_dust"_s))) << "the panel is SMC";
    toStep(u"screen_prepare_dust_off"_s);
    read = readPages();
    EXPECT_TRUE(read.contains(words::measure(Measure::NotAtSkin).lead));
}

TEST_F(Harm, IsOneTapFromMixSpreadWaitAndSand)
{
    open();
    walkTo(skirtPanel(), Station::Mix);
    QStringList read = readPages();
    for (const char* code : {"H226", "H361d", "H372", "H242", "H317"})
        EXPECT_TRUE(read.contains(words::statement(QString::fromLatin1(code)))) << code;
    EXPECT_TRUE(read.contains(words::measure(Measure::NeverTogether).lead));
    for (const Station station : {Station::Spread, Station::Wait}) {
        walkTo(skirtPanel(), station);
        read = readPages();
        EXPECT_TRUE(read.contains(words::harmMaterial(u"hot_lump"_s))) << codeOf(station).toStdString();
        EXPECT_TRUE(read.contains(words::measure(Measure::SpreadLeftOver).lead));
    }
    walkTo(skirtPanel(), Station::Sand);
    read = readPages();
    EXPECT_TRUE(read.contains(words::measure(Measure::ExtractionOn).lead));
    EXPECT_TRUE(read.contains(words::harmMaterial(u"filler_dust"_s)));
}

TEST_F(Harm, OfTheSheetWins)
{
    open(demoSettings(), planningWith(R"({"signal": "warning", "pictograms": ["GHS07"], "h": ["H317"],
        "p": ["P261"], "gloves": "Only the grey ones from drawer 4.",
        "hardener": {"signal": "danger", "pictograms": ["GHS05"], "h": ["H318"], "p": []}})"));
    walkTo(skirtPanel(), Station::Mix);
    const QStringList read = readPages();
    EXPECT_TRUE(read.contains(words::statement(u"H317"_s)) && read.contains(words::statement(u"H318"_s)));
    for (const char* general : {"H226", "H361d", "H372", "H242"})
        EXPECT_FALSE(read.contains(words::statement(QString::fromLatin1(general)))) << general;
    EXPECT_TRUE(read.contains(u"GHS05"_s) && !read.contains(u"GHS02"_s) && !read.contains(u"GHS08"_s));
    const auto says = [&](const QString& part) {
        return std::ranges::any_of(read, [&](const QString& each) { return each.contains(part); });
    };
    EXPECT_TRUE(says(u"Only the grey ones from drawer 4."_s));
    EXPECT_FALSE(says(words::gloves(u"splash_gloves"_s)));
    EXPECT_TRUE(says(words::harmWaste(u"cure_thin"_s))) << "the sheet says nothing of waste";
    EXPECT_TRUE(says(demoCatalogue().byClass(FillerClass::MixedStrand)->name)) << "whose it is";
}

TEST_F(Harm, HasWordsForEveryCode) // invariant
{
    const auto told = [](const QString& text) { return !text.isEmpty() && !text.startsWith(u'['); };
    for (const HarmMaterial& each : builtInHarm().materials) {
        EXPECT_TRUE(told(words::harmMaterial(each.code))) << each.code.toStdString();
        EXPECT_TRUE(told(words::gloves(each.gloves))) << each.gloves.toStdString();
        EXPECT_TRUE(told(words::respirator(each.respirator))) << each.respirator.toStdString();
        EXPECT_TRUE(told(words::firstAid(each.firstAid))) << each.firstAid.toStdString();
        EXPECT_TRUE(told(words::harmWaste(each.waste))) << each.waste.toStdString();
        for (const QString& code : each.precautions)
            EXPECT_TRUE(words::hasStatement(code)) << code.toStdString();
    }
    for (const auto& [value, code] : Codes<HazardClass>::table)
        EXPECT_TRUE(words::hasStatement(QString::fromLatin1(labelElement(value).statement))) << code;
    for (const auto& [value, code] : Codes<Measure>::table)
        EXPECT_TRUE(told(words::measure(value).lead) && told(words::measure(value).rest)) << code;
    for (const auto& [value, code] : Codes<GhsPictogram>::table)
        EXPECT_TRUE(told(words::pictogramName(value))) << code;
    EXPECT_TRUE(words::statement(u"H302+H312"_s).contains(u"swallowed"_s)) << "part by part";
    EXPECT_EQ(words::statement(u"H999"_s), u"H999"_s) << "a code without a text stands alone";
}

/// A pictogram as painted, upon grey.
QImage painted(GhsPictogram pictogram)
{
    QImage image(240, 240, QImage::Format_RGB32);
    image.fill(Qt::gray);
    QPainter painter(&image);
    paintGhsPictogram(painter, QRectF(image.rect()), pictogram);
    return image;
}

TEST_F(Harm, PictogramIsBlackOnWhiteInARedSquareOnItsPoint) // CLP Annex V, remembered
{
    std::vector<QImage> all;
    for (const auto& [pictogram, code] : Codes<GhsPictogram>::table) {
        const QImage image = painted(pictogram);
        const auto share = [&](auto is) {
            int found = 0;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x)
                    found += is(image.pixelColor(x, y)) ? 1 : 0;
            return double(found) / (image.width() * image.height());
        };
        for (const QPoint corner : {QPoint(20, 20), QPoint(220, 20), QPoint(20, 220), QPoint(220, 220)})
            EXPECT_EQ(image.pixelColor(corner), QColor(Qt::gray)) << code;
        for (const QPoint edge : {QPoint(120, 14), QPoint(226, 120), QPoint(120, 226), QPoint(14, 120)})
            EXPECT_GT(image.pixelColor(edge).red(), 3 * image.pixelColor(edge).green()) << code;
        EXPECT_GT(share([](const QColor& c) { return c.lightness() < 40; }), 0.02) << code << ": the symbol";
        EXPECT_GT(share([](const QColor& c) { return c == QColor(Qt::white); }), 0.15) << code << ": its ground";
        EXPECT_EQ(std::ranges::find(all, image), all.end()) << code << " looks like another";
        all.push_back(image);
    }
}

} // namespace
} // namespace strandbench::test
