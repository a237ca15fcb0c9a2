// SPDX-License-Identifier: GPL-3.0-or-later
// The sides of a practice panel on the stage of 200 by 100 units; for panel_view.cpp alone.
#pragma once

#include "pictures/step_stage.h"
#include "practice/evidence.h"

namespace strandbench {

void drawPanelFront(const StepStage& stage, const Evidence& shown);
void drawPanelBack(const StepStage& stage, const Evidence& shown);
void drawPanelEdge(const StepStage& stage, const Evidence& shown);

} // namespace strandbench
