// SPDX-License-Identifier: GPL-3.0-or-later
// Talking to an open device: a call with its fault, what the device is, and the choice of coding and size.
#pragma once

#include "camera/camera_fault.h"
#include "camera/device_calls.h"
#include "camera/frame.h"

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace strandbench {

/// A request that has a name for the fault when it fails.
struct DeviceRequest {
    unsigned long number;
    const char* name;
};

/// An open device: a number that the calls take, and what a fault calls it.
struct DeviceHandle {
    const DeviceCalls* calls; ///< outlive it
    int number = -1;
    QString name;

    /// Asks again as long as a signal came between; nothing when it was done.
    [[nodiscard]] std::optional<CameraFault> ask(const DeviceRequest& request, void* argument) const;
    /// The fault of the call that has just failed, by its errno.
    [[nodiscard]] CameraFault fault(const char* call, int error) const;
};

/// The largest size that a picture is asked for, in pixels.
inline constexpr QSize mostFrame{1920, 1080};

/// The largest size within mostFrame, else the smallest of all; mostFrame itself when there is none to choose from.
[[nodiscard]] QSize chosenSize(const std::vector<QSize>& sizes);

/// What the device calls itself, when it says that it gives pictures as they come, else the fault.
[[nodiscard]] tl::expected<QString, CameraFault> captureName(const DeviceHandle& device);

/// Sets the device to motion JPEG, or to YUYV where it has no JPEG, at chosenSize(); what it was really set to.
[[nodiscard]] tl::expected<FrameFormat, CameraFault> setFormat(const DeviceHandle& device);

} // namespace strandbench
