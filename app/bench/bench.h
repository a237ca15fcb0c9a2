// SPDX-License-Identifier: GPL-3.0-or-later
// The bench as it stands: the open repairs folded from the log, the running mixes, the newest reading, and
// the one way in which something happens: submit().
#pragma once

#include "clock/assumption_book.h"
#include "clock/batch_clock.h"
#include "plan/planner.h"
#include "repair/alarms.h"
#include "repair/bead_book.h"
#include "repair/lot_book.h"
#include "repair/stock_book.h"
#include "repair/spread_book.h"
#include "repairlog/repair_log.h"
#include "roles/pin_door.h"
#include "bench/recorder.h"
#include "bench/worker.h"

#include <QObject>
#include <QTimer>

#include <deque>
#include <map>

namespace strandbench {

/// One batch whose clock runs, with what its clock shows now.
struct RunningMix {
    QUuid repair;
    BatchRun run;
    ClockFace face;
};

class Bench final : public QObject {
    Q_OBJECT
public:
    /// What the bench is made of: passed in, and living longer than it.
    struct Parts {
        Recorder& recorder;
        const Clock& clock;
        PlanningSet planning;
        Worker::Runs computing = Worker::Runs::InThread;
        PinDoor* door = nullptr; ///< to the supervisor's acts; null: it stays shut
    };
    explicit Bench(Parts parts, QObject* parent = nullptr);

    /// Folds what the log brought. A fault names the event that does not follow.
    [[nodiscard]] std::optional<Fault> load(const BenchBook& book);

    /// Everything open, newest act first.
    [[nodiscard]] std::vector<const Repair*> openRepairs() const;
    /// The repair of this id, open or handed over in this session; null when there is none.
    [[nodiscard]] const Repair* repair(const QUuid& id) const;
    /// Every running batch, the one whose next act is due first in front.
    [[nodiscard]] std::vector<RunningMix> runningMixes() const;
    [[nodiscard]] RunningMix runningMix(const Repair& repair, const BatchRun& run) const;

    struct DatedReading {
        Reading reading;
        Instant at;
    };
    [[nodiscard]] std::optional<DatedReading> newestReading() const { return m_newestReading; }

    /// What rings, the most urgent first.
    [[nodiscard]] std::vector<DueAlarm> alarms() const;

    struct DatedJump {
        ClockJumped jump;
        Instant at;
    };
    /// Looks at the machine's clocks: a jump is written, and made good in the batches that run. Called each second.
    void watchClock();
    [[nodiscard]] const std::optional<DatedJump>& newestJump() const { return m_newestJump; }

    /// Plans with the bench's sheets, table and assumptions.
    [[nodiscard]] RepairPlan plan(const Assessment& assessment) const;
    /// The plan of a repair's answers: its first, or what takes the place of the one it has.
    [[nodiscard]] RepairPlan plan(const Repair& repair) const;
    [[nodiscard]] const PlanningSet& planning() const { return m_plannings.back(); }
    [[nodiscard]] const Assumptions& assumptions() const { return planning().assumptions; }
    /// The product sheets of the shop's own, in all their versions.
    [[nodiscard]] const SheetBook& sheets() const { return m_sheets; }
    /// Those that a batch goes by: of the moment when its hardener went in.
    [[nodiscard]] const Assumptions& assumptionsOf(const BatchRun& run) const { return m_book.at(run.hardenerIn); }
    /// What the bench's file holds; called before the first screen.
    void setAssumptions(const AssumptionBook& book);
    /// From now on others hold, for every new plan and clock; batches that run keep theirs. Call it on the glass's
    /// thread while no screen computes. The book is what is to be kept.
    const AssumptionBook& changeAssumptions(const Assumptions& next);
    /// What the batches of every lot told.
    [[nodiscard]] const LotBook& lots() const { return m_lots; }
    /// What is on the shelf of this bench.
    [[nodiscard]] const StockBook& stock() const { return m_stock; }
    /// The lot of hardener that is open at this bench; empty: not told. Plans and forecasts are made for it. Call it
    /// like changeAssumptions().
    void setHardenerLot(const QString& lot);
    /// What the tube of the hardener that is open lays, as it was calibrated; empty: each sheet's own figure is taken.
    [[nodiscard]] std::optional<DatedBead> bead() const { return m_beads.of(m_hardenerLot); }
    [[nodiscard]] bool anyBead() const { return !m_beads.empty(); } ///< of whatever lot
    [[nodiscard]] std::optional<DatedBead> beadOf(const QString& hardenerLot) const { return m_beads.of(hardenerLot); }
    /// How fast a person spreads, by the log; empty while it holds too few batches.
    [[nodiscard]] std::optional<SpreadLearnt> spreadOf(const QString& person) const
    {
        return m_spread.of(person, assumptions().kneading);
    }
    /// What is believed of a product with the hardener that is open.
    [[nodiscard]] LotBelief beliefOf(const ProductSheet& sheet) const { return m_lots.beliefOf(sheet, m_hardenerLot); }
    /// How workers of screens run.
    [[nodiscard]] Worker::Runs computing() const { return m_parts.computing; }
    [[nodiscard]] const Clock& clock() const { return m_parts.clock; }
    /// The log, for what is read of the past.
    [[nodiscard]] Recorder& recorder() const { return m_parts.recorder; }

    using Done = std::function<void(const std::optional<LogFailure>&)>;
    /// Writes one act, then folds it and says so. Acts against the clock go ahead when the disk refuses: they
    /// count at once, stay in unsaved() and are written when the disk is back.
    /// kept: bytes that the act names by their SHA-256, written with it.
    void submit(const QUuid& repair, const QString& person, const Payload& payload, Done done,
                const std::vector<QByteArray>& kept = {});
    /// Tells a supervisor's act apart: the door's refusal, or the log's.
    using Supervised = std::function<void(const std::optional<PinRefused>&, const std::optional<LogFailure>&)>;
    /// Writes a supervisor's act once the PIN has opened the door; what is refused is written too. submit() lets no
    /// such act pass.
    void submitAsSupervisor(const QUuid& subject, const QString& person, const Payload& payload, const QString& pin,
                            Supervised done, const std::vector<QByteArray>& kept = {});
    /// Sets a new PIN once the old one has opened the door; where none is set yet, nothing is asked for.
    void changePin(const QString& person, const QString& old, const QString& next, Supervised done);
    [[nodiscard]] const PinDoor* door() const { return m_parts.door; }
    /// Opens the door for an act that is more than an event (a restore); what is refused is written. Where no PIN is
    /// set it stands open: a bench must not be locked out of its own backup.
    void openDoor(SupervisorAct act, const QString& person, const QString& pin, Supervised done);
    /// The log was found damaged: it is closed for writing, and the red bar says so.
    void logIsDamaged(const LogFailure& what);

    /// A copy beside the one that has the bench: every act is refused.
    [[nodiscard]] bool looksOnly() const { return m_parts.recorder.looksOnly(); }
    /// Takes in what that one has written since; called each second.
    void followWriter();

    /// Fetches bytes that the log keeps, by their SHA-256; answers later.
    void blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then) const;

    /// How many acts against the clock wait for the disk, and what it says.
    [[nodiscard]] std::size_t unsaved() const { return m_unsaved.size(); }
    [[nodiscard]] std::optional<LogTrouble> refusal() const { return m_refusal; }
    /// Those acts, in their order: for the bench that goes on with another log.
    [[nodiscard]] const std::deque<EventDraft>& waiting() const { return m_unsaved; }
    /// Takes over acts that waited, as far as they follow on what was loaded; they are written once the disk takes
    /// them. How many did not follow: those are lost, and it is for the caller to say so. Called after load().
    [[nodiscard]] std::size_t goOnWith(const std::deque<EventDraft>& waiting);

Q_SIGNALS:
    void changed();        ///< a repair has moved on
    void unsavedChanged(); ///< the red bar

private:
    void fold(const Event& event);
    void fetchReturned(const QUuid& repair);
    void write(const EventDraft& draft, Done done);
    void refuseAct(SupervisorAct act, const QString& person, ActRefusal why, std::function<void()> then);
    void refuseAct(SupervisorAct act, const QString& person, const PinRefused& why, const Supervised& done);
    void makeGood(const ClockJumped& jump, const Instant& at);
    void setAside(const EventDraft& draft, LogTrouble why);
    /// The event of an act that waits, as it is folded meanwhile.
    [[nodiscard]] Event provisional(const EventDraft& draft) const;
    void keepRefusal(std::optional<LogTrouble> why);
    void retry();
    void noteReading(const Event& event);
    void noteLot(const Event& event);
    /// Takes in a sheet that was kept with these bytes, or laid aside.
    void noteSheet(const Event& event, const std::vector<QByteArray>& bytes);
    void fetchSheet(const Event& event);
    void planWithSheets();
    void applyRates();
    /// An act of this moment, with the bytes that it names and those that are kept with it.
    [[nodiscard]] EventDraft draftOf(const QUuid& subject, const QString& person, const Payload& payload,
                                     const std::vector<QByteArray>& kept) const;
    [[nodiscard]] std::vector<QByteArray> blobsFor(const Payload& payload) const;

    Parts m_parts;
    AssumptionBook m_book;
    CureEngine m_engine;
    SheetBook m_sheets;
    /// The parts' sheets with the shop's own, and the parts' planning with these, the bench's own assumptions and an
    /// engine that goes by them; the newest last. Earlier ones stay, since what computes beside the glass may still
    /// read them.
    std::deque<Catalogue> m_catalogues;
    std::deque<PlanningSet> m_plannings;
    std::map<QUuid, Repair> m_repairs;
    LotBook m_lots;
    StockBook m_stock;
    BeadBook m_beads;
    SpreadBook m_spread;
    QString m_hardenerLot;
    std::optional<DatedReading> m_newestReading;
    ClockWatch m_watch;
    std::optional<DatedJump> m_newestJump;
    qint64 m_lastSeq = 0; ///< taken in of what another copy writes
    bool m_following = false;
    Worker m_pinWorker;
    std::deque<EventDraft> m_unsaved;
    std::optional<LogTrouble> m_refusal; ///< of the disk, while acts wait or the log is closed for writing
    bool m_retrying = false;
    QTimer m_retryTimer;
};

} // namespace strandbench
