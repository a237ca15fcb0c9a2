// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/photo_file.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Why = PhotoFault::Why;

constexpr int proofSide = 64; ///< pixels: small enough to be quick, and every line is decoded

// Marker codes of ITU-T T.81, table B.1.
constexpr uchar fill = 0xff;
constexpr uchar startOfImage = 0xd8;
constexpr uchar endOfImage = 0xd9;
constexpr uchar startOfScan = 0xda;
constexpr uchar firstRestart = 0xd0;
constexpr uchar lastRestart = 0xd7;

uchar byteAt(const QByteArray& bytes, qsizetype at) { return static_cast<uchar>(bytes.at(at)); }

/// The place of the next marker in coded data: not a stuffed zero, not a restart. -1 when there is none.
qsizetype nextMarker(const QByteArray& bytes, qsizetype from)
{
    for (qsizetype at = from; at + 1 < bytes.size(); ++at) {
        const uchar code = byteAt(bytes, at + 1);
        const bool ofTheData = code == 0 || code == fill || (code >= firstRestart && code <= lastRestart);
        if (byteAt(bytes, at) == fill && !ofTheData)
            return at;
    }
    return -1;
}

tl::unexpected<PhotoFault> refused(Why why, const QString& path, const QString& detail = {})
{
    return tl::unexpected(PhotoFault{why, QFileInfo(path).fileName(), detail});
}

tl::expected<QByteArray, PhotoFault> readBytes(const QString& path)
{
    QFile file(path);
    if (!QFileInfo(path).isFile()) // a pipe or a device would keep us waiting
        return refused(Why::CannotRead, path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(Why::CannotRead, path, file.errorString());
    const QByteArray bytes = file.read(mostPhotoBytes + 1);
    if (file.error() != QFileDevice::NoError)
        return refused(Why::CannotRead, path, file.errorString());
    if (bytes.size() > mostPhotoBytes)
        return refused(Why::TooLarge, path);
    return bytes;
}

} // namespace

bool isWholeJpeg(const QByteArray& bytes)
{
    if (bytes.size() < 4 || byteAt(bytes, 0) != fill || byteAt(bytes, 1) != startOfImage)
        return false;
    qsizetype at = 2;
    while (at >= 0 && at + 1 < bytes.size()) {
        const uchar code = byteAt(bytes, at + 1);
        if (byteAt(bytes, at) != fill)
            return false;
        if (code == endOfImage)
            return true;
        if (code == fill) { // filling before a marker
            ++at;
            continue;
        }
        if (at + 3 >= bytes.size())
            return false;
        const qsizetype segment = byteAt(bytes, at + 2) * 256 + byteAt(bytes, at + 3);
        at += 2 + segment;
        if (code == startOfScan)
            at = nextMarker(bytes, at);
    }
    return false;
}

QImage smallPicture(const QByteArray& bytes, const QSize& box)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid()) {
        const bool turned = reader.transformation() & QImageIOHandler::TransformationRotate90;
        const QSize room = turned ? box.transposed() : box;
        if (size.width() > room.width() || size.height() > room.height())
            reader.setScaledSize(size.scaled(room, Qt::KeepAspectRatio).expandedTo({1, 1}));
    }
    return reader.read();
}

QImage smallPictureOf(const QString& path, const QSize& box)
{
    const auto bytes = readBytes(path);
    return bytes ? smallPicture(*bytes, box) : QImage();
}

tl::expected<PhotoFile, PhotoFault> photoOf(const QByteArray& bytes, const QString& name)
{
    if (bytes.size() > mostPhotoBytes)
        return refused(Why::TooLarge, name);
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const bool known = reader.canRead();
    const QByteArray format = reader.format();
    buffer.close();
    if (!known)
        return refused(Why::NoPicture, name);
    if (format != "jpeg" && format != "png")
        return refused(Why::OtherFormat, name, QString::fromLatin1(format));
    if (smallPicture(bytes, {proofSide, proofSide}).isNull() || (format == "jpeg" && !isWholeJpeg(bytes)))
        return refused(Why::NoPicture, name);
    const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    return PhotoFile{bytes, hash, format == "jpeg" ? u"image/jpeg"_s : u"image/png"_s};
}

tl::expected<PhotoFile, PhotoFault> readPhoto(const QString& path)
{
    const auto bytes = readBytes(path);
    if (!bytes)
        return tl::unexpected(bytes.error());
    return photoOf(*bytes, path);
}

std::vector<FolderPicture> picturesIn(const QString& folder)
{
    // Kinds that cannot be kept are listed too: whoever taps one reads why.
    static const QStringList names{u"*.jpg"_s, u"*.jpeg"_s, u"*.png"_s,  u"*.bmp"_s, u"*.gif"_s,
                                   u"*.tif"_s, u"*.tiff"_s, u"*.webp"_s, u"*.heic"_s};
    std::vector<FolderPicture> found;
    for (const QFileInfo& each : QDir(folder).entryInfoList(names, QDir::Files))
        found.push_back({each.absoluteFilePath(), each.lastModified()});
    // Names decide between pictures of one moment: cameras count upwards.
    std::sort(found.begin(), found.end(), [](const FolderPicture& a, const FolderPicture& b) {
        return a.changed != b.changed ? a.changed > b.changed : a.path > b.path;
    });
    return found;
}

} // namespace strandbench
