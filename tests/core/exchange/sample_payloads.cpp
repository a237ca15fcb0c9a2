// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_payloads.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

/// Thirds lie on no decimal grid: what is stored is rounded, and that is what the checks are about.
Batch sampleBatch(int lift, double factor)
{
    return {lift,
            {millimetres(101.6 * factor), millimetres(4.0 / 3.0), millimetres(101.6 * factor / 3.0),
             grams(58.42 * factor), grams(1.1684 * factor), Fraction::ofOne(0.06 / 3.0 * factor)},
            {seconds(200.0 / 3.0), seconds(310.25), seconds(1000.0 / 3.0 * factor), minutes(6)}};
}

Reasons sampleReasons()
{
    return {{u"mixed_bonds_to_smc"_s, {}},
            {u"everything"_s,
             {millimetres(3.5), grams(29.0 / 3.0), millilitres(12.3456), seconds(61.5), celsius(18.5),
              kelvinStep(-2.75), Fraction::ofHundred(2), Count{-3}, u"smc"_s}}};
}

Step sampleStep(const QString& code)
{
    return {code, seconds(120), minutes(10), {u"dust"_s, u"solvent_fire"_s}, {millimetres(75), u"smc"_s}};
}

} // namespace

Assessment sampleAssessment()
{
    Assessment a;
    a.job = u"4421"_s;
    a.panel = u"skirt panel, right rear – été"_s;
    a.substrate = Substrate::Smc;
    a.damage = Damage{DamageKind::WeldSeam, millimetres(60.0 / 7.0), millimetres(40), millimetres(3.5),
                      millimetres(3.5), 10.0 / 3.0, WeldKind::Stitch, false};
    a.rearAccess = true;
    a.surface = SurfaceState::AbradedEpoxy;
    a.zone = Zone::Cosmetic;
    a.moisture = Moisture::Damp;
    a.core = CoreMaterial::DryWood;
    a.reading = Reading{celsius(18.53), celsius(17), Fraction::ofHundred(52)};
    return a;
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
    p.cavity = millilitres(7.123456);
    p.fillerTotal = grams(33.33333);
    p.hardenerTotal = grams(0.6666666);
    p.allowances = {millilitres(1.5), millilitres(0.25), grams(5.3)};
    p.lifts = {{Face::Front, millimetres(1.75), FillerClass::MixedStrand, std::nullopt},
               {Face::Back, millimetres(1.25), FillerClass::LongStrand, celsius(71.5)}};
    p.batches = {sampleBatch(0, 1), sampleBatch(1, 0.5)};
    p.prep = {sampleStep(u"gear_on"_s), sampleStep(u"wash"_s)};
    p.finish = {millimetres(0.5), 2, millimetres(6), millimetres(3), FillerClass::FinishFine, {sampleBatch(1, 0.25)}};
    p.finishing = {sampleStep(u"guide_coat"_s)};
    p.timeline = {{u"prepare"_s, seconds(1), minutes(30), true}, {u"wait"_s, minutes(31), minutes(9), false}};
    p.readyForPrimer = minutes(200.0 / 3.0);
    return p;
}

RepairPlan sampleStop()
{
    RepairPlan p;
    p.stops = {{{u"spot_weld"_s, {u"spot"_s}}, Override::Nobody, u"leave_joint"_s, u"welding_shop"_s},
               {{u"panel_near_dew_point"_s, {kelvinStep(1.2), kelvinStep(3)}}, Override::Supervisor, u"warm_panel"_s, {}}};
    p.rejected = {{FillerClass::ShortStrand, {u"stopped"_s, {}}}};
    p.tableHash = QByteArray(32, '\x01');
    return p;
}

std::vector<Payload> samplePayloads()
{
    const BatchRef batch{true, 2};
    const BatchTimes times{seconds(301.2345), seconds(402), seconds(503), seconds(604)};
    const DamageSize size{millimetres(60), millimetres(40), millimetres(3.5), millimetres(3.5), 4};
    const Reading reading{celsius(21.25), celsius(19), Fraction::ofHundred(48.5)};
    return {
        TakenIn{u"4421"_s, u"skirt panel"_s},
        Answered{Question::Substrate, Substrate::Galvanised, std::nullopt},
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
        ReadingTaken{reading},
        HardenerIn{batch, grams(58.42), grams(1.16840), u"demo_mixed_strand"_s, {}, times},
        EdgesClear{batch},
        Gelled{batch, GelPlace::Board},
        Sands{batch},
        Sanded{batch},
        Turned{},
        Parked{u"welding_shop"_s, {u"spot_weld"_s, u"rust"_s}},
        AssessAgain{},
        TakenUpAgain{},
        HandedOver{},
    };
}

} // namespace strandbench
