// SPDX-License-Identifier: GPL-3.0-or-later
// What pictures a repair has, by their moment.
#pragma once

#include "repair/repair.h"

namespace strandbench {

/// The newest photo of a moment; null when there is none.
[[nodiscard]] const Kept<PhotoTaken>* newestPhoto(const Repair& repair, PhotoMoment moment);
/// The moments of which there is no photo yet, in order.
[[nodiscard]] std::vector<PhotoMoment> missingPhotos(const Repair& repair);

} // namespace strandbench
