// SPDX-License-Identifier: GPL-3.0-or-later
// Every refusal on the glass: what it says, where it parks, and that only assessing again leads out of it. What the
// trade refuses is common practice without a source.
#include "bench_fixture.h"
#include "shown.h"

#include "exchange/rules.h"
#include "screens/job/job_card.h"
#include "screens/frame/sign_widget.h"
#include "walk/every_job.h"

#include <QSet>

using namespace Qt::StringLiterals;

namespace strandbench {
inline void PrintTo(const RefusedJob& job, std::ostream* out) { *out << job.stop.toStdString(); }
} // namespace strandbench

namespace strandbench::test {
namespace {

/// Stops that no answer and no reading of the demo bench causes: they come from a sheet or from an open question.
const QSet<QString> notByAnswers{u"not_assessed"_s, u"gels_too_fast"_s,     u"overheats_in_any_lift"_s,
                                 u"never_sands"_s,  u"sheet_times_unfit"_s, u"sheet_never_sands"_s,
                                 u"cure_unsolved"_s};

/// Nobody may override these, the supervisor included; what carries load, holds people back or holds fuel.
const QSet<QString> nobodys{u"zone_structural"_s,        u"zone_restraint"_s,        u"zone_fuel_or_pressure"_s,
                            u"substrate_carbon"_s,       u"substrate_magnesium"_s,   u"substrate_unknown"_s,
                            u"weld_seam_not_on_metal"_s, u"rust_hole_not_on_metal"_s};

class EveryRefusal : public BenchTest, public ::testing::WithParamInterface<RefusedJob> {
protected:
    void open()
    {
        if (GetParam().zincNamed)
            BenchTest::open();
        else
            BenchTest::open(demoSettings(),
                            PlanningSet{builtInTable(), m_withoutZinc, builtInSteps(), Assumptions{}, m_engine});
    }
    [[nodiscard]] const Repair& repair() { return *bench().repair(GetParam().found.job); }
    [[nodiscard]] Stop stop() { return bench().bench().plan(repair().assessment).stops.front(); }
    void expectTheSign();
    void expectTheWords();
    void expectParked();
    void expectTheCard();
    /// The last event of this repair, read from the file again.
    [[nodiscard]] Payload lastWritten();

private:
    Catalogue m_withoutZinc = catalogueWithoutZinc();
    CureEngine m_engine;
};

/// An octagon in the stop colour with a light hand in it: its corners are cut, its rim is red, its middle light.
void EveryRefusal::expectTheSign()
{
    auto* sign = window().screen()->findChild<SignWidget*>();
    ASSERT_NE(sign, nullptr);
    EXPECT_EQ(sign->sign(), Pictogram::StopHand);
    EXPECT_FALSE(sign->accessibleName().isEmpty());
    const QImage seen = sign->grab().toImage();
    const QColor red = window().theme().color(Role::Stop);
    const int side = std::min(seen.width(), seen.height());
    const QPoint middle(seen.width() / 2, seen.height() / 2);
    const auto pixel = [&](double x, double y) {
        return seen.pixelColor(middle + QPoint(static_cast<int>(x * side), static_cast<int>(y * side)));
    };
    for (const double away : {-0.44, 0.44}) {
        EXPECT_EQ(pixel(away, 0), red);
        EXPECT_EQ(pixel(0, away), red);
        EXPECT_NE(pixel(away, away), red) << "an octagon has no corner there";
    }
    EXPECT_GT(pixel(0, 0.1).lightness(), red.lightness() + 80) << "the palm";
}

void EveryRefusal::expectTheWords()
{
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    const StopText says = words.stop(stop());
    EXPECT_EQ(shown(window(), u"sentence"_s), says.headline);
    EXPECT_EQ(shown(window(), u"stop_wrong"_s), says.wrong);
    EXPECT_EQ(shown(window(), u"stop_why"_s), says.why);
    EXPECT_EQ(shown(window(), u"stop_instead"_s), says.instead);
    EXPECT_EQ(shown(window(), u"stop_instead_detail"_s), says.insteadDetail);
    for (const QString& each : {says.headline, says.wrong, says.why, says.instead, says.insteadDetail, says.place})
        EXPECT_FALSE(each.isEmpty() || each.contains(u'[') || each.contains(u'%')) << each.toStdString();
    EXPECT_EQ(shown(window(), u"answer_way_on"_s), says.park);
    EXPECT_TRUE(says.park.endsWith(says.place)) << says.park.toStdString();
    EXPECT_TRUE(shown(window(), u"stop_others"_s).isEmpty()) << shown(window(), u"stop_others"_s).toStdString();
    const QString override = shown(window(), u"stop_override"_s);
    const bool nobody = nobodys.contains(GetParam().stop);
    EXPECT_EQ(override.startsWith(u"Nobody"_s), nobody) << override.toStdString();
    // A supervisor has the key for it, unless nothing could be planned all the same.
    const bool key = bench().thumb().find(u"override_stop"_s) != nullptr;
    EXPECT_EQ(override.contains(u"supervisor"_s), key) << override.toStdString();
    EXPECT_EQ(override.startsWith(u"There is nothing to plan"_s), !nobody && !key) << override.toStdString();
    EXPECT_TRUE(override.contains(u"manual"_s)) << "the maker's manual comes first";
}

Payload EveryRefusal::lastWritten()
{
    const auto opened = RepairLog::open(log(), LogMode::ReadOnly);
    return (*opened)->events(repair().id)->back().payload;
}

void EveryRefusal::expectParked()
{
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_parked"_s);
    const Payload written = lastWritten();
    const auto* parked = std::get_if<Parked>(&written);
    ASSERT_NE(parked, nullptr);
    ASSERT_FALSE(parked->because.empty());
    EXPECT_EQ(parked->because.front(), GetParam().stop);
    EXPECT_EQ(parked->to, stop().parkTo);
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_TRUE(shown(window(), u"sentence"_s).contains(words.place(parked->to)));
}

void EveryRefusal::expectTheCard()
{
    window().showHome();
    bench().thumb().settle();
    const auto* card = dynamic_cast<const JobCard*>(bench().thumb().find(u"job_card_0"_s));
    ASSERT_NE(card, nullptr);
    EXPECT_EQ(card->onCard().sign, Pictogram::Parked) << "the hand";
    const Words words(UnitSystem::Metric, QLocale(u"en"_s));
    EXPECT_TRUE(card->accessibleDescription().contains(words.stopHeadline(GetParam().stop)))
        << card->accessibleDescription().toStdString();
    tap(u"job_card_0"_s);
    EXPECT_EQ(screen(), u"screen_parked"_s);
}

TEST_P(EveryRefusal, StopsParksAndFillsOnlyAfterAssessingAgain)
{
    open();
    walkTo(GetParam().found, Station::Decide);
    ASSERT_EQ(screen(), u"screen_refusal"_s);
    ASSERT_EQ(stop().reason.code, GetParam().stop);
    expectTheSign();
    expectTheWords();
    tap(u"assess_again"_s);
    ASSERT_EQ(screen(), u"screen_refusal"_s) << "a brush of the sleeve does nothing";
    ASSERT_NO_FATAL_FAILURE(expectParked());
    ASSERT_NO_FATAL_FAILURE(expectTheCard());
    tap(u"assess_again"_s);
    ASSERT_EQ(screen(), u"screen_parked"_s) << "a brush of the sleeve does nothing";
    ASSERT_TRUE(bench().thumb().hold(u"assess_again"_s));
    ASSERT_EQ(screen(), u"screen_assess_substrate"_s) << "all is asked anew";
    EXPECT_TRUE(repair().answeredBy.empty());
    Assessment empty;
    empty.job = repair().job;
    empty.panel = repair().panel;
    EXPECT_EQ(repair().assessment, empty);
    walkTo(GetParam().putRight, Station::Prepare);
    EXPECT_TRUE(repair().plan && repair().plan->fill);
}

INSTANTIATE_TEST_SUITE_P(Stops, EveryRefusal, ::testing::ValuesIn(everyRefusal()),
                         [](const auto& each) { return each.param.stop.toStdString(); });

TEST(EveryRefusalHasAJob, ButForStopsThatASheetCauses)
{
    QSet<QString> walked;
    for (const RefusedJob& each : everyRefusal())
        walked << each.stop;
    for (const QString& code : knownStopCodes())
        EXPECT_NE(walked.contains(code), notByAnswers.contains(code)) << code.toStdString();
}

} // namespace
} // namespace strandbench::test
