// SPDX-License-Identifier: GPL-3.0-or-later
// Settings and assumptions that a screen changes: kept in their files, and shown.
#include "screens/job/in_hand.h"
#include "shell/bench_window.h"

namespace strandbench {

void BenchWindow::changeUnits()
{
    Settings wanted = m_parts.settings;
    wanted.units = wanted.units == UnitSystem::Metric ? UnitSystem::UsCustomary : UnitSystem::Metric;
    changeSettings(wanted, m_place);
}

void BenchWindow::changeSettings(const Settings& wanted, Place next)
{
    const bool saved = save(wanted);
    // The tap's own button goes with the old screens: let it finish first.
    QMetaObject::invokeMethod(
        this,
        [this, wanted, next, saved] {
            m_place = next;
            apply(wanted);
            tellUnlessSaved(saved);
        },
        Qt::QueuedConnection);
}

void BenchWindow::remember(const Settings& wanted, std::optional<Place> next)
{
    m_parts.settings = wanted;
    m_parts.bench.setHardenerLot(inhand::lotInUse(wanted, hardenerKey));
    planBackups();
    const bool saved = save(wanted);
    if (next)
        place(*next);
    tellUnlessSaved(saved);
}

void BenchWindow::changeAssumptions(const Assumptions& wanted)
{
    const AssumptionBook& book = m_parts.bench.changeAssumptions(wanted);
    const bool kept = m_parts.keepAssumptions && m_parts.keepAssumptions(book);
    m_setUp.detail.clear();
    place(Place::SetUp);
    tellUnlessSaved(kept);
}

void BenchWindow::tellUnlessSaved(bool saved)
{
    if (!saved)
        m_screen->showTrouble(tr("The set-up could not be saved."), tr("It holds until the program is closed."));
}

bool BenchWindow::save(const Settings& settings) const
{
    return !m_parts.bench.looksOnly() && m_parts.settingsFile.save(settings); // they are the other copy's
}

} // namespace strandbench
