// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of what a plan and an assessment hold, as events store them: one list a type, for writing
// and for reading (event_io.h). A change of a list is a new version of every kind of event that holds it.
#pragma once

#include "exchange/event_io.h"
#include "repair/event.h"

namespace strandbench {

using namespace Qt::StringLiterals; // this header is for the event_*.cpp files of this folder alone

template <class Io, Is<Reading> V> void fields(Io& io, V& v)
{
    io.temperature(u"air_mk"_s, v.air);
    io.temperature(u"panel_mk"_s, v.panel);
    io.humidity(u"humidity_ppm"_s, v.humidity);
}

template <class Io, Is<Damage> V> void fields(Io& io, V& v)
{
    io.code(u"kind"_s, v.kind);
    io.length(u"length_um"_s, v.length);
    io.length(u"width_um"_s, v.width);
    io.length(u"depth_um"_s, v.depth);
    io.length(u"panel_thickness_um"_s, v.panelThickness);
    io.thousandths(u"bevel_ratio_thousandths"_s, v.bevelRatio);
    io.maybeCode(u"weld"_s, v.weld);
    io.maybeFlag(u"adhesive_cured"_s, v.adhesiveCured);
}

template <class Io, Is<Assessment> V> void fields(Io& io, V& v)
{
    io.text(u"job"_s, v.job);
    io.text(u"panel"_s, v.panel);
    io.maybeCode(u"substrate"_s, v.substrate);
    io.maybePart(u"damage"_s, v.damage);
    io.maybeFlag(u"rear_access"_s, v.rearAccess);
    io.maybeCode(u"surface"_s, v.surface);
    io.maybeCode(u"zone"_s, v.zone);
    io.maybeCode(u"moisture"_s, v.moisture);
    io.code(u"core"_s, v.core);
    io.maybePart(u"reading"_s, v.reading);
    io.maybeTexts(u"overridden"_s, v.overridden);
}

template <class Io, Is<Reason> V> void fields(Io& io, V& v)
{
    io.text(u"code"_s, v.code);
    io.arguments(u"arguments"_s, v.arguments);
}

template <class Io, Is<Stop> V> void fields(Io& io, V& v)
{
    bool supervisor = v.overridable == Override::Supervisor;
    io.part(u"reason"_s, v.reason);
    io.flag(u"supervisor_may_override"_s, supervisor);
    io.text(u"instead"_s, v.instead);
    io.text(u"park_to"_s, v.parkTo);
    if constexpr (Io::reads)
        v.overridable = supervisor ? Override::Supervisor : Override::Nobody;
}

template <class Io, Is<RejectedFiller> V> void fields(Io& io, V& v)
{
    io.code(u"filler_class"_s, v.filler);
    io.part(u"reason"_s, v.reason);
}

template <class Io, Is<Allowances> V> void fields(Io& io, V& v)
{
    io.volume(u"proud_ul"_s, v.proud);
    io.volume(u"shrinkage_ul"_s, v.shrinkage);
    io.filler(u"board_loss_mg"_s, v.boardLoss);
}

template <class Io, Is<ThermalMaterial> V> void fields(Io& io, V& v)
{
    io.scaled(u"density_g_per_m3"_s, v.density, 1e3);
    io.scaled(u"specific_heat_mj_per_kg_k"_s, v.specificHeat, 1e3);
    io.scaled(u"conductivity_uw_per_m_k"_s, v.conductivity, 1e6);
}

template <class Io, Is<StackLayer> V> void fields(Io& io, V& v)
{
    io.length(u"thickness_um"_s, v.thickness);
    io.part(u"material"_s, v.material);
    io.temperature(u"temperature_mk"_s, v.temperature);
}

template <class Io, Is<AirPoint> V> void fields(Io& io, V& v)
{
    io.duration(u"at_ms"_s, v.at);
    io.temperature(u"temperature_mk"_s, v.temperature);
}

template <class Io, Is<FoundWarmer> V> void fields(Io& io, V& v)
{
    double by = v.by.value();
    io.duration(u"at_ms"_s, v.at);
    io.signedNumber(u"by_mk"_s, by, 1e3);
    if constexpr (Io::reads)
        v.by = kelvinStep(by);
}

template <class Io, Is<CureKinetics> V> void fields(Io& io, V& v)
{
    io.scaled(u"k1_per_1e12_s"_s, v.k1, 1e12);
    io.scaled(u"k2_per_1e12_s"_s, v.k2, 1e12);
    io.number(u"m_millionths"_s, v.law.m, 1e6);
    io.number(u"n_millionths"_s, v.law.n, 1e6);
    io.number(u"activation_energy_mj_per_mol"_s, v.law.activationEnergyJoulesPerMole, 1e3);
    io.number(u"hardener_exponent_millionths"_s, v.law.hardenerExponent, 1e6);
    io.number(u"max_conversion_millionths"_s, v.law.maxConversionAtReference, 1e6);
    io.number(u"max_conversion_per_1e9_k"_s, v.law.maxConversionPerKelvin, 1e9);
    io.temperature(u"reference_mk"_s, v.reference);
    io.share(u"reference_hardener_ppm"_s, v.referenceHardener);
    io.share(u"gel_ppm"_s, v.gel);
    io.share(u"sand_ppm"_s, v.sand);
}

template <class Io, Is<CureCase> V> void fields(Io& io, V& v)
{
    io.part(u"kinetics"_s, v.kinetics);
    io.part(u"filler"_s, v.filler);
    io.scaled(u"heat_mj_per_kg"_s, v.heat, 1e3);
    io.length(u"thickness_um"_s, v.thickness);
    io.share(u"hardener_ppm"_s, v.hardener);
    io.temperature(u"temperature_mk"_s, v.temperature);
    io.share(u"initial_conversion_ppm"_s, v.initialConversion);
    io.each(u"stack"_s, v.stack);
    io.each(u"air"_s, v.air);
    io.scaled(u"front_mw_per_m2_k"_s, v.front, 1e3);
    io.scaled(u"back_mw_per_m2_k"_s, v.back, 1e3);
    io.duration(u"horizon_ms"_s, v.horizon);
    io.maybeEach(u"found"_s, v.found);
}

template <class Io, Is<Lift> V> void fields(Io& io, V& v)
{
    io.code(u"face"_s, v.face);
    io.length(u"thickness_um"_s, v.thickness);
    io.code(u"filler_class"_s, v.filler);
    io.maybeTemperature(u"peak_mk"_s, v.peak);
    io.maybePart(u"cure_case"_s, v.cureCase);
    io.maybeText(u"sheet_id"_s, v.sheetId);
    io.maybeHash(u"sheet_sha256"_s, v.sheetHash);
}

template <class Io, Is<Mix> V> void fields(Io& io, V& v)
{
    io.length(u"puddle_um"_s, v.puddle);
    io.length(u"puddle_height_um"_s, v.puddleHeight);
    io.length(u"bead_um"_s, v.bead);
    io.filler(u"filler_mg"_s, v.filler);
    io.hardener(u"hardener_ug"_s, v.hardener);
    io.share(u"hardener_ppm"_s, v.hardenerShare);
}

template <class Io, Is<BatchTimes> V> void fields(Io& io, V& v)
{
    io.duration(u"board_gel_ms"_s, v.boardGel);
    io.duration(u"gel_ms"_s, v.gel);
    io.duration(u"sand_ms"_s, v.sand);
    io.duration(u"easy_sanding_ms"_s, v.easySanding);
}

template <class Io, Is<Batch> V> void fields(Io& io, V& v)
{
    io.count(u"lift"_s, v.lift);
    io.part(u"mix"_s, v.mix);
    io.part(u"times"_s, v.times);
}

template <class Io, Is<Step> V> void fields(Io& io, V& v)
{
    io.text(u"code"_s, v.code);
    io.duration(u"hands_on_ms"_s, v.handsOn);
    io.duration(u"waiting_ms"_s, v.waiting);
    io.texts(u"cautions"_s, v.cautions);
    io.arguments(u"arguments"_s, v.arguments);
}

template <class Io, Is<Finish> V> void fields(Io& io, V& v)
{
    io.length(u"thickness_um"_s, v.thickness);
    io.count(u"coats"_s, v.coats);
    io.length(u"limit_in_all_um"_s, v.limitInAll);
    io.length(u"limit_a_coat_um"_s, v.limitACoat);
    io.code(u"filler_class"_s, v.filler);
    io.each(u"batches"_s, v.batches);
    io.maybePart(u"cure_case"_s, v.cureCase);
}

template <class Io, Is<TimelineEntry> V> void fields(Io& io, V& v)
{
    io.text(u"code"_s, v.code);
    io.duration(u"start_ms"_s, v.start);
    io.duration(u"length_ms"_s, v.length);
    io.flag(u"hands_on"_s, v.handsOn);
}

template <class Io, Is<RepairPlan> V> void fields(Io& io, V& v)
{
    io.flag(u"fill"_s, v.fill);
    io.each(u"stops"_s, v.stops);
    io.each(u"reasons"_s, v.reasons);
    io.maybeCode(u"filler_class"_s, v.filler);
    io.each(u"rejected"_s, v.rejected);
    io.text(u"sheet_id"_s, v.sheetId);
    io.hash(u"sheet_sha256"_s, v.sheetHash);
    io.text(u"finish_sheet_id"_s, v.finishSheetId);
    io.hash(u"finish_sheet_sha256"_s, v.finishSheetHash);
    io.hash(u"table_sha256"_s, v.tableHash);
    io.text(u"engine"_s, v.engine);
    io.volume(u"cavity_ul"_s, v.cavity);
    io.filler(u"filler_total_mg"_s, v.fillerTotal);
    io.hardener(u"hardener_total_ug"_s, v.hardenerTotal);
    io.part(u"allowances"_s, v.allowances);
    io.each(u"lifts"_s, v.lifts);
    io.maybeTemperature(u"peak_limit_mk"_s, v.peakLimit);
    io.each(u"batches"_s, v.batches);
    io.each(u"prep"_s, v.prep);
    io.part(u"finish"_s, v.finish);
    io.each(u"finishing"_s, v.finishing);
    io.each(u"timeline"_s, v.timeline);
    io.duration(u"ready_for_primer_ms"_s, v.readyForPrimer);
}

} // namespace strandbench
