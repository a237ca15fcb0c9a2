// SPDX-License-Identifier: GPL-3.0-or-later
// The code on a sheet, drawn by poppler and read by zbar; the sizes of codes against the standard's table.
#include "code_reader.h"
#include "sample_record.h"

#include "report/qr_code.h"

#include <gtest/gtest.h>

#include <QRandomGenerator>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const Words& metric()
{
    static const Words words(UnitSystem::Metric, QLocale::c());
    return words;
}

/// sampleFacts(): its bench, 131 entries, aa…a77…7.
const QString headLine = u"head 5a0c52f4-3a0e-4bb4-8a43-6a1ad3a2a0a5 131 "_s + QString(32, u'a') + QString(32, u'7');

class SheetCode : public ::testing::TestWithParam<Paper> {};

TEST_P(SheetCode, OfAJobSheetNamesRepairJobAndHead)
{
    const JobRecord record = sampleRecord();
    const QString expected =
        u"strandbench 1\nrepair "_s + record.repair.id.toString(QUuid::WithoutBraces) + u"\njob 4421\n"_s + headLine;
    EXPECT_EQ(codesIn(jobSheetPdf(record, sampleFacts(GetParam()), metric())), QStringList{expected});
}

TEST_P(SheetCode, OfADaySheetNamesDayAndHead)
{
    const QByteArray pdf = dayPdf(u"2026-09-14"_s, {sampleRecord()}, sampleFacts(GetParam()), metric());
    EXPECT_EQ(codesIn(pdf), QStringList{u"strandbench 1\nday 2026-09-14\n"_s + headLine});
}

TEST_P(SheetCode, IsReadFromAPoorCopy)
{
    EXPECT_EQ(codesIn(jobSheetPdf(sampleRecord(), sampleFacts(GetParam()), metric()), 90).size(), 1);
}

TEST_P(SheetCode, KeepsAJobOfOtherLettersOnOneLine)
{
    JobRecord record = sampleRecord();
    record.repair.job = u"Tür 7\nÜ, “é” ½"_s;
    const QStringList codes = codesIn(jobSheetPdf(record, sampleFacts(GetParam()), metric()));
    ASSERT_EQ(codes.size(), 1);
    const QStringList lines = codes.front().split(u'\n');
    ASSERT_EQ(lines.size(), 4) << codes.front().toStdString();
    EXPECT_EQ(lines[2], u"job Tür 7 Ü, “é” ½"_s);
}

INSTANTIATE_TEST_SUITE_P(OnPaper, SheetCode, ::testing::Values(Paper::A4, Paper::Letter));

// ISO/IEC 18004, table 7: bytes that a code of a version holds at level M; its side is 17 + 4 x version.
TEST(QrCode, IsAsSmallAsTheStandardLets)
{
    struct Holds {
        int version;
        int bytes;
    };
    for (const Holds& each : {Holds{1, 14}, {2, 26}, {3, 42}, {5, 84}, {10, 213}, {20, 666}, {40, 2331}}) {
        const auto full = QrCode::of(QString(each.bytes, u'x'));
        ASSERT_TRUE(full) << each.version;
        EXPECT_EQ(full->side(), 17 + 4 * each.version);
        const auto over = QrCode::of(QString(each.bytes + 1, u'x'));
        EXPECT_EQ(over.has_value(), each.version < 40);
        if (over) {
            EXPECT_EQ(over->side(), 17 + 4 * (each.version + 1));
        }
    }
    EXPECT_FALSE(QrCode::of({}));
}

TEST(QrCode, IsReadBackAndLeavesItsQuietZone)
{
    QRandomGenerator random(20260914);
    for (int length = 1; length < 300; length += 37) {
        QString text;
        while (text.size() < length)
            text += QChar(u' ' + random.bounded(0x5e) + 1);
        const auto code = QrCode::of(text);
        ASSERT_TRUE(code);
        const int side = (code->side() + 2 * QrCode::quietZone) * 4;
        QImage picture(side, side, QImage::Format_Grayscale8);
        picture.fill(Qt::gray);
        QPainter painter(&picture);
        code->paint(painter, picture.rect());
        painter.end();
        EXPECT_EQ(codesIn(picture), QStringList{text});
        const int quiet = 4 * 4; // ISO/IEC 18004, 6.3.8: four modules
        for (int i = 0; i < side; ++i)
            for (int j = 0; j < quiet; ++j)
                for (const QPoint& at : {QPoint(i, j), {j, i}, {i, side - 1 - j}, {side - 1 - j, i}})
                    ASSERT_EQ(qGray(picture.pixel(at)), 255) << at.x() << ' ' << at.y();
        EXPECT_EQ(qGray(picture.pixel(quiet, quiet)), 0) << "the finder begins right behind it";
    }
}

} // namespace
} // namespace strandbench::test
