// SPDX-License-Identifier: GPL-3.0-or-later
// One camera that is driven: opened, set, streaming. Its calls wait for the device, so it belongs away from the glass's
// own thread.
#pragma once

#include "camera/camera_formats.h"

#include <memory>

namespace strandbench {

/// A device that says that it gives pictures.
struct CameraDevice {
    QString path; ///< "/dev/video0"
    QString name; ///< what it calls itself
    bool operator==(const CameraDevice&) const = default;
};

/// Those that are there now, in the order of their numbers. What does not open or is no camera is left out.
[[nodiscard]] std::vector<CameraDevice> camerasOf(const DeviceCalls& calls);

class Camera final {
public:
    using Opened = tl::expected<std::unique_ptr<Camera>, CameraFault>;
    /// Opens a device, sets it (setFormat) and starts it. calls: outlive the camera.
    [[nodiscard]] static Opened open(const DeviceCalls& calls, const QString& path);
    /// Stops it and gives everything back, also when it was pulled out.
    ~Camera();
    Camera(const Camera&) = delete;
    Camera& operator=(const Camera&) = delete;
    Camera(Camera&&) = delete;
    Camera& operator=(Camera&&) = delete;

    [[nodiscard]] const QString& name() const { return m_device.name; }
    [[nodiscard]] const FrameFormat& format() const { return m_format; }
    /// The next picture. NoPicture when none came in this time, or a broken one: ask again for as long as there is
    /// patience. After any other fault the camera gives no more.
    [[nodiscard]] tl::expected<CameraFrame, CameraFault> next(int timeoutMs);

private:
    struct Buffer {
        void* start;
        std::size_t length;
    };
    explicit Camera(DeviceHandle device) : m_device(std::move(device)) {}
    [[nodiscard]] std::optional<CameraFault> start();
    [[nodiscard]] std::optional<CameraFault> mapBuffer(unsigned index);
    [[nodiscard]] std::optional<CameraFault> queue(unsigned index);
    [[nodiscard]] std::optional<CameraFault> await(int timeoutMs);
    [[nodiscard]] CameraFault noPicture() const;

    DeviceHandle m_device;
    FrameFormat m_format;
    std::vector<Buffer> m_buffers;
    bool m_streaming = false;
};

} // namespace strandbench
