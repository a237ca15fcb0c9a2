// SPDX-License-Identifier: GPL-3.0-or-later
// A camera that is not there: it answers the calls of the system as the Linux kernel's "Video for Linux API" says that
// a driver does, and does what a test wants. It minds the order of the calls and counts what was not given back.
#pragma once

#include "camera/device_calls.h"

#include <QByteArray>
#include <QColor>
#include <QSize>

#include <linux/videodev2.h>

#include <deque>
#include <map>
#include <mutex>
#include <vector>

namespace strandbench::test {

/// What the device has to say of itself.
struct FakeSpec {
    struct Coding {
        unsigned pixels = V4L2_PIX_FMT_MJPEG;
        std::vector<QSize> sizes; ///< none: it lists none
    };
    QString path = QStringLiteral("/dev/video0");
    QByteArray card = "Bench camera";
    unsigned able = V4L2_CAP_VIDEO_CAPTURE | V4L2_CAP_STREAMING;
    std::vector<Coding> codings{{V4L2_PIX_FMT_MJPEG, {{640, 480}, {1280, 720}}}};
    unsigned quantization = V4L2_QUANTIZATION_DEFAULT;
    std::map<unsigned long, int> refuses; ///< requests with the errno that each fails with
    int openError = 0;                    ///< the errno of open(); 0: it opens
    bool mapFails = false;
    bool picksOther = false; ///< sets a coding of its own whatever it is asked for
    int interrupts = 0;      ///< each call fails so many times with EINTR before it is done
};

/// One device; may be called from another thread than that of the test.
class FakeCamera {
public:
    explicit FakeCamera(FakeSpec spec = {});
    /// The calls of a machine that has these devices; they outlive the calls.
    [[nodiscard]] static DeviceCalls machineWith(const std::vector<FakeCamera*>& devices);

    /// What it sees from now on, again and again; none: it sends nothing. error: marked as broken on the way.
    void see(const QByteArray& frame, bool error = false);
    void pullOut(); ///< as USB does: the node is gone, and every call to what is open fails with ENODEV
    void plugIn();
    void setOpenError(int error);

    [[nodiscard]] QSize setTo() const; ///< the size of the last VIDIOC_S_FMT
    [[nodiscard]] int opened() const;  ///< how often
    /// Nothing is open, mapped or streaming.
    [[nodiscard]] bool givenBack() const;

private:
    int open();
    int close();
    int ioctl(unsigned long request, void* argument);
    void* map(std::size_t length, off_t offset);
    int unmap(void* start, std::size_t length);
    int poll(pollfd* device);

    int answer(unsigned long request, void* argument);
    int queryCapabilities(v4l2_capability& said) const;
    int listCoding(v4l2_fmtdesc& format) const;
    int listSize(v4l2_frmsizeenum& size) const;
    int setFormat(v4l2_format& format);
    int requestBuffers(v4l2_requestbuffers& request);
    int queryBuffer(v4l2_buffer& buffer) const;
    int queue(const v4l2_buffer& buffer);
    int dequeue(v4l2_buffer& buffer);
    /// True when this call is one that a signal comes between.
    bool interrupted();

    mutable std::mutex m_mutex;
    FakeSpec m_spec;
    QByteArray m_frame;
    bool m_broken = false;
    bool m_there = true;
    bool m_dead = false; ///< what was open when it was pulled out
    int m_interruptsLeft;
    int m_opened = 0;
    int m_open = 0;
    int m_mapped = 0;
    bool m_streaming = false;
    QSize m_size;
    std::vector<QByteArray> m_buffers;
    std::deque<unsigned> m_queued;
};

/// A JPEG of one colour.
[[nodiscard]] QByteArray jpegOf(const QColor& color, const QSize& size = {640, 480});

} // namespace strandbench::test
