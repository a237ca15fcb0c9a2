// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up with real taps: every setting changed, seen on the glass, and kept over a restart.
#include "bench_fixture.h"
#include "shown.h"

#include "sound/player.h"

#include <QKeyEvent>
#include <QTest>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

/// A device that says what the test wants.
class SaidToPlay final : public Player {
public:
    explicit SaidToPlay(Sounded outcome) : m_outcome(std::move(outcome)) {}
    bool play(const Tone& tone) override
    {
        ++played;
        EXPECT_LT(inSeconds(lengthOf(tone)), 5);
        m_playing = true;
        return true;
    }
    bool playing() const override { return m_playing; }
    void end()
    {
        m_playing = false;
        Q_EMIT finished(m_outcome);
    }
    int played = 0;

private:
    Sounded m_outcome;
    bool m_playing = false;
};

class SetUp : public BenchTest {
protected:
    [[nodiscard]] Settings saved() const { return SettingsFile(folder() + u"/bench.ini"_s).load().settings; }
    /// Home, the set-up, and so many groups on.
    void openSetUp(int groups = 0)
    {
        window().showHome();
        bench().thumb().settle();
        tap(u"set_up"_s);
        for (int i = 0; i < groups; ++i)
            tap(u"answer_way_on"_s);
    }
    [[nodiscard]] bool chosen(const QString& name)
    {
        const QAbstractButton* button = bench().thumb().find(name);
        EXPECT_TRUE(button) << name.toStdString() << " on " << screen().toStdString();
        return button && button->isChecked();
    }
    /// As Tab comes to it.
    void focus(const QString& name)
    {
        QAbstractButton* button = bench().thumb().find(name);
        ASSERT_TRUE(button) << name.toStdString() << " on " << screen().toStdString();
        button->setFocus(Qt::TabFocusReason);
    }
    void press(Qt::Key key, const QString& text = {})
    {
        QWidget* target = window().focusWidget() ? window().focusWidget() : &window();
        QKeyEvent down(QEvent::KeyPress, key, Qt::NoModifier, text);
        QCoreApplication::sendEvent(target, &down);
        bench().thumb().settle();
    }
};

TEST_F(SetUp, EveryChoiceIsShownAndKept)
{
    open();
    const std::pair<QString, QString> ways[] = {{u"language_de"_s, u"language_en"_s},
                                                {u"units_us"_s, u"units_metric"_s},
                                                {u"colours_night"_s, u"colours_day"_s},
                                                {u"hand_left"_s, u"hand_right"_s},
                                                {u"motion_reduced"_s, u"motion_full"_s}};
    openSetUp();
    for (const auto& [other, usual] : ways) {
        EXPECT_TRUE(chosen(usual)) << usual.toStdString();
        tap(other);
        EXPECT_TRUE(chosen(other)) << other.toStdString();
        EXPECT_FALSE(chosen(usual)) << usual.toStdString();
    }
    EXPECT_EQ(screen(), u"screen_set_up"_s);
    // What they mean stands on the glass.
    EXPECT_EQ(window().theme().dayNight(), DayNight::Night);
    EXPECT_TRUE(window().theme().reducedMotion());
    EXPECT_LT(bench().thumb().find(u"answer_way_on"_s)->x(), bench().thumb().find(u"answer_back"_s)->x());
    EXPECT_EQ(bench().thumb().find(u"answer_back"_s)->accessibleName(), u"Zurück"_s);

    const Settings kept = saved();
    open(kept);
    openSetUp();
    for (const auto& [other, usual] : ways)
        EXPECT_TRUE(chosen(other)) << other.toStdString();
    for (const auto& [other, usual] : ways)
        tap(usual);
    EXPECT_EQ(saved(), demoSettings());
}

TEST_F(SetUp, CalibrationIsReachedAndComesBack)
{
    open();
    openSetUp(2);
    EXPECT_EQ(screen(), u"screen_set_up_sound"_s);
    tap(u"calibrate"_s);
    EXPECT_EQ(screen(), u"screen_calibrate"_s);
    tap(u"wider"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_set_up_sound"_s);
    EXPECT_NEAR(saved().pixelsPerMillimetre, 1280.0 / 217 + 1 / 85.6, 1e-6);
}

TEST_F(SetUp, TheWayOnLeadsRoundAllGroupsAndBackGoesHome)
{
    open();
    openSetUp();
    for (const QString& next : {u"screen_set_up_people"_s, u"screen_set_up_sound"_s, u"screen_set_up_record"_s,
                                u"screen_set_up_assumptions"_s, u"screen_set_up_sheets"_s,
                                u"screen_set_up_instruments"_s, u"screen_set_up"_s}) {
        tap(u"answer_way_on"_s);
        EXPECT_EQ(screen(), next);
    }
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_home"_s);
}

TEST_F(SetUp, TheFootSwitchIsTheNextKeyPressed)
{
    open();
    openSetUp();
    EXPECT_TRUE(chosen(u"foot_switch_any"_s));
    for (const auto& [key, name] : {std::pair{Qt::Key_F5, u"F5"_s}, std::pair{Qt::Key_Return, u"Return"_s},
                                    std::pair{Qt::Key_PageDown, u"PgDown"_s}}) {
        bench().clock().advance(seconds(2));
        tap(u"foot_switch_one"_s);
        EXPECT_EQ(shown(window(), u"sentence"_s), u"Press the foot switch now"_s);
        press(key);
        EXPECT_EQ(shown(window(), u"foot_switch_one"_s), name);
        EXPECT_TRUE(chosen(u"foot_switch_one"_s));
        EXPECT_EQ(saved().footSwitchKey, key);
        press(key); // it bounces
        EXPECT_EQ(screen(), u"screen_set_up"_s);
    }
    open(saved());
    openSetUp();
    EXPECT_EQ(shown(window(), u"foot_switch_one"_s), u"PgDown"_s);
    tap(u"foot_switch_any"_s);
    EXPECT_EQ(saved().footSwitchKey, 0);
}

TEST_F(SetUp, EscapeAndTabAreNoFootSwitch)
{
    open();
    openSetUp();
    tap(u"foot_switch_one"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(shown(window(), u"sentence"_s), u"Set up the bench"_s);
    tap(u"foot_switch_one"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(shown(window(), u"sentence"_s), u"Set up the bench"_s);
    EXPECT_EQ(window().settings().footSwitchKey, 0);
    // A key that is held down from before is not the press that is asked for.
    tap(u"foot_switch_one"_s);
    QKeyEvent repeat(QEvent::KeyPress, Qt::Key_F5, Qt::NoModifier, {}, true);
    QCoreApplication::sendEvent(window().focusWidget(), &repeat);
    bench().thumb().settle();
    EXPECT_EQ(window().settings().footSwitchKey, 0);
}

TEST_F(SetUp, ANameIsTakenOffOnlyByAHold)
{
    open();
    openSetUp(1);
    EXPECT_EQ(shown(window(), u"person_0"_s), u"Ada"_s);
    EXPECT_FALSE(bench().thumb().find(u"remove_person"_s)->isEnabled());
    tap(u"person_0"_s);
    EXPECT_TRUE(chosen(u"person_0"_s));
    tap(u"remove_person"_s);             // a brush of the sleeve
    EXPECT_EQ(saved().people.size(), 0); // nothing was written yet
    ASSERT_TRUE(bench().thumb().hold(u"remove_person"_s));
    EXPECT_EQ(saved().people, QStringList{u"Ravi"_s});
    EXPECT_EQ(saved().person, QString());
    tap(u"person_0"_s);
    EXPECT_FALSE(bench().thumb().find(u"remove_person"_s)->isEnabled()); // the last stays
}

TEST_F(SetUp, ANameIsAddedByTheLargeKeys)
{
    open();
    openSetUp(1);
    tap(u"add_person"_s);
    EXPECT_EQ(screen(), u"screen_set_up_name"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"empty"_s));
    for (const QString& each : {u"letter_0"_s, u"letter_3"_s, u"letter_0"_s}) // A, D, A
        tap(each);
    EXPECT_EQ(shown(window(), u"typed_name"_s), u"Ada"_s);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(window().screen()->troubleShown().contains(u"Ada is on the list already"_s));
    for (const QString& each : {u"letter_space"_s, u"letter_10"_s}) // K
        tap(each);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(screen(), u"screen_set_up_people"_s);
    EXPECT_EQ(shown(window(), u"person_2"_s), u"Ada K"_s);
    EXPECT_EQ(saved().people, (QStringList{u"Ada"_s, u"Ravi"_s, u"Ada K"_s}));
    tap(u"add_person"_s);
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_set_up_people"_s);
    open(saved());
    tap(u"person"_s);
    EXPECT_TRUE(allShown(window()).contains(u"Ada K"_s)); // and can be chosen at the bench
}

class SoundTest : public SetUp {
protected:
    void openWith(Player* player)
    {
        m_sounding.reset(); // one copy at a time has the bench
        m_sounding = std::make_unique<ScriptedBench>(ScriptedBench::Spec{folder() + u"/sound.sqlite"_s,
                                                                         workingMorning(),
                                                                         demoSettings(),
                                                                         {1280, 800},
                                                                         1280.0 / 217,
                                                                         {},
                                                                         Worker::Runs::Inline,
                                                                         player});
        for (const QString& each : {u"set_up"_s, u"answer_way_on"_s, u"answer_way_on"_s})
            ASSERT_TRUE(m_sounding->thumb().tap(each));
    }
    [[nodiscard]] bool tapped(const QString& name) { return m_sounding->thumb().tap(name); }
    [[nodiscard]] QString said() { return shown(m_sounding->window(), u"sound_said"_s); }
    [[nodiscard]] QString advice() { return shown(m_sounding->window(), u"sound_advice"_s); }
    [[nodiscard]] bool asks() { return m_sounding->thumb().find(u"sound_heard"_s) != nullptr; }

private:
    std::unique_ptr<ScriptedBench> m_sounding;
};

TEST_F(SoundTest, AsksWhetherWhatWasPlayedWasHeard)
{
    SaidToPlay device({Sounded::Result::Played, {}});
    openWith(&device);
    EXPECT_FALSE(asks());
    ASSERT_TRUE(tapped(u"sound_test"_s));
    EXPECT_EQ(device.played, 1);
    EXPECT_FALSE(asks());                  // nobody can have heard it yet
    EXPECT_FALSE(tapped(u"sound_test"_s)); // one at a time
    device.end();
    ASSERT_TRUE(asks());
    ASSERT_TRUE(tapped(u"sound_heard"_s));
    EXPECT_EQ(said(), u"Heard: the speaker works."_s);
    ASSERT_TRUE(tapped(u"sound_test"_s));
    device.end();
    ASSERT_TRUE(tapped(u"sound_not_heard"_s));
    EXPECT_TRUE(said().contains(u"nobody heard it"_s));
    EXPECT_TRUE(advice().contains(u"glass alone"_s));
    EXPECT_FALSE(asks());
}

TEST_F(SoundTest, SaysWhatTheDeviceSaidAndAsksNothingWhereNothingPlayed)
{
    for (const auto result : {Sounded::Result::NoDevice, Sounded::Result::NoLibrary, Sounded::Result::WriteFailed}) {
        SaidToPlay device({result, u"the device’s own words"_s});
        openWith(&device);
        ASSERT_TRUE(tapped(u"sound_test"_s));
        device.end();
        EXPECT_FALSE(asks());
        EXPECT_TRUE(advice().contains(u"the device’s own words"_s)) << advice().toStdString();
        EXPECT_TRUE(advice().contains(u"glass alone"_s));
        EXPECT_FALSE(said().contains(u"Heard"_s)) << said().toStdString();
    }
}

TEST_F(SoundTest, OutlivesAScreenThatIsLeftWhileItPlays)
{
    SaidToPlay device({Sounded::Result::Played, {}});
    openWith(&device);
    ASSERT_TRUE(tapped(u"sound_test"_s));
    ASSERT_TRUE(tapped(u"answer_back"_s));
    device.end();
    for (const QString& each : {u"set_up"_s, u"answer_way_on"_s, u"answer_way_on"_s})
        ASSERT_TRUE(tapped(each));
    EXPECT_FALSE(asks());
}

class EnterOnTheFocus : public SetUp {
protected:
    void pressEnter(bool repeat = false)
    {
        QWidget* target = window().focusWidget() ? window().focusWidget() : &window();
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, Qt::Key_Return, Qt::NoModifier, u"\r"_s, repeat);
            QCoreApplication::sendEvent(target, &event);
        }
        bench().thumb().settle();
    }
};

TEST_F(EnterOnTheFocus, BouncesAndRepeatsActOnce)
{
    open();
    openSetUp();
    focus(u"answer_way_on"_s);
    pressEnter();
    EXPECT_EQ(screen(), u"screen_set_up_people"_s);
    for (int i = 0; i < 3; ++i) { // the focus is gone with its screen; Enter would now be the way on of the next
        bench().clock().advance(seconds(0.1));
        pressEnter();
        pressEnter(true);
    }
    EXPECT_EQ(screen(), u"screen_set_up_people"_s);
    bench().clock().advance(seconds(0.6));
    ASSERT_NO_FATAL_FAILURE(focus(u"person_0"_s));
    pressEnter();
    EXPECT_TRUE(chosen(u"person_0"_s)); // on and off again would be a bounce taken for a tap
    bench().clock().advance(seconds(0.2));
    pressEnter();
    EXPECT_TRUE(chosen(u"person_0"_s));
    bench().clock().advance(seconds(0.6));
    pressEnter();
    EXPECT_FALSE(chosen(u"person_0"_s));
}

TEST_F(EnterOnTheFocus, AJobCardOpensOnce)
{
    open();
    walkTo(skirtPanel(), Station::Prepare);
    window().showHome();
    bench().thumb().settle();
    bench().clock().advance(seconds(2));
    ASSERT_NO_FATAL_FAILURE(focus(u"job_card_0"_s));
    const int before = bench().repair(u"4421"_s)->prepDone;
    pressEnter();
    const QString opened = screen();
    EXPECT_NE(opened, u"screen_home"_s);
    bench().clock().advance(seconds(0.1));
    pressEnter();
    EXPECT_EQ(screen(), opened);
    EXPECT_EQ(bench().repair(u"4421"_s)->prepDone, before);
}

} // namespace
} // namespace strandbench::test
