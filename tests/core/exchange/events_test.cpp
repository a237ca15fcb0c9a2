// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/events.h"

#include "exchange/event_grid.h"
#include "json_tools.h"
#include "sample_payloads.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>
#include <set>

using namespace Qt::StringLiterals;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using testing::StartsWith;

namespace strandbench {
namespace {

Checked<Payload> again(const Payload& payload)
{
    return decodePayload(kindOf(payload), kindVersionOf(payload), encodePayload(payload));
}

TEST(EventPayloads, SamplesCoverEveryKindAndEveryQuestion)
{
    std::set<std::size_t> kinds;
    std::set<Question> questions;
    for (const Payload& payload : samplePayloads()) {
        kinds.insert(payload.index());
        if (const auto* answered = std::get_if<Answered>(&payload))
            questions.insert(answered->question);
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<Payload>);
    EXPECT_EQ(questions.size(), Codes<Question>::table.size());
}

TEST(EventPayloads, ReadBackWhatWasWritten)
{
    for (const Payload& payload : samplePayloads()) {
        SCOPED_TRACE(encodePayload(payload).toStdString());
        const auto read = again(payload);
        ASSERT_THAT(faultsOf(read), IsEmpty());
        EXPECT_EQ(*read, payload);
        EXPECT_EQ(encodePayload(*read), encodePayload(payload));
    }
}

TEST(EventPayloads, LoseNothingThatLiesOnTheGrid)
{
    const Reading reading{kelvin(291.68), kelvin(290.15), Fraction::ofOne(0.52)};
    EXPECT_EQ(stored(ReadingTaken{reading}), Payload(ReadingTaken{reading}));
    const TakenIn takenIn{u"4421 \"é\" \\ \n"_s, u"裏"_s};
    EXPECT_EQ(stored(takenIn), Payload(takenIn));
}

/// Thirds lie on no decimal grid: they come back within half a step, and from then on unchanged.
TEST(EventPayloads, AreRoundedToTheGridOnce)
{
    PlanAccepted was{sampleAssessment(), samplePlan()};
    Batch& batch = was.plan.batches[0];
    was.plan.cavity = millilitres(22.0 / 3);
    was.plan.fillerTotal = grams(100.0 / 3);
    was.plan.hardenerTotal = grams(2.0 / 3);
    was.plan.readyForPrimer = minutes(200.0 / 3);
    batch.mix.bead = millimetres(305.0 / 3);
    batch.mix.hardenerShare = Fraction::ofOne(0.2 / 9);
    was.assessment.damage->bevelRatio = 10.0 / 3;
    was.assessment.reading->air = celsius(55.0 / 3);
    was.plan.reasons[1].arguments = {kelvinStep(-8.0 / 3)};

    const Payload kept = stored(was);
    const auto& [assessment, plan] = std::get<PlanAccepted>(kept);
    EXPECT_NEAR(plan.cavity.value(), was.plan.cavity.value(), 0.5e-9);                               // 1 ul
    EXPECT_NEAR(plan.fillerTotal.value(), was.plan.fillerTotal.value(), 0.5e-6);                     // 1 mg
    EXPECT_NEAR(plan.hardenerTotal.value(), was.plan.hardenerTotal.value(), 0.5e-9);                 // 1 ug
    EXPECT_NEAR(plan.readyForPrimer.value(), was.plan.readyForPrimer.value(), 0.5e-3);               // 1 ms
    EXPECT_NEAR(plan.batches[0].mix.bead.value(), batch.mix.bead.value(), 0.5e-6);                   // 1 um
    EXPECT_NEAR(plan.batches[0].mix.hardenerShare.value(), batch.mix.hardenerShare.value(), 0.5e-6); // 1 ppm
    EXPECT_NEAR(assessment.damage->bevelRatio, was.assessment.damage->bevelRatio, 0.5e-3);
    EXPECT_NEAR(assessment.reading->air.value(), was.assessment.reading->air.value(), 0.5e-3); // 1 mK
    EXPECT_EQ(plan.reasons[1].arguments[0], Argument(kelvinStep(-2.667)));
    EXPECT_NE(plan.cavity, was.plan.cavity);
    EXPECT_EQ(encodePayload(kept), encodePayload(was));
    EXPECT_EQ(stored(kept), kept);
}

TEST(EventPayloads, AreCompactWithSortedKeysThatNameTheirUnits)
{
    EXPECT_EQ(encodePayload(ReadingTaken{{celsius(21.25), celsius(19), Fraction::ofHundred(48.5)}}),
              "{\"reading\":{\"air_mk\":294400,\"humidity_ppm\":485000,\"panel_mk\":292150}}");
    EXPECT_EQ(encodePayload(Turned{}), "{}");
    EXPECT_EQ(encodePayload(Answered{Question::AdhesiveCured, false, 9}),
              "{\"corrects_seq\":9,\"question\":\"adhesive_cured\",\"value\":false}");
    EXPECT_EQ(encodePayload(HardenerIn{{false, 1}, grams(58.42), grams(1.1684), u"a"_s, u"L7"_s, {}, {}}),
              "{\"batch\":{\"finishing\":false,\"index\":1},\"filler_mg\":58420,\"hardener_ug\":1168400,\"lot\":\"L7\","
              "\"sheet_id\":\"a\",\"times\":{\"board_gel_ms\":0,\"easy_sanding_ms\":0,\"gel_ms\":0,\"sand_ms\":0}}");
}

TEST(EventPayloads, TextsAreKeptWithoutTheByteOrderMarkTheyBeginWith)
{
    EXPECT_EQ(stored(Payload(Noted{{}, u"\ufeff\ufeffwet \ufeffsill"_s})), Payload(Noted{{}, u"wet \ufeffsill"_s}));
}

TEST(EventPayloads, OfAnotherKindOrVersionAreFaults)
{
    EXPECT_THAT(faultsOf(decodePayload(u"painted"_s, 1, "{}")),
                ElementsAre(StartsWith("kind|painted|NotOneOf|taken_in,answered,plan_accepted,")));
    EXPECT_THAT(faultsOf(decodePayload(u"turned"_s, 99, "{}")), ElementsAre("version|99|NotOneOf|1"));
    EXPECT_THAT(faultsOf(decodePayload(u"turned"_s, 0, "{}")), ElementsAre("version|0|NotOneOf|1"));
}

/// A log from before the cure engine is read as it was written: what came later was simply not there.
TEST(EventPayloads, OfAnOlderLayoutAreRead)
{
    const auto older = decodePayload(u"hardener_in"_s, 1,
                                     "{\"batch\":{\"finishing\":false,\"index\":1},\"filler_mg\":58420,"
                                     "\"hardener_ug\":1168400,\"lot\":\"L7\",\"sheet_id\":\"a\",\"times\":{"
                                     "\"board_gel_ms\":0,\"easy_sanding_ms\":0,\"gel_ms\":0,\"sand_ms\":0}}");
    ASSERT_TRUE(older);
    EXPECT_FALSE(std::get<HardenerIn>(*older).cureCase);
    EXPECT_TRUE(std::get<HardenerIn>(*older).hardenerLot.isEmpty());
    EXPECT_FALSE(std::get<HardenerIn>(*older).howSure);
    EXPECT_EQ(kindVersionOf(*older), 5);
    EXPECT_THAT(faultsOf(decodePayload(u"hardener_in"_s, 6, "{}")), ElementsAre("version|6|NotOneOf|1,2,3,4,5"));
}

struct Refused {
    const char* kind;
    const char* json;
    const char* fault;
};

TEST(EventPayloads, AreReadStrictly)
{
    const Refused cases[] = {
        {"turned", "{\"at\":1}", "at|1|UnknownKey|"},
        {"taken_in", "{\"job\":\"1\"}", "panel||Missing|text"},
        {"sands", "{\"batch\":{\"finishing\":true,\"index\":-1}}", "batch.index|-1|OutOfRange|0,2147483647,"},
        {"sands", "{\"batch\":{\"finishing\":true,\"index\":0.5}}", "batch.index|0.5|WrongKind|whole number"},
        {"sands", "{\"batch\":7}", "batch|7|WrongKind|object"},
        {"answered", "{\"question\":\"zone\",\"value\":\"smc\"}",
         "value|smc|NotOneOf|cosmetic,structural,restraint,sensor,fuel_or_pressure"},
        {"answered", "{\"question\":\"rear_access\",\"value\":1}", "value|1|WrongKind|true or false"},
        {"answered", "{\"question\":\"rear_access\",\"value\":true,\"corrects_seq\":0}",
         "corrects_seq|0|OutOfRange|1,9223372036854775807,"},
        {"corrected", "{\"text\":\"other door\"}", "corrects_seq||Missing|whole number"},
        {"reading_taken", "{\"reading\":{\"air_mk\":1,\"panel_mk\":-1,\"humidity_ppm\":1}}",
         "reading.panel_mk|-1|OutOfRange|0,999999999999999,mK"},
        {"reading_taken", "{\"reading\":{\"air_mk\":1,\"panel_mk\":1,\"humidity_ppm\":0}}",
         "reading.humidity_ppm|0|OutOfRange|1,1000000,ppm"},
        {"reading_taken", "{\"reading\":{\"air_mk\":1,\"panel_mk\":1,\"humidity_ppm\":1000001}}",
         "reading.humidity_ppm|1000001|OutOfRange|1,1000000,ppm"},
        {"parked", "{\"to\":\"\",\"because\":[\"rust\",4]}", "because[1]||WrongKind|text"},
    };
    for (const Refused& each : cases)
        EXPECT_THAT(faultsOf(decodePayload(QString::fromLatin1(each.kind), 1, each.json)), ElementsAre(each.fault));
    EXPECT_FALSE(decodePayload(u"turned"_s, 1, "[]"));
    EXPECT_FALSE(decodePayload(u"turned"_s, 1, ""));
}

TEST(EventPayloads, ArgumentsAndHashesAreReadStrictly)
{
    const QByteArray plan = encodePayload(PlanAccepted{sampleAssessment(), samplePlan()});
    const auto changed = [&](const QByteArray& from, const QByteArray& to) {
        QByteArray bytes = plan;
        EXPECT_TRUE(bytes.contains(from));
        return faultsOf(decodePayload(u"plan_accepted"_s, 1, bytes.replace(from, to)));
    };
    EXPECT_THAT(changed("\"step_mk\":-2750", "\"step_k\":-3"),
                ElementsAre("plan.reasons[1].arguments[5]|step_k|NotOneOf|length_um,mass_ug,volume_ul,duration_ms,"
                            "temperature_mk,step_mk,share_ppm,count,code"));
    EXPECT_THAT(changed("\"step_mk\":-2750", "\"step_mk\":-2750,\"count\":1"), SizeIs(1));
    EXPECT_THAT(changed("00a1ff", "00A1FF"), ElementsAre("plan.sheet_sha256|00A1FF|NotReadable|00ff"));
    EXPECT_THAT(changed("00a1ff", "00a1f"), ElementsAre("plan.sheet_sha256|00a1f|NotReadable|00ff"));
    EXPECT_THAT(
        changed("\"cavity_ul\":7123", "\"cavity_ml\":7"),
        ElementsAre("plan.cavity_ul||Missing|whole number,ul", StartsWith("plan.cavity_ml|7|UnknownKey|cavity_ul,")));
}

TEST(EventPayloads, NothingIsWrittenThatWouldNotReadBack)
{
    EXPECT_THROW((void)encodePayload(Answered{Question::Zone, Substrate::Smc, std::nullopt}), std::bad_variant_access);
    EXPECT_THROW((void)encodePayload(Answered{Question::RearAccess, true, 0}), std::logic_error);
    const BatchRef batch;
    EXPECT_THROW((void)encodePayload(HardenerIn{batch, grams(-1), grams(1), {}, {}, {}, {}}), std::logic_error);
    EXPECT_THROW((void)encodePayload(HardenerIn{batch, grams(std::nan("")), grams(1), {}, {}, {}, {}}),
                 std::logic_error);
    EXPECT_THROW((void)encodePayload(HardenerIn{batch, grams(1e20), grams(1), {}, {}, {}, {}}), std::logic_error);
    EXPECT_THROW((void)encodePayload(Sands{BatchRef{false, -1}}), std::logic_error);
}

/// One change of some bytes: a byte set, taken out or doubled, a cut, or a piece of it moved.
QByteArray mutated(QByteArray bytes, std::mt19937& random)
{
    const auto below = [&](qsizetype n) {
        return static_cast<qsizetype>(random() % static_cast<unsigned>(std::max<qsizetype>(n, 1)));
    };
    const qsizetype at = below(bytes.size());
    switch (random() % 5) {
    case 0:
        bytes[at] = static_cast<char>(random() & 0xff);
        break;
    case 1:
        bytes.remove(at, 1 + below(8));
        break;
    case 2:
        bytes.insert(at, bytes.mid(at, 1 + below(12)));
        break;
    case 3:
        bytes.truncate(at);
        break;
    default:
        bytes[at] = "\"{}[]:,0-9.eE\\tfn"[random() % 16];
        break;
    }
    return bytes;
}

TEST(EventPayloads, NoBytesCrashTheReader)
{
    std::mt19937 random(20'251); // seeded: a failure comes again
    int refused = 0;
    int read = 0;
    for (const Payload& payload : samplePayloads()) {
        const QByteArray bytes = encodePayload(payload);
        for (int i = 0; i < 400; ++i) {
            const auto decoded = decodePayload(kindOf(payload), kindVersionOf(payload), mutated(bytes, random));
            if (!decoded) {
                EXPECT_FALSE(decoded.error().empty());
                ++refused;
                continue;
            }
            // Whatever is let in can be written and read again.
            EXPECT_EQ(*decoded, stored(*decoded));
            ++read;
        }
    }
    EXPECT_GT(refused, 1000);
    EXPECT_GT(read, 100);
}

TEST(EventPayloads, EveryCutIsRefused)
{
    const Payload payload = PlanAccepted{sampleAssessment(), samplePlan()};
    const QByteArray bytes = encodePayload(payload);
    for (qsizetype length = 0; length < bytes.size(); ++length)
        EXPECT_FALSE(decodePayload(u"plan_accepted"_s, 1, bytes.left(length))) << length;
}

TEST(Grid, RoundsToTheNearestAndComesBackDecimal)
{
    EXPECT_EQ(grid::micrometres(millimetres(101.6)), 101600);
    EXPECT_EQ(grid::micrometres(millimetres(0.0004)), 0);
    EXPECT_EQ(grid::micrometres(millimetres(0.0006)), 1);
    EXPECT_EQ(grid::milligrams(grams(58.4204)), 58420);
    EXPECT_EQ(grid::micrograms(grams(1.1684005)), 1168401);
    EXPECT_EQ(grid::microlitres(millilitres(7.1235)), 7124);
    EXPECT_EQ(grid::milliseconds(minutes(4.5)), 270000);
    EXPECT_EQ(grid::millikelvin(celsius(-40)), 233150);
    EXPECT_EQ(grid::millikelvin(kelvinStep(-1.25)), -1250);
    EXPECT_EQ(grid::millionths(Fraction::ofHundred(2)), 20000);
    EXPECT_EQ(grid::fromMicrometres(101600).value(), 0.1016);
    EXPECT_EQ(grid::fromMillionths(20000).value(), 0.02);
    EXPECT_EQ(grid::fromMicrograms(1168400).value(), 0.0011684);
}

TEST(Grid, EveryStepComesBackToItself)
{
    std::mt19937_64 random(7);
    for (int i = 0; i < 20'000; ++i) {
        const auto n = static_cast<qint64>(random() % (grid::greatest + 1));
        ASSERT_EQ(grid::micrometres(grid::fromMicrometres(n)), n);
        ASSERT_EQ(grid::milligrams(grid::fromMilligrams(n)), n);
        ASSERT_EQ(grid::micrograms(grid::fromMicrograms(n)), n);
        ASSERT_EQ(grid::microlitres(grid::fromMicrolitres(n)), n);
        ASSERT_EQ(grid::milliseconds(grid::fromMilliseconds(n)), n);
        ASSERT_EQ(grid::millikelvin(grid::fromMillikelvin(n)), n);
        ASSERT_EQ(grid::millionths(grid::fromMillionths(n)), n);
    }
}

} // namespace
} // namespace strandbench
