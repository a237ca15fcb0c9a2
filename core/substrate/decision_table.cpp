// SPDX-License-Identifier: GPL-3.0-or-later
#include "substrate/decision.h"

using namespace Qt::StringLiterals;

namespace strandbench {

const QStringList& DecisionTable::columns()
{
    static const QStringList codes{u"frp"_s,       u"smc"_s,       u"steel"_s,     u"galvanised"_s,
                                   u"aluminium"_s, u"weld_seam"_s, u"bond_seam"_s, u"hole"_s};
    return codes;
}

TableCell DecisionTable::cell(FillerClass filler, const QString& column) const
{
    const auto found = m_cells.find({filler, column});
    return found == m_cells.end() ? TableCell{Suitability::No, u"no_cell"_s} : found->second;
}

} // namespace strandbench
