// SPDX-License-Identifier: GPL-3.0-or-later
// The practice record on the disk: added to, read back, and never lost by a line that does not read.
#include "school/practice_file.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

PracticeEntry entry(const QString& person, const QString& panel)
{
    return {1'768'000'000'123,
            person,
            panel,
            true,
            false,
            {{DecisionPoint::SubstrateFound, true}, {DecisionPoint::HardenerDose, false}}};
}

class PracticeFileTest : public ::testing::Test {
protected:
    [[nodiscard]] QString path() const { return m_folder.filePath(u"practice.jsonl"_s); }
    void write(const QByteArray& bytes) const
    {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::Append));
        file.write(bytes);
    }
    QTemporaryDir m_folder;
    PracticeFile m_file{path()};
};

TEST_F(PracticeFileTest, IsEmptyBeforeAnybodyPractised)
{
    EXPECT_TRUE(m_file.load().entries.empty());
    EXPECT_TRUE(m_file.load().faults.empty());
}

TEST_F(PracticeFileTest, ReadsBackWhatWasAdded)
{
    ASSERT_EQ(m_file.add(entry(u"Renée"_s, u"g12"_s)), std::nullopt);
    ASSERT_EQ(m_file.add(entry({}, u"spot_joint"_s)), std::nullopt);
    EXPECT_EQ(m_file.load().entries, (std::vector{entry(u"Renée"_s, u"g12"_s), entry(QString(), u"spot_joint"_s)}));
}

TEST_F(PracticeFileTest, NamesALineThatDoesNotReadAndKeepsTheOthers)
{
    ASSERT_EQ(m_file.add(entry(u"Ada"_s, u"one"_s)), std::nullopt);
    write("{\"utc_ms\": -3}\n");
    ASSERT_EQ(m_file.add(entry(u"Ada"_s, u"two"_s)), std::nullopt);
    const ReadEntries read = m_file.load();
    ASSERT_EQ(read.entries.size(), 2U);
    EXPECT_EQ(read.entries.back().panel, u"two"_s);
    ASSERT_FALSE(read.faults.empty());
    EXPECT_EQ(read.faults.front().field, u"line 2: utc_ms"_s);
    EXPECT_EQ(read.faults.front().value, u"-3"_s);
}

TEST_F(PracticeFileTest, GoesOnBehindALineThatAPowerCutTore)
{
    ASSERT_EQ(m_file.add(entry(u"Ada"_s, u"one"_s)), std::nullopt);
    write("{\"utc_ms\": 17680");
    ASSERT_EQ(m_file.add(entry(u"Ada"_s, u"two"_s)), std::nullopt);
    EXPECT_EQ(m_file.load().entries.size(), 2U);
}

TEST_F(PracticeFileTest, SaysWhyItCannotWrite)
{
    const auto refused = PracticeFile(m_folder.filePath(u"no folder/practice.jsonl"_s)).add(entry({}, u"one"_s));
    ASSERT_TRUE(refused);
    EXPECT_FALSE(refused->isEmpty());
}

} // namespace
} // namespace strandbench
