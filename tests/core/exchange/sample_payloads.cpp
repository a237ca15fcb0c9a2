// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_payloads.h"

#include "exchange/event_grid.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

// All samples lie on the grid of storage, so that they must come back as they were, member by member.
constexpr auto um = grid::fromMicrometres;
constexpr auto mg = grid::fromMilligrams;
constexpr auto ug = grid::fromMicrograms;
constexpr auto ul = grid::fromMicrolitres;
constexpr auto ms = grid::fromMilliseconds;
constexpr auto mk = grid::fromMillikelvin;
constexpr auto stepMk = grid::stepFromMillikelvin;
constexpr auto ppm = grid::fromMillionths;

Batch sampleBatch(int lift, int part)
{
    return {lift,
            {um(101'600 / part), um(4'333), um(152'400 / part), mg(58'420 / part), ug(1'168'400 / part), ppm(20'001)},
            {ms(66'667), ms(310'250), ms(333'333), ms(360'001)}};
}

Reasons sampleReasons()
{
    return {{u"mixed_bonds_to_smc"_s, {}},
            {u"everything"_s,
             {um(3'500), ug(9'666'667), ul(12'346), ms(61'500), mk(291'650), stepMk(-2'750), ppm(20'000), Count{-3},
              u"smc"_s}}};
}

Step sampleStep(const QString& code)
{
    return {code, ms(120'000), ms(600'500), {u"dust"_s, u"solvent_fire"_s}, {um(75'000), u"smc"_s}};
}

} // namespace

Assessment sampleAssessment()
{
    Assessment a;
    a.job = u"4421"_s;
    a.panel = u"skirt panel, right rear – été"_s;
    a.substrate = Substrate::Smc;
    a.damage =
        Damage{DamageKind::WeldSeam, um(60'007), um(40'001), um(3'502), um(3'503), 3.333, WeldKind::Stitch, false};
    a.rearAccess = true;
    a.surface = SurfaceState::AbradedEpoxy;
    a.zone = Zone::Cosmetic;
    a.moisture = Moisture::Damp;
    a.core = CoreMaterial::DryWood;
    a.reading = Reading{mk(291'683), mk(290'151), ppm(520'001)};
    a.overridden = {u"moisture_damp"_s};
    return a;
}

/// Every figure on the grid of storage, none of them round.
CureCase sampleCureCase()
{
    CureCase c;
    c.kinetics.k1 = perSecond(124'567'891 / 1e12);
    c.kinetics.k2 = perSecond(5'290'000'001 / 1e12);
    c.kinetics.law = {50'000.125, 0.900001, 1.300002, 0.700003, 0.850004, 3'000'005 / 1e9};
    c.kinetics.reference = mk(298'151);
    c.kinetics.referenceHardener = ppm(20'001);
    c.kinetics.gel = ppm(100'001);
    c.kinetics.sand = ppm(600'003);
    c.filler = {kilogramsPerCubicMetre(1'450.001), joulesPerKilogramKelvin(1'250.003), wattsPerMetreKelvin(0.380001)};
    c.heat = joulesPerKilogram(130'000.125);
    c.thickness = um(2'751);
    c.hardener = ppm(21'003);
    c.temperature = mk(291'683);
    c.initialConversion = ppm(7);
    c.stack = {{um(3'003),
                {kilogramsPerCubicMetre(1'890), joulesPerKilogramKelvin(1'260), wattsPerMetreKelvin(0.2163)},
                mk(290'151)}};
    c.air = {{ms(0), mk(291'683)}, {ms(600'001), mk(295'003)}};
    c.front = wattsPerSquareMetreKelvin(10.001);
    c.back = wattsPerSquareMetreKelvin(8.002);
    c.horizon = ms(3'600'007);
    return c;
}

/// The same with what a reading found, colder and then warmer.
CureCase sampleReadAgain()
{
    CureCase c = sampleCureCase();
    c.found = {{ms(300'003), stepMk(-2'501)}, {ms(400'001), stepMk(12'345)}};
    return c;
}

HowSure sampleHowSure()
{
    return {{ms(300'001), ms(401'001), ms(502'001), ms(604'001)},
            {ms(250'002), ms(351'002), ms(452'002), ms(604'002)},
            {ms(350'003), ms(451'003), ms(552'003), ms(604'003)},
            mk(331'234),
            {LogRate::ofLogarithm(-123'457 / 1e6), 81'235 / 1e6},
            14,
            3};
}

RepairPlan samplePlan()
{
    RepairPlan p;
    p.fill = true;
    p.reasons = sampleReasons();
    p.filler = FillerClass::MixedStrand;
    p.rejected = {{FillerClass::LongStrand, {u"long_not_on_smc"_s, {u"smc"_s}}}};
    p.sheetId = u"demo_mixed_strand"_s;
    p.sheetHash = QByteArray::fromHex("00a1ff");
    p.finishSheetId = u"demo_finish_smooth"_s;
    p.finishSheetHash = QByteArray::fromHex("0102");
    p.tableHash = QByteArray(32, '\x7f');
    p.engine = u"sheet-scaled-1"_s;
    p.cavity = ul(7'123);
    p.fillerTotal = mg(33'333);
    p.hardenerTotal = ug(666'667);
    p.allowances = {ul(1'500), ul(250), mg(5'300)};
    p.lifts = {{Face::Front, um(1'750), FillerClass::MixedStrand, std::nullopt, std::nullopt},
               {Face::Back, um(1'250), FillerClass::LongStrand, mk(344'650), sampleCureCase(), u"demo_long_strand"_s,
                QByteArray::fromHex("0a0b")}};
    p.peakLimit = mk(363'151);
    p.batches = {sampleBatch(0, 1), sampleBatch(1, 2)};
    p.prep = {sampleStep(u"gear_on"_s), sampleStep(u"wash"_s)};
    p.finish = {um(500), 2, um(6'000), um(3'000), FillerClass::FinishFine, {sampleBatch(1, 4)}, sampleCureCase()};
    p.finishing = {sampleStep(u"guide_coat"_s)};
    p.timeline = {{u"prepare"_s, ms(1'000), ms(1'800'001), true}, {u"wait"_s, ms(1'860'000), ms(540'002), false}};
    p.readyForPrimer = ms(4'000'500);
    return p;
}

RepairPlan sampleStop()
{
    RepairPlan p;
    p.stops = {
        {{u"spot_weld"_s, {u"spot"_s}}, Override::Nobody, u"leave_joint"_s, u"welding_shop"_s},
        {{u"panel_near_dew_point"_s, {stepMk(1'200), stepMk(3'000)}}, Override::Supervisor, u"warm_panel"_s, {}}};
    p.rejected = {{FillerClass::ShortStrand, {u"stopped"_s, {}}}};
    p.tableHash = QByteArray(32, '\x01');
    return p;
}

std::vector<Payload> samplePayloads()
{
    const BatchRef batch{true, 2};
    const BatchTimes times{ms(301'235), ms(402'000), ms(503'000), ms(604'000)};
    const DamageSize size{um(60'001), um(40'002), um(3'503), um(3'504), 4.005};
    const Reading reading{mk(294'400), mk(292'150), ppm(485'000)};
    const StockLot shelf{u"demo_mixed_strand"_s, u"L7"_s};
    return {
        TakenIn{u"4421"_s, u"skirt panel"_s},
        Answered{Question::Substrate, Substrate::Galvanised, std::nullopt, {}, {FoundBy::Magnet, FoundBy::ZincGauge}},
        Answered{Question::DamageKind, DamageKind::BondSeam, 7},
        Answered{Question::Weld, WeldKind::Spot, std::nullopt},
        Answered{Question::AdhesiveCured, true, std::nullopt},
        Answered{Question::Size, size, 12},
        Answered{Question::RearAccess, true, std::nullopt},
        Answered{Question::Surface, SurfaceState::OldFiller, std::nullopt},
        Answered{Question::Zone, Zone::FuelOrPressure, std::nullopt},
        Answered{Question::Moisture, Moisture::Damp, std::nullopt},
        Answered{Question::Core, CoreMaterial::WetWood, std::nullopt},
        Answered{Question::Reading, reading, std::nullopt},
        PlanAccepted{sampleAssessment(), samplePlan()},
        PlanAccepted{{}, sampleStop()},
        StepDone{Stage::HandOver, 3, u"nail_and_paper"_s},
        ReadingTaken{reading, EnteredBy::Instrument},
        HardenerIn{batch, mg(58'420), ug(1'168'400), u"demo_mixed_strand"_s, u"L7"_s, times, sampleCureCase(), u"H3"_s,
                   sampleHowSure(), EnteredBy::Instrument, QByteArray(32, '\x5d')},
        PredictedAgain{batch, reading, times, sampleHowSure(), sampleReadAgain()},
        PatMixed{u"demo_mixed_strand"_s, u"H3"_s, u"L7"_s, mg(20'000), ug(400'000), mk(294'401), ms(301'125),
                 ms(290'000), ms(251'500), ms(340'001), QByteArray(32, '\x5e')},
        PatGelled{u"demo_mixed_strand"_s, u"H3"_s},
        LotForgotten{u"demo_mixed_strand"_s, u"H3"_s, u"told_wrong"_s},
        EdgesClear{batch},
        Gelled{batch, GelPlace::Board},
        Sands{batch},
        Sanded{batch},
        Turned{},
        Parked{u"welding_shop"_s, {u"spot_weld"_s, u"rust"_s}},
        Parked{u"supervisor"_s, {}, u"waits_for_part"_s},
        AssessAgain{},
        TakenUpAgain{},
        HandedOver{},
        PhotoTaken{PhotoMoment::GuideCoat, QByteArray(32, '\x5a'), u"image/png"_s},
        Noted{u"edge_loose"_s, {}},
        Noted{{}, u"Der Rand löst sich, links"_s},
        AlarmAnswered{batch, AlarmKind::SandUntil},
        Overridden{{u"moisture_damp"_s, u"panel_too_cold"_s}, u"maker_allows"_s},
        SignedOff{},
        TakenIn{u"4421"_s, u"skirt panel"_s, QUuid(u"5d1f6f2c-2f5e-4d65-9a52-0b8a6a1c7f10"_s)},
        Returned{u"edge_shows"_s},
        Returned{u"other"_s, u"à l’arrière, 40 mm"_s},
        ReworkBegun{QUuid(u"c0ffee00-2f5e-4d65-9a52-0b8a6a1c7f10"_s)},
        Corrected{9'007'199'254'740'993, u"à l’autre porte"_s},
        ClockJumped{ClockJump::WallStepped, seconds(-3600.125)},
        ClockJumped{ClockJump::Slept, seconds(1200.001)},
        ActRefused{SupervisorAct::ChangePin, ActRefusal::MustWait},
        PinSet{true},
        LogRestored{9'007'199'254'740'993, QByteArray(32, '\x5b'), 17, true},
        SheetKept{u"shop_long"_s, QByteArray(32, '\x5f')},
        SheetLaidAside{u"shop_long"_s},
        LogMerged{u"1f3a2b4c-0000-4000-8000-000000000001"_s, 12, 480, QByteArray(32, '\x5c')},
        StockReceived{shelf, 3, ug(1'000'000'001), QDate(2027, 3, 1)},
        StockReceived{{hardenerProduct, u"H3"_s}, 12, ug(40'000'000), std::nullopt},
        StockOpened{shelf},
        StockCounted{shelf, ug(612'500'003)},
        StockAdjusted{shelf, ug(38'000'000), true, StockChange::ToAnotherBench},
        StockEnded{shelf, StockEnd::Separated, ug(120'000'000)},
        StockMoved{shelf, mk(276'150)},
        StockProbed{shelf, mk(291'650)},
        BeadCalibrated{u"H3"_s,
                       {{um(100'000), ug(2'310'000)}, {um(101'500), ug(2'280'000)}, {um(99'000), ug(2'295'001)}},
                       LinearDensity::from_value(22'915 / 1e6),
                       ppm(21'345)},
    };
}

} // namespace strandbench
