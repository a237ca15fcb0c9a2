// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/camera_formats.h"

#include <linux/videodev2.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Why = CameraFault::Why;

constexpr unsigned mostListed = 256; // no device has as many; one that never ends its list is not waited for

Why whyOf(int error)
{
    switch (error) {
    case ENODEV:
    case ENXIO:
    case ENOENT:
        return Why::Gone;
    case EBUSY:
        return Why::InUse;
    case EACCES:
    case EPERM:
        return Why::NotAllowed;
    default:
        return Why::Refused;
    }
}

/// A device's own text: at most as long as its field, of what can be printed.
template <std::size_t Size> QString textOf(const __u8 (&field)[Size])
{
    const auto* first = reinterpret_cast<const char*>(static_cast<const __u8*>(field));
    QString text;
    for (const QChar each : QString::fromUtf8(first, static_cast<qsizetype>(strnlen(first, Size))))
        text += each.isPrint() ? each : QChar(u' ');
    return text.simplified();
}

/// Codings that the device lists; what ends the list is no fault unless the device is gone.
tl::expected<std::vector<__u32>, CameraFault> codingsOf(const DeviceHandle& device)
{
    std::vector<__u32> found;
    for (__u32 i = 0; i < mostListed; ++i) {
        v4l2_fmtdesc format{};
        format.index = i;
        format.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
        if (const auto fault = device.ask({VIDIOC_ENUM_FMT, "VIDIOC_ENUM_FMT"}, &format)) {
            if (fault->error != EINVAL)
                return tl::unexpected(*fault);
            break;
        }
        found.push_back(format.pixelformat);
    }
    return found;
}

QSize sizeOf(__u32 width, __u32 height)
{
    constexpr __u32 most = 1U << 15; // larger than any sensor; a size beyond an int is none
    return {static_cast<int>(std::min(width, most)), static_cast<int>(std::min(height, most))};
}

/// The largest of a range of sizes that is within mostFrame, in the range's own steps.
QSize largestOf(const v4l2_frmsize_stepwise& range)
{
    const auto along = [](__u32 least, __u32 most, __u32 step, int wanted) {
        const auto room = static_cast<__u32>(wanted);
        const __u32 upTo = std::min(most, room);
        return upTo < least ? least : least + (upTo - least) / std::max(step, 1U) * std::max(step, 1U);
    };
    return sizeOf(along(range.min_width, range.max_width, range.step_width, mostFrame.width()),
                  along(range.min_height, range.max_height, range.step_height, mostFrame.height()));
}

/// A device need not list its sizes: then there is none to choose from.
std::vector<QSize> sizesOf(const DeviceHandle& device, __u32 coding)
{
    std::vector<QSize> found;
    for (__u32 i = 0; i < mostListed; ++i) {
        v4l2_frmsizeenum size{};
        size.index = i;
        size.pixel_format = coding;
        if (device.ask({VIDIOC_ENUM_FRAMESIZES, "VIDIOC_ENUM_FRAMESIZES"}, &size))
            break;
        if (size.type != V4L2_FRMSIZE_TYPE_DISCRETE)
            return {largestOf(size.stepwise)};
        found.push_back(sizeOf(size.discrete.width, size.discrete.height));
    }
    return found;
}

FrameFormat formatOf(const v4l2_pix_format& set, FrameFormat::Coding coding)
{
    FrameFormat format{coding, sizeOf(set.width, set.height), static_cast<int>(std::min(set.bytesperline, 1U << 17)),
                       SampleRange::Limited};
    if (format.lineBytes == 0)
        format.lineBytes = 2 * format.size.width();
    const auto range = set.quantization != V4L2_QUANTIZATION_DEFAULT
                           ? static_cast<v4l2_quantization>(set.quantization)
                           : V4L2_MAP_QUANTIZATION_DEFAULT(false, set.colorspace, set.ycbcr_enc);
    if (range == V4L2_QUANTIZATION_FULL_RANGE)
        format.range = SampleRange::Full;
    return format;
}

} // namespace

std::optional<CameraFault> DeviceHandle::ask(const DeviceRequest& request, void* argument) const
{
    while (calls->ioctl(number, request.number, argument) == -1)
        if (const int error = errno; error != EINTR)
            return fault(request.name, error);
    return std::nullopt;
}

CameraFault DeviceHandle::fault(const char* call, int error) const
{
    return {whyOf(error), name, QString::fromLatin1(call), error, qt_error_string(error)};
}

QSize chosenSize(const std::vector<QSize>& sizes)
{
    const auto area = [](const QSize& size) { return qint64{size.width()} * size.height(); };
    const auto smaller = [&](const QSize& a, const QSize& b) { return area(a) < area(b); };
    std::vector<QSize> within;
    std::copy_if(sizes.begin(), sizes.end(), std::back_inserter(within), [](const QSize& each) {
        return each.width() <= mostFrame.width() && each.height() <= mostFrame.height();
    });
    if (!within.empty())
        return *std::max_element(within.begin(), within.end(), smaller);
    return sizes.empty() ? mostFrame : *std::min_element(sizes.begin(), sizes.end(), smaller);
}

tl::expected<QString, CameraFault> captureName(const DeviceHandle& device)
{
    v4l2_capability said{};
    if (auto fault = device.ask({VIDIOC_QUERYCAP, "VIDIOC_QUERYCAP"}, &said)) {
        if (fault->error == ENOTTY || fault->error == EINVAL)
            fault->why = Why::NoCapture; // a device of another kind
        return tl::unexpected(*fault);
    }
    const QString card = textOf(said.card);
    const QString name = card.isEmpty() ? device.name : card;
    // capabilities speak of the whole device, device_caps of this node of it alone.
    const __u32 able = said.capabilities & V4L2_CAP_DEVICE_CAPS ? said.device_caps : said.capabilities;
    constexpr __u32 needed = V4L2_CAP_VIDEO_CAPTURE | V4L2_CAP_STREAMING;
    if ((able & needed) != needed)
        return tl::unexpected(CameraFault{Why::NoCapture, name, {}, 0, {}});
    return name;
}

tl::expected<FrameFormat, CameraFault> setFormat(const DeviceHandle& device)
{
    using Coding = FrameFormat::Coding;
    static constexpr std::array wanted{std::pair{V4L2_PIX_FMT_MJPEG, Coding::Jpeg},
                                       std::pair{V4L2_PIX_FMT_JPEG, Coding::Jpeg},
                                       std::pair{V4L2_PIX_FMT_YUYV, Coding::Yuyv}};
    const auto listed = codingsOf(device);
    if (!listed)
        return tl::unexpected(listed.error());
    for (const auto& [pixels, coding] : wanted) {
        if (std::find(listed->begin(), listed->end(), pixels) == listed->end())
            continue;
        const QSize size = chosenSize(sizesOf(device, pixels));
        v4l2_format format{};
        format.type = V4L2_BUF_TYPE_VIDEO_CAPTURE;
        format.fmt.pix.width = static_cast<__u32>(size.width());
        format.fmt.pix.height = static_cast<__u32>(size.height());
        format.fmt.pix.pixelformat = pixels;
        format.fmt.pix.field = V4L2_FIELD_ANY;
        if (const auto fault = device.ask({VIDIOC_S_FMT, "VIDIOC_S_FMT"}, &format))
            return tl::unexpected(*fault);
        if (format.fmt.pix.pixelformat == pixels) // else it was set to what the device likes better
            return formatOf(format.fmt.pix, coding);
    }
    return tl::unexpected(CameraFault{Why::NoFormat, device.name, {}, 0, {}});
}

} // namespace strandbench
