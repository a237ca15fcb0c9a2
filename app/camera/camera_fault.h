// SPDX-License-Identifier: GPL-3.0-or-later
// Why a camera gives no picture.
#pragma once

#include <QString>

namespace strandbench {

struct CameraFault {
    enum class Why {
        Gone,       ///< pulled out, or not there any more
        InUse,      ///< another program has it
        NotAllowed, ///< no right to it
        NoCapture,  ///< a device, but none that gives pictures as they come
        NoFormat,   ///< gives them neither as JPEG nor as YUYV
        NoPicture,  ///< none came in the time allowed, or only broken ones
        Refused,    ///< a call failed in another way
    } why = Why::Refused;
    QString device; ///< what the device calls itself, else its path
    QString call;   ///< the call that failed: "VIDIOC_S_FMT"; empty when none did
    int error = 0;  ///< its errno
    QString detail; ///< the system's words for it
    bool operator==(const CameraFault&) const = default;
};

} // namespace strandbench
