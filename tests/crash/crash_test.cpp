// SPDX-License-Identifier: GPL-3.0-or-later
// The bench killed at random moments, over and over: while it opens, makes its log, works, backs up, closes.
#include "victim.h"
#include "witness.h"

#include "bench/recorder.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <random>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::microseconds;

constexpr int killsALog = 25; ///< then a fresh one, so that verifying stays quick

/// Given to repeat a run as far as chance of the machine's own allows.
unsigned seedOf(int shard)
{
    bool given = false;
    const unsigned seed = qEnvironmentVariable("STRANDBENCH_CRASH_SEED").toUInt(&given);
    return (given ? seed : std::random_device()()) + unsigned(shard);
}

/// In what the worker was when it died, by its last words.
std::string phaseOf(const std::vector<QByteArray>& lines, bool made)
{
    std::string phase = "starting";
    bool backingUp = false;
    for (const QByteArray& line : lines) {
        if (line.startsWith("phase "))
            phase = line.mid(6).toStdString();
        backingUp =
            line.startsWith("backup ") || (backingUp && !line.startsWith("backed ") && !line.startsWith("unbacked "));
    }
    if (phase == "opening" && !made)
        return "making the log";
    return backingUp ? "backup" : phase;
}

class Killer {
public:
    Killer(unsigned seed, bool lies) : m_random(seed), m_lies(lies) { newLog(); }

    /// Starts a worker on the log, kills it, and holds what is left to what was confirmed. Empty: it holds.
    [[nodiscard]] QString kill()
    {
        if (m_kills % killsALog == 0 && m_kills > 0)
            newLog();
        ++m_kills;
        QStringList given{m_log, QString::number(m_random()), u"w%1"_s.arg(m_kills)};
        if (m_lies)
            given << u"lie"_s;
        Victim victim(QStringLiteral(CRASH_WORKER), given);
        waitToKill(victim);
        victim.kill();
        const bool made = m_made;
        m_made = m_made || std::ranges::count(victim.lines(), "phase working") > 0;
        ++phases[phaseOf(victim.lines(), made)];
        if (victim.endedByItself())
            return u"the worker ended by itself: "_s +
                   (victim.lines().empty() ? QString() : QString::fromUtf8(victim.lines().back()));
        m_witness->hear(victim.lines());
        QString fault = m_witness->faultOfLog();
        if (fault.isEmpty() && below(4) == 0)
            fault = faultOfNextWriter();
        return fault.isEmpty() ? m_witness->faultOfBackups() : fault;
    }

    void endLog()
    {
        confirmed += m_witness->confirmed();
        backups += m_witness->backups();
        halfMade += m_witness->halfMade();
        refusals += m_witness->refusals();
    }

    std::map<std::string, int> phases;
    std::size_t confirmed = 0;
    int backups = 0;
    int halfMade = 0;
    QStringList refusals;

private:
    void newLog()
    {
        if (m_witness)
            endLog();
        m_folder = std::make_unique<QTemporaryDir>();
        m_log = m_folder->filePath(u"bench ü.sqlite"_s);
        m_witness = std::make_unique<Witness>(m_log);
        m_made = false;
    }
    int below(int end) { return std::uniform_int_distribution(0, end - 1)(m_random); }

    /// Half of the kills come at any moment from the start of the process on, the other half soon after it started or
    /// has told that it opens, works, backs up or closes: those are short. A log is made once, so that is aimed at
    /// first.
    void waitToKill(Victim& victim)
    {
        struct Aim {
            QByteArray line; ///< empty: the start of the process
            int within;      ///< so many microseconds
        };
        static const std::vector<Aim> aims{{"", 15'000},
                                           {"phase opening", 12'000},
                                           {"phase working", 12'000},
                                           {"backup ", 40'000},
                                           {"phase closing", 8'000}};
        static const Aim making{"phase opening", 80'000};
        const auto start = Clock::now();
        const bool anyMoment = below(2);
        if (m_made && anyMoment) {
            victim.listen(start + microseconds(below(250'000)));
            return;
        }
        const Aim& aim = m_made ? aims[std::size_t(below(int(aims.size())))] : making;
        if (!aim.line.isEmpty())
            victim.listen(start + std::chrono::seconds(2),
                          [&](const QByteArray& line) { return line.startsWith(aim.line); });
        victim.listen(Clock::now() + microseconds(below(aim.within)));
    }

    /// What was left behind neither bars the next writer nor breaks under it.
    [[nodiscard]] QString faultOfNextWriter()
    {
        {
            Recorder next(m_log);
            if (const auto book = next.open(u"0000-00-00"_s); !book)
                return u"the next writer cannot open it: "_s + book.error().detail;
        }
        m_made = true;
        return m_witness->faultOfLog();
    }

    std::mt19937 m_random;
    bool m_lies;
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_log;
    std::unique_ptr<Witness> m_witness;
    bool m_made = false; ///< the log has its tables
    int m_kills = 0;
};

class Crash : public ::testing::TestWithParam<int> {};

// CTest tells the short run from the long one by its name.
INSTANTIATE_TEST_SUITE_P(CRASH_NAME, Crash, ::testing::Range(0, CRASH_SHARDS));

TEST_P(Crash, AtAnyMomentNothingConfirmedIsLostAndNothingIsThereTwice)
{
    const unsigned seed = seedOf(GetParam());
    Killer killer(seed, false);
    for (int kill = 1; kill <= CRASH_KILLS; ++kill) {
        const QString fault = killer.kill();
        ASSERT_EQ(fault, QString()) << "seed " << seed << ", kill " << kill << ": " << fault.toStdString();
    }
    killer.endLog();
    std::cout << "seed " << seed << ", " << CRASH_KILLS << " kills, " << killer.confirmed << " acts confirmed, "
              << killer.backups << " backups whole, " << killer.halfMade << " half made, " << killer.refusals.size()
              << " refused\n";
    for (const auto& [phase, count] : killer.phases)
        std::cout << "  " << phase << ": " << count << '\n';
    for (const QString& each : killer.refusals)
        std::cout << "  " << each.toStdString() << '\n';
    for (const char* phase : {"opening", "working", "backup", "closing"})
        EXPECT_GT(killer.phases[phase], 0) << phase;
    EXPECT_GT(killer.phases["starting"] + killer.phases["making the log"], 0) << "short, and a log is made but once";
    EXPECT_GT(killer.confirmed, std::size_t(CRASH_KILLS));
    EXPECT_GT(killer.backups, 0);
}

#ifdef CRASH_TESTS_ITSELF
TEST(CrashTest, CatchesABenchThatConfirmsBeforeItWrites)
{
    const unsigned seed = seedOf(0);
    Killer killer(seed, true);
    QString fault;
    int kills = 0;
    for (; fault.isEmpty() && kills < 200; ++kills)
        fault = killer.kill();
    EXPECT_TRUE(fault.endsWith(u"was confirmed and is not there"_s)) << "seed " << seed << ": " << fault.toStdString();
    std::cout << "caught at kill " << kills << ": " << fault.toStdString() << '\n';
}
#endif

} // namespace
} // namespace strandbench::test

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
