// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/bead_book.h"

using namespace Qt::StringLiterals;

namespace strandbench {

void BeadBook::add(const Event& event)
{
    if (const auto* bead = std::get_if<BeadCalibrated>(&event.payload))
        m_beads[bead->hardenerLot] = {*bead, event.at};
}

std::optional<DatedBead> BeadBook::of(const QString& hardenerLot) const
{
    const auto found = m_beads.find(hardenerLot);
    return hardenerLot.isEmpty() || found == m_beads.end() ? std::nullopt : std::optional(found->second);
}

Checked<BeadCalibrated> beadCalibrated(const QString& hardenerLot, const std::vector<LaidBead>& beads)
{
    if (hardenerLot.isEmpty())
        return tl::unexpected(Faults{{u"hardener_lot"_s, {}, FaultKind::Empty, {u"text"_s}}});
    return calibrateBead(beads).map([&](const BeadCalibration& found) {
        return BeadCalibrated{hardenerLot, beads, found.mean, found.spread};
    });
}

} // namespace strandbench
