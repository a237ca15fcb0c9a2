// SPDX-License-Identifier: GPL-3.0-or-later
// The few calls of the system that a camera needs, as values: the machine's own, or a test's. Their meaning is that of
// POSIX and of the Linux kernel's "Video for Linux API".
#pragma once

#include <QStringList>

#include <poll.h>
#include <sys/types.h>

#include <functional>

namespace strandbench {

/// As the system has them: -1 (map: MAP_FAILED) says that errno names what went wrong. They are called from the thread
/// that drives a camera.
struct DeviceCalls {
    std::function<QStringList()> nodes; ///< paths of what may be a camera: /dev/video0, /dev/video1 and so on
    std::function<int(const char* path, int flags)> open;
    std::function<int(int device)> close;
    std::function<int(int device, unsigned long request, void* argument)> ioctl;
    std::function<void*(std::size_t length, int device, off_t offset)> map; ///< shared, to read and write
    std::function<int(void* start, std::size_t length)> unmap;
    std::function<int(pollfd* device, int timeoutMs)> poll; ///< of one device
};

/// The machine's own.
[[nodiscard]] DeviceCalls systemCalls();

} // namespace strandbench
