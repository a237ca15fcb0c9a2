// SPDX-License-Identifier: GPL-3.0-or-later
// The record's keeping, and every trouble of a log, held to the rules of look and touch on every glass in every
// language.
#include "every_look.h"

#include "shell/trouble_window.h"
#include "touch_rules/rule_check.h"

#include <QDir>
#include <QTemporaryDir>

#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class KeepingRules : public LookTest {
protected:
    KeepingRules() { QDir(m_folder.path()).mkdir(u"stick"_s); }
    [[nodiscard]] QString log() const { return m_folder.filePath(u"bench.sqlite"_s); }
    [[nodiscard]] QString stick() const { return m_folder.filePath(u"stick"_s); }
    void openBench(bool restoring = false)
    {
        m_bench.reset();
        Settings settings = demoSettings();
        settings.backupFolder = stick();
        ScriptedBench::Spec spec = specOn(log(), settings);
        spec.keeps = true;
        spec.restoring = restoring;
        m_bench = std::make_unique<ScriptedBench>(spec);
        ASSERT_FALSE(m_bench->trouble());
    }
    void openRecord()
    {
        m_bench->window().showHome();
        m_bench->thumb().settle();
        for (const QString& each : {u"set_up"_s, u"answer_way_on"_s, u"answer_way_on"_s, u"answer_way_on"_s})
            tap(each);
    }
    void takeIn(const QString& path, const QString& panel) const
    {
        const auto other = RepairLog::open(path, LogMode::ReadWrite);
        ASSERT_TRUE(other);
        ASSERT_TRUE((*other)->append(
            {QUuid::createUuid(), u"Technician 2"_s, TakenIn{u"4421"_s, panel}, workingMorning(), {}}));
    }
    void checkWindow(QWidget& window, const Theme& theme, const QString& name)
    {
        book().take(window, theme, name, rules::RuleSet::Bench);
    }

    QTemporaryDir m_folder;
};

TEST_P(KeepingRules, OfBackupsAndOtherLogs)
{
    openBench();
    openRecord();
    tapAndCheck(u"back_up_now"_s);
    tapAndCheck(u"backup_folder"_s);
    tap(u"answer_back"_s);
    tap(u"page_after"_s);
    tapAndCheck(u"check_log"_s);
    takeIn(log(), u"skirt panel, right rear"_s);
    const QString other = stick() + u"/bench of the body shop, hall 2.sqlite"_s;
    takeIn(other, u"skirt panel, right rear"_s);
    tapAndCheck(u"bring_in"_s);
    tapAndCheck(u"answer_way_on"_s); // another folder
    tap(u"answer_back"_s);
    tap(u"log_0"_s); // the newest: the other bench's, or the backup
    check();
    if (m_bench->window().screen()->objectName() == u"screen_merge"_s)
        tapAndCheck(u"answer_way_on"_s);
}

TEST_P(KeepingRules, OfLogsThatPartAndOfRestoring)
{
    takeIn(log(), u"door"_s);
    const QString twin = stick() + u"/twin.sqlite"_s;
    ASSERT_TRUE(QFile::copy(log(), twin));
    takeIn(twin, u"skirt panel, right rear"_s);
    openBench();
    openRecord();
    tap(u"back_up_now"_s);
    takeIn(log(), u"roof"_s);
    tap(u"page_after"_s);
    tap(u"restore"_s);
    check();
    tapAndCheck(u"log_0"_s);
    tap(u"answer_back"_s);
    tap(u"answer_back"_s);
    for (const QFileInfo& each : QDir(stick()).entryInfoList({u"strandbench-*"_s}, QDir::Files))
        QFile::remove(each.filePath());
    tap(u"bring_in"_s);
    tapAndCheck(u"log_0"_s); // they part
    tap(u"answer_back"_s);
    QFile text(twin);
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write(QByteArray(4096, 'x'));
    text.close();
    tapAndCheck(u"log_0"_s); // is no log
    tap(u"answer_way_on"_s);
    QFile::remove(twin);
    tap(u"answer_back"_s);
    tap(u"restore"_s);
    check(); // there is none
}

TEST_P(KeepingRules, OfARestoreThatLosesSomething)
{
    takeIn(log(), u"door"_s);
    openBench();
    openRecord();
    tap(u"back_up_now"_s);
    takeIn(log(), u"roof"_s);
    m_bench.reset();
    ASSERT_TRUE(QFile::resize(log(), 8192));
    openBench(true);
    check();
    tapAndCheck(u"log_0"_s);
    tapAndCheck(u"answer_way_on"_s);
}

TEST_P(KeepingRules, OfADamagedLogAtWork)
{
    openBench();
    Walk walk(*m_bench, skirtPanel());
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    m_bench->bench().logIsDamaged({LogTrouble::Damaged, u"chain"_s});
    tap(u"answer_way_on"_s); // hardener in: it waits
    m_bench->window().showHome();
    m_bench->thumb().settle();
    check();
}

TEST_P(KeepingRules, OfEveryTroubleOfALog)
{
    openBench();
    Settings settings = m_bench->window().settings();
    const rules::Glass& glass = GetParam().glass;
    for (int i = 0; i <= int(LogTrouble::DoesNotFollow); ++i) {
        const auto trouble = static_cast<LogTrouble>(i);
        TroubleWindow window({trouble, u"strandbench, process 4711 on bench-2"_s}, log(), settings,
                             glass.pixelsPerMillimetre(), Worker::Runs::Inline);
        window.setFixedSize(glass.pixels);
        window.show();
        m_bench->thumb().settle();
        checkWindow(window, m_bench->window().theme(), u"trouble_%1"_s.arg(i));
        if (auto* save = window.findChild<QAbstractButton*>(u"save_what_holds"_s)) {
            save->click();
            m_bench->thumb().settle();
            checkWindow(window, m_bench->window().theme(), u"trouble_%1_saved"_s.arg(i));
        }
    }
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, KeepingRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
