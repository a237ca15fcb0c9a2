// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on inside a running layer: one tap from its clock.
#pragma once

#include "cure/cure_result.h"
#include "screens/frame/screen.h"

namespace strandbench {

class CureChart;

class CurveScreen final : public Screen {
    Q_OBJECT
public:
    /// The run must hold the case that it was mixed with.
    CurveScreen(const Surroundings& around, const Repair& repair, const BatchRun& run, QWidget* parent = nullptr);

    void tick() override;

private:
    void buildChart(const std::optional<Temperature>& limit);
    void buildFigures(const std::optional<Temperature>& limit);
    [[nodiscard]] Duration sinceHardener() const;

    BatchRun m_run;
    std::optional<CureResult> m_result; ///< empty when the case has none
    CureChart* m_chart = nullptr;
    FitLabel* m_cured = nullptr;
};

} // namespace strandbench
