// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that happened, as values. A tap becomes an event; events are folded into a repair.
#pragma once

#include "clock/alarm.h"
#include "clock/clock_watch.h"
#include "mix/bead_calibration.h"
#include "plan/how_sure.h"
#include "repair/found_by.h"
#include "roles/supervisor.h"
#include "stock/stock_acts.h"

#include <QUuid>

#include <optional>
#include <variant>
#include <vector>

namespace strandbench {

/// The questions of an assessment, in the order asked.
enum class Question {
    Substrate,
    DamageKind,
    Weld,
    AdhesiveCured,
    Size,
    RearAccess,
    Surface,
    Zone,
    Moisture,
    Core,
    Reading,
};
template <> struct Codes<Question> {
    static constexpr std::array<std::pair<Question, const char*>, 11> table{{
        {Question::Substrate, "substrate"},
        {Question::DamageKind, "damage_kind"},
        {Question::Weld, "weld"},
        {Question::AdhesiveCured, "adhesive_cured"},
        {Question::Size, "size"},
        {Question::RearAccess, "rear_access"},
        {Question::Surface, "surface"},
        {Question::Zone, "zone"},
        {Question::Moisture, "moisture"},
        {Question::Core, "core"},
        {Question::Reading, "reading"},
    }};
};

/// The measures of a damage, answered on one screen.
struct DamageSize {
    Length length;
    Length width;
    Length depth;
    Length panelThickness;
    double bevelRatio = 0; ///< run : depth; stored in thousandths
    bool operator==(const DamageSize&) const = default;
};

using AnswerValue = std::variant<Substrate, DamageKind, WeldKind, bool, DamageSize, SurfaceState, Zone, Moisture,
                                 CoreMaterial, Reading>;

/// A batch of fibre filler or of finishing filler, by its place in the plan.
struct BatchRef {
    bool finishing = false;
    int index = 0;
    auto operator<=>(const BatchRef&) const = default;
};

enum class Stage { Prepare, Finish, HandOver };
template <> struct Codes<Stage> {
    static constexpr std::array<std::pair<Stage, const char*>, 3> table{
        {{Stage::Prepare, "prepare"}, {Stage::Finish, "finish"}, {Stage::HandOver, "hand_over"}}};
};

/// When a picture of the panel was taken; a repair is whole with one of each.
enum class PhotoMoment { AsFound, Bare, Filled, GuideCoat };
template <> struct Codes<PhotoMoment> {
    static constexpr std::array<std::pair<PhotoMoment, const char*>, 4> table{{
        {PhotoMoment::AsFound, "as_found"},
        {PhotoMoment::Bare, "bare"},
        {PhotoMoment::Filled, "filled"},
        {PhotoMoment::GuideCoat, "guide_coat"},
    }};
};

enum class GelPlace { Board, Panel };
template <> struct Codes<GelPlace> {
    static constexpr std::array<std::pair<GelPlace, const char*>, 2> table{
        {{GelPlace::Board, "board"}, {GelPlace::Panel, "panel"}}};
};

/// Who gave a figure: a finger, or an instrument at the bench, taken over by a tap.
enum class EnteredBy { Typed, Instrument };
template <> struct Codes<EnteredBy> {
    static constexpr std::array<std::pair<EnteredBy, const char*>, 2> table{
        {{EnteredBy::Typed, "typed"}, {EnteredBy::Instrument, "instrument"}}};
};

// The payloads, one a kind of event. The comment gives the kind's code.
struct TakenIn {
    QString job;
    QString panel;
    QUuid reworkOf = {}; ///< the repair that a supervisor returned and that is done again here; null: none
    bool operator==(const TakenIn&) const = default;
};                // taken_in
struct Answered { // answered
    Question question = Question::Substrate;
    AnswerValue value = Substrate::Unknown;
    std::optional<qint64> corrects;    ///< seq of the event that this one corrects
    std::optional<EnteredBy> by = {};  ///< of air and humidity; empty in older events, and where nothing was taken over
    std::vector<FoundBy> foundBy = {}; ///< of the substrate alone, each once; empty: not told
    bool operator==(const Answered&) const = default;
};
struct PlanAccepted {
    Assessment assessment;
    RepairPlan plan;
    bool operator==(const PlanAccepted&) const = default;
}; // plan_accepted
struct StepDone {
    Stage stage = Stage::Prepare;
    int index = 0;
    QString code;
    bool operator==(const StepDone&) const = default;
}; // step_done
struct ReadingTaken {
    Reading reading;
    std::optional<EnteredBy> by = {}; ///< of air and humidity, as in Answered
    bool operator==(const ReadingTaken&) const = default;
};                  // reading_taken
struct HardenerIn { // hardener_in
    BatchRef batch;
    Mass filler;
    Mass hardener;
    QString sheetId;
    QString lot; ///< of the filler's tub; empty: not told
    BatchTimes times;
    std::optional<CureCase> cureCase;    ///< of the layer; empty in events older than the cure engine
    QString hardenerLot = {};            ///< of the hardener's tube; empty: not told
    std::optional<HowSure> howSure = {}; ///< of these times; empty in events older than the learning
    std::optional<EnteredBy> by = {};    ///< of both masses, where they were weighed; empty: as planned, or by the bead
    QByteArray sheetHash = {};           ///< of the sheet's version; empty in events older than versions
    bool operator==(const HardenerIn&) const = default;
};
/// A reading was taken while a batch ran: what it comes to from the state reached.
struct PredictedAgain {
    BatchRef batch;
    Reading reading;
    BatchTimes times; ///< from 'hardener in', like the batch's own
    HowSure howSure;
    CureCase cureCase; ///< from 'hardener in', with what was found since
    bool operator==(const PredictedAgain&) const = default;
}; // predicted_again
struct EdgesClear {
    BatchRef batch;
    bool operator==(const EdgesClear&) const = default;
}; // edges_clear
struct Gelled {
    BatchRef batch;
    GelPlace place = GelPlace::Panel;
    bool operator==(const Gelled&) const = default;
}; // gelled
/// Nail and paper test passed: it sands.
struct Sands {
    BatchRef batch;
    bool operator==(const Sands&) const = default;
}; // sands
struct Sanded {
    BatchRef batch;
    bool operator==(const Sanded&) const = default;
}; // sanded
/// The dam is off, its residue gone, the panel turned to its other face.
struct Turned {
    bool operator==(const Turned&) const = default;
}; // turned
struct Parked {
    QString to;
    std::vector<QString> because; ///< codes of the refusals that parked it; empty when none did
    QString reason = {};          ///< code of what it waits for when no refusal parked it; empty: not told
    bool operator==(const Parked&) const = default;
}; // parked
struct AssessAgain {
    bool operator==(const AssessAgain&) const = default;
}; // assess_again
struct TakenUpAgain {
    bool operator==(const TakenUpAgain&) const = default;
}; // taken_up_again
struct HandedOver {
    bool operator==(const HandedOver&) const = default;
}; // handed_over
/// A picture of the panel; its bytes are a blob of the log.
struct PhotoTaken {
    PhotoMoment moment = PhotoMoment::AsFound;
    QByteArray hash;   ///< SHA-256 of the bytes
    QString mediaType; ///< "image/jpeg" or "image/png"
    bool operator==(const PhotoTaken&) const = default;
}; // photo_taken
/// A remark of the technician: from the list of common ones, or as keyed in.
struct Noted {
    QString code; ///< of a common note; empty for a text of one's own
    QString text; ///< as keyed in; empty for a common note
    bool operator==(const Noted&) const = default;
}; // noted
/// A person answered the alarm of a batch: it is silent.
struct AlarmAnswered {
    BatchRef batch;
    AlarmKind alarm = AlarmKind::EdgesSoon;
    bool operator==(const AlarmAnswered&) const = default;
}; // alarm_answered

// A supervisor's, of a repair.
/// Stops that a supervisor takes it upon himself to fill in spite of.
struct Overridden {
    std::vector<QString> stops; ///< codes of all that stood
    QString reason;             ///< a code of overrideReasons()
    bool operator==(const Overridden&) const = default;
}; // overridden
/// What was handed over is looked through and found in order; from now on the repair is sealed.
struct SignedOff {
    bool operator==(const SignedOff&) const = default;
}; // signed_off
/// What was handed over is looked through and not in order: it is worked at again, as a repair of its own.
struct Returned {
    QString reason;    ///< a code of returnReasons()
    QString text = {}; ///< what is to be mended, as keyed in; empty: the reason says it ("other" does not)
    bool operator==(const Returned&) const = default;
}; // returned
/// A remark that puts an event of a repair that was handed over right; the event stays as it is.
struct Corrected {
    qint64 seq = 1; ///< of the event that it corrects
    QString text;
    bool operator==(const Corrected&) const = default;
}; // corrected
/// The rework of a returned repair was taken in: everybody's act.
struct ReworkBegun {
    QUuid rework; ///< the repair that it is
    bool operator==(const ReworkBegun&) const = default;
}; // rework_begun

// Of a lot, not of a repair: their subject is lotSubject() of sheet and lot.
/// A test pat of a lot: a dab of filler with hardener on the board, to see when it gels.
struct PatMixed {
    QString sheetId;
    QString hardenerLot;
    QString lot; ///< of the filler's tub; empty: not told
    Mass filler;
    Mass hardener;
    Temperature air;
    Duration bySheet; ///< gels after, by the sheet
    Duration gel;     ///< as expected of the lot
    Duration early;   ///< and its earliest and latest
    Duration late;
    QByteArray sheetHash = {}; ///< of the sheet's version; empty in events older than versions
    bool operator==(const PatMixed&) const = default;
}; // pat_mixed
struct PatGelled {
    QString sheetId;
    QString hardenerLot;
    bool operator==(const PatGelled&) const = default;
}; // pat_gelled
/// What was told of a lot so far no longer counts.
struct LotForgotten {
    QString sheetId;
    QString hardenerLot;
    QString reason; ///< a code of forgetReasons()
    bool operator==(const LotForgotten&) const = default;
}; // lot_forgotten

// Of the bench: their subject is benchSubject(). ClockJumped is one of them.
struct ActRefused {
    SupervisorAct act = SupervisorAct::SignOff;
    ActRefusal why = ActRefusal::NoPin;
    bool operator==(const ActRefused&) const = default;
}; // act_refused
struct PinSet {
    bool atTheMachine = false; ///< by the command at the machine, without the old one
    bool operator==(const PinSet&) const = default;
}; // pin_set
/// A backup took the log's place. What the earlier log held beyond it, as far as it could be read, came with it.
struct LogRestored {
    qint64 count = 0;      ///< of this bench's events, before this one
    QByteArray head;       ///< SHA-256: the end of its chain, before this one
    qint64 fetched = 0;    ///< events that the earlier log held beyond the backup, and that were taken over
    bool complete = false; ///< the earlier log could be read to its end: nothing is known to be missing
    bool operator==(const LogRestored&) const = default;
}; // log_restored
/// What another log held of a bench was brought in.
struct LogMerged {
    QString bench;    ///< the uuid of that bench, its origin
    qint64 added = 0; ///< events
    qint64 count = 0; ///< of its events that are here now
    QByteArray head;  ///< SHA-256: the end of its chain
    bool operator==(const LogMerged&) const = default;
}; // log_merged

/// Beads laid from the tube of a lot of hardener, measured and weighed: what it lays from now on.
struct BeadCalibrated {
    QString hardenerLot;
    std::vector<LaidBead> beads;
    LinearDensity mean;
    Fraction spread; ///< as BeadCalibration has it
    bool operator==(const BeadCalibrated&) const = default;
}; // bead_calibrated
/// A product sheet of the shop's own, or a new version of it; its bytes are a blob of the log.
struct SheetKept {
    QString sheetId;
    QByteArray hash; ///< SHA-256 of the bytes
    bool operator==(const SheetKept&) const = default;
}; // sheet_kept
/// A product sheet that is planned with no more; its versions stay.
struct SheetLaidAside {
    QString sheetId;
    bool operator==(const SheetLaidAside&) const = default;
}; // sheet_laid_aside

using Payload =
    std::variant<TakenIn, Answered, PlanAccepted, StepDone, ReadingTaken, HardenerIn, EdgesClear, Gelled, Sands, Sanded,
                 Turned, Parked, AssessAgain, TakenUpAgain, HandedOver, PhotoTaken, Noted, PredictedAgain, PatMixed,
                 PatGelled, LotForgotten, AlarmAnswered, Overridden, SignedOff, Corrected, ClockJumped, ActRefused,
                 PinSet, LogRestored, LogMerged, StockReceived, StockOpened, StockCounted, StockAdjusted, StockEnded,
                 StockMoved, StockProbed, BeadCalibrated, SheetKept, SheetLaidAside, Returned, ReworkBegun>;

/// The code of a payload's kind, and the version of its layout that this program writes.
[[nodiscard]] QString kindOf(const Payload& payload);
[[nodiscard]] int kindVersionOf(const Payload& payload);

/// What an event happened to: its key `repair` holds the id of that.
/// Lot: what a product and a lot of hardener taught (lotSubject()); Stock: a lot on the shelf (stockSubject()).
enum class Subject { Repair, Lot, Bench, Stock };
[[nodiscard]] Subject subjectOf(const Payload& payload);
[[nodiscard]] inline bool isOfALot(const Payload& payload) { return subjectOf(payload) == Subject::Lot; }
/// The subject of what happens to a bench itself; which bench, the event's origin says.
[[nodiscard]] QUuid benchSubject();

/// Which of the supervisor's acts a payload is; empty of everybody's.
[[nodiscard]] std::optional<SupervisorAct> supervisorActOf(const Payload& payload);
/// The SHA-256 of the bytes that come with an event and that it names itself: a photo, a sheet. Empty of others.
[[nodiscard]] std::optional<QByteArray> bytesNamedBy(const Payload& payload);
/// Why a stop is overridden, in the order offered: codes that app/words renders.
[[nodiscard]] const std::vector<QString>& overrideReasons();
/// Why a repair is returned, likewise.
[[nodiscard]] const std::vector<QString>& returnReasons();

/// True for acts against the clock and jumps of that clock: they may go ahead when the disk refuses (the red bar).
[[nodiscard]] bool isAgainstTheClock(const Payload& payload);

/// What a screen hands to the log: everything but the key and the hash.
struct EventDraft {
    QUuid repair;
    QString person;
    Payload payload;
    Instant at;                    ///< the moment of the tap
    std::vector<QByteArray> blobs; ///< stored by content in the same transaction: sheets, table
};

struct Event {
    QString origin; ///< uuid of the bench that wrote it
    qint64 seq = 0; ///< from 1, without gaps, an origin
    QUuid repair;
    QString person;
    Payload payload;
    Instant at;
    QByteArray hash; ///< of the chain, SHA-256
    bool operator==(const Event&) const = default;
};

} // namespace strandbench
