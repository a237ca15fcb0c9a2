// SPDX-License-Identifier: GPL-3.0-or-later
// Alarms on the glass, over every screen: told, answered by a tap or by the act, and silence told where nothing sounds.
#include "bench_fixture.h"
#include "shown.h"

#include "repair/run_clock.h"
#include "shell/alarm_bar.h"
#include "sound/bell.h"
#include "words/role_words.h"

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// A player that keeps what it was given, and says at once what becomes of it.
class ToldPlayer final : public Player {
public:
    [[nodiscard]] bool play(const Tone& tone) override
    {
        tones.push_back(tone);
        QMetaObject::invokeMethod(
            this, [this] { Q_EMIT finished(outcome); }, Qt::QueuedConnection);
        return true;
    }
    [[nodiscard]] bool playing() const override { return false; }
    std::vector<Tone> tones;
    Sounded outcome{Sounded::Result::Played, {}};
};

class AlarmOnTheBench : public BenchTest {
protected:
    [[nodiscard]] const BatchRun& run(const QString& job) { return bench().repair(job)->runs.back(); }
    [[nodiscard]] ActTimes timesOf(const QString& job)
    {
        const BatchRun& of = run(job);
        return alarmsOf(earlyTimes(of), lateTimes(of), bench().bench().assumptionsOf(of));
    }
    void waitUntil(const QString& job, Duration since)
    {
        bench().clock().advance(since - elapsed(run(job).hardenerIn, bench().clock().now()));
        tick();
    }
    void tick()
    {
        window().tick();
        bench().thumb().settle();
    }
    /// A second on, so that a tap is no longer taken for one at what lay there before.
    void aSecond()
    {
        bench().clock().advance(seconds(1));
        tick();
    }
    [[nodiscard]] QString told(int index)
    {
        const auto* button = qobject_cast<AlarmButton*>(bench().thumb().find(u"alarm_%1"_s.arg(index)));
        return button ? button->spoken() : QString();
    }
    [[nodiscard]] bool rings() { return bench().thumb().find(u"alarm_0"_s) != nullptr; }
    /// A job that is being spread, with its first batch.
    void mix(const QString& number)
    {
        window().showHome();
        bench().thumb().settle();
        DemoJob job = skirtPanel();
        job.job = number;
        walkTo(job, Station::Spread);
    }
    [[nodiscard]] QString headline(AlarmKind kind)
    {
        return alarmHeadline({{}, {}, kind, {}, {}, {}}, Words(UnitSystem::Metric, QLocale(u"en"_s)));
    }
};

TEST_F(AlarmOnTheBench, RingsForEachActOfABatchAndIsAnsweredByATap)
{
    open();
    mix(u"4421"_s);
    const ActTimes times = timesOf(u"4421"_s);
    waitUntil(u"4421"_s, times.edges - edgesWarning - seconds(1));
    EXPECT_FALSE(rings());
    aSecond();
    ASSERT_TRUE(rings());
    EXPECT_TRUE(told(0).contains(u"00:20"_s) || told(0).contains(u"0:20"_s)) << told(0).toStdString();
    EXPECT_TRUE(told(0).contains(u"4421"_s)) << told(0).toStdString();
    const std::pair<Duration, AlarmKind> rest[] = {
        {times.gel, AlarmKind::Gels}, {times.sandFrom, AlarmKind::SandFrom}, {times.sandUntil, AlarmKind::SandUntil}};
    for (const auto& [at, kind] : rest) {
        waitUntil(u"4421"_s, at - seconds(1));
        aSecond();
        ASSERT_TRUE(rings()) << codeOf(kind).toStdString();
        EXPECT_TRUE(told(0).contains(headline(kind))) << told(0).toStdString();
        const auto* bar = window().findChild<AlarmBar*>();
        EXPECT_EQ(bar->width(), window().width()) << "over the whole glass";
        tap(u"alarm_0"_s); // at once: it was meant for what lay there
        EXPECT_TRUE(rings());
        aSecond();
        tap(u"alarm_0"_s);
        EXPECT_FALSE(rings());
        aSecond();
        EXPECT_FALSE(rings());
        const std::vector<AlarmKind>& answered = run(u"4421"_s).answered;
        ASSERT_FALSE(answered.empty());
        EXPECT_EQ(answered.back(), kind);
    }
}

TEST_F(AlarmOnTheBench, AnsweredOnceItIsSilentAfterARestartToo)
{
    open();
    mix(u"4421"_s);
    waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    open();
    ASSERT_TRUE(rings()) << "what nobody answered rings on";
    aSecond();
    tap(u"alarm_0"_s);
    open();
    EXPECT_FALSE(rings());
    close();
    const auto report = verifyLog(log());
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->clean) << report->where.toStdString();
}

TEST_F(AlarmOnTheBench, IsAnsweredByTheActThatItCallsFor)
{
    open();
    mix(u"4421"_s);
    waitUntil(u"4421"_s, timesOf(u"4421"_s).edges);
    ASSERT_TRUE(rings());
    ASSERT_EQ(nextStep(*bench().repair(u"4421"_s)).station, Station::Spread);
    tap(u"answer_way_on"_s); // edges are clear
    EXPECT_TRUE(run(u"4421"_s).edgesClear);
    EXPECT_FALSE(rings());
    EXPECT_TRUE(run(u"4421"_s).answered.empty());
}

TEST_F(AlarmOnTheBench, StandsOverEveryScreenOfAnotherRepair)
{
    open();
    mix(u"4421"_s);
    waitUntil(u"4421"_s, timesOf(u"4421"_s).edges);
    window().showHome();
    bench().thumb().settle();
    DemoJob other = skirtPanel();
    other.job = u"4499"_s;
    Walk walk(bench(), other);
    QSet<QString> screens;
    int missing = 0;
    walk.touched = [&](const Touch&) {
        screens << screen();
        const auto* button = bench().thumb().find(u"alarm_0"_s);
        const bool over = button && button->isVisible() &&
                          window().childAt(button->mapTo(&window(), button->rect().center())) == button;
        if (!over) {
            ++missing;
            ADD_FAILURE() << "nothing rings on " << screen().toStdString();
        }
    };
    ASSERT_TRUE(walk.walkTo(Station::Mix)) << walk.why().toStdString();
    EXPECT_EQ(missing, 0);
    EXPECT_GT(screens.size(), 15) << "questions, plan, preparing";
}

TEST_F(AlarmOnTheBench, StandsOverTheScreensBesideTheSteps)
{
    open();
    mix(u"4421"_s);
    waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    const QList<QStringList> tours{{u"today"_s, u"answer_way_on"_s},
                                   {u"today"_s, u"today_row_0"_s, u"answer_way_on"_s},
                                   {u"set_up"_s, u"answer_way_on"_s, u"answer_way_on"_s, u"answer_way_on"_s},
                                   {u"job_card_0"_s, u"answer_stop"_s}};
    QSet<QString> screens;
    for (const QStringList& tour : tours) {
        window().showHome();
        bench().thumb().settle();
        for (const QString& control : tour) {
            EXPECT_TRUE(rings()) << screen().toStdString();
            waitFor(control);
            tap(control);
            screens << screen();
        }
        EXPECT_TRUE(rings()) << screen().toStdString();
    }
    EXPECT_GE(screens.size(), 8);
}

TEST_F(AlarmOnTheBench, LeavesTheGlassAsLargeAsItIs)
{
    open();
    window().setMinimumSize(0, 0); // as the program's own window is: nothing but the glass holds its size
    window().setMaximumSize(QWIDGETSIZE_MAX, QWIDGETSIZE_MAX);
    window().resize(1280, 740); // low: the answers leave no room to spare
    mix(u"4421"_s);
    const QSize before = window().size();
    ASSERT_EQ(before, QSize(1280, 740));
    const int answersEnd = bench().thumb().find(u"answer_back"_s)->mapTo(&window(), QPoint(0, 0)).y();
    waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    ASSERT_TRUE(rings());
    EXPECT_EQ(window().size(), before);
    EXPECT_EQ(bench().thumb().find(u"answer_back"_s)->mapTo(&window(), QPoint(0, 0)).y(), answersEnd);
    aSecond();
    tap(u"alarm_0"_s);
    EXPECT_EQ(window().size(), before);
}

TEST_F(AlarmOnTheBench, TwoAtOnceAreBothToldTheMostUrgentFirst)
{
    open();
    mix(u"4421"_s);
    bench().clock().advance(minutes(1));
    mix(u"4422"_s);
    // The first gels; the second is called to its edges.
    waitUntil(u"4422"_s, timesOf(u"4422"_s).edges - edgesWarning);
    const Duration older = elapsed(run(u"4421"_s).hardenerIn, bench().clock().now());
    if (older < timesOf(u"4421"_s).gel)
        waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    ASSERT_TRUE(told(1).size() > 0);
    EXPECT_TRUE(told(0).contains(u"4422"_s)) << told(0).toStdString(); // edges cannot wait
    EXPECT_TRUE(told(1).contains(u"4421"_s)) << told(1).toStdString();
    EXPECT_TRUE(told(1).contains(headline(AlarmKind::Gels))) << told(1).toStdString();
    aSecond();
    tap(u"alarm_1"_s);
    EXPECT_TRUE(told(0).contains(u"4422"_s));
    EXPECT_TRUE(told(1).isEmpty());
    aSecond();
    tap(u"alarm_0"_s);
    EXPECT_FALSE(rings());
    EXPECT_NE(bench().thumb().find(u"ribbon_block_0"_s), nullptr) << "the ribbon is there again";
}

class AlarmWithABell : public AlarmOnTheBench {
protected:
    ScriptedBench& openWithBell()
    {
        m_bell = std::make_unique<Bell>(&player);
        return open(demoSettings(), {}, m_bell.get());
    }
    void TearDown() override { close(); }
    ToldPlayer player;
    std::unique_ptr<Bell> m_bell;
};

TEST_F(AlarmWithABell, SoundsUntilItIsAnswered)
{
    openWithBell();
    mix(u"4421"_s);
    tick();
    const std::size_t before = player.tones.size();
    EXPECT_LE(before, 1U) << "the device was tried, no more";
    waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    const std::size_t first = player.tones.size();
    EXPECT_EQ(first, before + 1);
    for (int i = 0; i < 60; ++i)
        aSecond();
    const std::size_t repeated = player.tones.size() - first;
    EXPECT_GE(repeated, 3U);
    tap(u"alarm_0"_s);
    const std::size_t answered = player.tones.size();
    for (int i = 0; i < 60; ++i)
        aSecond();
    EXPECT_EQ(player.tones.size(), answered);
    EXPECT_TRUE(shown(window(), u"ribbon_silent_word"_s).isEmpty());
}

TEST_F(AlarmWithABell, WhereNothingSoundsTheGlassSaysSoBeforeTheFirstAlarm)
{
    player.outcome = {Sounded::Result::NoDevice, u"No such file or directory"_s};
    openWithBell();
    EXPECT_TRUE(shown(window(), u"ribbon_silent_word"_s).isEmpty()) << "nothing runs that could ring";
    mix(u"4421"_s);
    aSecond();
    aSecond();
    EXPECT_FALSE(shown(window(), u"ribbon_silent_word"_s).isEmpty());
    waitUntil(u"4421"_s, timesOf(u"4421"_s).gel);
    EXPECT_TRUE(rings()) << "it is seen all the same";
}

} // namespace
} // namespace strandbench::test
