// SPDX-License-Identifier: GPL-3.0-or-later
// Which files are taken as photos. Pictures come from Qt's own writers.
#include "bench/photo_file.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

QByteArray encoded(const char* format, QSize size = {320, 200})
{
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x)
            image.setPixel(x, y, qRgb(x * 7 % 256, y * 5 % 256, (x * y) % 256));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(image.save(&buffer, format));
    return bytes;
}

class PhotoFiles : public testing::Test {
protected:
    QString put(const QString& name, const QByteArray& bytes)
    {
        QFile file(m_folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(bytes), bytes.size());
        return file.fileName();
    }
    PhotoFault::Why whyNot(const QString& path)
    {
        const auto read = readPhoto(path);
        EXPECT_FALSE(read.has_value());
        return read ? PhotoFault::Why::CannotRead : read.error().why;
    }
    QTemporaryDir m_folder;
};

TEST_F(PhotoFiles, AreKeptAsTheyAreByContentNotByName)
{
    const QByteArray png = encoded("PNG");
    const auto read = readPhoto(put(u"says.jpg"_s, png));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->mediaType, u"image/png"_s);
    EXPECT_EQ(read->bytes, png);
    const auto jpeg = readPhoto(put(u"one.jpeg"_s, encoded("JPEG")));
    ASSERT_TRUE(jpeg.has_value());
    EXPECT_EQ(jpeg->mediaType, u"image/jpeg"_s);
}

TEST_F(PhotoFiles, CutShortAnywhereAreRefused)
{
    for (const char* format : {"JPEG", "PNG"}) {
        const QByteArray whole = encoded(format);
        for (const qsizetype left :
             {whole.size() - 2, whole.size() / 2, whole.size() / 10, qsizetype(3), qsizetype(0)}) {
            const QString path = put(u"cut"_s, whole.left(left));
            if (format == QByteArray("PNG") && left == whole.size() - 2)
                continue; // all but the check of the empty last chunk: the picture itself is whole
            EXPECT_EQ(whyNot(path), PhotoFault::Why::NoPicture) << format << ' ' << left;
        }
    }
}

TEST_F(PhotoFiles, OfOtherKindsTooLargeOrGoneAreRefusedByTheirName)
{
    EXPECT_EQ(whyNot(put(u"a.bmp"_s, encoded("BMP"))), PhotoFault::Why::OtherFormat);
    const QByteArray whole = encoded("JPEG");
    const qsizetype room = mostPhotoBytes - whole.size();
    EXPECT_TRUE(readPhoto(put(u"just.jpg"_s, whole + QByteArray(room, '\0'))).has_value());
    EXPECT_EQ(whyNot(put(u"over.jpg"_s, whole + QByteArray(room + 1, '\0'))), PhotoFault::Why::TooLarge);
    EXPECT_EQ(whyNot(m_folder.filePath(u"gone.jpg"_s)), PhotoFault::Why::CannotRead);
    EXPECT_EQ(whyNot(m_folder.path()), PhotoFault::Why::CannotRead);
    EXPECT_EQ(readPhoto(m_folder.filePath(u"gone.jpg"_s)).error().name, u"gone.jpg"_s);
}

TEST_F(PhotoFiles, AreMadeSmallWithinTheBox)
{
    const QImage small = smallPicture(encoded("JPEG", {400, 200}), {50, 50});
    EXPECT_EQ(small.size(), QSize(50, 25));
    EXPECT_EQ(smallPicture(encoded("PNG", {20, 10}), {50, 50}).size(), QSize(20, 10)) << "never larger";
    EXPECT_TRUE(smallPicture("nothing", {50, 50}).isNull());
}

TEST_F(PhotoFiles, OfAFolderAreListedNewestFirst)
{
    put(u"text.txt"_s, "no picture");
    int minute = 0;
    for (const QString& name : {u"c.JPG"_s, u"a.png"_s, u"b.jpeg"_s}) {
        QFile file(put(name, encoded("PNG")));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.setFileTime(QDateTime(QDate(2026, 9, 14), QTime(8, minute++), Qt::UTC),
                                     QFileDevice::FileModificationTime));
    }
    QStringList names;
    for (const FolderPicture& each : picturesIn(m_folder.path()))
        names << QFileInfo(each.path).fileName();
    EXPECT_EQ(names, QStringList({u"b.jpeg"_s, u"a.png"_s, u"c.JPG"_s}));
    EXPECT_TRUE(picturesIn(m_folder.filePath(u"nowhere"_s)).empty());
}

} // namespace
} // namespace strandbench
