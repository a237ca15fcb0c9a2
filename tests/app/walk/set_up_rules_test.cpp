// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the set-up keeps the rules of look and touch, on every glass, in every language.
#include "every_look.h"

#include "sound/player.h"

#include <QDir>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class Silent final : public Player {
public:
    bool play(const Tone&) override { return true; }
    bool playing() const override { return false; }
};

class SetUpRules : public LookTest {
protected:
    void check(ScriptedBench& bench, const QString& name)
    {
        book().take(bench.window(), bench.window().theme(), name, rules::RuleSet::Dense);
    }
    void go(ScriptedBench& bench, const QString& control)
    {
        ASSERT_TRUE(bench.thumb().tap(control)) << control.toStdString();
    }
};

TEST_P(SetUpRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.people << u"Konstantina"_s << u"Wilhelmina"_s << u"Ben"_s << u"Theodora"_s;
    settings.footSwitchKey = Qt::Key_PageDown;
    Silent device;
    ScriptedBench::Spec spec = specOn(folder.filePath(u"bench.sqlite"_s), settings);
    spec.player = &device;
    spec.keeps = true;
    ScriptedBench bench(spec);
    ASSERT_FALSE(bench.trouble().has_value());
    go(bench, u"set_up"_s);
    check(bench, u"bench"_s);
    go(bench, u"foot_switch_one"_s);
    check(bench, u"foot_switch"_s);
    go(bench, u"answer_way_on"_s);
    go(bench, u"person_2"_s);
    check(bench, u"people"_s);
    go(bench, u"add_person"_s);
    go(bench, u"letter_4"_s);
    check(bench, u"name"_s);
    go(bench, u"answer_back"_s);
    go(bench, u"answer_way_on"_s);
    check(bench, u"sound"_s);
    go(bench, u"sound_test"_s);
    check(bench, u"sound_playing"_s);
    for (const auto& [name, outcome] :
         {std::pair{u"sound_played"_s, Sounded{Sounded::Result::Played, {}}},
          std::pair{u"sound_no_device"_s, Sounded{Sounded::Result::NoDevice, u"No such file or directory"_s}},
          std::pair{u"sound_no_library"_s,
                    Sounded{Sounded::Result::NoLibrary, u"Cannot load library asound: libasound.so.2: cannot open "
                                                        "shared object file: No such file or directory"_s}},
          std::pair{u"sound_failed"_s, Sounded{Sounded::Result::WriteFailed, u"Broken pipe"_s}}}) {
        Q_EMIT device.finished(outcome);
        bench.thumb().settle();
        check(bench, name);
    }
    go(bench, u"sound_test"_s);
    Q_EMIT device.finished({Sounded::Result::Played, {}});
    go(bench, u"sound_not_heard"_s);
    check(bench, u"sound_not_heard"_s);
    go(bench, u"answer_way_on"_s);
    check(bench, u"record"_s);
    go(bench, u"page_after"_s);
    check(bench, u"record_2"_s);
    go(bench, u"answer_way_on"_s);
    // Every page, until the first shows again.
    int page = 0;
    do {
        check(bench, u"assumptions_%1"_s.arg(++page));
        go(bench, u"page_after"_s);
    } while (page < 20 && !bench.thumb().find(u"assumption_kneading_s"_s));
    EXPECT_GT(page, 6);
    go(bench, u"assumption_edges_at_gel_percent"_s);
    go(bench, u"assumption_plus"_s);
    check(bench, u"assumption"_s);
    go(bench, u"answer_way_on"_s);
    check(bench, u"assumptions_changed"_s);
    go(bench, u"assumption_kneading_s"_s);
    go(bench, u"assumption_figure"_s);
    go(bench, u"key_9"_s);
    check(bench, u"assumption_keys"_s);
    go(bench, u"key_9"_s);
    go(bench, u"key_9"_s);
    go(bench, u"answer_way_on"_s);
    check(bench, u"assumption_refused"_s);
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, SetUpRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
