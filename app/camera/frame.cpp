// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera/frame.h"

#include "bench/photo_file.h"
#include "camera/motion_jpeg.h"

#include <QBuffer>

namespace strandbench {
namespace {

constexpr int keptQuality = 92; // chosen by us: a 1920 x 1080 photo of a panel stays below 1 MB

} // namespace

QImage CameraFrame::picture(const QSize& box) const
{
    if (format.coding == FrameFormat::Coding::Jpeg)
        return smallPicture(withHuffmanTables(bytes), box);
    QImage whole = imageOfYuyv(bytes, format.size, format.lineBytes, format.range);
    if (whole.width() <= box.width() && whole.height() <= box.height())
        return whole;
    return whole.scaled(box, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

QByteArray CameraFrame::jpeg() const
{
    if (format.coding == FrameFormat::Coding::Jpeg)
        return withHuffmanTables(bytes);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    const QImage whole = imageOfYuyv(bytes, format.size, format.lineBytes, format.range);
    return whole.save(&buffer, "JPEG", keptQuality) ? buffer.data() : QByteArray();
}

} // namespace strandbench
