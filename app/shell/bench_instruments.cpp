// SPDX-License-Identifier: GPL-3.0-or-later
// Weighing a mix, and calibrating the bead of a tube.
#include "screens/job/weigh_screen.h"
#include "shell/bench_window.h"

namespace strandbench {

Screen* BenchWindow::makeWeigh(const Repair& repair)
{
    return makeWeighScreen(*m_around, repair, *nextStep(repair).batch, std::exchange(m_weighed, std::nullopt), this,
                           [this] { changeUnits(); });
}

void BenchWindow::beginBead(const QString& hardenerLot, Place after)
{
    if (m_trial.hardenerLot != hardenerLot)
        m_trial = {hardenerLot, {}};
    m_layBead = !hardenerLot.isEmpty() && m_trial.beads.empty();
    m_afterBead = after;
    place(Place::BeadTrial);
}

Screen* BenchWindow::makeBeadTrial()
{
    if (m_layBead)
        return makeLayBeadScreen(
            *m_around, m_trial, this, [this] { changeUnits(); },
            [this](const LaidBead& bead) {
                m_trial.beads.push_back(bead);
                dropDraft();
                m_layBead = m_trial.beads.size() < BeadCalibration::atLeast;
                place(Place::BeadTrial);
            });
    auto* screen = new BeadTrialScreen(*m_around, m_trial, this);
    const auto another = [this] {
        m_layBead = true;
        place(Place::BeadTrial);
    };
    connect(screen, &BeadTrialScreen::anotherWanted, this, another);
    connect(screen, &BeadTrialScreen::beginAnew, this, [this, another] {
        m_trial.beads.clear();
        another();
    });
    connect(screen, &BeadTrialScreen::kept, this, [this](const BeadCalibrated& bead) {
        write(benchSubject(), bead, {}, [this] {
            m_trial = {};
            place(m_afterBead);
        });
    });
    return screen;
}

} // namespace strandbench
