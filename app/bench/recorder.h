// SPDX-License-Identifier: GPL-3.0-or-later
// The log behind a thread of its own: one writer, never on the GUI thread, whose acknowledgement moves the
// screen on.
#pragma once

#include "repairlog/find_index.h"
#include "repairlog/writer_lock.h"

#include <QObject>
#include <QThread>

#include <atomic>
#include <functional>
#include <map>
#include <memory>

namespace strandbench {

/// Everything of one day: the events of each repair that is open or was worked on, and the end of the chain.
struct DayBook {
    std::vector<std::vector<Event>> repairs; ///< in the order of taking in
    ChainHead head;
    std::vector<Event> ofBench; ///< what happened to the bench itself
};

/// What a bench starts with.
struct BenchBook {
    std::vector<std::vector<Event>> repairs; ///< the events of each that is open
    std::vector<Event> ofLots;               ///< what its lots are known by
    std::vector<Event> ofStock;              ///< what is on its shelf
    std::vector<Event> clockJumps;           ///< of its own clocks
    std::vector<Event> beads;                ///< calibrations of what its tubes lay
    SheetBook sheets;                        ///< the shop's own products
    std::optional<Instant> lastWritten;      ///< its newest event
    qint64 lastSeq = 0;
};

/// What a text names.
struct FoundBook {
    std::vector<StockLot> lots; ///< of this name, mixed of
    std::vector<FoundRepair> repairs;
    bool more = false; ///< repairs before these
};

/// Everything of one repair.
struct RepairFile {
    std::vector<Event> events;
    std::map<QByteArray, QByteArray> pictures; ///< bytes by hash
    ChainHead head;
};

/// What a review asks of the log's thread: how repairs are digested, and whether it is still wanted.
struct ReviewAsk {
    QString mark; ///< digestMark()
    /// Runs in the writer's thread: touches nothing of the glass.
    std::function<RepairDigest(const std::vector<Event>& events)> digest;
    /// Told on the glass's thread now and then: so many of so many repairs were read.
    std::function<void(int done, int of)> progress = {};
    /// Set to true by the asker: the review ends at its next step, and nothing is answered.
    std::shared_ptr<std::atomic<bool>> cancelled = std::make_shared<std::atomic<bool>>(false);
};
using Digests = std::vector<RepairDigest>;

/// Everything of the repairs of one day.
struct DaySheets {
    std::vector<RepairFile> repairs; ///< with an act on that day, in the order of taking in
    ChainHead head;
};

class Recorder final : public QObject {
    Q_OBJECT
public:
    explicit Recorder(QString path, QObject* parent = nullptr);
    ~Recorder() override;

    /// Opens the log in the writer's thread and brings what is open, and what is known of lots from a local day on.
    /// Waits for it. InUse when another copy of the program has the bench.
    [[nodiscard]] Logged<BenchBook> open(const QString& lotsFromDay);
    /// The same where nothing can be written: beside a copy that has the bench (InUse), or because of the log itself.
    [[nodiscard]] Logged<BenchBook> openToLook(const QString& lotsFromDay, LogTrouble reason = LogTrouble::InUse);
    [[nodiscard]] bool looksOnly() const { return m_looksOnly; }
    [[nodiscard]] LogTrouble lookReason() const { return m_lookReason; }

    /// Writes one event; `then` is called in this object's thread with what became of it. After a trouble of the disk
    /// the log is opened anew before the next one: OtherLog when what lies there then lacks what was written before.
    /// Once it is found damaged it is read only, and every event is refused (Damaged).
    void append(const EventDraft& draft, std::function<void(const Logged<Event>&)> then);

    /// Fetches the bytes of a SHA-256 that the log keeps; `then` is called in this object's thread.
    void blob(const QByteArray& hash, std::function<void(const Logged<QByteArray>&)> then);
    /// Read in the writer's thread; `then` is called in this object's thread.
    void readDay(const QString& localDay, std::function<void(const Logged<DayBook>&)> then);
    /// What was written above a seq, by whoever writes.
    void readAfter(qint64 seq, std::function<void(const Logged<std::vector<Event>>&)> then);
    void readRepair(const QUuid& repair, std::function<void(const Logged<RepairFile>&)> then);

    /// What the air of this bench is known by, of the local days from one to another.
    void readAir(const QString& fromLocalDay, const QString& toLocalDay,
                 std::function<void(const Logged<std::vector<Event>>&)> then);

    /// Repairs and lots that a text names, found by the index beside the log, which is brought up to date first, a
    /// little at a time between what is written. At most so many repairs, the newest first, before a place (0: all).
    void find(const QString& text, int most, qint64 before, std::function<void(const Logged<FoundBook>&)> then);
    /// Batches that took of a lot, likewise, before a time.
    void readUses(const StockLot& lot, int most, qint64 beforeUtcMs,
                  std::function<void(const Logged<std::vector<LotUse>>&)> then);

    /// Repair by repair, so that an act never waits for the whole day.
    void readSheets(const QString& localDay, std::function<void(const Logged<DaySheets>&)> then);
    /// The end of this bench's own chain.
    void readHead(std::function<void(const Logged<ChainHead>&)> then);
    /// Every repair with an act on one of these local days, both included, in the order of taking in. Acts that are
    /// written meanwhile go first.
    void review(const QString& fromDay, const QString& toDay, const ReviewAsk& ask,
                std::function<void(const Logged<Digests>&)> then);
    /// The same of the repairs that took of a lot.
    void reviewLot(const StockLot& lot, const ReviewAsk& ask, std::function<void(const Logged<Digests>&)> then);

    [[nodiscard]] const QString& path() const { return m_path; }

    /// The log was found damaged by somebody who looked at it: nothing is written any more.
    void closeForWriting(const LogFailure& why);
    /// Closes the log, for what takes its place; the bench stays this copy's, and every event is refused (Locked).
    void close();

private:
    [[nodiscard]] Logged<BenchBook> openAs(LogMode mode, const QString& lotsFromDay);
    [[nodiscard]] Logged<Event> write(const EventDraft& draft);
    [[nodiscard]] Logged<void> openAnew();
    [[nodiscard]] Logged<std::unique_ptr<RepairLog>> openSame(LogMode mode) const;
    [[nodiscard]] Logged<void> takeLockAnew();
    void noteDamage(const LogFailure& failure);
    template <class T>
    void search(std::function<Logged<T>(const FindIndex&)> work, std::function<void(const Logged<T>&)> then);
    /// Opens the index where it is not, and takes in a part of what it lacks: true when it lacks nothing.
    [[nodiscard]] Logged<bool> catchUpIndex();
    struct Reviewing;
    struct Sheets;
    void goOnReading(const std::shared_ptr<Sheets>& sheets);
    [[nodiscard]] Logged<RepairFile> fileOf(const QUuid& repair) const;
    void goOnReviewing(const std::shared_ptr<Reviewing>& review);
    [[nodiscard]] Logged<void> digestSome(Reviewing& review);
    template <class T>
    void read(std::function<Logged<T>(const RepairLog&)> work, std::function<void(const Logged<T>&)> then);

    QString m_path;
    QThread m_thread;
    QObject* m_writer;                  ///< lives in m_thread: where the writer's calls run
    std::unique_ptr<WriterLock> m_lock; ///< while this copy has the bench
    bool m_looksOnly = false;
    LogTrouble m_lookReason = LogTrouble::InUse;
    // Touched in m_thread alone.
    std::unique_ptr<RepairLog> m_log;
    std::unique_ptr<FindIndex> m_index;  ///< made when something is looked for first
    ChainHead m_written;                 ///< what was confirmed last
    bool m_doubtful = false;             ///< the disk gave trouble: the log is opened anew first
    std::optional<LogFailure> m_refused; ///< why nothing is written any more
};

} // namespace strandbench
