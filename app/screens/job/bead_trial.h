// SPDX-License-Identifier: GPL-3.0-or-later
// Calibrating the bead of a tube: beads are laid, measured and weighed, three times or more; then their mean is kept.
#pragma once

#include "repair/bead_book.h"
#include "screens/job/figures_screen.h"

namespace strandbench {

/// Beads that were laid and are not kept yet.
struct BeadTrial {
    QString hardenerLot; ///< whose tube it is; empty: not told, and nothing can be calibrated
    std::vector<LaidBead> beads;
};

/// One bead more: its length by the ruler, its mass by the scale.
[[nodiscard]] Screen* makeLayBeadScreen(const Surroundings& around, const BeadTrial& trial, QWidget* parent,
                                        std::function<void()> changeUnits,
                                        const std::function<void(const LaidBead&)>& laid);

/// The beads, their mean and how far they scatter. Kept only when there are enough and they agree.
class BeadTrialScreen final : public Screen {
    Q_OBJECT
public:
    BeadTrialScreen(const Surroundings& around, const BeadTrial& trial, QWidget* parent = nullptr);

Q_SIGNALS:
    void kept(const strandbench::BeadCalibrated& bead);
    void anotherWanted();
    void beginAnew();

private:
    [[nodiscard]] QWidget* beadsCard();
    [[nodiscard]] QWidget* verdictCard();
    [[nodiscard]] QLayout* keys();
    void tellFault(const Fault& fault);

    BeadTrial m_trial;
    Checked<BeadCalibrated> m_found;
    FitLabel* m_mean = nullptr;
    FitLabel* m_verdict = nullptr;
};

/// Which bead the mix goes by: "Bead by the calibration of 2026-11-12: 22.4 mg/mm", "Bead by the sheet: 23.0 mg/mm".
[[nodiscard]] QString beadSource(const Surroundings& around, const ProductSheet& sheet);

} // namespace strandbench
