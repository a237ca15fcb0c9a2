// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps the log safe beside the work, in a thread of its own: backups on a schedule and on demand, the whole log looked
// through once a day, other logs brought in, a backup put in the log's place. One thing at a time.
#pragma once

#include "bench/worker.h"
#include "clock/clock.h"
#include "repairlog/backup_folder.h"
#include "repairlog/recorded.h"

namespace strandbench {

class Keeper final : public QObject {
    Q_OBJECT
public:
    struct Plan {
        QString folder;              ///< empty: no backups
        Duration every = seconds(0); ///< 0: on demand alone
        int copies = 14;             ///< that stay
        bool operator==(const Plan&) const = default;
    };
    /// What is known of the log's safety.
    struct State {
        std::optional<BackupFile> backup;        ///< the newest that was written or found
        std::optional<LogFailure> backupFailure; ///< of the latest try
        std::optional<Instant> checkedAt;        ///< of this session
        std::optional<VerifyReport> checked;
        std::optional<LogFailure> checkFailure;
    };
    Keeper(QString log, const Clock& clock, Worker::Runs runs, QObject* parent = nullptr);

    [[nodiscard]] const QString& log() const { return m_log; }
    void setPlan(const Plan& plan);
    [[nodiscard]] const State& state() const { return m_state; }
    [[nodiscard]] bool busy() const { return m_worker.busy(); }
    /// Backups are wanted, and the newest is older than twice the interval, or there is none.
    [[nodiscard]] bool overdue() const;

    /// Does what is due; called each second.
    void tick();
    /// All of these do nothing while something is being done.
    void backUp();
    void check();
    using Merged = std::function<void(const Logged<MergeReport>&)>;
    using Restored = std::function<void(const Logged<RestoreReport>&)>;
    void merge(const QString& from, MergeMode mode, const QString& person, Merged then);
    /// The log is closed when it is not a dry run.
    void restore(const QString& backup, MergeMode mode, const QString& person, Restored then);

Q_SIGNALS:
    void changed();                                         ///< the state, or whether something is being done
    void foundDamaged(const strandbench::LogFailure& what); ///< the log itself does not hold

private:
    template <class T> void run(std::function<T()> work, std::function<void(const T&)> then);
    void noteBackup(const Logged<BackedUp>& done);
    void noteCheck(const Logged<VerifyReport>& report);

    QString m_log;
    const Clock& m_clock;
    Worker m_worker;
    Plan m_plan;
    State m_state;
    std::optional<Instant> m_lookedAt; ///< when it was last seen whether something is due
    std::optional<Instant> m_start;    ///< of the first tick
};

} // namespace strandbench
