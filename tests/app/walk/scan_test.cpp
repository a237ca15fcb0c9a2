// SPDX-License-Identifier: GPL-3.0-or-later
// A scanner types like a keyboard, only faster: what it reads goes where it is wanted, and nothing else happens.
#include "bench_fixture.h"
#include "shown.h"

#include <QKeyEvent>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class ScanOnTheBench : public BenchTest {
protected:
    void type(const QString& text, double pace)
    {
        for (const QChar each : text) {
            QKeyEvent press(QEvent::KeyPress, each.toUpper().unicode(), Qt::NoModifier, QString(each));
            QCoreApplication::sendEvent(window().focusWidget() ? window().focusWidget() : &window(), &press);
            bench().clock().advance(seconds(pace));
        }
    }
    void enter() { QTest::keyClick(window().focusWidget() ? window().focusWidget() : &window(), Qt::Key_Return); }
    void scan(const QString& text)
    {
        type(text, 0.01);
        enter();
        bench().thumb().settle();
    }
    QString trouble() { return window().screen()->troubleShown(); }
    void toJobNumber()
    {
        open();
        tap(u"take_in"_s);
        ASSERT_EQ(screen(), u"screen_job_number"_s);
    }
};

TEST_F(ScanOnTheBench, IsTheJobNumberAndThenThePanel)
{
    toJobNumber();
    scan(u"B-4431/2"_s);
    ASSERT_EQ(screen(), u"screen_panel"_s);
    scan(u"Ramp door, 2nd leaf"_s);
    ASSERT_EQ(screen(), u"screen_assess_substrate"_s);
    const Repair* repair = bench().repair(u"B-4431/2"_s);
    ASSERT_NE(repair, nullptr);
    EXPECT_EQ(repair->panel, u"Ramp door, 2nd leaf"_s);
}

TEST_F(ScanOnTheBench, OfAJobNumberIsStillThereOnComingBack)
{
    toJobNumber();
    scan(u"B-4431"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(shown(window(), u"job_number"_s), u"B-4431"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_panel"_s);
    tap(u"answer_back"_s);
    tap(u"key_7"_s);
    EXPECT_EQ(shown(window(), u"job_number"_s), u"7"_s);
}

TEST_F(ScanOnTheBench, WithAControlCharacterOrTooLongIsRefusedWithTheReason)
{
    toJobNumber();
    scan(u"44\x1d"
         u"21"_s);
    EXPECT_EQ(screen(), u"screen_job_number"_s);
    EXPECT_TRUE(trouble().contains(u"control character"_s)) << trouble().toStdString();
    scan(QString(25, u'4'));
    EXPECT_EQ(screen(), u"screen_job_number"_s);
    EXPECT_TRUE(trouble().contains(u"25"_s) && trouble().contains(u"24"_s)) << trouble().toStdString();
    scan(QString(24, u'4'));
    EXPECT_EQ(screen(), u"screen_panel"_s);
}

TEST_F(ScanOnTheBench, LeavesNoDigitInAKeyPad)
{
    open();
    Walk walk(bench(), skirtPanel());
    while (screen() != u"screen_assess_size"_s)
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    tap(u"length_mm_figure"_s);
    const QString before = shown(window(), u"typed"_s);
    scan(u"4006381333931"_s);
    EXPECT_EQ(shown(window(), u"typed"_s), before);
    EXPECT_EQ(trouble(), u"Scanned 4006381333931: not wanted here."_s);
    bench().clock().advance(seconds(6));
    window().tick();
    EXPECT_TRUE(trouble().isEmpty()) << "the sentence is seen again";
    type(u"52"_s, 0.2); // a person's pace
    bench().thumb().settle();
    EXPECT_TRUE(shown(window(), u"typed"_s).startsWith(u"52"_s));
}

TEST_F(ScanOnTheBench, IsNeverTheWayOn)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    const int before = bench().repair(u"4421"_s)->prepDone;
    bench().clock().advance(seconds(2));
    scan(u"ABC-123"_s);
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before);
    EXPECT_EQ(trouble(), u"Scanned ABC-123: not wanted here."_s);
    bench().clock().advance(seconds(2));
    type(u"ABC-123"_s, 0.01); // without its Enter
    bench().thumb().settle();
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before);
    EXPECT_TRUE(trouble().contains(u"Enter"_s)) << trouble().toStdString();
    bench().clock().advance(seconds(2));
    type(u"b"_s, 0); // a foot switch
    bench().thumb().settle();
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before + 1);
}

TEST_F(ScanOnTheBench, LeavesTheFootSwitchItsOwnKey)
{
    Settings settings = demoSettings();
    settings.footSwitchKey = Qt::Key_F9;
    open(settings);
    walkTo(skirtPanel(), Station::Prepare);
    const int before = bench().repair(u"4421"_s)->prepDone;
    for (const Qt::Key key : {Qt::Key_B, Qt::Key_Return, Qt::Key_Space, Qt::Key_F8}) {
        bench().clock().advance(seconds(2));
        QTest::keyClick(&window(), key);
        bench().thumb().settle();
        EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before) << key;
    }
    bench().clock().advance(seconds(2));
    QTest::keyClick(&window(), Qt::Key_F9);
    bench().thumb().settle();
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before + 1);
}

TEST_F(ScanOnTheBench, PanelsTakenInLatelyStandFirst)
{
    open();
    walkTo(roofCap(), Station::Assess);
    for (int i = 0; i < 7; ++i) {
        window().showHome();
        bench().thumb().settle();
        tap(u"take_in"_s);
        scan(u"77%1"_s.arg(i));
        scan(u"Panel %1"_s.arg(i));
        ASSERT_EQ(screen(), u"screen_assess_substrate"_s);
    }
    EXPECT_EQ(window().settings().panels,
              QStringList({u"Panel 6"_s, u"Panel 5"_s, u"Panel 4"_s, u"Panel 3"_s, u"Panel 2"_s, u"Panel 1"_s}));
    const QStringList panels = window().settings().panels;
    Settings settings = demoSettings();
    settings.panels = panels;
    open(settings);
    tap(u"take_in"_s);
    scan(u"880"_s);
    EXPECT_EQ(shown(window(), u"name_0"_s), u"Panel 6"_s);
    tap(u"name_1"_s);
    ASSERT_NE(bench().repair(u"880"_s), nullptr);
    EXPECT_EQ(bench().repair(u"880"_s)->panel, u"Panel 5"_s);
    EXPECT_EQ(window().settings().panels.front(), u"Panel 5"_s);
    EXPECT_EQ(SettingsFile(folder() + u"/bench.ini"_s).load().settings.panels, window().settings().panels);
}

} // namespace
} // namespace strandbench::test
