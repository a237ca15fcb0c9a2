// SPDX-License-Identifier: GPL-3.0-or-later
// The screen of every station of the walk: from a repair's next step to what is shown.
#pragma once

#include "screens/frame/screen.h"

namespace strandbench {

/// What screens ask the window to do besides acting: each one hop away.
struct Ways {
    std::function<void(const Look&)> look; ///< look at another step of this repair
    std::function<void()> present;         ///< back to the present step
    std::function<void(Question)> howToTell;
    std::vector<FoundBy> foundBy; ///< what told the substrate, as chosen so far
    std::function<void()> why;
    std::function<void()> changeUnits;
    std::function<void()> home;
    std::function<void()> beadAsLaid;                      ///< of the batch that is mixed next
    std::function<void(const std::optional<Mass>&)> weigh; ///< the same, by weight; the filler where it is known
    std::function<void(BatchRef)> curve;                   ///< of a running batch
    std::function<void(BatchRef)> readWhileCuring;         ///< air and panel, while a batch cures
    std::function<void()> answers;                         ///< everything answered so far, to change one of them
    std::function<void(BatchRef)> lots;                    ///< product and lots of the batch that is mixed next
    std::function<void()> stock;                           ///< what the shelf says of the plan
    std::function<void()> photos;                          ///< pictures of this repair
    std::function<void(PhotoMoment)> photo;                ///< choose one for a moment, and come back
    std::function<void()> harm;                            ///< what can hurt at the step shown
    std::function<void()> notes;                           ///< remarks of this repair
    std::function<void(const std::vector<QString>&)> overrideStops; ///< codes; asks why, then for the PIN
    // The bench beside this repair:
    std::function<void(const QUuid&)> repair;      ///< another repair
    std::function<void()> rework;                  ///< takes in what was returned once more, as a repair of its own
    std::function<void(const Settings&)> remember; ///< keeps and saves them; the screen stays
    std::function<void(const QString&)> whichLot;  ///< asks what a scanned lot is of: filler or hardener
    std::function<void()> readAgain;               ///< air and panel, before the batch that is mixed next
};

/// The screen of the repair's next step.
[[nodiscard]] Screen* screenOf(const Surroundings& around, const Repair& repair, const Ways& ways, QWidget* parent);
/// The screen of a step that is only looked at.
[[nodiscard]] Screen* lookScreenOf(const Surroundings& around, const Repair& repair, const Look& look, const Ways& ways,
                                   QWidget* parent);

/// Where 'back' leads from the present step, or from a look: the step before it; empty for home.
[[nodiscard]] std::optional<Look> lookBefore(const Repair& repair, const std::optional<Look>& from);

} // namespace strandbench
