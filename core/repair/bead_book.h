// SPDX-License-Identifier: GPL-3.0-or-later
// What the tubes of the bench's hardener lay, as they were calibrated: made from events alone.
#pragma once

#include "repair/event.h"

#include <map>

namespace strandbench {

struct DatedBead {
    BeadCalibrated bead;
    Instant at;
};

class BeadBook {
public:
    /// Takes in one more event; most are none of its business.
    void add(const Event& event);
    /// The newest of a lot. A nozzle belongs to its tube: of a lot that was not calibrated, or not told, there is none.
    [[nodiscard]] std::optional<DatedBead> of(const QString& hardenerLot) const;
    [[nodiscard]] bool empty() const { return m_beads.empty(); }

private:
    std::map<QString, DatedBead> m_beads;
};

/// The act of a calibration. Faults as calibrateBead() has them; besides "hardener_lot" (Empty).
[[nodiscard]] Checked<BeadCalibrated> beadCalibrated(const QString& hardenerLot, const std::vector<LaidBead>& beads);

} // namespace strandbench
