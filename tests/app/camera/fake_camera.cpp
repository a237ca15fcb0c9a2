// SPDX-License-Identifier: GPL-3.0-or-later
#include "fake_camera.h"

#include <QBuffer>
#include <QImage>

#include <fcntl.h>
#include <sys/mman.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstring>
#include <thread>

namespace strandbench::test {
namespace {

constexpr int firstNumber = 100; // of the devices when they are open
constexpr std::size_t room = 1U << 22;
constexpr auto aFrame = std::chrono::milliseconds(2);

int failed(int error)
{
    errno = error;
    return -1;
}

template <class Argument> Argument& as(void* argument) { return *static_cast<Argument*>(argument); }

} // namespace

FakeCamera::FakeCamera(FakeSpec spec) : m_spec(std::move(spec)), m_interruptsLeft(m_spec.interrupts) {}

DeviceCalls FakeCamera::machineWith(const std::vector<FakeCamera*>& devices)
{
    const auto at = [devices](int number) { return devices.at(static_cast<std::size_t>(number - firstNumber)); };
    DeviceCalls calls;
    calls.nodes = [devices] {
        QStringList found;
        for (const FakeCamera* each : devices) {
            const std::lock_guard lock(each->m_mutex);
            if (each->m_there)
                found << each->m_spec.path;
        }
        return found;
    };
    calls.open = [devices](const char* path, int flags) {
        if ((flags & O_ACCMODE) != O_RDWR || !(flags & O_NONBLOCK))
            return failed(EINVAL);
        for (std::size_t i = 0; i < devices.size(); ++i)
            if (devices[i]->m_spec.path == QString::fromLocal8Bit(path))
                return devices[i]->open() == -1 ? -1 : firstNumber + static_cast<int>(i);
        return failed(ENOENT);
    };
    calls.close = [at](int device) { return at(device)->close(); };
    calls.ioctl = [at](int device, unsigned long request, void* argument) {
        return at(device)->ioctl(request, argument);
    };
    calls.map = [at](std::size_t length, int device, off_t offset) { return at(device)->map(length, offset); };
    calls.unmap = [devices](void* start, std::size_t length) {
        for (FakeCamera* each : devices)
            if (each->unmap(start, length) == 0)
                return 0;
        return failed(EINVAL);
    };
    calls.poll = [at](pollfd* device, int) { return at(device->fd)->poll(device); };
    return calls;
}

void FakeCamera::see(const QByteArray& frame, bool error)
{
    const std::lock_guard lock(m_mutex);
    m_frame = frame;
    m_broken = error;
}

void FakeCamera::pullOut()
{
    const std::lock_guard lock(m_mutex);
    m_there = false;
    m_dead = m_open > 0;
}

void FakeCamera::plugIn()
{
    const std::lock_guard lock(m_mutex);
    m_there = true;
}

void FakeCamera::setOpenError(int error)
{
    const std::lock_guard lock(m_mutex);
    m_spec.openError = error;
}

QSize FakeCamera::setTo() const
{
    const std::lock_guard lock(m_mutex);
    return m_size;
}

int FakeCamera::opened() const
{
    const std::lock_guard lock(m_mutex);
    return m_opened;
}

bool FakeCamera::givenBack() const
{
    const std::lock_guard lock(m_mutex);
    return m_open == 0 && m_mapped == 0 && !m_streaming;
}

bool FakeCamera::interrupted()
{
    if (m_interruptsLeft-- > 0)
        return true;
    m_interruptsLeft = m_spec.interrupts;
    return false;
}

int FakeCamera::open()
{
    const std::lock_guard lock(m_mutex);
    if (interrupted())
        return failed(EINTR);
    if (!m_there)
        return failed(ENOENT);
    if (m_spec.openError != 0)
        return failed(m_spec.openError);
    ++m_opened;
    return ++m_open;
}

int FakeCamera::close()
{
    const std::lock_guard lock(m_mutex);
    if (m_open == 0)
        return failed(EBADF);
    if (--m_open == 0) {
        m_streaming = false;
        m_dead = false;
    }
    return 0;
}

int FakeCamera::ioctl(unsigned long request, void* argument)
{
    const std::lock_guard lock(m_mutex);
    if (m_open == 0)
        return failed(EBADF);
    if (interrupted())
        return failed(EINTR);
    if (m_dead)
        return failed(ENODEV);
    const auto refused = m_spec.refuses.find(request);
    return refused != m_spec.refuses.end() ? failed(refused->second) : answer(request, argument);
}

int FakeCamera::answer(unsigned long request, void* argument)
{
    switch (request) {
    case VIDIOC_QUERYCAP:
        return queryCapabilities(as<v4l2_capability>(argument));
    case VIDIOC_ENUM_FMT:
        return listCoding(as<v4l2_fmtdesc>(argument));
    case VIDIOC_ENUM_FRAMESIZES:
        return listSize(as<v4l2_frmsizeenum>(argument));
    case VIDIOC_S_FMT:
        return setFormat(as<v4l2_format>(argument));
    case VIDIOC_REQBUFS:
        return requestBuffers(as<v4l2_requestbuffers>(argument));
    case VIDIOC_QUERYBUF:
        return queryBuffer(as<v4l2_buffer>(argument));
    case VIDIOC_QBUF:
        return queue(as<v4l2_buffer>(argument));
    case VIDIOC_DQBUF:
        return dequeue(as<v4l2_buffer>(argument));
    case VIDIOC_STREAMON:
        m_streaming = true;
        return m_queued.empty() ? failed(EINVAL) : 0;
    case VIDIOC_STREAMOFF:
        m_streaming = false;
        m_queued.clear();
        return 0;
    default:
        return failed(ENOTTY);
    }
}

int FakeCamera::queryCapabilities(v4l2_capability& said) const
{
    const auto length = std::min<std::size_t>(sizeof said.card, static_cast<std::size_t>(m_spec.card.size()));
    std::memcpy(said.card, m_spec.card.constData(), length);
    // The whole device can more than this node of it, as with nodes for what is told beside the pictures.
    said.capabilities = V4L2_CAP_VIDEO_CAPTURE | V4L2_CAP_STREAMING | V4L2_CAP_META_CAPTURE | V4L2_CAP_DEVICE_CAPS;
    said.device_caps = m_spec.able;
    return 0;
}

int FakeCamera::listCoding(v4l2_fmtdesc& format) const
{
    if (format.type != V4L2_BUF_TYPE_VIDEO_CAPTURE || format.index >= m_spec.codings.size())
        return failed(EINVAL);
    format.pixelformat = m_spec.codings[format.index].pixels;
    return 0;
}

int FakeCamera::listSize(v4l2_frmsizeenum& size) const
{
    for (const FakeSpec::Coding& each : m_spec.codings) {
        if (each.pixels != size.pixel_format || size.index >= each.sizes.size())
            continue;
        size.type = V4L2_FRMSIZE_TYPE_DISCRETE;
        size.discrete.width = static_cast<__u32>(each.sizes[size.index].width());
        size.discrete.height = static_cast<__u32>(each.sizes[size.index].height());
        return 0;
    }
    return failed(EINVAL);
}

int FakeCamera::setFormat(v4l2_format& format)
{
    v4l2_pix_format& set = format.fmt.pix;
    m_size = {static_cast<int>(set.width), static_cast<int>(set.height)};
    if (m_spec.picksOther)
        set.pixelformat = V4L2_PIX_FMT_NV12;
    set.bytesperline = set.pixelformat == V4L2_PIX_FMT_YUYV ? 2 * set.width : 0;
    set.quantization = m_spec.quantization;
    set.colorspace = V4L2_COLORSPACE_SRGB;
    return 0;
}

int FakeCamera::requestBuffers(v4l2_requestbuffers& request)
{
    request.count = std::min(request.count, 3U); // fewer than asked for, as a driver may
    m_buffers.assign(request.count, QByteArray(static_cast<qsizetype>(room), '\0'));
    m_queued.clear();
    return 0;
}

int FakeCamera::queryBuffer(v4l2_buffer& buffer) const
{
    if (buffer.index >= m_buffers.size())
        return failed(EINVAL);
    buffer.length = room;
    buffer.m.offset = buffer.index * 4096;
    return 0;
}

void* FakeCamera::map(std::size_t length, off_t offset)
{
    const std::lock_guard lock(m_mutex);
    const auto index = static_cast<std::size_t>(offset / 4096);
    if (m_spec.mapFails || index >= m_buffers.size() || length != room) {
        errno = ENOMEM;
        return MAP_FAILED;
    }
    ++m_mapped;
    return m_buffers[index].data();
}

int FakeCamera::unmap(void* start, std::size_t length)
{
    const std::lock_guard lock(m_mutex);
    for (const QByteArray& each : m_buffers) {
        if (each.constData() == start && length == room) {
            --m_mapped;
            return 0;
        }
    }
    return failed(EINVAL);
}

int FakeCamera::queue(const v4l2_buffer& buffer)
{
    if (buffer.index >= m_buffers.size() || buffer.memory != V4L2_MEMORY_MMAP ||
        std::count(m_queued.begin(), m_queued.end(), buffer.index) != 0)
        return failed(EINVAL);
    m_queued.push_back(buffer.index);
    return 0;
}

int FakeCamera::dequeue(v4l2_buffer& buffer)
{
    if (!m_streaming)
        return failed(EINVAL);
    if (m_frame.isEmpty() || m_queued.empty())
        return failed(EAGAIN);
    buffer.index = m_queued.front();
    m_queued.pop_front();
    buffer.bytesused = static_cast<__u32>(m_frame.size());
    buffer.flags = m_broken ? V4L2_BUF_FLAG_ERROR : 0;
    std::memcpy(m_buffers[buffer.index].data(), m_frame.constData(), static_cast<std::size_t>(m_frame.size()));
    return 0;
}

int FakeCamera::poll(pollfd* device)
{
    std::this_thread::sleep_for(aFrame); // it gives no pictures faster than this
    const std::lock_guard lock(m_mutex);
    if (interrupted())
        return failed(EINTR);
    device->revents = m_dead ? POLLERR | POLLHUP : POLLIN;
    return m_dead || !m_frame.isEmpty() ? 1 : 0;
}

QByteArray jpegOf(const QColor& color, const QSize& size)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(color);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    return image.save(&buffer, "JPEG", 90) ? buffer.data() : QByteArray();
}

} // namespace strandbench::test
