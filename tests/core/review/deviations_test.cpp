// SPDX-License-Identifier: GPL-3.0-or-later
// Each deviation appears when its limit is passed and not a hair before. The limits are common practice, no source,
// unless one is named.
#include "review_script.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

template <class T> bool is(const Event& event) { return std::holds_alternative<T>(event.payload); }

/// The first act of type T that follows the first hardener.
template <class T> qint64 firstSeq(const std::vector<Event>& events) { return seqOf(events, is<T>); }

QStringList one(const char* code) { return {QString::fromLatin1(code)}; }

TEST(Deviations, NoneInARepairWithinAllLimits) { EXPECT_EQ(codesOf(cleanRepair()), QStringList()); }

/// The last reading before the first hardener; the later ones are the clean repair's.
QStringList withReading(const Reading& reading)
{
    auto events = cleanRepair();
    firstOf<ReadingTaken>(events).reading = reading;
    return codesOf(events);
}

TEST(Deviations, PanelNearTheDewPoint)
{
    // ISO 8502-4: at least 3 K above. The dew point is the gate's own, tested there against published values.
    const Temperature dew = dewPoint(celsius(21), Fraction::ofHundred(60));
    const auto panel = [&](double above) {
        return withReading({celsius(21), dew + kelvinStep(above), Fraction::ofHundred(60)});
    };
    EXPECT_EQ(panel(3.0), QStringList());
    EXPECT_EQ(panel(2.99).value(0), u"panel_near_dew_point"_s);
}

TEST(Deviations, PanelOutsideTheSheetsOwnLimits)
{
    const auto panel = [](double c) { return withReading({celsius(21), celsius(c), Fraction::ofHundred(20)}); };
    EXPECT_EQ(panel(28.0), QStringList());
    EXPECT_EQ(panel(28.1), one("panel_too_hot")); // the sheet says 28, common practice 30
    EXPECT_EQ(panel(12.0), QStringList());        // with a caution, down to 12
    EXPECT_EQ(panel(11.9), one("panel_too_cold"));
}

TEST(Deviations, AirOutsideItsLimits)
{
    const auto air = [](double c) { return withReading({celsius(c), celsius(20), Fraction::ofHundred(20)}); };
    EXPECT_EQ(air(10.0), QStringList());
    EXPECT_EQ(air(9.9), one("air_too_cold"));
    EXPECT_EQ(air(35.0), QStringList());
    EXPECT_EQ(air(35.1), one("air_too_hot"));
}

TEST(Deviations, TheReadingAndTheLimitStandBehindIt)
{
    auto events = cleanRepair();
    firstOf<ReadingTaken>(events).reading = {celsius(21), celsius(28.5), Fraction::ofHundred(20)};
    const auto found = deviationsOf(events);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].arguments, (std::vector<Argument>{celsius(28.5), celsius(28)}));
    EXPECT_EQ(found[0].told.person, u"R. Quist"_s);
    EXPECT_EQ(found[0].told.seq, firstSeq<HardenerIn>(events));
    EXPECT_EQ(found[0].batch, (BatchRef{false, 0}));
}

TEST(Deviations, ReadingOlderThanAnHour)
{
    // 30 s lie between reading and hardener already.
    auto events = cleanRepair();
    delayFrom(events, firstSeq<HardenerIn>(events), 3'570'000);
    EXPECT_EQ(codesOf(events), QStringList());
    delayFrom(events, firstSeq<HardenerIn>(events), 1000);
    EXPECT_EQ(codesOf(events), one("reading_old"));
}

TEST(Deviations, BareMetalFilledAfterAnHour)
{
    const auto metal = [](qint64 delayMs) {
        auto events = cleanRepair();
        auto& accepted = firstOf<PlanAccepted>(events);
        accepted.plan.prep.front().code = u"abrade_80_metal"_s;
        firstOf<StepDone>(events).code = u"abrade_80_metal"_s;
        const qint64 bared = seqOf(events, is<StepDone>);
        // Just before the fresh reading, so that only the metal has waited.
        const qint64 reading = seqOf(events, is<ReadingTaken>);
        const qint64 passed =
            events[std::size_t(firstSeq<HardenerIn>(events) - 1)].at.utcMs - events[std::size_t(bared - 1)].at.utcMs;
        delayFrom(events, reading, delayMs - passed);
        return codesOf(events);
    };
    EXPECT_EQ(metal(3'600'000), QStringList());
    EXPECT_EQ(metal(3'601'000), one("bare_metal_late"));
}

TEST(Deviations, SandsMoreThanAFifthBeforeItWasPredicted)
{
    const auto sands = [](qint64 ms) {
        auto events = cleanRepair();
        // The second batch of the first lift is the first that is told to sand; 500 s after its hardener.
        delayFrom(events, firstSeq<Sands>(events), ms - 500'000);
        return codesOf(events);
    };
    EXPECT_EQ(sands(384'000), QStringList()); // 0.8 x 480 s
    EXPECT_EQ(sands(383'000), one("sands_early"));
}

TEST(Deviations, ALiftThickerThanItsSheetAllows)
{
    // The lift is planned 3 mm thick with 60 g a batch, two batches; the sheet allows 4 mm and a twentieth.
    const auto laid = [](double ofPlanned) {
        auto events = cleanRepair();
        for (Event& each : events)
            if (auto* mixed = std::get_if<HardenerIn>(&each.payload); mixed && mixed->batch.index < 2) {
                mixed->filler = grams(60 * ofPlanned);
                mixed->hardener = grams(1.2 * ofPlanned);
            }
        return codesOf(events);
    };
    EXPECT_EQ(laid(4.2 / 3 * 0.999), QStringList());
    EXPECT_EQ(laid(4.2 / 3 * 1.001), one("lift_too_thick"));
}

TEST(Deviations, StepsToldAsDoneAlmostAtOnce)
{
    // The second step of the preparing: 60 s of work, told 30 s after the first.
    const auto told = [](qint64 msAfterTheFirst) {
        auto events = cleanRepair();
        const qint64 first = seqOf(events, is<StepDone>);
        delayFrom(events, first + 1, msAfterTheFirst - 30'000);
        return deviationsOf(events);
    };
    EXPECT_TRUE(told(6000).empty());
    const auto found = told(5999);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].kind, DeviationKind::StepsSkimmed);
    EXPECT_EQ(std::get<Count>(found[0].arguments[0]).value, 1);
    EXPECT_NEAR(inSeconds(std::get<Duration>(found[0].arguments[1])), 5.999, 1e-9);
    EXPECT_EQ(std::get<Duration>(found[0].arguments[2]), seconds(60));
}

TEST(Deviations, AWaitThatCannotHaveBeenKept)
{
    // From the act before the step to the act after it lie 60 s.
    const auto waiting = [](double seconds_) {
        auto events = cleanRepair();
        firstOf<PlanAccepted>(events).plan.prep.front().waiting = seconds(seconds_);
        return codesOf(events);
    };
    EXPECT_EQ(waiting(60), QStringList());
    EXPECT_EQ(waiting(61), one("wait_cut_short"));
}

TEST(Deviations, EdgesAfterThePredictedGel)
{
    const auto edges = [](qint64 ms) {
        auto events = cleanRepair();
        delayFrom(events, firstSeq<EdgesClear>(events), ms - 200'000);
        return codesOf(events);
    };
    EXPECT_EQ(edges(280'000), QStringList());
    EXPECT_EQ(edges(281'000), one("edges_after_predicted_gel"));
}

TEST(Deviations, EdgesAfterTheGelThatWasSeen)
{
    auto events = cleanRepair();
    insertAfter(events, firstSeq<HardenerIn>(events), Gelled{{false, 0}, GelPlace::Board});
    EXPECT_EQ(codesOf(events), QStringList()) << "what sets on the board is not yet the layer";
    firstOf<Gelled>(events).place = GelPlace::Panel;
    EXPECT_EQ(codesOf(events), one("edges_after_gel"));

    auto late = cleanRepair();
    insertAfter(late, firstSeq<EdgesClear>(late), Gelled{{false, 0}, GelPlace::Panel});
    EXPECT_EQ(codesOf(late), QStringList()) << "the edges were clear before it gelled";
}

TEST(Deviations, HardenerOutsideItsBand)
{
    const auto hardener = [](double g) {
        auto events = cleanRepair();
        firstOf<HardenerIn>(events).filler = grams(40);
        firstOf<HardenerIn>(events).hardener = grams(g);
        return codesOf(events);
    };
    EXPECT_EQ(hardener(0.6), QStringList()); // 1.5 %
    EXPECT_EQ(hardener(0.599), one("hardener_low"));
    EXPECT_EQ(hardener(1.0), QStringList()); // 2.5 %
    EXPECT_EQ(hardener(1.001), one("hardener_high"));
}

TEST(Deviations, LotsAndSheet)
{
    auto events = cleanRepair();
    firstOf<HardenerIn>(events).lot.clear();
    EXPECT_EQ(codesOf(events), one("lot_not_told"));
    events = cleanRepair();
    firstOf<HardenerIn>(events).hardenerLot.clear();
    EXPECT_EQ(codesOf(events), one("hardener_lot_not_told"));
    events = cleanRepair();
    firstOf<HardenerIn>(events).sheetId = u"demo_mixed"_s;
    EXPECT_EQ(codesOf(events), one("demo_sheet"));
    firstOf<HardenerIn>(events).sheetId = u"no_longer_known"_s;
    EXPECT_EQ(codesOf(events), QStringList()) << "of a sheet that is gone nothing is claimed";
}

TEST(Deviations, AnswerCorrectedAfterThePlan)
{
    auto early = cleanRepair();
    const qint64 moisture = seqOf(early, [](const Event& each) {
        const auto* answered = std::get_if<Answered>(&each.payload);
        return answered && answered->question == Question::Moisture;
    });
    insertAfter(early, moisture, Answered{Question::Moisture, Moisture::Dry, moisture});
    EXPECT_EQ(codesOf(early), QStringList()) << "before the plan an answer may be corrected";

    auto late = cleanRepair();
    insertAfter(late, firstSeq<PlanAccepted>(late), Answered{Question::Moisture, Moisture::Dry, moisture});
    EXPECT_EQ(codesOf(late), one("answer_corrected"));
}

TEST(Deviations, PlannedAgain)
{
    auto events = cleanRepair();
    const qint64 plan = firstSeq<PlanAccepted>(events);
    const PlanAccepted accepted = firstOf<PlanAccepted>(events);
    const qint64 zone = seqOf(events, [](const Event& each) {
        const auto* answered = std::get_if<Answered>(&each.payload);
        return answered && answered->question == Question::Surface;
    });
    PlanAccepted other = accepted;
    other.assessment.surface = SurfaceState::AbradedEpoxy;
    insertAfter(events, plan, Answered{Question::Surface, SurfaceState::AbradedEpoxy, zone});
    insertAfter(events, plan + 1, other);
    const auto found = deviationsOf(events);
    EXPECT_EQ(codesOf(events), (QStringList{u"answer_corrected"_s, u"planned_again"_s}));
    EXPECT_EQ(found.back().arguments, (std::vector<Argument>{Count{2}}));
    const JobRecord record = recordOf(events);
    ASSERT_EQ(record.plans.size(), 2U);
    EXPECT_EQ(std::get<SurfaceState>(*record.answers[8].before), SurfaceState::Bare);
    EXPECT_FALSE(record.answers[4].stands);
}

TEST(Deviations, ParkedAndWhy)
{
    auto events = cleanRepair();
    const qint64 plan = firstSeq<PlanAccepted>(events);
    insertAfter(events, plan, Parked{u"supervisor"_s, {}, u"material"_s});
    insertAfter(events, plan + 1, TakenUpAgain{});
    const auto found = deviationsOf(events);
    ASSERT_EQ(codesOf(events), one("parked"));
    EXPECT_EQ(found[0].arguments, (std::vector<Argument>{u"supervisor"_s, u"material"_s}));
    EXPECT_TRUE(recordOf(events).parkings.at(0).left.has_value());
}

TEST(Deviations, PictureMissingAtHandOver)
{
    auto events = cleanRepair();
    firstOf<PhotoTaken>(events).moment = PhotoMoment::Filled; // was as found: that one is missing now
    const auto found = deviationsOf(events);
    ASSERT_EQ(codesOf(events), one("photo_missing"));
    EXPECT_EQ(found[0].arguments, (std::vector<Argument>{u"as_found"_s}));
    events.pop_back();
    EXPECT_EQ(codesOf(events), QStringList()) << "not handed over yet: it may still be taken";
}

TEST(Deviations, PersonNotTold)
{
    auto events = cleanRepair();
    events[3].person.clear();
    events[7].person.clear();
    const auto found = deviationsOf(events);
    ASSERT_EQ(codesOf(events), one("person_not_told"));
    EXPECT_EQ(found[0].arguments, (std::vector<Argument>{Count{2}}));
    EXPECT_EQ(found[0].told.seq, 4);
}

/// The clocks as they stand from an act on: another boot, or a wall clock set by so much.
QStringList clockChanged(qint64 fromSeq, qint64 wallMs, bool otherBoot)
{
    auto events = cleanRepair();
    for (Event& each : events)
        if (each.seq >= fromSeq) {
            each.at.utcMs += wallMs;
            if (otherBoot)
                each.at.bootId = u"another"_s;
        }
    return codesOf(events);
}

TEST(Deviations, StartedAgainWhileAMixRan)
{
    const auto events = cleanRepair();
    EXPECT_EQ(clockChanged(firstSeq<EdgesClear>(events), 0, true), one("started_again"));
    EXPECT_EQ(clockChanged(firstSeq<PlanAccepted>(events), 0, true), QStringList()) << "no mix ran";
    EXPECT_EQ(clockChanged(firstSeq<HardenerIn>(events), 0, true), QStringList()) << "its clock began after that";
}

TEST(Deviations, WallClockSetWhileAMixRan)
{
    const qint64 edges = firstSeq<EdgesClear>(cleanRepair());
    EXPECT_EQ(clockChanged(edges, 5000, false), QStringList());
    EXPECT_EQ(clockChanged(edges, 5001, false), one("clock_set_forward"));
    EXPECT_EQ(clockChanged(edges, -5001, false), one("clock_set_back"));
    EXPECT_EQ(clockChanged(firstSeq<PlanAccepted>(cleanRepair()), 600'000, false), QStringList()) << "no mix ran";
    EXPECT_EQ(clockChanged(edges, -900'000, true), (QStringList{u"started_again"_s, u"clock_set_back"_s}));
}

TEST(Deviations, NoReadingAtAll)
{
    JobRecord record = recordOf(cleanRepair());
    record.readings.clear(); // no walk gets here: a plan asks for a reading
    QStringList codes;
    for (const Deviation& each : strandbench::deviationsOf(record, reviewCatalogue()))
        codes << codeOf(each.kind);
    EXPECT_EQ(codes.count(u"no_reading"_s), qsizetype(record.batches.size()));
}

} // namespace
} // namespace strandbench::test
