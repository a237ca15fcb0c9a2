// SPDX-License-Identifier: GPL-3.0-or-later
// Reading while the disk fails at each call in turn: what comes back is right, or says that the disk failed.
#include "troubled_log.h"

#include <QCryptographicHash>

#include <iostream>

using namespace Qt::StringLiterals;
using namespace strandbench;
using namespace strandbench::test;

namespace {

enum class Lying { Still, Beside, Writing };

struct Reading {
    Lying lying;
    const char* name;
};

class TroubleInReading : public TroubledLog, public ::testing::WithParamInterface<Reading> {
protected:
    TroubleInReading()
    {
        writer = openPlace().value();
        for (const EventDraft& act : acts)
            if (!writer->append(act))
                throw std::runtime_error("append");
        if (GetParam().lying != Lying::Beside)
            writer.reset();
    }
    [[nodiscard]] LogMode mode() const
    {
        return GetParam().lying == Lying::Writing ? LogMode::ReadWrite : LogMode::ReadOnly;
    }

    /// Reads at every call number, each time through a connection that has read nothing yet.
    template <class Read> void atEveryCall(const char* what, Read read)
    {
        const auto right = read(*openPlace(mode()).value());
        ASSERT_TRUE(right) << what;
        int met = 0;
        for (const Lasts lasts : {Lasts::Once, Lasts::UntilMended})
            for (int number = 0;; ++number, ++met) {
                ASSERT_LT(number, 1000);
                const auto log = openPlace(mode()).value();
                disk.failAt(number, Trouble::IoError, lasts);
                const auto got = read(*log);
                disk.mend();
                if (got)
                    ASSERT_EQ(*got, *right) << what << ", call " << number;
                else
                    ASSERT_NO_FATAL_FAILURE(expectReadFailure(got.error())) << what << ", call " << number;
                const auto after = read(*log);
                ASSERT_TRUE(after) << what << ", call " << number << ": " << qPrintable(after.error().detail);
                ASSERT_EQ(*after, *right) << what << ", after call " << number;
                if (!disk.hasFailed())
                    break;
            }
        EXPECT_GE(met, 2) << what;
        total += met;
    }
    static void expectReadFailure(const LogFailure& failure)
    {
        ASSERT_EQ(failure.trouble, LogTrouble::IoError) << qPrintable(failure.detail);
    }

    std::unique_ptr<RepairLog> writer;
    int total = 0;
};

TEST_P(TroubleInReading, WhatComesBackIsRightOrAnIoError)
{
    const QUuid repair = acts.front().repair;
    const QString day = localDay(acts.front().at);
    const QByteArray photo = QCryptographicHash::hash(acts[1].blobs.front(), QCryptographicHash::Sha256);
    atEveryCall("events", [&](const RepairLog& log) { return log.events(repair); });
    atEveryCall("events of lots", [&](const RepairLog& log) { return log.eventsOfLots(day); });
    atEveryCall("events of stock", [&](const RepairLog& log) { return log.eventsOfStock(day); });
    atEveryCall("clock jumps", [&](const RepairLog& log) { return log.clockJumps(day); });
    atEveryCall("of the bench", [&](const RepairLog& log) { return log.ofBench(day); });
    atEveryCall("after", [&](const RepairLog& log) { return log.after(20); });
    atEveryCall("last written", [&](const RepairLog& log) { return log.lastWritten(); });
    atEveryCall("open repairs", [&](const RepairLog& log) { return log.openRepairs(); });
    atEveryCall("repairs of a day", [&](const RepairLog& log) { return log.repairsOfDay(day); });
    atEveryCall("blob", [&](const RepairLog& log) { return log.blob(photo); });
    atEveryCall("head", [&](const RepairLog& log) { return log.head(); });
    std::cout << total << " call numbers met\n";
}

/// Opening is part of it. A disk that fails is never taken for a log that was tampered with.
class TroubleInVerifying : public TroubleInReading {};

TEST_P(TroubleInVerifying, VerifyingSaysCleanOrThatTheDiskFailed)
{
    int met = 0;
    int failed = 0;
    for (const Lasts lasts : {Lasts::Once, Lasts::UntilMended})
        for (int number = 0;; ++number, ++met) {
            ASSERT_LT(number, 2000);
            disk.failAt(number, Trouble::IoError, lasts);
            const auto report = verifyLog(place());
            disk.mend();
            if (report) {
                ASSERT_TRUE(report->clean) << number << ": " << qPrintable(report->breaksAt + u' ' + report->where);
                ASSERT_EQ(report->events, qint64(acts.size()));
            } else {
                ++failed;
                ASSERT_NO_FATAL_FAILURE(expectOfTheDisk(report.error(), Trouble::IoError)) << number;
            }
            if (!disk.hasFailed())
                break;
        }
    EXPECT_GT(failed, 20);
    ASSERT_NO_FATAL_FAILURE(expectSound(acts.size()));
    std::cout << met << " call numbers met, " << failed << " times it said so\n";
}

INSTANTIATE_TEST_SUITE_P(Log, TroubleInReading,
                         ::testing::Values(Reading{Lying::Still, "Still"}, Reading{Lying::Beside, "Beside"},
                                           Reading{Lying::Writing, "Writing"}),
                         [](const auto& each) { return each.param.name; });

INSTANTIATE_TEST_SUITE_P(Log, TroubleInVerifying,
                         ::testing::Values(Reading{Lying::Still, "Still"}, Reading{Lying::Beside, "Beside"}),
                         [](const auto& each) { return each.param.name; });

} // namespace
