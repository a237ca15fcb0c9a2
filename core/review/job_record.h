// SPDX-License-Identifier: GPL-3.0-or-later
// One repair as it is told afterwards: one value, made from its events alone.
#pragma once

#include "air/gate.h"
#include "material/catalogue.h"
#include "repair/repair.h"

#include <optional>
#include <vector>

namespace strandbench {

/// Who told something, and when.
struct Told {
    Instant at;
    QString person; ///< empty: not told
    qint64 seq = 0; ///< of the event
    bool operator==(const Told&) const = default;
};

struct AnswerRecord {
    Question question = Question::Substrate;
    AnswerValue value;
    std::optional<AnswerValue> before; ///< what this one corrected
    bool afterPlan = false;            ///< given or corrected after a plan had been accepted
    bool stands = true;                ///< false when corrected, or asked again since
    std::vector<FoundBy> foundBy;      ///< of the substrate: what told it; empty: not told
    Told told;
};

struct PlanRecord {
    int version = 1; ///< from 1, in the order accepted
    PlanAccepted accepted;
    Told told;
};

struct StepRecord {
    Stage stage = Stage::Prepare;
    Step step; ///< as planned then; of the hand-over the code alone
    Told told;
};

struct ReadingRecord {
    Reading reading;
    Temperature dewPoint;
    TemperatureStep margin; ///< panel less dew point
    bool answered = false;  ///< as the answer to a question; otherwise taken beside
    Told told;
};

/// One batch, planned against mixed.
struct BatchRecord {
    BatchRef batch;
    int lift = 0;             ///< or the coat of a finishing batch
    std::optional<Face> face; ///< empty for finishing
    Mix planned;              ///< as the plan had it when the hardener went in
    BatchTimes plannedTimes;  ///< likewise; mixed.times are those predicted as it was mixed
    BatchTimes predicted;     ///< last: as mixed, or by a reading while it ran
    HardenerIn mixed;
    Fraction hardenerShare;        ///< of filler mass, as mixed
    std::optional<bool> demoSheet; ///< empty when the sheet is no longer known
    Told hardenerIn;
    std::optional<Told> edgesClear;
    std::optional<Told> boardGelled;
    std::optional<Told> panelGelled;
    std::optional<Told> sands;
    std::optional<Told> sanded;
    /// From 'hardener in' to what was told.
    [[nodiscard]] Duration since(const Told& told) const { return elapsed(hardenerIn.at, told.at); }
};

/// One lift or coat as it was laid.
struct LayerRecord {
    bool finishing = false;
    int index = 0;
    std::optional<Face> face; ///< empty for a coat
    Length thickness;         ///< planned; of a coat its share of the whole
    FillerClass filler = FillerClass::MixedStrand;
    int batches = 0;
    Mass mixed;                       ///< filler of all its batches, what stays on the board included
    Instant laidFrom;                 ///< hardener in of its first batch
    std::optional<Instant> laidUntil; ///< edges clear of its last
    std::optional<Instant> sanded;
};

struct ParkRecord {
    Parked parked;
    Told told;
    std::optional<Told> left; ///< taken up again or assessed again
    bool assessedAgain = false;
};

struct OverrideRecord {
    Overridden overridden;
    Told told;
};

struct JobRecord {
    Repair repair; ///< folded: where it stands
    std::vector<Event> events;
    QString state;             ///< code of the station that is due
    std::vector<QString> days; ///< local days with an event, "YYYY-MM-DD", in order
    QStringList people;        ///< everybody who told something, in the order of coming
    std::vector<AnswerRecord> answers;
    std::vector<PlanRecord> plans;
    std::vector<StepRecord> steps; ///< of preparing, finishing and handing over, in the order done
    std::vector<ReadingRecord> readings;
    std::vector<BatchRecord> batches;
    std::vector<LayerRecord> layers;
    std::optional<Told> turned;
    std::vector<PhotoMoment> photosMissing; ///< moments without a picture
    std::vector<ParkRecord> parkings;
    std::vector<OverrideRecord> overrides;
    std::optional<Told> handedOver;
    std::optional<Told> signedOff;
    std::optional<Told> returned; ///< the folded repair keeps why
    Duration lasted;              ///< from taking in to the newest event

    [[nodiscard]] const PlanRecord* plan() const { return plans.empty() ? nullptr : &plans.back(); }
};

/// Reads the record out of the events of one repair, oldest first. The catalogue tells demo sheets. The fault is
/// the folding's: which event does not follow.
[[nodiscard]] Checked<JobRecord> recordOf(const std::vector<Event>& events, const Catalogue& catalogue);

} // namespace strandbench
