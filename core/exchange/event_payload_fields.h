// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of every payload, as events store them (see event_fields.h).
#pragma once

#include "exchange/event_fields.h"
#include "exchange/event_stock_fields.h"

namespace strandbench {

template <class Io, Is<DamageSize> V> void fields(Io& io, V& v)
{
    io.length(u"length_um"_s, v.length);
    io.length(u"width_um"_s, v.width);
    io.length(u"depth_um"_s, v.depth);
    io.length(u"panel_thickness_um"_s, v.panelThickness);
    io.thousandths(u"bevel_ratio_thousandths"_s, v.bevelRatio);
}

template <class Io, Is<BatchRef> V> void fields(Io& io, V& v)
{
    io.flag(u"finishing"_s, v.finishing);
    io.count(u"index"_s, v.index);
}

template <class Io, Is<TakenIn> V> void fields(Io& io, V& v)
{
    io.text(u"job"_s, v.job);
    io.text(u"panel"_s, v.panel);
    io.maybeUuid(u"rework_of"_s, v.reworkOf);
}

/// An answer as the type T, which its question asks for. Writing an answer of another type throws
/// std::bad_variant_access: nothing may be stored that does not read back.
template <class T, class Io, class V> void answerAs(Io& io, V& value)
{
    const QString key = u"value"_s;
    if constexpr (Io::reads)
        value.template emplace<T>();
    auto& held = std::get<T>(value);
    if constexpr (std::is_enum_v<T>)
        io.code(key, held);
    else if constexpr (std::is_same_v<T, bool>)
        io.flag(key, held);
    else
        io.part(key, held);
}

template <class Io, Is<Answered> V> void fields(Io& io, V& v)
{
    io.code(u"question"_s, v.question);
    io.maybeSeq(u"corrects_seq"_s, v.corrects);
    io.maybeCode(u"by"_s, v.by);
    io.maybeCodes(u"found_by"_s, v.foundBy);
    switch (v.question) {
    case Question::Substrate:
        return answerAs<Substrate>(io, v.value);
    case Question::DamageKind:
        return answerAs<DamageKind>(io, v.value);
    case Question::Weld:
        return answerAs<WeldKind>(io, v.value);
    case Question::AdhesiveCured:
    case Question::RearAccess:
        return answerAs<bool>(io, v.value);
    case Question::Size:
        return answerAs<DamageSize>(io, v.value);
    case Question::Surface:
        return answerAs<SurfaceState>(io, v.value);
    case Question::Zone:
        return answerAs<Zone>(io, v.value);
    case Question::Moisture:
        return answerAs<Moisture>(io, v.value);
    case Question::Core:
        return answerAs<CoreMaterial>(io, v.value);
    case Question::Reading:
        return answerAs<Reading>(io, v.value);
    }
}

template <class Io, Is<PlanAccepted> V> void fields(Io& io, V& v)
{
    io.part(u"assessment"_s, v.assessment);
    io.part(u"plan"_s, v.plan);
}

template <class Io, Is<StepDone> V> void fields(Io& io, V& v)
{
    io.code(u"stage"_s, v.stage);
    io.count(u"index"_s, v.index);
    io.text(u"code"_s, v.code);
}

template <class Io, Is<ReadingTaken> V> void fields(Io& io, V& v)
{
    io.part(u"reading"_s, v.reading);
    io.maybeCode(u"by"_s, v.by);
}

template <class Io, Is<Belief> V> void fields(Io& io, V& v)
{
    double mean = v.mean.value();
    io.signedNumber(u"mean_millionths"_s, mean, 1e6);
    io.number(u"spread_millionths"_s, v.spread, 1e6);
    if constexpr (Io::reads)
        v.mean = LogRate::ofLogarithm(mean);
}

template <class Io, Is<HowSure> V> void fields(Io& io, V& v)
{
    io.part(u"sheet"_s, v.sheet);
    io.part(u"early"_s, v.early);
    io.part(u"late"_s, v.late);
    io.temperature(u"hottest_mk"_s, v.hottest);
    io.part(u"log_rate"_s, v.rate);
    io.count(u"batches"_s, v.batches);
    io.count(u"other_lots"_s, v.otherLots);
}

template <class Io, Is<HardenerIn> V> void fields(Io& io, V& v)
{
    io.part(u"batch"_s, v.batch);
    io.filler(u"filler_mg"_s, v.filler);
    io.hardener(u"hardener_ug"_s, v.hardener);
    io.text(u"sheet_id"_s, v.sheetId);
    io.text(u"lot"_s, v.lot);
    io.part(u"times"_s, v.times);
    io.maybePart(u"cure_case"_s, v.cureCase);
    io.maybeText(u"hardener_lot"_s, v.hardenerLot);
    io.maybePart(u"how_sure"_s, v.howSure);
    io.maybeCode(u"by"_s, v.by);
    io.maybeHash(u"sheet_sha256"_s, v.sheetHash);
}

template <class Io, Is<PredictedAgain> V> void fields(Io& io, V& v)
{
    io.part(u"batch"_s, v.batch);
    io.part(u"reading"_s, v.reading);
    io.part(u"times"_s, v.times);
    io.part(u"how_sure"_s, v.howSure);
    io.part(u"cure_case"_s, v.cureCase);
}

template <class Io, Is<PatMixed> V> void fields(Io& io, V& v)
{
    io.text(u"sheet_id"_s, v.sheetId);
    io.text(u"hardener_lot"_s, v.hardenerLot);
    io.text(u"lot"_s, v.lot);
    io.filler(u"filler_mg"_s, v.filler);
    io.hardener(u"hardener_ug"_s, v.hardener);
    io.temperature(u"air_mk"_s, v.air);
    io.duration(u"gel_by_sheet_ms"_s, v.bySheet);
    io.duration(u"gel_ms"_s, v.gel);
    io.duration(u"early_ms"_s, v.early);
    io.duration(u"late_ms"_s, v.late);
    io.maybeHash(u"sheet_sha256"_s, v.sheetHash);
}

template <class Io, Is<PatGelled> V> void fields(Io& io, V& v)
{
    io.text(u"sheet_id"_s, v.sheetId);
    io.text(u"hardener_lot"_s, v.hardenerLot);
}

template <class Io, Is<LotForgotten> V> void fields(Io& io, V& v)
{
    io.text(u"sheet_id"_s, v.sheetId);
    io.text(u"hardener_lot"_s, v.hardenerLot);
    io.text(u"reason"_s, v.reason);
}

template <class Io, class V>
requires(Is<V, EdgesClear> || Is<V, Sands> || Is<V, Sanded>) void fields(Io& io, V& v) { io.part(u"batch"_s, v.batch); }

template <class Io, Is<Gelled> V> void fields(Io& io, V& v)
{
    io.part(u"batch"_s, v.batch);
    io.code(u"place"_s, v.place);
}

template <class Io, Is<Parked> V> void fields(Io& io, V& v)
{
    io.text(u"to"_s, v.to);
    io.texts(u"because"_s, v.because);
    io.maybeText(u"reason"_s, v.reason);
}

template <class Io, Is<PhotoTaken> V> void fields(Io& io, V& v)
{
    io.code(u"moment"_s, v.moment);
    io.hash(u"sha256"_s, v.hash);
    io.text(u"media_type"_s, v.mediaType);
}

template <class Io, Is<Noted> V> void fields(Io& io, V& v)
{
    io.text(u"code"_s, v.code);
    io.text(u"text"_s, v.text);
}

template <class Io, Is<AlarmAnswered> V> void fields(Io& io, V& v)
{
    io.part(u"batch"_s, v.batch);
    io.code(u"alarm"_s, v.alarm);
}

template <class Io, Is<Overridden> V> void fields(Io& io, V& v)
{
    io.texts(u"stops"_s, v.stops);
    io.text(u"reason"_s, v.reason);
}

template <class Io, Is<Returned> V> void fields(Io& io, V& v)
{
    io.text(u"reason"_s, v.reason);
    io.maybeText(u"text"_s, v.text);
}

template <class Io, Is<ReworkBegun> V> void fields(Io& io, V& v) { io.uuid(u"rework"_s, v.rework); }

template <class Io, Is<Corrected> V> void fields(Io& io, V& v)
{
    io.seq(u"corrects_seq"_s, v.seq);
    io.text(u"text"_s, v.text);
}

template <class Io, Is<ClockJumped> V> void fields(Io& io, V& v)
{
    double by = v.by.value();
    io.code(u"kind"_s, v.kind);
    io.signedNumber(u"by_ms"_s, by, 1e3);
    if constexpr (Io::reads)
        v.by = seconds(by);
}

template <class Io, Is<ActRefused> V> void fields(Io& io, V& v)
{
    io.code(u"act"_s, v.act);
    io.code(u"why"_s, v.why);
}

template <class Io, Is<PinSet> V> void fields(Io& io, V& v) { io.flag(u"at_the_machine"_s, v.atTheMachine); }

template <class Io, Is<LogRestored> V> void fields(Io& io, V& v)
{
    io.wide(u"count"_s, v.count);
    io.hash(u"head"_s, v.head);
    io.wide(u"fetched"_s, v.fetched);
    io.flag(u"complete"_s, v.complete);
}

template <class Io, Is<LogMerged> V> void fields(Io& io, V& v)
{
    io.text(u"bench"_s, v.bench);
    io.wide(u"added"_s, v.added);
    io.wide(u"count"_s, v.count);
    io.hash(u"head"_s, v.head);
}

template <class Io, Is<LaidBead> V> void fields(Io& io, V& v)
{
    io.length(u"length_um"_s, v.length);
    io.hardener(u"mass_ug"_s, v.mass);
}

template <class Io, Is<BeadCalibrated> V> void fields(Io& io, V& v)
{
    io.text(u"hardener_lot"_s, v.hardenerLot);
    io.each(u"beads"_s, v.beads);
    io.scaled(u"mean_ug_per_mm"_s, v.mean, 1e6);
    io.share(u"spread_ppm"_s, v.spread);
}

template <class Io, Is<SheetKept> V> void fields(Io& io, V& v)
{
    io.text(u"sheet_id"_s, v.sheetId);
    io.hash(u"sha256"_s, v.hash);
}

template <class Io, Is<SheetLaidAside> V> void fields(Io& io, V& v) { io.text(u"sheet_id"_s, v.sheetId); }

/// What happened is the kind itself: an empty object.
template <class Io, class V>
requires(Is<V, Turned> || Is<V, AssessAgain> || Is<V, TakenUpAgain> || Is<V, HandedOver> ||
         Is<V, SignedOff>) void fields(Io&, V&)
{}

} // namespace strandbench
