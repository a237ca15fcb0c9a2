// SPDX-License-Identifier: GPL-3.0-or-later
// The air: one tap from the ribbon wherever that is, and back to what was shown; dew, vapour and fire by what the log
// holds. Real taps, a real log.
#include "bench_fixture.h"
#include "bench_acts.h"
#include "shown.h"

#include "air/shop_air.h"
#include "pictures/dew_picture.h"
#include "screens/frame/sign_widget.h"

#include <QRegularExpression>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Air : public BenchTest {
protected:
    void openAir(const QString& tile)
    {
        ASSERT_TRUE(answeredAlarms(bench()));
        tap(u"ribbon_air"_s);
        ASSERT_EQ(screen(), u"screen_air"_s);
        tap(u"air_"_s + tile);
        ASSERT_EQ(screen(), u"screen_"_s + tile);
    }
    /// Every text of the present screen's pages, from the first on.
    QStringList readPages()
    {
        bench().thumb().settle();
        QStringList texts = visibleTexts();
        while (true) {
            const auto* more = window().findChild<TapButton*>(u"rows_more"_s);
            if (!more || !more->isVisible() || !more->isEnabled())
                return texts;
            tap(u"rows_more"_s);
            texts << visibleTexts();
        }
    }
    QStringList visibleTexts()
    {
        QStringList texts;
        for (const FitLabel* each : window().screen()->findChildren<FitLabel*>())
            if (each->isVisible() && !each->text().isEmpty())
                texts << each->text();
        for (const SignWidget* each : window().screen()->findChildren<SignWidget*>())
            m_cautions += each->isVisible() && each->sign() == Pictogram::Caution ? 1 : 0;
        return texts;
    }
    static bool says(const QStringList& texts, const QString& part)
    {
        return std::ranges::any_of(texts, [&](const QString& each) { return each.contains(part); });
    }
    /// A reading beside the steps, by whoever may tell one.
    void read(double air, double panel, double percent)
    {
        const ReadingTaken taken{{celsius(air), celsius(panel), Fraction::ofHundred(percent)}};
        ASSERT_TRUE(submitted(bench(), bench().repair(u"4421"_s)->id, taken));
    }
    [[nodiscard]] const DewDay& dewDay()
    {
        const auto* picture = window().findChild<DewPicture*>(u"dew_picture"_s);
        if (!picture)
            throw std::logic_error("no chart");
        return picture->day();
    }
    std::ptrdiff_t m_cautions = 0; ///< signs on the pages that were read

    void goThroughPages(const QString& station, const QString& from)
    {
        for (const QString& tile : {u"dew"_s, u"vapour"_s, u"fire"_s}) {
            openAir(tile);
            bench().thumb().settle();
            tap(u"answer_back"_s);
            EXPECT_EQ(screen(), u"screen_air"_s) << station.toStdString();
            tap(u"answer_back"_s);
            EXPECT_EQ(screen(), from) << station.toStdString();
        }
    }
};

TEST_F(Air, IsOneTapFromWhereverOneIsAndLeadsBackThere)
{
    open();
    goThroughPages(u"home"_s, u"screen_home"_s);
    for (const Station station : {Station::Prepare, Station::Mix, Station::Spread}) {
        walkTo(skirtPanel(), station);
        goThroughPages(codeOf(station), screen());
    }
}

TEST_F(Air, KeepsWhatWasEnteredAndTheStepThatWasLookedAt)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    tap(u"answer_way_on"_s);
    tap(u"answer_back"_s); // an earlier step is looked at
    const QString looked = screen();
    ASSERT_FALSE(window().presentRepair());
    tap(u"ribbon_air"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), looked);
    EXPECT_FALSE(window().presentRepair()) << "still only looked at";
}

TEST_F(Air, BeforeAnythingWasReadSaysSo)
{
    open();
    openAir(u"dew"_s);
    EXPECT_TRUE(waitText(u"dew_none"_s).contains(u"14"_s));
    tap(u"answer_back"_s);
    tap(u"air_vapour"_s);
    EXPECT_FALSE(waitText(u"vapour_none"_s).isEmpty());
    EXPECT_FALSE(window().findChild<FitLabel*>(u"vapour_styrene"_s));
    tap(u"answer_back"_s);
    tap(u"air_fire"_s);
    EXPECT_TRUE(says(readPages(), u"air not read yet"_s));
}

TEST_F(Air, DewShowsEachReadingOfTheDayAndWhichLayBelowTheLimit)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    openAir(u"dew"_s);
    ASSERT_FALSE(waitText(u"dew_margin"_s).isEmpty());
    ASSERT_EQ(dewDay().marks.size(), 1U) << "what was answered";
    EXPECT_FALSE(dewDay().marks.front().below);
    EXPECT_EQ(dewDay().least, 3);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    // 20 degC, 60 %: dew point 12.01 degC (psychrolib 1.1.1, ASHRAE 2017).
    bench().clock().advance(minutes(30));
    read(20, 15.0, 60);
    bench().clock().advance(minutes(30));
    read(20, 18.0, 60);
    openAir(u"dew"_s);
    ASSERT_FALSE(waitText(u"dew_margin"_s).isEmpty());
    ASSERT_EQ(dewDay().marks.size(), 3U);
    EXPECT_NEAR(dewDay().marks[1].margin, 2.99, 0.01);
    EXPECT_TRUE(dewDay().marks[1].below);
    EXPECT_FALSE(dewDay().marks[2].below);
    EXPECT_NEAR(dewDay().marks[2].minute - dewDay().marks[1].minute, 30, 0.1);
    EXPECT_TRUE(shown(window(), u"dew_below"_s).startsWith(u"1 "_s));
    EXPECT_TRUE(shown(window(), u"dew_below_why"_s).contains(u"2.9"_s)) << "never rounded up";
    EXPECT_TRUE(shown(window(), u"dew_margin"_s).contains(u"5.9"_s)) << "the newest, 18.0 less 12.01";
}

TEST_F(Air, DewHasAPageForEachDayThatWasReadOn)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    bench().clock().advance(minutes(2 * 24 * 60));
    read(20, 18.0, 60);
    openAir(u"dew"_s);
    const QString today = waitText(u"dew_when"_s);
    EXPECT_TRUE(today.startsWith(u"Today"_s)) << today.toStdString();
    ASSERT_EQ(dewDay().marks.size(), 1U);
    tap(u"rows_more"_s);
    const QString before = shown(window(), u"dew_when"_s);
    EXPECT_TRUE(before.startsWith(localDay(workingMorning()))) << before.toStdString();
    EXPECT_FALSE(window().findChild<TapButton*>(u"rows_more"_s)->isEnabled());
    bench().clock().advance(minutes(14 * 24 * 60));
    window().showHome();
    openAir(u"dew"_s);
    EXPECT_FALSE(waitText(u"dew_none"_s).isEmpty()) << "older ones are in the records";
}

TEST_F(Air, DewIsShownInThePersonsDegrees)
{
    Settings settings = demoSettings();
    settings.units = UnitSystem::UsCustomary;
    open();
    walkTo(skirtPanel(), Station::Prepare);
    read(20, 18.0, 60);
    open(settings);
    openAir(u"dew"_s);
    ASSERT_FALSE(waitText(u"dew_margin"_s).isEmpty());
    EXPECT_NEAR(dewDay().least, 5.4, 1e-9);
    EXPECT_NEAR(dewDay().marks.back().margin, 1.8 * 5.99, 0.02);
    EXPECT_TRUE(dewDay().degrees(5).endsWith(u"°F"_s));
}

/// The box by hand: what is in the room so long after a batch went in, from the batch's own grams and gel time, with
/// the formulas of 40 CFR 63, Subpart VVVV, Table 3 (0.014 H^2.275 and 0.445 H^1.675 kg/Mg).
TEST_F(Air, VapourIsWhatTheBoxHoldsOfTheBatchesOfTheLog)
{
    open();
    walkTo(skirtPanel(), Station::Wait);
    const BatchRun run = bench().repair(u"4421"_s)->runs.front();
    const auto events =
        RepairLog::open(log(), LogMode::ReadOnly).value()->eventsOfAir(u"1970-01-01"_s, u"9999-12-31"_s);
    ASSERT_TRUE(events);
    const auto mixed = std::ranges::find_if(
        *events, [](const Event& each) { return std::holds_alternative<HardenerIn>(each.payload); });
    ASSERT_NE(mixed, events->end());
    const auto& batch = std::get<HardenerIn>(mixed->payload);
    const Duration since = elapsed(run.hardenerIn, bench().clock().now());
    const ProductSheet& sheet = *bench().bench().planning().catalogue.byId(batch.sheetId);
    const double h = sheet.styrene.percent();
    const double k = 2.0 / 3600; // the default's two changes an hour in 200 m3
    const auto ppm = [&](double kilogramsPerMegagram) {
        const double gel = inSeconds(batch.times.gel);
        const double during = std::min(gel, inSeconds(since));
        const double milligrams = inGrams(batch.filler) * kilogramsPerMegagram; // g of filler, g/kg: mg
        return milligrams / gel / 200 / k * -std::expm1(-k * during) * std::exp(-k * (inSeconds(since) - during)) /
               (104.15 / 24.45);
    };
    openAir(u"vapour"_s);
    const QString now = waitText(u"vapour_styrene_now"_s);
    const QStringList figures = figuresOf(now);
    ASSERT_GE(figures.size(), 2) << now.toStdString();
    EXPECT_NEAR(figures[0].toDouble(), ppm(0.014 * std::pow(h, 2.275)), 0.06) << now.toStdString();
    EXPECT_NEAR(figures[1].toDouble(), ppm(0.445 * std::pow(h, 1.675)), 0.06) << now.toStdString();
    EXPECT_FALSE(shown(window(), u"vapour_acetone"_s).isEmpty()) << "open fibre is wiped down with it";
    // By and by it leaves.
    bench().clock().advance(minutes(120));
    window().tick();
    const QString later = shown(window(), u"vapour_styrene_now"_s);
    EXPECT_NE(later, now);
    tap(u"answer_back"_s);
    bench().clock().advance(minutes(25 * 60));
    tap(u"air_vapour"_s);
    EXPECT_FALSE(waitText(u"vapour_none"_s).isEmpty()) << "of a day ago nothing is left";
}

TEST_F(Air, VapourStandsBesideEveryLimitByNameAndClearsNobody)
{
    open();
    walkTo(skirtPanel(), Station::Wait);
    openAir(u"vapour"_s);
    ASSERT_FALSE(waitText(u"vapour_styrene_now"_s).isEmpty());
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(u"never a clearance"_s));
    EXPECT_TRUE(shown(window(), u"vapour_first"_s).contains(u"A measurement, the safety data sheet and local codes"_s));
    const QStringList read = readPages();
    const auto standsThere = [&](const ExposureLimit& limit) {
        return std::ranges::any_of(read, [&](const QString& text) {
            return text.startsWith(limit.name) &&
                   std::abs(figuresOf(text).last().toDouble() - inPartsPerMillion(limit.level)) < 0.01;
        });
    };
    for (const ExposureLimit& each : exposureLimits())
        if (each.vapour != Vapour::Naphtha) { // the panel's fibre lies open: no wax remover
            EXPECT_TRUE(standsThere(each)) << each.name.toStdString();
        }
    static const QRegularExpression clearing(u"\\bsafe\\b(?!ty)|harmless|no danger|cleared"_s,
                                             QRegularExpression::CaseInsensitiveOption);
    for (const QString& text : read)
        EXPECT_FALSE(text.contains(clearing)) << text.toStdString();
}

TEST_F(Air, VapourInASmallShutRoomIsAReasonToVentilate)
{
    open();
    Assumptions shut;
    shut.room.air = cubicMetres(10);
    shut.room.changes = changesPerHour(0.1);
    (void)bench().bench().changeAssumptions(shut);
    walkTo(skirtPanel(), Station::Wait);
    openAir(u"vapour"_s);
    EXPECT_TRUE(waitText(u"vapour_box"_s).contains(u"10"_s));
    const QStringList read = readPages();
    EXPECT_TRUE(says(read, u"Ventilate now"_s));
    EXPECT_EQ(m_cautions,
              std::ranges::count_if(read, [](const QString& text) { return text.contains(u"Ventilate now"_s); }))
        << "by a sign and words";
}

TEST_F(Air, FireNamesFlashPointsBesideTheAirAndWhatLightsIt)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    read(35, 28, 30);
    openAir(u"fire"_s);
    QStringList texts = readPages();
    EXPECT_TRUE(says(texts, u"31"_s) && says(texts, u"lit now"_s)) << "styrene flashes at 31 degC, the air is warmer";
    EXPECT_TRUE(says(texts, u"Sparks"_s) && says(texts, u"Static"_s) && says(texts, u"Heater"_s));
    EXPECT_TRUE(says(texts, u"lidded metal can"_s)) << "rags";
    EXPECT_TRUE(says(texts, u"never together"_s)) << "peroxide and accelerator";
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    read(20, 18, 50);
    openAir(u"fire"_s);
    EXPECT_TRUE(shown(window(), u"fire_filler_why"_s).contains(u"below it"_s));
    EXPECT_TRUE(shown(window(), u"fire_acetone_why"_s).contains(u"lit now"_s));
    EXPECT_TRUE(shown(window(), u"fire_wax_remover_why"_s).contains(u"lit now"_s)) << "by its class";
}

TEST_F(Air, IsReachedByTheKeyboardToo)
{
    open();
    auto* key = bench().thumb().find(u"ribbon_air"_s);
    ASSERT_TRUE(key);
    EXPECT_TRUE(key->accessibleName().startsWith(u"Air"_s)) << key->accessibleName().toStdString();
    EXPECT_GE(window().theme().metrics().mm(std::min(key->width(), key->height())), 19.9);
    key->click();
    bench().thumb().settle();
    EXPECT_EQ(screen(), u"screen_air"_s);
}

} // namespace
} // namespace strandbench::test
