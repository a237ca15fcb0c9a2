// SPDX-License-Identifier: GPL-3.0-or-later
// The record kept safe through the glass: backups, the look through the log, another bench's log, a backup in the log's
// place.
#include "bench_fixture.h"
#include "shown.h"

#include "repairlog/recorded.h"

#include <QDir>
#include <QTest>

#include <sqlite3.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

const QString right = u"271828"_s;

class KeepingLog : public BenchTest {
protected:
    KeepingLog() { QDir(folder()).mkdir(u"stick"_s); }
    [[nodiscard]] QString stick() const { return folder() + u"/stick"_s; }
    [[nodiscard]] Settings kept() const
    {
        Settings settings = demoSettings();
        settings.backupFolder = stick();
        return settings;
    }
    void begin(const Settings& settings, bool restoring = false)
    {
        m_bench.reset();
        m_bench = std::make_unique<ScriptedBench>(ScriptedBench::Spec{
            .log = log(), .start = m_at, .settings = settings, .planning = {}, .keeps = true, .restoring = restoring});
        ASSERT_FALSE(m_bench->trouble()) << m_bench->trouble()->detail.toStdString();
    }
    void end()
    {
        m_at = m_bench->clock().now();
        m_bench.reset();
    }
    [[nodiscard]] QString screen() { return m_bench->window().screen()->objectName(); }
    [[nodiscard]] QString text(const QString& name) { return shown(m_bench->window(), name); }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control)) << control.toStdString() << " on " << screen().toStdString();
        m_bench->thumb().settle();
    }
    void walkTo(const DemoJob& job, Station station)
    {
        Walk walk(*m_bench, job);
        ASSERT_TRUE(walk.walkTo(station)) << walk.why().toStdString();
    }
    void pass(int howManyMinutes)
    {
        m_bench->clock().advance(minutes(howManyMinutes));
        m_bench->window().tick();
        m_bench->window().tick(); // home says what the first found
        m_bench->thumb().settle();
    }
    void showTheRepair()
    {
        m_bench->window().showRepair(m_bench->repair(u"4421"_s)->id);
        m_bench->thumb().settle();
    }
    /// From the WAL into the file itself.
    void checkpoint() const
    {
        sqlite3* connection = nullptr;
        ASSERT_EQ(sqlite3_open(QFile::encodeName(log()).constData(), &connection), SQLITE_OK);
        // Until it has read, a connection does not know of the WAL.
        EXPECT_EQ(sqlite3_exec(connection, "SELECT count(*) FROM event", nullptr, nullptr, nullptr), SQLITE_OK);
        EXPECT_EQ(sqlite3_wal_checkpoint_v2(connection, nullptr, SQLITE_CHECKPOINT_PASSIVE, nullptr, nullptr),
                  SQLITE_OK);
        sqlite3_close(connection);
    }
    void openRecord()
    {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        tap(u"set_up"_s);
        for (int i = 0; i < 3; ++i)
            tap(u"answer_way_on"_s);
        ASSERT_EQ(screen(), u"screen_set_up_record"_s);
    }
    [[nodiscard]] QStringList backups() const { return QDir(stick()).entryList({u"*.sqlite"_s}, QDir::Files); }
    [[nodiscard]] QString second(const QString& key)
    {
        const auto* button = qobject_cast<TapButton*>(m_bench->thumb().find(key));
        return button ? button->secondLine() : u"no key "_s + key;
    }
    /// The log of another bench with one repair taken in.
    [[nodiscard]] QString otherBench() const
    {
        const QString path = stick() + u"/wing.sqlite"_s;
        const auto other = RepairLog::open(path, LogMode::ReadWrite);
        EXPECT_TRUE((*other)->append(
            {QUuid::createUuid(), u"Technician 2"_s, TakenIn{u"88"_s, u"wing"_s}, workingMorning(), {}}));
        return path;
    }
    std::unique_ptr<ScriptedBench> m_bench;
    Instant m_at = workingMorning();
};

TEST_F(KeepingLog, AFolderIsChosenAndABackupWritten)
{
    begin(demoSettings());
    walkTo(skirtPanel(), Station::Prepare);
    openRecord();
    EXPECT_FALSE(m_bench->thumb().tap(u"back_up_now"_s)) << "there is no folder yet";
    tap(u"backup_folder"_s);
    ASSERT_EQ(screen(), u"screen_photo_folder"_s);
    tap(u"answer_back"_s);
    end();
    begin(kept());
    openRecord();
    tap(u"backup_folder"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(SettingsFile(folder() + u"/bench.ini"_s).load().settings.backupFolder, stick());
    EXPECT_EQ(screen(), u"screen_set_up_record"_s);
    tap(u"back_up_now"_s);
    ASSERT_EQ(backups().size(), 2) << "one since a folder is named, and the one that was asked for";
    for (const QString& each : backups())
        EXPECT_TRUE(verifyLog(stick() + u'/' + each)->clean);
    EXPECT_TRUE(second(u"back_up_now"_s).contains(u"newest"_s)) << second(u"back_up_now"_s).toStdString();
    tap(u"page_after"_s);
    tap(u"check_log"_s);
    EXPECT_TRUE(second(u"check_log"_s).contains(u"it holds"_s)) << second(u"check_log"_s).toStdString();
}

TEST_F(KeepingLog, EveryHourWhatIsNewIsBackedUp)
{
    Settings settings = kept();
    settings.backupMinutes = 60;
    begin(settings);
    walkTo(skirtPanel(), Station::Prepare);
    const auto hour = [this] {
        pass(61);
        pass(2); // the first was spent on looking through the log
    };
    hour();
    const auto first = backups();
    ASSERT_FALSE(first.isEmpty());
    hour();
    EXPECT_EQ(backups(), first) << "nothing new happened";
    showTheRepair();
    walkTo(skirtPanel(), Station::Mix);
    hour();
    EXPECT_EQ(backups().size(), first.size() + 1);
}

TEST_F(KeepingLog, ABackupThatIsOverdueShowsOnHome)
{
    Settings settings = kept();
    settings.backupMinutes = 60;
    begin(settings);
    walkTo(skirtPanel(), Station::Prepare);
    ASSERT_TRUE(QDir(folder()).rename(u"stick"_s, u"away"_s));
    m_bench->window().showHome();
    pass(150);
    pass(2);
    EXPECT_TRUE(second(u"set_up"_s).contains(u"overdue"_s)) << second(u"set_up"_s).toStdString();
    ASSERT_TRUE(QDir(folder()).rename(u"away"_s, u"stick"_s));
    pass(2);
    EXPECT_TRUE(second(u"set_up"_s).isEmpty()) << second(u"set_up"_s).toStdString();
}

TEST_F(KeepingLog, AnotherBenchsLogIsWeighedThenBroughtIn)
{
    static_cast<void>(otherBench());
    begin(kept());
    walkTo(skirtPanel(), Station::Prepare);
    openRecord();
    tap(u"page_after"_s);
    tap(u"bring_in"_s);
    ASSERT_EQ(screen(), u"screen_log_pick"_s);
    tap(u"log_0"_s);
    ASSERT_EQ(screen(), u"screen_merge"_s);
    EXPECT_TRUE(text(u"message_headline"_s).contains(u"1"_s)) << text(u"message_headline"_s).toStdString();
    EXPECT_EQ(verifyLog(log())->heads.size(), 1U) << "only weighed";
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_merge"_s);
    EXPECT_EQ(verifyLog(log())->heads.size(), 2U);
    EXPECT_TRUE(verifyLog(log())->clean);
    EXPECT_FALSE(m_bench->wantsToStartAgain());
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(m_bench->wantsToStartAgain());
    end();
    begin(kept());
    EXPECT_EQ(m_bench->bench().openRepairs().size(), 1U) << "the other bench's repair goes on there";
    openRecord();
    tap(u"page_after"_s);
    tap(u"bring_in"_s);
    tap(u"log_0"_s);
    EXPECT_TRUE(text(u"sentence"_s).contains(u"nothing new"_s)) << text(u"sentence"_s).toStdString();
}

TEST_F(KeepingLog, ABackupIsRestoredWithThePin)
{
    begin(kept());
    ASSERT_TRUE(m_bench->door().set(right).empty());
    walkTo(skirtPanel(), Station::Prepare);
    openRecord();
    tap(u"back_up_now"_s);
    showTheRepair();
    walkTo(skirtPanel(), Station::Mix);
    const qint64 events = verifyLog(log())->events;
    openRecord();
    tap(u"page_after"_s);
    tap(u"restore"_s);
    tap(u"log_0"_s);
    ASSERT_EQ(screen(), u"screen_restore"_s);
    EXPECT_TRUE(text(u"message_headline"_s).contains(u"Nothing is lost"_s));
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_pin"_s);
    const auto give = [this](const QString& pin) {
        for (const QChar digit : pin)
            tap(u"key_"_s + digit);
        tap(u"answer_way_on"_s);
    };
    give(u"314159"_s);
    EXPECT_EQ(screen(), u"screen_pin"_s);
    EXPECT_EQ(verifyLog(log())->events, events + 1) << "the refusal is written, and nothing else is done";
    give(right);
    ASSERT_EQ(screen(), u"screen_restore"_s);
    EXPECT_EQ(verifyLog(log())->events, events + 2) << "all that was there, and the entry that it was restored";
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(m_bench->wantsToStartAgain());
    end();
    begin(kept());
    EXPECT_EQ(nextStep(*m_bench->repair(u"4421"_s)).station, Station::Mix);
}

TEST_F(KeepingLog, FoundDamagedItIsClosedForWritingAndClocksGoOn)
{
    begin(kept());
    walkTo(skirtPanel(), Station::Mix);
    openRecord();
    tap(u"back_up_now"_s);
    checkpoint();
    QFile file(log()); // one byte of an event that was checked in, as a failing disk changes it
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const QByteArray all = file.readAll();
    const qsizetype at = all.indexOf(R"("job":"4421")");
    if (at < 0)
        GTEST_FAIL() << "the file does not hold it yet";
    file.seek(at);
    file.write(R"("job":"4422")");
    file.close();
    m_bench->keeper().check();
    m_bench->thumb().settle();
    EXPECT_TRUE(text(u"unsaved_bar"_s).contains(u"damaged"_s)) << text(u"unsaved_bar"_s).toStdString();
    const QByteArray damaged = [&] {
        QFile held(log());
        return held.open(QIODevice::ReadOnly) ? held.readAll() : QByteArray();
    }();
    showTheRepair();
    tap(u"answer_way_on"_s); // hardener in: the chemistry does not wait
    EXPECT_EQ(screen(), u"screen_spread"_s);
    EXPECT_EQ(m_bench->bench().unsaved(), 1U);
    const std::deque<EventDraft> waiting = m_bench->bench().waiting();
    openRecord();
    tap(u"page_after"_s);
    tap(u"restore"_s);
    tap(u"log_0"_s);
    tap(u"answer_way_on"_s);
    ASSERT_EQ(screen(), u"screen_restore"_s);
    tap(u"answer_way_on"_s);
    ASSERT_TRUE(m_bench->wantsToStartAgain());
    end();
    QFile earlier(QDir(folder()).entryInfoList({u"bench.sqlite.before-*"_s}, QDir::Dirs).front().filePath() +
                  u"/bench.sqlite"_s);
    ASSERT_TRUE(earlier.open(QIODevice::ReadOnly));
    EXPECT_EQ(earlier.readAll(), damaged) << "the damaged log was not written any more";
    begin(kept());
    EXPECT_TRUE(verifyLog(log())->clean);
    EXPECT_EQ(m_bench->bench().goOnWith(waiting), 0U);
    EXPECT_TRUE(QTest::qWaitFor([this] { return m_bench->bench().unsaved() == 0; }, 20000));
    EXPECT_EQ(nextStep(*m_bench->repair(u"4421"_s)).station, Station::Spread) << "what waited is written";
    EXPECT_TRUE(verifyLog(log())->clean);
}

TEST_F(KeepingLog, WithALogThatCannotBeOpenedOnlyABackupIsChosen)
{
    begin(kept());
    walkTo(skirtPanel(), Station::Prepare);
    openRecord();
    tap(u"back_up_now"_s);
    end();
    ASSERT_TRUE(QFile::resize(log(), 8192));
    {
        const auto opened = RepairLog::open(log(), LogMode::ReadWrite);
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().trouble, LogTrouble::CutShort);
    }
    begin(kept(), true);
    ASSERT_EQ(screen(), u"screen_log_pick"_s);
    tap(u"log_0"_s);
    ASSERT_EQ(screen(), u"screen_restore"_s);
    EXPECT_FALSE(text(u"message_headline"_s).contains(u"Nothing is lost"_s));
    tap(u"answer_way_on"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(m_bench->wantsToStartAgain());
    end();
    begin(kept());
    EXPECT_EQ(nextStep(*m_bench->repair(u"4421"_s)).station, Station::Prepare);
}

} // namespace
} // namespace strandbench::test
