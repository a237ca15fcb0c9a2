// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures in a folder: which there are, one of them read whole to be kept, and a small one of it to look at.
// Reads files; belongs into a worker, not on the glass's own thread.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QImage>
#include <QString>

#include <tl/expected.hpp>

#include <vector>

namespace strandbench {

/// A picture as it is kept: the file's bytes as they are.
struct PhotoFile {
    QByteArray bytes;
    QByteArray hash;   ///< SHA-256 of the bytes
    QString mediaType; ///< "image/jpeg" or "image/png", by what the bytes are and not by the name
};

/// Why a file is not taken as a photo.
struct PhotoFault {
    enum class Why {
        CannotRead,  ///< gone, no right to it, not a file
        TooLarge,    ///< more than mostPhotoBytes
        NoPicture,   ///< nothing that can be shown, or cut short
        OtherFormat, ///< a picture, but neither JPEG nor PNG
    } why = Why::CannotRead;
    QString name;   ///< of the file, or of where the bytes come from
    QString detail; ///< the system's own words
};

inline constexpr qint64 mostPhotoBytes = 20 * 1024 * 1024;

/// Reads a file to be kept. The picture is decoded once, so that what is kept can be shown.
[[nodiscard]] tl::expected<PhotoFile, PhotoFault> readPhoto(const QString& path);
/// The same of bytes that come from elsewhere; name: what a fault calls them.
[[nodiscard]] tl::expected<PhotoFile, PhotoFault> photoOf(const QByteArray& bytes, const QString& name);

/// The picture of these bytes, turned as its camera says and no larger than the box (pixels); null when it is none.
[[nodiscard]] QImage smallPicture(const QByteArray& bytes, const QSize& box);
/// The same of a file, without reading more of it than mostPhotoBytes.
[[nodiscard]] QImage smallPictureOf(const QString& path, const QSize& box);

/// True when the bytes are a JPEG from its first marker to its end of image: a file that is still being written,
/// or was cut short, is not (ITU-T T.81, annex B).
[[nodiscard]] bool isWholeJpeg(const QByteArray& bytes);

struct FolderPicture {
    QString path;
    QDateTime changed; ///< last written
    bool operator==(const FolderPicture&) const = default;
};

/// Files of a folder whose names say that they are pictures, newest first; empty when it cannot be read.
[[nodiscard]] std::vector<FolderPicture> picturesIn(const QString& folder);

} // namespace strandbench
