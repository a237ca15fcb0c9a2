// SPDX-License-Identifier: GPL-3.0-or-later
// The record: events in one SQLite file, chained, append-only, with summaries beside them.
#pragma once

#include "repair/repair.h"
#include "repair/sheet_book.h"

#include <QString>

#include <tl/expected.hpp>

#include <memory>
#include <vector>

namespace strandbench {

enum class LogTrouble {
    CannotOpen,   ///< no such folder, no right to it
    NotADatabase, ///< the file is something else
    NotALog,      ///< a database, but not of this program
    NewerVersion, ///< written by a newer program that this one must not touch
    ReadOnly,     ///< may be read but not written
    Locked,       ///< another program has it
    InUse,        ///< another copy of this program has the bench; the detail says which
    NeedsPin,     ///< a supervisor's act without the PIN
    DiskFull,
    Damaged,  ///< the file or the chain does not hold
    CutShort, ///< damaged so that the file ends before it should: half copied
    IoError,
    Gone,          ///< the log that was open lies there no more
    OtherLog,      ///< what lies there now lacks what was confirmed
    OlderVersion,  ///< of an older program: to be brought up to this one before it can be written
    AlreadyOpen,   ///< an open job with the same panel; the detail is that repair's uuid
    DoesNotFollow, ///< the event cannot follow what is stored (see apply())
};

struct LogFailure {
    LogTrouble trouble = LogTrouble::IoError;
    QString detail; ///< SQLite's or the system's own words, for the small print
    bool operator==(const LogFailure&) const = default;
};

template <class T> using Logged = tl::expected<T, LogFailure>;

enum class LogMode { ReadWrite, ReadOnly };

/// What the home rail and review need of a repair without folding it.
struct RepairSummary {
    QUuid repair;
    QString job;
    QString panel;
    QString substrate;  ///< code; empty until answered
    QString damageKind; ///< code; empty until answered
    QString station;    ///< code of the next step's station
    QString person;     ///< of the newest event
    bool open = true;
    qint64 firstUtcMs = 0;
    qint64 lastUtcMs = 0;
    qint64 lastSeq = 0;
    bool operator==(const RepairSummary&) const = default;
};

struct ChainHead {
    QString origin;
    qint64 count = 0;
    QByteArray hash; ///< SHA-256; 32 zero bytes for an empty chain
    bool operator==(const ChainHead&) const = default;
};

/// One connection to a log. Lives in the thread that opened it.
class RepairLog {
public:
    /// Opens or (ReadWrite, no file) creates a log. WAL, synchronous=FULL, foreign keys and the busy timeout
    /// are set and read back; migrations run in order, each in one transaction with its version stamp.
    /// A file that is not a log is never changed. A file without bytes is a log not made yet.
    /// ReadOnly writes nothing and leaves nothing beside the file. Opened while a writer has the log open, it
    /// reads beside it; opened while nobody has, it is a still picture that must not outlive the next writer's
    /// opening. Needs a QCoreApplication: Qt finds its SQL drivers through one.
    [[nodiscard]] static Logged<std::unique_ptr<RepairLog>> open(const QString& path, LogMode mode);
    ~RepairLog();
    RepairLog(const RepairLog&) = delete;
    RepairLog& operator=(const RepairLog&) = delete;

    /// Writes one event, its blobs, its day and the repair's summary in one transaction (BEGIN IMMEDIATE). An event
    /// of a lot or of the bench has no summary. DoesNotFollow also for a stop that is nobody's to override, and for a
    /// correction of an event that the repair does not have.
    /// A repair that another bench took in is not added to (DoesNotFollow). Gone when the file that was opened lies at
    /// its path no more. On failure nothing is written; but a disk that fails at the very end may leave what is found
    /// written after a restart. After a failure, and first after opening, the draft of the newest event gives back that
    /// event and writes no second. The event comes back as it will be read: quantities on the storage grid.
    [[nodiscard]] Logged<Event> append(const EventDraft& draft);

    /// Of a repair, or of a lot by its subject; oldest first.
    [[nodiscard]] Logged<std::vector<Event>> events(const QUuid& repair) const;
    /// What this bench's tubes lay, as calibrated: oldest first.
    [[nodiscard]] Logged<std::vector<Event>> beadCalibrations() const;
    /// What LotBook and SpreadBook are made from, of all repairs and lots, from a local day on: by bench, oldest first.
    [[nodiscard]] Logged<std::vector<Event>> eventsOfLots(const QString& fromLocalDay) const;
    /// What StockBook is made from, of this bench: its acts of stock from a local day on, and the batches and pats
    /// since the first lot among them that has not ended came in. Oldest first.
    [[nodiscard]] Logged<std::vector<Event>> eventsOfStock(const QString& fromLocalDay) const;
    /// What the air of this bench is known by (review/air_of_days.h), of the local days from one to another, both
    /// included: readings, batches and pats, steps. Oldest first; read by the days' index alone.
    [[nodiscard]] Logged<std::vector<Event>> eventsOfAir(const QString& fromLocalDay, const QString& toLocalDay) const;
    /// The jumps of this bench's clocks from a local day on, oldest first.
    [[nodiscard]] Logged<std::vector<Event>> clockJumps(const QString& fromLocalDay) const;
    /// What happened to this bench itself on a local day: jumps of its clocks, refused acts, its PIN.
    [[nodiscard]] Logged<std::vector<Event>> ofBench(const QString& localDay) const;
    /// This bench's events above a seq, oldest first: what another program has written since.
    [[nodiscard]] Logged<std::vector<Event>> after(qint64 seq) const;
    /// Every bench that has a chain in this log.
    [[nodiscard]] Logged<QStringList> origins() const;
    /// A bench's events above a seq, oldest first, at most so many.
    [[nodiscard]] Logged<std::vector<Event>> eventsAfter(const QString& origin, qint64 seq, int most) const;
    /// The end that a bench's chain had with this seq; DoesNotFollow when it has no such event.
    [[nodiscard]] Logged<ChainHead> headAt(const QString& origin, qint64 seq) const;
    /// The product sheets that the shop has kept: this bench's own in their order, and of other benches' and of the
    /// open repairs' plans every version besides. A sheet whose bytes a rescue has lost is left out.
    [[nodiscard]] Logged<SheetBook> sheets() const;
    /// When the newest event of this bench was written; empty of an empty log.
    [[nodiscard]] Logged<std::optional<Instant>> lastWritten() const;
    /// Both in the order of taking in. Open ones are this bench's own: those of another bench, whose log was brought
    /// in, go on there. Those of a day are of all benches.
    [[nodiscard]] Logged<std::vector<RepairSummary>> openRepairs() const;
    [[nodiscard]] Logged<std::vector<RepairSummary>> repairsOfDay(const QString& localDay) const;
    /// The bytes of this SHA-256; DoesNotFollow when no event has stored them.
    [[nodiscard]] Logged<QByteArray> blob(const QByteArray& hash) const;
    [[nodiscard]] Logged<ChainHead> head() const; ///< of this bench's own chain
    /// Whether an event of that bench has this hash at this seq; of seq 0 always.
    [[nodiscard]] Logged<bool> contains(const ChainHead& head) const;
    [[nodiscard]] const QString& origin() const; ///< this bench

private:
    struct Connection;
    explicit RepairLog(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> m_connection;
};

/// The version of a log's tables, and whether opening it for writing brings it up to this program's. 0 of nothing.
[[nodiscard]] Logged<int> logVersion(const QString& path);
[[nodiscard]] int programLogVersion();

/// The first place where a log breaks.
struct VerifyReport {
    bool clean = false;
    int schemaVersion = 0;
    qint64 events = 0;
    qint64 repairs = 0;
    std::vector<ChainHead> heads;
    QString breaksAt; ///< code: integrity, schema, chain, event, summary, blob, expected_head; empty when clean
    QString where;    ///< "origin 1f3a…, seq 12" and what was found
};

/// SQLite's own integrity check, the tables, the chain of every origin, every event readable and foldable,
/// summaries and days against their events, blobs against their hashes, the guards (triggers); the first of
/// these that does not hold is named. Pages that do not hold are a report, not a failure.
/// expectHead: a head printed earlier, in hexadecimal, or empty. It holds when it is the hash of some event in
/// a chain of this log (or the 32 zero bytes that every chain begins with): the log may have grown since, but
/// it must still contain what the head stood for.
[[nodiscard]] Logged<VerifyReport> verifyLog(const QString& path, const QString& expectHead = {});

/// A consistent copy while the program may be running (VACUUM INTO), verified after writing, put in place by
/// rename. Refuses to overwrite an existing file (CannotOpen). A log that does not verify is not backed up
/// (Damaged): the copy would be no better, or better without anybody knowing why. A copy that does not verify is the
/// trouble of its own disk (IoError).
[[nodiscard]] Logged<VerifyReport> backupLog(const QString& path, const QString& to);

} // namespace strandbench
