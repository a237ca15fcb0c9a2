// SPDX-License-Identifier: GPL-3.0-or-later
// A photo goes from a camera into the log, byte for byte, by real taps. The camera is a test's own, driven through the
// program's own calls and thread: no real camera has been tried.
#include "app/camera/fake_camera.h"
#include "bench_fixture.h"
#include "camera/camera_feed.h"
#include "pictures/photo_picture.h"
#include "shown.h"

#include <QCryptographicHash>
#include <QDeadlineTimer>
#include <QDir>

#include <cerrno>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int longestWaitMs = 20000;
const QColor magenta(220, 20, 180);
const QColor teal(10, 140, 150);

bool alike(const QColor& a, const QColor& b)
{
    return std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue()) < 30;
}

FakeSpec second()
{
    FakeSpec spec;
    spec.path = u"/dev/video2"_s;
    spec.card = "Lamp arm camera";
    return spec;
}

class CameraOnTheBench : public BenchTest {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(QDir(folder()).mkpath(u"pictures"_s));
        m_settings.photoFolder = folder() + u"/pictures"_s;
        m_device.see(jpegOf(teal, {1280, 720}));
    }
    void TearDown() override { close(); }
    bool waitFor(const std::function<bool()>& there)
    {
        const QDeadlineTimer deadline(longestWaitMs);
        while (!there() && !deadline.hasExpired())
            bench().thumb().settle();
        return there();
    }
    bool offers(const QString& control) { return bench().thumb().find(control) != nullptr; }
    void openWith(const std::vector<FakeCamera*>& devices)
    {
        m_feed = std::make_unique<CameraFeed>(FakeCamera::machineWith(devices));
        m_cameras = m_feed.get();
        open(m_settings);
        Walk walk(bench(), skirtPanel());
        while (screen() != u"screen_assess_substrate"_s)
            ASSERT_TRUE(walk.step()) << walk.why().toStdString();
        tap(u"photo_as_found"_s);
        ASSERT_EQ(screen(), u"screen_photo_pick"_s);
    }
    void toCamera()
    {
        ASSERT_TRUE(waitFor([this] { return offers(u"camera"_s); }));
        tap(u"camera"_s);
        ASSERT_EQ(screen(), u"screen_camera"_s);
    }
    bool live()
    {
        return waitFor([this] {
            return offers(u"answer_way_on"_s) && shown(window(), u"answer_way_on"_s) == u"Take the photo"_s &&
                   bench().thumb().find(u"answer_way_on"_s)->isEnabled();
        });
    }
    /// The colour on the glass in the middle of the picture.
    QColor seen()
    {
        auto* picture = window().findChild<PhotoPicture*>(u"camera_picture"_s);
        return picture ? picture->grab().toImage().pixelColor(picture->rect().center()) : QColor();
    }
    QString trouble() { return window().screen()->troubleShown(); }
    Settings m_settings = demoSettings();
    FakeCamera m_device;
    std::unique_ptr<CameraFeed> m_feed;
};

TEST_F(CameraOnTheBench, WithoutACameraThereIsNoKey)
{
    openWith({});
    bool answered = false;
    QObject::connect(m_feed.get(), &CameraFeed::found, m_feed.get(), [&] { answered = true; });
    m_feed->look();
    EXPECT_TRUE(waitFor([&] { return answered; }));
    EXPECT_FALSE(offers(u"camera"_s));
    EXPECT_TRUE(offers(u"other_folder"_s));
}

TEST_F(CameraOnTheBench, APhotoIsTakenAndKeptByteForByteWithItsHash)
{
    openWith({&m_device});
    toCamera();
    ASSERT_TRUE(live());
    EXPECT_TRUE(alike(seen(), teal));
    EXPECT_FALSE(offers(u"take_again"_s));
    EXPECT_FALSE(offers(u"another_camera"_s)) << "there is one";
    tap(u"answer_way_on"_s);
    EXPECT_EQ(shown(window(), u"answer_way_on"_s), u"Keep this photo"_s);
    EXPECT_TRUE(waitFor([&] { return m_device.givenBack(); })) << "it rests while the photo is looked at";
    m_device.see(jpegOf(magenta, {1280, 720}));
    const QUuid id = bench().repair(u"4421"_s)->id;
    const std::size_t before = eventsInLog(id);
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(waitFor([&] { return screen() == u"screen_assess_substrate"_s; }));
    EXPECT_TRUE(bench().thumb().find(u"photo_as_found"_s)->accessibleDescription().contains(u"taken"_s));
    close();

    const auto log = RepairLog::open(this->log(), LogMode::ReadOnly);
    ASSERT_TRUE(log.has_value());
    const auto events = (*log)->events(id);
    ASSERT_TRUE(events.has_value());
    EXPECT_EQ(events->size(), before + 1);
    const auto* photo = std::get_if<PhotoTaken>(&events->back().payload);
    ASSERT_NE(photo, nullptr);
    const QByteArray jpeg = jpegOf(teal, {1280, 720});
    EXPECT_EQ(photo->moment, PhotoMoment::AsFound);
    EXPECT_EQ(photo->mediaType, u"image/jpeg"_s);
    EXPECT_EQ(photo->hash, QCryptographicHash::hash(jpeg, QCryptographicHash::Sha256));
    const auto blob = (*log)->blob(photo->hash);
    ASSERT_TRUE(blob.has_value());
    EXPECT_EQ(*blob, jpeg);
}

TEST_F(CameraOnTheBench, TakenAgainItIsTheSecondThatIsKept)
{
    openWith({&m_device});
    toCamera();
    ASSERT_TRUE(live());
    tap(u"answer_way_on"_s);
    ASSERT_TRUE(offers(u"take_again"_s));
    const QUuid id = bench().repair(u"4421"_s)->id;
    const std::size_t before = eventsInLog(id);
    m_device.see(jpegOf(magenta));
    tap(u"take_again"_s);
    ASSERT_TRUE(live());
    EXPECT_TRUE(waitFor([&] { return alike(seen(), magenta); }));
    EXPECT_FALSE(offers(u"take_again"_s));
    EXPECT_EQ(eventsInLog(id), before) << "what was not kept is nowhere";
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(alike(seen(), magenta));
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(waitFor([&] { return screen() == u"screen_assess_substrate"_s; }));
    close();
    const auto log = RepairLog::open(this->log(), LogMode::ReadOnly);
    ASSERT_TRUE(log.has_value());
    const auto blob = (*log)->blob(QCryptographicHash::hash(jpegOf(magenta), QCryptographicHash::Sha256));
    ASSERT_TRUE(blob.has_value());
    EXPECT_EQ(*blob, jpegOf(magenta));
}

TEST_F(CameraOnTheBench, PulledOutSaysWhichAndWhatToDoAndPluggedInGoesOn)
{
    openWith({&m_device});
    toCamera();
    ASSERT_TRUE(live());
    m_device.pullOut();
    ASSERT_TRUE(waitFor([this] { return !trouble().isEmpty(); }));
    EXPECT_EQ(trouble(), u"Bench camera is not there any more. Plug the camera in again, or choose from a folder."_s);
    EXPECT_EQ(shown(window(), u"answer_way_on"_s), u"Try again"_s);
    EXPECT_FALSE(alike(seen(), teal)) << "an old picture would pass for a live one";
    tap(u"answer_way_on"_s);
    ASSERT_TRUE(waitFor([this] { return trouble().startsWith(u"No camera is there."_s); }));
    m_device.plugIn();
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(live());
    EXPECT_EQ(trouble(), QString());
    tap(u"answer_back"_s);
    EXPECT_EQ(screen(), u"screen_photo_pick"_s);
    EXPECT_TRUE(waitFor([this] { return m_device.givenBack(); })) << "who leaves gives it back";
}

TEST_F(CameraOnTheBench, PulledOutAfterThePhotoWasTakenItIsKeptAllTheSame)
{
    openWith({&m_device});
    toCamera();
    ASSERT_TRUE(live());
    tap(u"answer_way_on"_s);
    m_device.pullOut();
    bench().thumb().settle();
    EXPECT_EQ(trouble(), QString());
    tap(u"answer_way_on"_s);
    EXPECT_TRUE(waitFor([&] { return screen() == u"screen_assess_substrate"_s; }));
}

TEST_F(CameraOnTheBench, WhatDoesNotOpenIsNamedWithWhatToDo)
{
    openWith({&m_device});
    toCamera();
    ASSERT_TRUE(live());
    tap(u"answer_way_on"_s);
    ASSERT_TRUE(waitFor([this] { return m_device.givenBack(); }));
    const std::pair<int, QString> expected[] = {
        {EBUSY, u"Bench camera is in use elsewhere. End what uses it, or choose from a folder."_s},
        {EACCES, u"The bench may not use Bench camera. Have it allowed, or choose from a folder."_s},
        {EMFILE, u"Bench camera failed: Too many open files. Plug the camera in again, or choose from a folder."_s},
    };
    for (const auto& [error, text] : expected) {
        m_device.setOpenError(error);
        tap(u"take_again"_s);
        ASSERT_TRUE(waitFor([this] { return !trouble().isEmpty(); }));
        EXPECT_EQ(trouble(), text);
        m_device.setOpenError(0);
        tap(u"answer_way_on"_s);
        ASSERT_TRUE(live());
        tap(u"answer_way_on"_s);
        ASSERT_TRUE(waitFor([this] { return m_device.givenBack(); }));
    }
}

TEST_F(CameraOnTheBench, OfTwoTheOneChosenLastIsShownAgain)
{
    FakeCamera other(second());
    other.see(jpegOf(magenta));
    openWith({&m_device, &other});
    toCamera();
    ASSERT_TRUE(live());
    EXPECT_TRUE(alike(seen(), teal));
    tap(u"another_camera"_s);
    EXPECT_TRUE(waitFor([&] { return alike(seen(), magenta); }));
    tap(u"answer_back"_s);
    toCamera();
    ASSERT_TRUE(live());
    EXPECT_TRUE(alike(seen(), magenta));
    tap(u"another_camera"_s);
    EXPECT_TRUE(waitFor([&] { return alike(seen(), teal); }));
    close();
    m_feed.reset();
    EXPECT_TRUE(m_device.givenBack() && other.givenBack());
}

} // namespace
} // namespace strandbench::test
