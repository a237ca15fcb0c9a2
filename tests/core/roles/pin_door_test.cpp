// SPDX-License-Identifier: GPL-3.0-or-later
#include "roles/pin_door.h"

#include "set_clock.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// The least that libsodium takes: crypto_pwhash_OPSLIMIT_MIN and _MEMLIMIT_MIN.
constexpr PinCost cheap{1, 8192};

class Door : public ::testing::Test {
protected:
    PinDoor door() { return PinDoor(path(), clock, cheap); }
    [[nodiscard]] QString path() const { return m_folder.filePath(u"supervisor.pin"_s); }
    ActRefusal refusal(const QString& pin)
    {
        const auto opened = door().open(pin);
        EXPECT_FALSE(opened);
        return opened ? ActRefusal::NoPin : opened.error().why;
    }
    SetClock clock;
    QTemporaryDir m_folder;
    const QString right = u"271828"_s;
    const QString wrong = u"314159"_s;
};

TEST(PinWait, IsTheDocumentedOne)
{
    const std::pair<int, double> rows[] = {{0, 0},   {1, 0},   {2, 0},   {3, 30},  {4, 60},
                                           {5, 120}, {6, 240}, {7, 480}, {8, 900}, {1000, 900}};
    for (const auto& [wrong, wait] : rows)
        EXPECT_EQ(inSeconds(waitAfter(wrong)), wait) << wrong;
}

TEST_F(Door, WithoutAPinIsShut)
{
    EXPECT_FALSE(door().isSet());
    EXPECT_EQ(refusal(right), ActRefusal::NotSet);
}

TEST_F(Door, OpensToItsPinAlone)
{
    ASSERT_TRUE(door().set(right).empty());
    EXPECT_TRUE(door().isSet());
    EXPECT_TRUE(door().open(right));
    EXPECT_EQ(refusal(wrong), ActRefusal::WrongPin);
    EXPECT_EQ(refusal({}), ActRefusal::NoPin);
    ASSERT_TRUE(door().set(wrong).empty());
    EXPECT_TRUE(door().open(wrong));
    EXPECT_EQ(refusal(right), ActRefusal::WrongPin);
}

TEST_F(Door, LooksAtNothingDuringTheWait)
{
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(refusal(wrong), ActRefusal::WrongPin);
    clock.pass(29);
    EXPECT_EQ(inSeconds(door().waitLeft()), 1);
    EXPECT_EQ(refusal(right), ActRefusal::MustWait); // the right one no more than another
    clock.pass(1);
    EXPECT_EQ(inSeconds(door().waitLeft()), 0);
    EXPECT_TRUE(door().open(right));
    for (int i = 0; i < 3; ++i) // the right one began anew
        EXPECT_EQ(refusal(wrong), ActRefusal::WrongPin);
}

TEST_F(Door, TheClockOfTheWallOpensNothing)
{
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        (void)door().open(wrong);
    clock.at.utcMs += 86'400'000;
    EXPECT_EQ(inSeconds(door().waitLeft()), 30);
    clock.reboot(u"boot-1"_s);
    clock.at.utcMs += 86'400'000;
    EXPECT_EQ(inSeconds(door().waitLeft()), 30);
    clock.pass(10);
    EXPECT_EQ(inSeconds(door().waitLeft()), 20);
}

TEST_F(Door, WithoutABootsIdentityTheWaitIsThatOfABoot)
{
    clock.at.bootId.clear();
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        (void)door().open(wrong);
    clock.at.boottimeMs = 10'000;
    EXPECT_EQ(inSeconds(door().waitLeft()), 20);
}

TEST_F(Door, WithoutABootsIdentityALongUptimeShortensNoWait)
{
    clock.at.bootId.clear();
    clock.at.boottimeMs = 86'400'000;
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        (void)door().open(wrong);
    EXPECT_EQ(inSeconds(door().waitLeft()), 30);
    clock.at.bootId = u"boot-1"_s; // known now, but not of the last try
    clock.pass(12);
    EXPECT_EQ(inSeconds(door().waitLeft()), 18);
}

TEST_F(Door, ABootClockThatWentBackLeavesTheWholeWait)
{
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        (void)door().open(wrong);
    clock.at.boottimeMs -= 1'000;
    EXPECT_EQ(inSeconds(door().waitLeft()), 30);
}

TEST_F(Door, ATryDuringTheWaitMakesItNoLongerAndCountsNot)
{
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 4; ++i, clock.pass(30))
        (void)door().open(wrong);                // the fourth after its wait
    EXPECT_EQ(inSeconds(door().waitLeft()), 30); // of 60
    for (int i = 0; i < 50; ++i)
        EXPECT_EQ(refusal(wrong), ActRefusal::MustWait);
    EXPECT_EQ(inSeconds(door().waitLeft()), 30);
}

TEST_F(Door, ANewPinBeginsAnew)
{
    ASSERT_TRUE(door().set(right).empty());
    for (int i = 0; i < 3; ++i)
        (void)door().open(wrong);
    ASSERT_TRUE(door().set(wrong).empty());
    EXPECT_EQ(inSeconds(door().waitLeft()), 0);
    EXPECT_TRUE(door().open(wrong));
}

TEST_F(Door, KeepsAPinThatBeginsWithZero)
{
    ASSERT_TRUE(door().set(u"071828"_s).empty());
    EXPECT_EQ(refusal(u"71828"_s), ActRefusal::WrongPin);
    EXPECT_TRUE(door().open(u"071828"_s));
}

TEST_F(Door, OfALinkToALogIsTheLogsOwn)
{
    const QDir folder(m_folder.path());
    ASSERT_TRUE(folder.mkpath(u"bench"_s) && folder.mkpath(u"elsewhere"_s));
    QFile log(folder.filePath(u"bench/a.db"_s));
    ASSERT_TRUE(log.open(QIODevice::WriteOnly));
    const QString link = folder.filePath(u"elsewhere/a.db"_s);
    ASSERT_TRUE(QFile::link(log.fileName(), link));
    EXPECT_EQ(pinPathOf(link), pinPathOf(log.fileName()));
}

TEST_F(Door, NamesTheFieldOfAPinThatWillNotDoAndNeverItself)
{
    const std::pair<QString, FaultKind> rows[] = {
        {u"12345"_s, FaultKind::OutOfRange},  {u"1234567890123"_s, FaultKind::OutOfRange},
        {u"27182x"_s, FaultKind::OutOfRange}, {u"٣٤٥٦٧٨"_s, FaultKind::OutOfRange},
        {{}, FaultKind::OutOfRange},          {u"777777"_s, FaultKind::NotOneOf},
        {u"123456"_s, FaultKind::NotOneOf},   {u"98765432"_s, FaultKind::NotOneOf},
    };
    for (const auto& [pin, kind] : rows) {
        const Faults faults = door().set(pin);
        ASSERT_EQ(faults.size(), 1U) << pin.toStdString();
        EXPECT_EQ(faults.front().field, u"pin"_s);
        EXPECT_TRUE(faults.front().value.isEmpty());
        EXPECT_EQ(faults.front().kind, kind) << pin.toStdString();
    }
    EXPECT_FALSE(door().isSet());
    EXPECT_TRUE(door().set(u"123457"_s).empty());
}

} // namespace
} // namespace strandbench::test
