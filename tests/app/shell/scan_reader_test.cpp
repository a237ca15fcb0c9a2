// SPDX-License-Identifier: GPL-3.0-or-later
// A scan, a person's typing and a foot switch, told apart by their pace alone.
#include "shell/scan_reader.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

using Take = ScanReader::Take;

class Reader : public testing::Test {
protected:
    Take press(int key, const QString& text, Qt::KeyboardModifiers modifiers = Qt::NoModifier, bool repeats = false)
    {
        return reader.take(QKeyEvent(QEvent::KeyPress, key, modifiers, text, repeats), now);
    }
    void type(const QString& text, int paceMs)
    {
        for (const QChar each : text) {
            EXPECT_EQ(press(each.toUpper().unicode(), QString(each)), Take::Held);
            later(paceMs);
        }
    }
    Take enter() { return press(Qt::Key_Return, u"\r"_s); }
    void later(int ms)
    {
        now.utcMs += ms;
        now.boottimeMs += ms;
    }
    ScanReader reader;
    Instant now{1'000'000, 1'000'000, u"boot"_s, 0};
};

TEST_F(Reader, takesQuickCharactersWithEnterAsOneText)
{
    for (const int pace : {0, 1, 20, 45}) {
        type(u"Ab-1 2"_s, pace);
        EXPECT_EQ(enter(), Take::Scan) << pace;
        EXPECT_EQ(reader.text(), u"Ab-1 2"_s);
        EXPECT_EQ(reader.release().size(), 6U);
    }
}

TEST_F(Reader, takesAPersonsPaceForTyping)
{
    type(u"4421"_s, 70); // quicker than anyone types, and still no scanner
    EXPECT_FALSE(reader.cutShort());
    EXPECT_EQ(enter(), Take::PassOn);
    EXPECT_EQ(reader.release().size(), 4U);
}

TEST_F(Reader, takesOneCharacterAndEnterForTwoKeys)
{
    type(u"b"_s, 5);
    EXPECT_EQ(enter(), Take::PassOn);
}

TEST_F(Reader, holdsNothingBackThatCannotBeginAScan)
{
    EXPECT_EQ(enter(), Take::PassOn);
    EXPECT_EQ(press(Qt::Key_Space, u" "_s), Take::PassOn);
    EXPECT_EQ(press(Qt::Key_F9, {}), Take::PassOn);
    EXPECT_EQ(press(Qt::Key_PageDown, {}), Take::PassOn);
    EXPECT_EQ(press(Qt::Key_B, u"b"_s, Qt::ControlModifier), Take::PassOn);
    EXPECT_EQ(press(Qt::Key_B, u"b"_s, Qt::NoModifier, true), Take::PassOn);
    EXPECT_FALSE(reader.holding());
}

TEST_F(Reader, letsGoAfterARest)
{
    type(u"b"_s, 0);
    later(ScanReader::longestRestMs);
    EXPECT_FALSE(reader.rested(now));
    later(1);
    EXPECT_TRUE(reader.rested(now));
    (void)reader.release();
    EXPECT_FALSE(reader.rested(now)) << "nothing is held";
}

TEST_F(Reader, knowsAScanThatNeverSentItsEnter)
{
    type(u"1234"_s, 10);
    EXPECT_FALSE(reader.cutShort()) << "a hand that falls on the keys";
    type(u"5"_s, 10);
    EXPECT_TRUE(reader.cutShort());
}

TEST_F(Reader, keepsControlCharactersOfAScanToBeRefused)
{
    type(u"44"_s, 5);
    EXPECT_EQ(press(Qt::Key_BracketRight, u"\x1d"_s, Qt::ControlModifier), Take::Held);
    EXPECT_EQ(enter(), Take::Scan);
    EXPECT_EQ(reader.text(), u"44\x1d"_s);
}

} // namespace
} // namespace strandbench
