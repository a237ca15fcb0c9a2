// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/camera.h"

#include "bench/photo_file.h"

#include <QDeadlineTimer>

#include <fcntl.h>
#include <linux/videodev2.h>
#include <sys/mman.h>

#include <algorithm>
#include <cerrno>

namespace strandbench {
namespace {

using Why = CameraFault::Why;

constexpr unsigned wantedBuffers = 4; // one is read while others fill

/// An open device, or why it does not open. It is asked without waiting: a picture is waited for with poll().
tl::expected<DeviceHandle, CameraFault> openedDevice(const DeviceCalls& calls, const QString& path)
{
    DeviceHandle device{&calls, -1, path};
    const QByteArray name = path.toLocal8Bit();
    do {
        device.number = calls.open(name.constData(), O_RDWR | O_NONBLOCK | O_CLOEXEC);
    } while (device.number == -1 && errno == EINTR);
    if (device.number == -1)
        return tl::unexpected(device.fault("open", errno));
    return device;
}

v4l2_buffer bufferOf(unsigned index)
{
    v4l2_buffer buffer{};
    buffer.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
    buffer.memory = V4L2_MEMORY_MMAP;
    buffer.index = index;
    return buffer;
}

} // namespace

std::vector<CameraDevice> camerasOf(const DeviceCalls& calls)
{
    std::vector<CameraDevice> found;
    for (const QString& path : calls.nodes()) {
        const auto device = openedDevice(calls, path);
        if (!device)
            continue;
        if (const auto name = captureName(*device))
            found.push_back({path, *name});
        calls.close(device->number);
    }
    return found;
}

Camera::Opened Camera::open(const DeviceCalls& calls, const QString& path)
{
    const auto device = openedDevice(calls, path);
    if (!device)
        return tl::unexpected(device.error());
    std::unique_ptr<Camera> camera(new Camera(*device)); // from here on it is closed whatever happens
    const auto name = captureName(camera->m_device);
    if (!name)
        return tl::unexpected(name.error());
    camera->m_device.name = *name;
    const auto format = setFormat(camera->m_device);
    if (!format)
        return tl::unexpected(format.error());
    camera->m_format = *format;
    if (const auto fault = camera->start())
        return tl::unexpected(*fault);
    return camera;
}

Camera::~Camera()
{
    int type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
    if (m_streaming)
        (void)m_device.ask({VIDIOC_STREAMOFF, "VIDIOC_STREAMOFF"}, &type); // one that is gone is off already
    for (const Buffer& each : m_buffers)
        m_device.calls->unmap(each.start, each.length);
    m_device.calls->close(m_device.number); // not again after EINTR: Linux has closed it then
}

std::optional<CameraFault> Camera::start()
{
    v4l2_requestbuffers request{};
    request.count = wantedBuffers;
    request.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
    request.memory = V4L2_MEMORY_MMAP;
    if (auto fault = m_device.ask({VIDIOC_REQBUFS, "VIDIOC_REQBUFS"}, &request))
        return fault;
    if (request.count == 0)
        return m_device.fault("VIDIOC_REQBUFS", ENOMEM);
    for (unsigned i = 0; i < request.count; ++i)
        if (auto fault = mapBuffer(i))
            return fault;
    for (unsigned i = 0; i < request.count; ++i)
        if (auto fault = queue(i))
            return fault;
    int type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
    auto fault = m_device.ask({VIDIOC_STREAMON, "VIDIOC_STREAMON"}, &type);
    m_streaming = !fault;
    return fault;
}

std::optional<CameraFault> Camera::mapBuffer(unsigned index)
{
    v4l2_buffer buffer = bufferOf(index);
    if (auto fault = m_device.ask({VIDIOC_QUERYBUF, "VIDIOC_QUERYBUF"}, &buffer))
        return fault;
    void* start = m_device.calls->map(buffer.length, m_device.number, static_cast<off_t>(buffer.m.offset));
    if (start == MAP_FAILED)
        return m_device.fault("mmap", errno);
    m_buffers.push_back({start, buffer.length});
    return std::nullopt;
}

std::optional<CameraFault> Camera::queue(unsigned index)
{
    v4l2_buffer buffer = bufferOf(index);
    return m_device.ask({VIDIOC_QBUF, "VIDIOC_QBUF"}, &buffer);
}

CameraFault Camera::noPicture() const { return {Why::NoPicture, name(), {}, 0, {}}; }

std::optional<CameraFault> Camera::await(int timeoutMs)
{
    const QDeadlineTimer deadline(timeoutMs);
    pollfd waited{m_device.number, POLLIN, 0};
    while (true) {
        const int ready = m_device.calls->poll(&waited, static_cast<int>(deadline.remainingTime()));
        if (ready > 0)
            return std::nullopt; // also when it is gone: taking the buffer says so
        if (ready == 0)
            return noPicture();
        if (errno != EINTR)
            return m_device.fault("poll", errno);
    }
}

tl::expected<CameraFrame, CameraFault> Camera::next(int timeoutMs)
{
    if (const auto fault = await(timeoutMs))
        return tl::unexpected(*fault);
    v4l2_buffer buffer = bufferOf(0);
    if (const auto fault = m_device.ask({VIDIOC_DQBUF, "VIDIOC_DQBUF"}, &buffer))
        return tl::unexpected(fault->error == EAGAIN ? noPicture() : *fault);
    if (buffer.index >= m_buffers.size())
        return tl::unexpected(m_device.fault("VIDIOC_DQBUF", ERANGE));
    const Buffer& from = m_buffers[buffer.index];
    const std::size_t used = std::min<std::size_t>(buffer.bytesused, from.length);
    CameraFrame frame{QByteArray(static_cast<const char*>(from.start), static_cast<qsizetype>(used)), m_format};
    if (const auto fault = queue(buffer.index))
        return tl::unexpected(*fault);
    const bool whole = m_format.coding == FrameFormat::Coding::Jpeg
                           ? isWholeJpeg(frame.bytes)
                           : frame.bytes.size() >= qsizetype{m_format.lineBytes} * m_format.size.height();
    if (!whole || (buffer.flags & V4L2_BUF_FLAG_ERROR))
        return tl::unexpected(noPicture());
    return frame;
}

} // namespace strandbench
