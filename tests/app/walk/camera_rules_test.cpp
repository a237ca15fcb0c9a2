// SPDX-License-Identifier: GPL-3.0-or-later
// The camera's screens keep the rules of look and touch, on every glass, in every language.
#include "walk/demo_jobs.h"

#include "app/camera/fake_camera.h"
#include "camera/camera_feed.h"
#include "languages.h"
#include "touch_rules/glass.h"
#include "touch_rules/rule_check.h"

#include <QDeadlineTimer>
#include <QDir>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cerrno>
#include <sstream>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int longestWaitMs = 20000;

struct Look {
    rules::Glass glass;
    QString language;
};

std::string nameOf(const Look& look)
{
    return u"%1x%2_%3"_s.arg(look.glass.pixels.width())
        .arg(look.glass.pixels.height())
        .arg(look.language)
        .toStdString();
}

void PrintTo(const Look& look, std::ostream* out) { *out << nameOf(look); }

FakeSpec called(const QString& path, const QByteArray& card)
{
    FakeSpec spec;
    spec.path = path;
    spec.card = card;
    return spec;
}

class CameraRules : public ::testing::TestWithParam<Look> {
protected:
    void check(ScriptedBench& bench, const QString& name)
    {
        // To look at: every screen as a picture, where a folder is named.
        const QString folder = qEnvironmentVariable("STRANDBENCH_LOOK");
        if (!folder.isEmpty())
            bench.window().grab().save(folder + u'/' + QString::fromStdString(nameOf(GetParam())) + u'_' + name +
                                       u".png"_s);
        for (const rules::Breach& breach : rules::checkScreen(&bench.window(), bench.window().theme())) {
            std::ostringstream said;
            said << breach;
            ADD_FAILURE() << name.toStdString() << ": " << said.str();
        }
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
    const Look& look = GetParam();
    const bool turned = (look.glass.pixels.width() + look.language.size() + look.language.at(0).unicode()) % 2 == 0;
    const QTemporaryDir folder;
    Settings settings = demoSettings();
    settings.photoFolder = folder.path();
    settings.language = look.language;
    settings.dayNight = turned ? DayNight::Night : DayNight::Day;
    settings.hand = turned ? Hand::Left : Hand::Right;
    FakeCamera one(called(u"/dev/video0"_s, "Camera with a name of thirty-two"));
    FakeCamera two(called(u"/dev/video2"_s, "Lamp arm"));
    one.see(jpegOf(QColor(130, 140, 150), {1280, 720}));
    CameraFeed cameras(FakeCamera::machineWith({&one, &two}));
    ScriptedBench bench({folder.filePath(u"bench.sqlite"_s),
                         workingMorning(),
                         settings,
                         look.glass.pixels,
                         look.glass.pixelsPerMillimetre(),
                         {},
                         Worker::Runs::Inline,
                         nullptr,
                         &cameras});
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

std::vector<Look> everyLook()
{
    std::vector<Look> looks;
    for (const rules::Glass& glass : rules::glasses())
        for (const QString& language : carriedLanguages())
            looks.push_back({glass, language});
    return looks;
}

INSTANTIATE_TEST_SUITE_P(OnEveryGlass, CameraRules, ::testing::ValuesIn(everyLook()),
                         [](const auto& each) { return nameOf(each.param); });

} // namespace
} // namespace strandbench::test
