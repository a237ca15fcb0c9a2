// SPDX-License-Identifier: GPL-3.0-or-later
// A key beside the main thing of a screen: never in the place of the three answers.
#pragma once

#include "screens/job/station_screens.h"

#include <optional>

namespace strandbench {

struct SideKey {
    QString name; ///< object name
    QString title;
    QString second;
    Pictogram sign = Pictogram::None;
    std::function<void()> tapped;
    TapButton::Picture picture = {}; ///< in the sign's place
    QString spoken = {};             ///< what the picture shows, for those who hear the screen
};

/// At least 34 x 20 mm.
[[nodiscard]] TapButton* makeSideKey(const Theme& theme, const SideKey& key, QWidget* parent);

/// 'Photo: as found', with a tick when there is one. Empty when photos are not asked for here.
[[nodiscard]] std::optional<SideKey> photoKey(const Surroundings& around, const Repair& repair, PhotoMoment moment,
                                              const Ways& ways);

} // namespace strandbench
