// SPDX-License-Identifier: GPL-3.0-or-later
// What a step's picture is made of: this repair's panel in the state that the step finds it in, what is marked on it
// by this repair's own measures, and the drawing of the act.
#pragma once

#include "pictures/step_stage.h"

namespace strandbench {

enum class SceneGround {
    None,         ///< the act alone
    Above,        ///< the panel from above with its damage
    AbovePainted, ///< likewise, still in its paint, bare around the damage
    AboveFilled,  ///< likewise, filled and skimmed
    AsFound,      ///< in section
    Prepared,
    PreparedBack, ///< with the back face up
    Filled,
};

struct StepScene {
    const char* code;
    SceneGround ground;
    QRectF section; ///< where the section stands on the stage
    /// What this repair's own figures mark, under the act; and where the act goes. Null: where it is drawn.
    QPointF (*mark)(const StepStage& stage, const StagedSection& section, int frame);
    int (*frames)(const SectionDrawing& drawing); ///< null: one
};

/// The scenes of every step that has a picture, in the order of the work.
[[nodiscard]] const std::vector<StepScene>& stepScenes();
/// The scene of a step, or of another step with the same act; null when it has none.
[[nodiscard]] const StepScene* sceneOf(const QString& step);

void playScene(const StepStage& stage, const StepScene& scene, int frame);

} // namespace strandbench
