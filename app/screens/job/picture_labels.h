// SPDX-License-Identifier: GPL-3.0-or-later
// The words on the pictures: every figure in a picture is the plan's figure.
#pragma once

#include "pictures/puddle_picture.h"
#include "pictures/section_picture.h"
#include "words/words.h"

namespace strandbench {

[[nodiscard]] SectionLabels sectionLabels(const Assessment& assessment, const RepairPlan& plan, const Words& words);
[[nodiscard]] PuddleLabels puddleLabels(const Mix& mix, const Words& words);

} // namespace strandbench
