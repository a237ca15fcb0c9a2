// SPDX-License-Identifier: GPL-3.0-or-later
// What rings on the glass, whatever screen is shown: the bar in the ribbon's place, the bell, a glass that wakes.
#include "shell/alarm_bar.h"
#include "shell/bench_window.h"
#include "shell/wake_screen.h"
#include "sound/bell.h"
#include "words/event_words.h"
#include "words/role_words.h"

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

const Duration jumpTold = seconds(30); ///< how long it stands that the clocks jumped

bool holds(const std::vector<DueAlarm>& alarms, const DueAlarm& wanted)
{
    return std::ranges::any_of(alarms, [&](const DueAlarm& each) {
        return each.repair == wanted.repair && each.batch == wanted.batch && each.kind == wanted.kind;
    });
}

} // namespace

AlarmShown BenchWindow::shown(const DueAlarm& alarm, std::size_t more) const
{
    const Repair* repair = m_parts.bench.repair(alarm.repair);
    QStringList where{m_words->jobLabel(repair->job), repair->panel, batchName(alarm.batch)};
    if (more > 0)
        where.prepend(moreAlarms(static_cast<int>(more)));
    return {alarm.kind, alarmHeadline(alarm, *m_words), where.join(u" · "_s)};
}

void BenchWindow::ring()
{
    // A copy that only looks is silent: it rings where the work is done.
    const bool looks = m_parts.bench.looksOnly();
    std::vector<DueAlarm> due = looks ? std::vector<DueAlarm>{} : m_parts.bench.alarms();
    std::erase_if(due, [&](const DueAlarm& each) { return holds(m_answering, each); });
    const Instant now = m_parts.bench.clock().now();
    const bool newOne = std::ranges::any_of(due, [&](const DueAlarm& each) { return !holds(m_ringing, each); });
    m_ringing = due;
    std::vector<AlarmShown> alarms;
    for (std::size_t i = 0; i < std::min<std::size_t>(due.size(), 2); ++i)
        alarms.push_back(shown(due[i], i == 1 ? due.size() - 2 : 0));
    m_alarmBar->setAlarms(alarms, now);
    m_alarmBar->tick(now);
    // Never both at once: they have one place.
    QWidget* const comes = alarms.empty() ? static_cast<QWidget*>(m_ribbon) : m_alarmBar;
    QWidget* const goes = alarms.empty() ? static_cast<QWidget*>(m_alarmBar) : m_ribbon;
    goes->hide();
    comes->show();
    if (newOne)
        wakeScreen();
    if (!m_parts.bell)
        return;
    m_parts.bell->ring(due.empty() ? std::nullopt : std::optional(due.front().kind), now);
    // Looked for when it may be needed, so that silence is told before the first alarm and not by it.
    const bool runs = !looks && !m_parts.bench.runningMixes().empty();
    if (runs)
        m_parts.bell->check();
    m_ribbon->setSilent(runs && m_parts.bell->silent());
}

void BenchWindow::answerAlarm(std::size_t index)
{
    if (index >= m_ringing.size())
        return;
    // Silent at once; should the log refuse it, it rings again.
    const DueAlarm alarm = m_ringing[index];
    m_answering.push_back(alarm);
    m_answeredAt.start();
    ring();
    m_parts.bench.submit(alarm.repair, m_parts.settings.person, AlarmAnswered{alarm.batch, alarm.kind},
                         [this, alarm](const std::optional<LogFailure>& failure) {
                             std::erase_if(m_answering, [&](const DueAlarm& each) { return holds({alarm}, each); });
                             if (failure)
                                 tellTrouble(*failure);
                             ring();
                         });
}

bool BenchWindow::alarmJustAnswered() const
{
    constexpr qint64 bounceMs = 500;
    return m_answeredAt.isValid() && m_answeredAt.elapsed() < bounceMs;
}

void BenchWindow::tellJump()
{
    const auto& jump = m_parts.bench.newestJump();
    const bool fresh = jump && elapsed(jump->at, m_parts.bench.clock().now()) < jumpTold;
    m_ribbon->setNotice(fresh ? jumpText(jump->jump, *m_words) : QString());
}

} // namespace strandbench
