// SPDX-License-Identifier: GPL-3.0-or-later
// Two copies on one log: one writes, the other looks, and nothing is lost.
#include "bench_fixture.h"
#include "shown.h"

#include "shell/trouble_window.h"

#include <QProcess>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

ScriptedBench::Spec specOf(const QString& log)
{
    ScriptedBench::Spec spec;
    spec.log = log;
    spec.start = workingMorning();
    spec.settings = demoSettings();
    return spec;
}

class LookOnly : public BenchTest {
protected:
    /// Beside the bench of the fixture.
    void look()
    {
        ScriptedBench::Spec spec = specOf(log());
        spec.looks = true;
        looking = std::make_unique<ScriptedBench>(spec);
        ASSERT_FALSE(looking->trouble()) << looking->trouble()->detail.toStdString();
    }
    /// The looking copy's second.
    void follow()
    {
        looking->window().tick();
        looking->thumb().settle();
        QTest::qWait(50); // what it read comes back from its own thread
        looking->thumb().settle();
    }
    std::unique_ptr<ScriptedBench> looking;
};

TEST_F(LookOnly, TheSecondCopyDoesNotGetTheBench)
{
    open();
    ScriptedBench second(specOf(log()));
    ASSERT_TRUE(second.trouble());
    EXPECT_EQ(second.trouble()->trouble, LogTrouble::InUse);
    EXPECT_TRUE(second.trouble()->detail.contains(QString::number(QCoreApplication::applicationPid())));
}

TEST_F(LookOnly, TheSecondCopyIsToldWhoHasItAndMayLookOrTryAgain)
{
    for (const auto& [name, way] :
         {std::pair{u"close_program"_s, TroubleWindow::Way::Close},
          std::pair{u"try_again"_s, TroubleWindow::Way::Again}, std::pair{u"look_only"_s, TroubleWindow::Way::Look}}) {
        TroubleWindow window({LogTrouble::InUse, u"strandbench, process 4711 on bench-2"_s}, log(), demoSettings(),
                             5.87);
        window.resize(1280, 800);
        window.show();
        auto* who = window.findChild<FitLabel*>(u"trouble_who"_s);
        ASSERT_NE(who, nullptr);
        EXPECT_TRUE(who->text().contains(u"4711"_s));
        auto* key = window.findChild<TapButton*>(name);
        ASSERT_NE(key, nullptr) << name.toStdString();
        QTest::mouseClick(key, Qt::LeftButton);
        EXPECT_EQ(window.chosen(), way);
        EXPECT_FALSE(window.isVisible());
    }
}

TEST_F(LookOnly, SeesWhatTheOtherWritesAndWritesNothing)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    look();
    EXPECT_FALSE(shown(looking->window(), u"unsaved_bar"_s).isEmpty()) << "it says that it only looks";
    const Repair* here = bench().repair(u"4421"_s);
    ASSERT_NE(looking->repair(u"4421"_s), nullptr);
    EXPECT_TRUE(*looking->repair(u"4421"_s) == *here);
    ASSERT_TRUE(looking->thumb().tap(u"job_card_0"_s));
    const QString step = looking->window().screen()->objectName();
    ASSERT_TRUE(looking->thumb().tap(u"answer_way_on"_s));
    EXPECT_EQ(looking->window().screen()->objectName(), step);
    EXPECT_FALSE(looking->window().screen()->troubleShown().isEmpty());
    EXPECT_EQ(eventsInLog(here->id), std::size_t(here->lastSeq));
    tap(u"answer_way_on"_s);
    follow();
    EXPECT_TRUE(*looking->repair(u"4421"_s) == *bench().repair(u"4421"_s));
    EXPECT_NE(looking->window().screen()->objectName(), step) << "it goes along";
    walkTo(skirtPanel(), Station::Spread);
    follow();
    EXPECT_TRUE(*looking->repair(u"4421"_s) == *bench().repair(u"4421"_s));
    EXPECT_EQ(looking->bench().runningMixes().size(), 1U);
}

TEST_F(LookOnly, LeavesTheSetUpToTheOther)
{
    open();
    window().showHome();
    look();
    const auto bytes = [&] {
        QFile file(folder() + u"/bench.ini"_s);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("none");
    };
    const QByteArray before = bytes();
    ASSERT_TRUE(looking->thumb().tap(u"set_up"_s));
    ASSERT_TRUE(looking->thumb().tap(u"language_de"_s));
    looking->thumb().settle();
    EXPECT_EQ(bytes(), before);
}

/// A real second process writes a repair touch by touch while this one looks and taps.
TEST_F(LookOnly, TwoProcessesTapAndNothingIsLost)
{
    const Instant from = workingMorning();
    QProcess walker;
    walker.start(QStringLiteral(STRANDBENCH_WALKER),
                 {log(), u"70"_s, QString::number(from.utcMs), QString::number(from.boottimeMs), from.bootId});
    ASSERT_TRUE(walker.waitForStarted());
    while (!QFile::exists(log()) || !RepairLog::open(log(), LogMode::ReadOnly))
        QTest::qWait(20);
    {
        ScriptedBench second(specOf(log()));
        ASSERT_TRUE(second.trouble());
        EXPECT_EQ(second.trouble()->trouble, LogTrouble::InUse);
        EXPECT_TRUE(second.trouble()->detail.contains(QString::number(walker.processId())));
    }
    look();
    QByteArray said;
    int taps = 0;
    while (!said.contains('\n')) {
        walker.waitForReadyRead(10);
        said += walker.readAllStandardOutput();
        ASSERT_EQ(walker.state(), QProcess::Running) << walker.readAllStandardError().toStdString();
        for (const char* control : {"job_card_0", "answer_way_on", "answer_back", "take_in"})
            if (looking->thumb().tap(QLatin1StringView(control)))
                ++taps;
        follow();
    }
    follow();
    const QList<QByteArray> parts = said.trimmed().split(' ');
    ASSERT_EQ(parts.size(), 8) << said.toStdString();
    const qint64 last = parts[1].toLongLong();
    EXPECT_GT(last, 20);
    EXPECT_GT(taps, 10);
    const Repair* seen = looking->repair(u"4421"_s);
    ASSERT_NE(seen, nullptr);
    EXPECT_EQ(seen->lastSeq, last);
    EXPECT_EQ(codeOf(nextStep(*seen).station).toUtf8(), parts[2]);
    EXPECT_EQ(eventsInLog(seen->id), std::size_t(last)) << "all of them are the walker's";
    walker.kill();
    walker.waitForFinished();
    looking.reset();
    const auto report = verifyLog(log());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
    EXPECT_EQ(report->repairs, 1);
    std::cout << last << " acts of one process, " << taps << " taps of the other\n";
}

} // namespace
} // namespace strandbench::test
