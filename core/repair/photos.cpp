// SPDX-License-Identifier: GPL-3.0-or-later
#include "repair/photos.h"

namespace strandbench {

const Kept<PhotoTaken>* newestPhoto(const Repair& repair, PhotoMoment moment)
{
    const Kept<PhotoTaken>* newest = nullptr;
    for (const Kept<PhotoTaken>& each : repair.photos)
        if (each.what.moment == moment)
            newest = &each;
    return newest;
}

std::vector<PhotoMoment> missingPhotos(const Repair& repair)
{
    std::vector<PhotoMoment> missing;
    for (const auto& [moment, code] : Codes<PhotoMoment>::table)
        if (!newestPhoto(repair, moment))
            missing.push_back(moment);
    return missing;
}

} // namespace strandbench
