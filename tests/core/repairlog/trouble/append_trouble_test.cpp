// SPDX-License-Identifier: GPL-3.0-or-later
// Each act of a whole repair while the disk fails at its first call, its second, and so on until none is left to fail:
// nothing is half saved, nothing is lost, and the act that is told again is there once.
#include "troubled_log.h"

#include <QFile>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

struct Kind {
    Trouble trouble;
    Lasts lasts;
    const char* name;
    bool cold = false; ///< the log is opened anew before each try, so that there is more to read
};

class TroubleInAppend : public TroubledLog, public ::testing::WithParamInterface<Kind> {
protected:
    struct Counts {
        int met = 0;        ///< call numbers, over all acts
        int refused = 0;    ///< appends that failed
        int passed = 0;     ///< appends that went through although a call failed
        int thereAfter = 0; ///< failed appends whose act a crash would leave in the log
    };

    /// One act at every call number. The log stands before the act, and afterwards behind it.
    void appendThroughTrouble(std::size_t act)
    {
        const auto before = filesNow();
        head = log->head().value();
        summaries = log->openRepairs().value();
        for (int number = 0;; ++number) {
            ASSERT_LT(number, 400);
            if (GetParam().cold) {
                log.reset();
                log = openPlace().value();
            }
            disk.failAt(number, GetParam().trouble, GetParam().lasts);
            const auto event = log->append(acts[act]);
            disk.mend();
            if (!disk.hasFailed()) {
                ASSERT_TRUE(event) << "with nothing failing: " << qPrintable(event.error().detail);
                return;
            }
            ++counts.met;
            if (event) {
                ++counts.passed;
                ASSERT_EQ(event->seq, qint64(act) + 1);
                ASSERT_NO_FATAL_FAILURE(backTo(before, act));
                continue;
            }
            ++counts.refused;
            expectOfTheDisk(event.error(), GetParam().trouble);
            ASSERT_NO_FATAL_FAILURE(expectNothingSaved()) << "act " << act << ", call " << number;
            ASSERT_NO_FATAL_FAILURE(expectOnceAfterACrash(act)) << "act " << act << ", call " << number;
        }
    }

    void expectNothingSaved() const
    {
        const auto headNow = log->head();
        ASSERT_TRUE(headNow) << qPrintable(headNow.error().detail);
        ASSERT_EQ(*headNow, head);
        const auto summariesNow = log->openRepairs();
        ASSERT_TRUE(summariesNow) << qPrintable(summariesNow.error().detail);
        ASSERT_EQ(*summariesNow, summaries);
    }

    /// The program dies now and starts again. The act may be there, and is told again by who saw it fail.
    void expectOnceAfterACrash(std::size_t act)
    {
        const QString path = quick(u"crashed/bench.db"_s);
        for (const QString& ending : {u""_s, u"-wal"_s}) {
            QFile::remove(path + ending);
            ASSERT_TRUE(!QFile::exists(place() + ending) || QFile::copy(place() + ending, path + ending));
        }
        {
            const auto again = RepairLog::open(path, LogMode::ReadWrite);
            ASSERT_TRUE(again) << qPrintable(again.error().detail);
            const qint64 count = (*again)->head()->count;
            ASSERT_TRUE(count == qint64(act) || count == qint64(act) + 1);
            counts.thereAfter += count == qint64(act) ? 0 : 1;
            const auto told = (*again)->append(acts[act]);
            ASSERT_TRUE(told) << qPrintable(told.error().detail);
            ASSERT_EQ(told->seq, qint64(act) + 1);
            ASSERT_NO_FATAL_FAILURE(expectActs(**again, act + 1));
        }
        ASSERT_TRUE(verifyLog(path)->clean);
    }

    void backTo(const std::map<QString, QByteArray>& files, std::size_t act)
    {
        log.reset();
        lay(files);
        log = openPlace().value();
        ASSERT_NO_FATAL_FAILURE(expectActs(*log, act));
    }

    std::unique_ptr<RepairLog> log;
    ChainHead head;
    std::vector<RepairSummary> summaries;
    Counts counts;
};

TEST_P(TroubleInAppend, AtEveryCallOfAWholeRepairNothingIsHalfSaved)
{
    log = openPlace().value();
    for (std::size_t act = 0; act < acts.size(); ++act)
        ASSERT_NO_FATAL_FAILURE(appendThroughTrouble(act)) << "act " << act;
    expectActs(*log, acts.size());
    log.reset();
    expectSound(acts.size());
    EXPECT_GT(counts.met, int(acts.size()) * 8);
    EXPECT_GT(counts.refused, int(acts.size()) * 6);
    std::cout << counts.met << " call numbers met, " << disk.failures() << " calls failed, " << counts.refused
              << " appends refused, " << counts.passed << " went through all the same; after a crash "
              << counts.thereAfter << " refused acts were in the log\n";
}

INSTANTIATE_TEST_SUITE_P(Disk, TroubleInAppend,
                         ::testing::Values(Kind{Trouble::IoError, Lasts::Once, "IoErrorOnce"},
                                           Kind{Trouble::IoError, Lasts::UntilMended, "IoErrorUntilMended"},
                                           Kind{Trouble::Full, Lasts::Once, "FullOnce"},
                                           Kind{Trouble::Full, Lasts::UntilMended, "FullUntilMended"},
                                           Kind{Trouble::IoError, Lasts::Once, "IoErrorOnceCold", true},
                                           Kind{Trouble::IoError, Lasts::UntilMended, "IoErrorUntilMendedCold", true}),
                         [](const auto& each) { return each.param.name; });

} // namespace
