// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/keeper.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration lookEvery = minutes(1);
const Duration checkEvery = minutes(24 * 60);
const Duration restAtStart = minutes(10); ///< the bench opens first; looking through a large log reads much of the disk

/// What a look at the folder and a backup that is due came to: nothing to do, or what became of it.
struct Round {
    std::optional<BackupFile> newest; ///< that lies there
    std::optional<Logged<BackedUp>> written;
};

Round roundOf(const QString& log, const Keeper::Plan& plan, const Instant& now, bool wanted)
{
    const auto head = headOfLog(log);
    if (!head)
        return {std::nullopt, Logged<BackedUp>(tl::unexpected(head.error()))};
    Round round;
    const auto there = backupsIn(plan.folder, benchOf(head->origin));
    if (!there.empty())
        round.newest = there.front();
    const bool nothingNew = round.newest && round.newest->count == head->count && round.newest->utcMs <= now.utcMs;
    if (!wanted && (nothingNew || !backupIsDue(there, plan.every, now)))
        return round;
    round.written = backupIntoFolder(log, plan.folder, plan.copies, now);
    return round;
}

} // namespace

Keeper::Keeper(QString log, const Clock& clock, Worker::Runs runs, QObject* parent)
    : QObject(parent), m_log(std::move(log)), m_clock(clock), m_worker(runs)
{}

template <class T> void Keeper::run(std::function<T()> work, std::function<void(const T&)> then)
{
    m_worker.ask([this, work = std::move(work), then = std::move(then)]() -> Worker::Show {
        return [this, then, result = work()] {
            then(result);
            // The worker is done with this one only when it has been shown.
            QMetaObject::invokeMethod(this, &Keeper::changed, Qt::QueuedConnection);
        };
    });
    Q_EMIT changed();
}

void Keeper::setPlan(const Plan& plan)
{
    if (plan == m_plan)
        return;
    if (plan.folder != m_plan.folder) {
        m_state.backup.reset();
        m_state.backupFailure.reset();
    }
    m_plan = plan;
    m_lookedAt.reset();
}

bool Keeper::overdue() const
{
    if (m_plan.folder.isEmpty() || m_plan.every.value() <= 0)
        return false;
    if (!m_state.backup)
        return m_state.backupFailure.has_value();
    return m_state.backupFailure && backupIsDue({*m_state.backup}, m_plan.every * 2.0, m_clock.now());
}

void Keeper::tick()
{
    const Instant now = m_clock.now();
    if (!m_start)
        m_start = now;
    if (busy() || (m_lookedAt && elapsed(*m_lookedAt, now) < lookEvery))
        return;
    m_lookedAt = now;
    const bool checkDue =
        m_state.checkedAt ? elapsed(*m_state.checkedAt, now) >= checkEvery : elapsed(*m_start, now) >= restAtStart;
    if (checkDue)
        return check();
    if (m_plan.folder.isEmpty() || m_plan.every.value() <= 0)
        return;
    run<Round>([log = m_log, plan = m_plan, now] { return roundOf(log, plan, now, false); },
               [this](const Round& round) {
                   if (round.newest)
                       m_state.backup = round.newest;
                   if (round.written)
                       noteBackup(*round.written);
               });
}

void Keeper::backUp()
{
    if (busy() || m_plan.folder.isEmpty())
        return;
    run<Round>([log = m_log, plan = m_plan, now = m_clock.now()] { return roundOf(log, plan, now, true); },
               [this](const Round& round) { noteBackup(*round.written); });
}

void Keeper::noteBackup(const Logged<BackedUp>& done)
{
    m_state.backupFailure.reset();
    if (done) {
        m_state.backup = done->file;
        return;
    }
    m_state.backupFailure = done.error();
    if (done.error().trouble == LogTrouble::Damaged) // the copy was refused because the log does not hold
        Q_EMIT foundDamaged(done.error());
}

void Keeper::check()
{
    if (!busy())
        run<Logged<VerifyReport>>([log = m_log] { return verifyLog(log); },
                                  [this](const Logged<VerifyReport>& report) { noteCheck(report); });
}

void Keeper::noteCheck(const Logged<VerifyReport>& report)
{
    m_state.checkedAt = m_clock.now();
    m_state.checked = report ? std::optional(*report) : std::nullopt;
    m_state.checkFailure = report ? std::nullopt : std::optional(report.error());
    if (report && !report->clean)
        Q_EMIT foundDamaged({LogTrouble::Damaged, report->breaksAt + u": "_s + report->where});
}

void Keeper::merge(const QString& from, MergeMode mode, const QString& person, Merged then)
{
    if (busy())
        return;
    run<Logged<MergeReport>>(
        [log = m_log, from, mode, person, now = m_clock.now()] {
            return mergeLog(log, from, mode, MergedBy{person, now});
        },
        std::move(then));
}

void Keeper::restore(const QString& backup, MergeMode mode, const QString& person, Restored then)
{
    if (busy())
        return;
    run<Logged<RestoreReport>>(
        [log = m_log, backup, mode, person, now = m_clock.now()] {
            return mode == MergeMode::DryRun ? restoreLog(log, backup, mode)
                                             : restoreAndRecord(log, backup, person, now);
        },
        std::move(then));
}

} // namespace strandbench
