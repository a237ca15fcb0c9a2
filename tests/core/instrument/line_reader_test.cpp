// SPDX-License-Identifier: GPL-3.0-or-later
// A serial line as it is at a bench: read in the middle, cut, slow, noisy, without an end.
#include "instrument/line_reader.h"

#include <gmock/gmock.h>

#include <random>

using namespace strandbench;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

TEST(LineReader, GivesNothingBeforeTheFirstEndOfALine)
{
    LineReader reader;
    EXPECT_THAT(reader.take("2.34 g\r\n12.34 g\r\n", seconds(1)), ElementsAre("12.34 g"));
    EXPECT_EQ(reader.dropped(), 1) << "it may have been 12.34 g";
}

TEST(LineReader, TakesAnyEndAndPassesOverBlankLines)
{
    LineReader reader;
    EXPECT_THAT(reader.take("\na\rb\nc\r\n \t \r\n\r\nd\n", seconds(1)), ElementsAre("a", "b", "c", "d"));
}

TEST(LineReader, PutsTogetherWhatComesByteByByte)
{
    LineReader reader;
    std::vector<QByteArray> lines;
    int at = 0;
    for (const char byte : QByteArray("\r\n  58.42 g\r\n"))
        for (const QByteArray& line : reader.take(QByteArray(1, byte), seconds(0.4 * ++at)))
            lines.push_back(line);
    EXPECT_THAT(lines, ElementsAre("  58.42 g"));
}

TEST(LineReader, APauseWithinALineSpoilsItToItsEnd)
{
    LineReader reader;
    (void)reader.take("\n1", seconds(1));
    EXPECT_THAT(reader.take("2.34 g\n", seconds(2)), IsEmpty()) << "bytes between them may be lost";
    EXPECT_THAT(reader.take("12.34 g\n", seconds(9)), ElementsAre("12.34 g")) << "between lines a pause is usual";
}

TEST(LineReader, NoiseAndLinesWithoutAnEndSpoilNothingButThemselves)
{
    LineReader reader;
    (void)reader.take("\n", seconds(1));
    for (const QByteArray& noise :
         {QByteArray("12\x00.34 g", 8), QByteArray("1\xff\x80 2.34 g"), QByteArray("\x1b[2J"), QByteArray(5000, '7')})
        EXPECT_THAT(reader.take(noise + "\n12.34 g\n", seconds(1)), ElementsAre("12.34 g"));
    EXPECT_EQ(reader.dropped(), 5);
    EXPECT_THAT(reader.take(QByteArray(LineReader::longest, '7') + '\n', seconds(1)),
                ElementsAre(QByteArray(LineReader::longest, '7')));
}

TEST(LineReader, OpenedAnewItWaitsForAnEndAgain)
{
    LineReader reader;
    (void)reader.take("\n12", seconds(1));
    reader.restart();
    EXPECT_THAT(reader.take(".34 g\n8 g\n", seconds(1)), ElementsAre("8 g"));
}

/// Bytes lost at random between two ends of a line make one line of the two or a shorter one; what was sent between two
/// ends that arrived with all bytes between them comes out as it was, however it is cut.
TEST(LineReader, HoweverItIsCutTheLinesAreThoseSent)
{
    std::mt19937 random(20261126);
    for (int run = 0; run < 200; ++run) {
        QByteArray sent = "\n";
        std::vector<QByteArray> expected;
        for (int i = 0; i < 20; ++i) {
            expected.push_back(QByteArray::number(double(random() % 100000) / 100, 'f', 2) + " g");
            sent += expected.back() + (random() % 2 ? "\r\n" : "\n");
        }
        LineReader reader;
        std::vector<QByteArray> lines;
        double now = 0;
        for (qsizetype at = 0; at < sent.size();) {
            const qsizetype length = 1 + qsizetype(random() % 12);
            for (const QByteArray& line : reader.take(sent.mid(at, length), seconds(now += 0.1)))
                lines.push_back(line);
            at += length;
        }
        ASSERT_EQ(lines, expected) << "run " << run;
    }
}

} // namespace
