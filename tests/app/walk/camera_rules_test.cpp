// SPDX-License-Identifier: GPL-3.0-or-later
// The camera's screens keep the rules of look and touch, on every glass, in every language.
#include "every_look.h"

#include "app/camera/fake_camera.h"
#include "camera/camera_feed.h"

#include <QDeadlineTimer>
#include <QDir>
#include <QTemporaryDir>

#include <cerrno>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int longestWaitMs = 20000;

FakeSpec called(const QString& path, const QByteArray& card)
{
    FakeSpec spec;
    spec.path = path;
    spec.card = card;
    return spec;
}

class CameraRules : public LookTest {
protected:
    void check(ScriptedBench& bench, const QString& name)
    {
        book().take(bench.window(), bench.window().theme(), name, rules::RuleSet::Bench);
    }
    void go(ScriptedBench& bench, const QString& control)
    {
        ASSERT_TRUE(bench.thumb().tap(control)) << control.toStdString();
    }
    bool waitFor(ScriptedBench& bench, const std::function<bool()>& there)
    {
        const QDeadlineTimer deadline(longestWaitMs);
        while (!there() && !deadline.hasExpired())
            bench.thumb().settle();
        return there();
    }
    bool open(ScriptedBench& bench, const QString& control)
    {
        return waitFor(bench, [&] {
            const QAbstractButton* found = bench.thumb().find(control);
            return found && found->isEnabled();
        });
    }
    void checkTrouble(ScriptedBench& bench, FakeCamera& device, int error)
    {
        device.setOpenError(error);
        go(bench, u"take_again"_s);
        ASSERT_TRUE(waitFor(bench, [&] { return !bench.window().screen()->troubleShown().isEmpty(); }));
        check(bench, u"trouble_%1"_s.arg(error));
        device.setOpenError(0);
        go(bench, u"answer_way_on"_s);
        ASSERT_TRUE(open(bench, u"answer_way_on"_s));
        go(bench, u"answer_way_on"_s);
        ASSERT_TRUE(waitFor(bench, [&] { return device.givenBack(); }));
    }
};

TEST_P(CameraRules, Hold)
{
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.photoFolder = folder.path();
    FakeCamera one(called(u"/dev/video0"_s, "Camera with a name of thirty-two"));
    FakeCamera two(called(u"/dev/video2"_s, "Lamp arm"));
    one.see(jpegOf(QColor(130, 140, 150), {1280, 720}));
    CameraFeed cameras(FakeCamera::machineWith({&one, &two}));
    ScriptedBench::Spec spec = specOn(folder.filePath(u"bench.sqlite"_s), settings);
    spec.cameras = &cameras;
    ScriptedBench bench(spec);
    ASSERT_FALSE(bench.trouble().has_value());
    const DemoJob job = skirtPanel();
    Walk walk(bench, job);
    while (!bench.thumb().find(u"photo_as_found"_s))
        ASSERT_TRUE(walk.step()) << walk.why().toStdString();
    go(bench, u"photo_as_found"_s);
    ASSERT_TRUE(open(bench, u"camera"_s));
    check(bench, u"pick"_s);
    go(bench, u"camera"_s);
    ASSERT_TRUE(open(bench, u"answer_way_on"_s));
    check(bench, u"live"_s);
    go(bench, u"another_camera"_s); // it sends nothing
    check(bench, u"waiting"_s);
    go(bench, u"another_camera"_s);
    ASSERT_TRUE(open(bench, u"answer_way_on"_s));
    go(bench, u"answer_way_on"_s);
    check(bench, u"still"_s);
    for (const int error : {EBUSY, EACCES, EMFILE, ENOENT})
        ASSERT_NO_FATAL_FAILURE(checkTrouble(bench, one, error));
    one.pullOut();
    two.pullOut();
    go(bench, u"take_again"_s);
    ASSERT_TRUE(waitFor(bench, [&] { return !bench.window().screen()->troubleShown().isEmpty(); }));
    go(bench, u"answer_way_on"_s);
    ASSERT_TRUE(waitFor(bench, [&] { return !bench.window().screen()->troubleShown().isEmpty(); }));
    check(bench, u"none"_s);
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, CameraRules, ::testing::ValuesIn(everyLook()), nameOfLook);

} // namespace
} // namespace strandbench::test
