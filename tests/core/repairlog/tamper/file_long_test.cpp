// SPDX-License-Identifier: GPL-3.0-or-later
// Every byte of a log's file changed, one at a time: verifying says clean only when every row reads as before.
#include "tampered_log.h"

#include <QFile>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

constexpr int parts = 8;

class TamperedFile : public TamperedLog, public ::testing::WithParamInterface<int> {
protected:
    TamperedFile() : before(everythingIn(place())), file(place())
    {
        if (!file.open(QIODevice::ReadWrite | QIODevice::Unbuffered))
            throw std::runtime_error("the file does not open");
    }
    void set(qint64 at, char byte)
    {
        ASSERT_TRUE(file.seek(at));
        ASSERT_TRUE(file.putChar(byte));
    }
    /// Clean only when nothing that the log holds reads differently.
    void judge(qint64 at)
    {
        const auto report = verifyLog(place());
        if (!report || !report->clean) {
            ++(report ? named : refused);
            return;
        }
        ++unused;
        ASSERT_TRUE(everythingIn(place()) == before) << "byte " << at;
        ASSERT_EQ(report->events, head.count) << "byte " << at;
    }

    std::vector<CellRow> before;
    QFile file;
    int named = 0;   ///< verifying says where it breaks
    int refused = 0; ///< it is no log any more
    int unused = 0;  ///< every row reads as before
};

TEST_P(TamperedFile, EveryByteIsFoundOrUnused)
{
    const qint64 size = file.size();
    for (qint64 at = GetParam(); at < size; at += parts) {
        char byte = 0;
        ASSERT_TRUE(file.seek(at) && file.getChar(&byte));
        const int change = 1 << (at / parts % 8);
        ASSERT_NO_FATAL_FAILURE(set(at, char(byte ^ change)));
        ASSERT_NO_FATAL_FAILURE(judge(at)) << "changed by " << change;
        ASSERT_NO_FATAL_FAILURE(set(at, byte));
    }
    expectClean("after");
    EXPECT_TRUE(everythingIn(place()) == before);
    EXPECT_EQ(named + refused + unused, (size - GetParam() + parts - 1) / parts);
    EXPECT_GT(named, 1000);
    std::cout << "of " << size << " bytes " << named + refused + unused << ": " << named << " named, " << refused
              << " refused, " << unused << " unused\n";
}

INSTANTIATE_TEST_SUITE_P(Part, TamperedFile, ::testing::Range(0, parts));

} // namespace
