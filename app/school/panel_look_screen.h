// SPDX-License-Identifier: GPL-3.0-or-later
// A practice panel to be looked at and tried: three sides, the tools of the bench, and what each of them finds.
#pragma once

#include "pictures/panel_view.h"
#include "screens/frame/side_key.h"
#include "words/evidence_words.h"

namespace strandbench {

class PanelLookScreen final : public Screen {
    Q_OBJECT
public:
    /// tried: what was tried before, to which each try is added. Both outlive the screen.
    PanelLookScreen(const Surroundings& around, const PracticePanel& panel, std::vector<PanelTry>& tried,
                    const QString& wayOn, QWidget* parent = nullptr);

Q_SIGNALS:
    void wayOnTapped();

private:
    void buildLook();
    void buildKeys();
    void tryOne(PanelTry what);

    const PracticePanel& m_panel;
    std::vector<PanelTry>& m_tried;
    PanelView* m_view = nullptr;
    FitLabel* m_finds = nullptr;
};

} // namespace strandbench
