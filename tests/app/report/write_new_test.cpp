// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/write_new.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

QByteArray read(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("not there");
}

TEST(WriteNew, NeverTakesThePlaceOfAnother)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"a.pdf"_s);
    ASSERT_TRUE(writeNew(path, "first"));
    EXPECT_FALSE(writeNew(path, "second"));
    EXPECT_EQ(read(path), "first");
}

TEST(WriteNew, NumbersOn)
{
    const QTemporaryDir folder;
    const QString deep = folder.filePath(u"not/there/yet"_s);
    EXPECT_EQ(*writeBeside(deep, u"job-4421"_s, "1"), deep + u"/job-4421.pdf"_s);
    EXPECT_EQ(*writeBeside(deep, u"job-4421"_s, "2"), deep + u"/job-4421-2.pdf"_s);
    EXPECT_EQ(*writeBeside(deep, u"job-4421"_s, "3"), deep + u"/job-4421-3.pdf"_s);
    EXPECT_EQ(read(deep + u"/job-4421.pdf"_s), "1");
    EXPECT_EQ(read(deep + u"/job-4421-2.pdf"_s), "2");
}

TEST(WriteNew, SaysWhyNotAndLeavesNothing)
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(u"file"_s);
    ASSERT_TRUE(writeNew(file, "x"));
    const auto into = writeBeside(file + u"/below"_s, u"a"_s, "x"); // a file is no folder
    ASSERT_FALSE(into);
    EXPECT_FALSE(into.error().isEmpty());
    const auto full = writeNew(u"/dev/full"_s, "x");
    EXPECT_FALSE(full);
}

TEST(WriteNew, MakesAFileNameOfAJobNumber)
{
    EXPECT_EQ(asFileName(u"4421"_s), u"4421"_s);
    EXPECT_EQ(asFileName(u"../44 21/\\:*"_s), u"___44_21____"_s);
}

} // namespace
} // namespace strandbench::test
