// SPDX-License-Identifier: GPL-3.0-or-later
// Making, opening and closing a log while the disk fails at each call in turn, once or from then on.
#include "troubled_log.h"

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

constexpr std::size_t some = 30; ///< acts in the log that is opened and closed

class TroubleInOpening : public TroubledLog {
protected:
    /// What a crash leaves after so many acts: the file, and its WAL with some of them.
    std::map<QString, QByteArray> crashed()
    {
        auto log = openPlace().value();
        for (std::size_t i = 0; i < some; ++i)
            if (!log->append(acts[i]))
                throw std::runtime_error("append");
        return filesNow();
    }

    /// Tries at every call number, in every way that a disk can fail, until nothing was left to fail.
    template <class Try> void atEveryCall(Try tryAt)
    {
        int met = 0;
        for (const Trouble trouble : {Trouble::IoError, Trouble::Full})
            for (const Lasts lasts : {Lasts::Once, Lasts::UntilMended})
                for (int number = 0;; ++number) {
                    ASSERT_LT(number, 1000);
                    tryAt(number, trouble, lasts);
                    ASSERT_FALSE(HasFatalFailure()) << "call " << number;
                    if (!disk.hasFailed())
                        break;
                    ++met;
                }
        EXPECT_GT(met, 20);
        std::cout << met << " call numbers met\n";
    }
};

TEST_F(TroubleInOpening, ALogThatIsBeingMadeIsNothingOrWholeAndIsMadeWhereItLies)
{
    atEveryCall([&](int number, Trouble trouble, Lasts lasts) {
        lay({});
        disk.failAt(number, trouble, lasts);
        auto log = openPlace();
        disk.mend();
        if (!log) {
            expectOfTheDisk(log.error(), trouble);
            log = openPlace(); // in what the failure left
        }
        ASSERT_TRUE(log) << qPrintable(log.error().detail);
        ASSERT_TRUE((*log)->append(acts[0]));
        ASSERT_NO_FATAL_FAILURE(expectActs(**log, 1));
        log->reset();
        ASSERT_NO_FATAL_FAILURE(expectSound(1));
    });
}

TEST_F(TroubleInOpening, ToWriteFindsEveryActAfterwards)
{
    const auto files = crashed();
    atEveryCall([&](int number, Trouble trouble, Lasts lasts) {
        lay(files);
        disk.failAt(number, trouble, lasts);
        auto log = openPlace();
        disk.mend();
        if (!log) {
            expectOfTheDisk(log.error(), trouble);
            log = openPlace();
        }
        ASSERT_TRUE(log) << qPrintable(log.error().detail);
        ASSERT_TRUE((*log)->append(acts[some]));
        ASSERT_NO_FATAL_FAILURE(expectActs(**log, some + 1));
        log->reset();
        ASSERT_NO_FATAL_FAILURE(expectSound(some + 1));
    });
}

TEST_F(TroubleInOpening, ClosingLosesNothing)
{
    const auto files = crashed();
    atEveryCall([&](int number, Trouble trouble, Lasts lasts) {
        lay(files);
        auto log = openPlace().value();
        ASSERT_TRUE(log->append(acts[some]));
        disk.failAt(number, trouble, lasts);
        log.reset();
        disk.mend();
        ASSERT_NO_FATAL_FAILURE(expectSound(some + 1)) << "before a writer comes";
        log = openPlace().value();
        ASSERT_NO_FATAL_FAILURE(expectActs(*log, some + 1));
        ASSERT_TRUE(log->append(acts[some + 1]));
        log.reset();
        ASSERT_NO_FATAL_FAILURE(expectSound(some + 2));
    });
}

/// A failure of the last sync, then of all that closing does: the act is in the WAL for the next start to find, and is
/// told again there.
TEST_F(TroubleInOpening, AnActThatFailedAndIsFoundAfterARestartIsNotThereTwice)
{
    int found = 0;
    for (int number = 0;; ++number) {
        ASSERT_LT(number, 200);
        lay({});
        auto log = openPlace().value();
        ASSERT_TRUE(log->append(acts[0]));
        const EventDraft note{acts[0].repair, u"R. Quist"_s, Noted{{}, u"told twice"_s}, moment(60), {"a leaf"}};
        disk.failAt(number, Trouble::IoError, Lasts::UntilMended);
        const auto told = log->append(note);
        log.reset();
        disk.mend();
        if (told && !disk.hasFailed())
            break;
        log = openPlace().value();
        const qint64 count = log->head()->count;
        found += !told && count == 2 ? 1 : 0;
        ASSERT_EQ(log->append(note)->seq, 2) << number;
        ASSERT_EQ(log->events(note.repair)->size(), 2U) << number;
        EventDraft later = note;
        later.at = moment(61);
        ASSERT_EQ(log->append(later)->seq, 3) << "at another moment it is another note";
        later.blobs = {"another leaf"};
        ASSERT_EQ(log->append(later)->seq, 4) << "with something else beside it, it is another note";
        log.reset();
        ASSERT_NO_FATAL_FAILURE(expectSound(4));
    }
    EXPECT_GT(found, 0) << "the case was met";
}

} // namespace
