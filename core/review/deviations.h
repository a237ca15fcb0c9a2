// SPDX-License-Identifier: GPL-3.0-or-later
// Where a repair left its limits, or its record has a gap: facts with the reading and the limit behind them. What
// follows from them is for whoever answers for the work.
#pragma once

#include "plan/assumptions.h"
#include "quantity/codes.h"
#include "review/job_record.h"

namespace strandbench {

enum class DeviationKind {
    PanelNearDewPoint, ///< arguments: margin, least margin
    PanelTooCold,      ///< reading, limit; so the next three
    PanelTooHot,
    AirTooCold,
    AirTooHot,
    NoReading,              ///< none before the hardener went in
    ReadingOld,             ///< age, limit
    BareMetalLate,          ///< since bared, limit
    SandsEarly,             ///< told after, predicted
    EdgesAfterPredictedGel, ///< told after, predicted
    EdgesAfterGel,          ///< told after, gel observed after
    HardenerLow,            ///< share, limit
    HardenerHigh,           ///< share, limit
    LiftTooThick,           ///< laid by its mass, the most of its sheet
    StepsSkimmed,           ///< how many, time taken for them, time planned
    WaitCutShort,           ///< code of the step, time from the act before it to the one after, time it needs
    LotNotTold,             ///< of the filler
    HardenerLotNotTold,
    DemoSheet,       ///< id of the sheet
    AnswerCorrected, ///< code of the question; after a plan was accepted
    PlannedAgain,    ///< how many plans by then
    Overridden,      ///< code of the stop, code of the reason
    Parked,          ///< code of the place, and of why (empty when not told)
    PhotoMissing,    ///< code of the moment
    PersonNotTold,   ///< how many acts without a name
    StartedAgain,    ///< seconds between the two acts around it, by UTC
    ClockSetForward, ///< by how much
    ClockSetBack,    ///< by how much
};
template <> struct Codes<DeviationKind> {
    static constexpr std::array<std::pair<DeviationKind, const char*>, 28> table{{
        {DeviationKind::PanelNearDewPoint, "panel_near_dew_point"},
        {DeviationKind::PanelTooCold, "panel_too_cold"},
        {DeviationKind::PanelTooHot, "panel_too_hot"},
        {DeviationKind::AirTooCold, "air_too_cold"},
        {DeviationKind::AirTooHot, "air_too_hot"},
        {DeviationKind::NoReading, "no_reading"},
        {DeviationKind::ReadingOld, "reading_old"},
        {DeviationKind::BareMetalLate, "bare_metal_late"},
        {DeviationKind::SandsEarly, "sands_early"},
        {DeviationKind::EdgesAfterPredictedGel, "edges_after_predicted_gel"},
        {DeviationKind::EdgesAfterGel, "edges_after_gel"},
        {DeviationKind::HardenerLow, "hardener_low"},
        {DeviationKind::HardenerHigh, "hardener_high"},
        {DeviationKind::LiftTooThick, "lift_too_thick"},
        {DeviationKind::StepsSkimmed, "steps_skimmed"},
        {DeviationKind::WaitCutShort, "wait_cut_short"},
        {DeviationKind::LotNotTold, "lot_not_told"},
        {DeviationKind::HardenerLotNotTold, "hardener_lot_not_told"},
        {DeviationKind::DemoSheet, "demo_sheet"},
        {DeviationKind::AnswerCorrected, "answer_corrected"},
        {DeviationKind::PlannedAgain, "planned_again"},
        {DeviationKind::Overridden, "overridden"},
        {DeviationKind::Parked, "parked"},
        {DeviationKind::PhotoMissing, "photo_missing"},
        {DeviationKind::PersonNotTold, "person_not_told"},
        {DeviationKind::StartedAgain, "started_again"},
        {DeviationKind::ClockSetForward, "clock_set_forward"},
        {DeviationKind::ClockSetBack, "clock_set_back"},
    }};
};

struct Deviation {
    DeviationKind kind = DeviationKind::NoReading;
    std::vector<Argument> arguments; ///< in the order that the kind's comment gives
    std::optional<BatchRef> batch;   ///< that it is about
    Told told;                       ///< the act that it is about
};

/// What counts as a deviation.
struct DeviationLimits {
    FillingLimits filling;                            ///< a sheet's own where narrower
    Duration readingAge = minutes(60);                ///< common practice, no source
    Duration bareMetal = minutes(60);                 ///< filled within the hour: common practice, no source
    Fraction sandsEarly = Fraction::ofHundred(20);    ///< of the predicted time; our assumption
    Fraction hardenerLow = Fraction::ofHundred(1.5);  ///< common practice, no source
    Fraction hardenerHigh = Fraction::ofHundred(2.5); ///< common practice, no source
    Fraction liftOver = Fraction::ofHundred(5); ///< over the sheet's most; a mix is laid that nearly; our assumption
    Fraction skimmed = Fraction::ofHundred(10); ///< of a step's time: in less nobody has done it; our assumption
    Duration clockJump = seconds(5); ///< more than a clock that is slewed drifts between two acts; our assumption
};

/// The limits with what a bench assumes in the place of the default.
[[nodiscard]] DeviationLimits limitsFrom(const Assumptions& assumptions);

/// Every deviation of a record, in the order of the acts. The catalogue gives a sheet's own limits; a sheet that is
/// no longer known leaves the common ones.
[[nodiscard]] std::vector<Deviation> deviationsOf(const JobRecord& record, const Catalogue& catalogue,
                                                  const DeviationLimits& limits = {});

} // namespace strandbench
