// SPDX-License-Identifier: GPL-3.0-or-later
// What a step marks on this repair's own panel: lines to cut and to drill, bevels, measures. Each draws its marks and
// returns by how much the drawing of the act is moved, so that its tool is at the work; a frame is one of the motion.
#pragma once

#include "pictures/step_stage.h"

namespace strandbench::marks {

QPointF keepOff(const StepStage& stage, const StagedSection& section, int frame);
QPointF bareBeyond(const StepStage& stage, const StagedSection& section, int frame);
QPointF soundLine(const StepStage& stage, const StagedSection& section, int frame);
QPointF cracksToFind(const StepStage& stage, const StagedSection& section, int frame);
QPointF tipsToDrill(const StepStage& stage, const StagedSection& section, int frame);
QPointF squeezedOut(const StepStage& stage, const StagedSection& section, int frame);
QPointF weldBead(const StepStage& stage, const StagedSection& section, int frame);
QPointF bevel(const StepStage& stage, const StagedSection& section, int frame);
QPointF bevelBoth(const StepStage& stage, const StagedSection& section, int frame);
QPointF gouge(const StepStage& stage, const StagedSection& section, int frame);
QPointF upperPanel(const StepStage& stage, const StagedSection& section, int frame);

[[nodiscard]] int framesOfDrilling(const SectionDrawing& drawing);  ///< the drill is set at each tip in turn
[[nodiscard]] int framesOfBevelling(const SectionDrawing& drawing); ///< the disc runs down the cut

} // namespace strandbench::marks
