// SPDX-License-Identifier: GPL-3.0-or-later
// The running batch: from 'hardener in' to edges clear (spreading) and on until it sands (waiting).
#pragma once

#include "pictures/phase_ribbon.h"
#include "screens/frame/screen.h"
#include "screens/job/station_screens.h"
#include "touch/hold_button.h"

namespace strandbench {

class DrawingWidget;

class ClockScreen final : public Screen {
    Q_OBJECT
public:
    enum class Part { Spread, Wait };
    ClockScreen(const Surroundings& around, const Repair& repair, const BatchRun& run, Part part, const Ways& ways,
                QWidget* parent = nullptr);

    void tick() override;
    void setWriting(bool writing) override;

private:
    void buildFigure(QBoxLayout* row);
    void buildKeys(QBoxLayout* row);
    void buildRibbon(QBoxLayout* column);
    [[nodiscard]] QString sourceText() const;
    void askWhere(bool ask);
    void showSpreading(const ClockFace& face);
    void showWaiting(const ClockFace& face);
    void showAct(const QString& drawing); ///< what the hands do now, in motion; empty: nothing to show
    void showHands();                     ///< when two mixes want the hands at once
    TapButton* gelKey(const QString& name, const QString& title, GelPlace place, bool told);

    Repair m_repair;
    BatchRun m_run;
    Part m_part;
    Ways m_ways; ///< copied: the window makes them anew for every screen
    FitLabel* m_figure = nullptr;
    FitLabel* m_until = nullptr;
    FitLabel* m_board = nullptr;
    FitLabel* m_source = nullptr;
    QWidget* m_hands = nullptr;
    FitLabel* m_handsText = nullptr;
    PhaseRibbon* m_ribbon = nullptr;
    DrawingWidget* m_act = nullptr; ///< while spreading
    TapButton* m_gelled = nullptr;
    HoldButton* m_early = nullptr;
    QWidget* m_keys = nullptr;
    QWidget* m_places = nullptr;
};

} // namespace strandbench
