// SPDX-License-Identifier: GPL-3.0-or-later
#include "shop.h"

#include "exchange/rules.h"
#include "exchange/sheets.h"
#include "practice/panel_json.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace strandbench::test {

const std::vector<PracticePanel>& deliveredPanels()
{
    static const std::vector<PracticePanel> panels = [] {
        Checked<std::vector<PracticePanel>> read = readPracticePanels(QStringLiteral(PRACTICE_PANELS));
        if (read)
            return *std::move(read);
        for (const Fault& each : read.error())
            ADD_FAILURE() << each.field.toStdString() << " '" << each.value.toStdString() << "' allowed "
                          << each.allowed.join(u' ').toStdString();
        return std::vector<PracticePanel>{};
    }();
    return panels;
}

const PracticePanel& delivered(const QString& id)
{
    for (const PracticePanel& each : deliveredPanels())
        if (each.id == id)
            return each;
    throw std::logic_error("no panel " + id.toStdString());
}

const PlanningSet& shop()
{
    static const CureEngine engine;
    static const PlanningSet set{builtInTable(), demoCatalogue(), builtInSteps(), {}, engine};
    return set;
}

} // namespace strandbench::test
