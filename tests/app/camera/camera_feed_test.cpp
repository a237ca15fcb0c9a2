// SPDX-License-Identifier: GPL-3.0-or-later
// Cameras are driven beside the glass: pictures come, faults are told once, nothing comes after the end.
#include "camera/camera_feed.h"
#include "fake_camera.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <cerrno>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

constexpr int longestWaitMs = 10000;
constexpr QSize box(320, 320);
const QColor teal(10, 140, 150);
const QColor magenta(220, 20, 180);

class FeedTest : public ::testing::Test {
protected:
    FeedTest() { device.see(jpegOf(teal)); }
    bool waitFor(const std::function<bool()>& there) { return QTest::qWaitFor(there, longestWaitMs); }
    void make(int patienceMs = 5000)
    {
        feed = std::make_unique<CameraFeed>(FakeCamera::machineWith({&device}), patienceMs);
        QObject::connect(feed.get(), &CameraFeed::seen,
                         [this](quint64 showing, const CameraView& view) { views.emplace_back(showing, view); });
        QObject::connect(feed.get(), &CameraFeed::failed,
                         [this](quint64 showing, const CameraFault& fault) { faults.emplace_back(showing, fault); });
    }
    FakeCamera device;
    std::unique_ptr<CameraFeed> feed;
    std::vector<std::pair<quint64, CameraView>> views;
    std::vector<std::pair<quint64, CameraFault>> faults;
};

TEST_F(FeedTest, FindsWhatIsThere)
{
    make();
    QSignalSpy found(feed.get(), &CameraFeed::found);
    feed->look();
    ASSERT_TRUE(found.wait(longestWaitMs));
    EXPECT_EQ(found[0][0].value<std::vector<CameraDevice>>().size(), 1U);
    device.pullOut();
    feed->look();
    ASSERT_TRUE(found.wait(longestWaitMs));
    EXPECT_TRUE(found[1][0].value<std::vector<CameraDevice>>().empty());
}

TEST_F(FeedTest, ShowsWhatTheCameraSeesUntilItIsStopped)
{
    make();
    const quint64 showing = feed->start(u"/dev/video0"_s, box);
    ASSERT_TRUE(waitFor([&] { return views.size() >= 3; }));
    EXPECT_EQ(views[0].first, showing);
    EXPECT_EQ(views[0].second.frame.jpeg(), jpegOf(teal));
    EXPECT_EQ(views[0].second.small.size(), QSize(320, 240));
    device.see(jpegOf(magenta));
    EXPECT_TRUE(waitFor([&] { return views.back().second.frame.bytes == jpegOf(magenta); })) << "what it sees now";
    feed->stop(showing);
    const std::size_t shown = views.size();
    EXPECT_TRUE(waitFor([&] { return device.givenBack(); }));
    QTest::qWait(20);
    EXPECT_EQ(views.size(), shown) << "nothing after the end";
    EXPECT_TRUE(faults.empty());
}

TEST_F(FeedTest, TheNextShowingTakesThePlaceOfTheOneBefore)
{
    make();
    const quint64 first = feed->start(u"/dev/video0"_s, box);
    const quint64 second = feed->start(u"/dev/video0"_s, box);
    feed->stop(first); // by a screen that is gone already
    ASSERT_TRUE(waitFor([&] { return !views.empty(); }));
    EXPECT_EQ(views[0].first, second);
    EXPECT_EQ(feed->lastShown(), u"/dev/video0"_s);
    EXPECT_TRUE(faults.empty()) << "it was given back before it was opened again";
}

TEST_F(FeedTest, PulledOutIsToldOnceAndItCanBeStartedAgain)
{
    make();
    const quint64 first = feed->start(u"/dev/video0"_s, box);
    ASSERT_TRUE(waitFor([&] { return !views.empty(); }));
    device.pullOut();
    ASSERT_TRUE(waitFor([&] { return !faults.empty(); }));
    EXPECT_EQ(faults[0].first, first);
    EXPECT_EQ(faults[0].second.why, CameraFault::Why::Gone);
    EXPECT_EQ(faults[0].second.error, ENODEV);
    EXPECT_TRUE(waitFor([&] { return device.givenBack(); }));
    const quint64 second = feed->start(u"/dev/video0"_s, box);
    ASSERT_TRUE(waitFor([&] { return faults.size() == 2; }));
    EXPECT_EQ(faults[1].first, second);
    device.plugIn();
    views.clear();
    feed->start(u"/dev/video0"_s, box);
    EXPECT_TRUE(waitFor([&] { return !views.empty(); }));
    EXPECT_EQ(faults.size(), 2U);
}

TEST_F(FeedTest, PatienceEndsWithOneThatSendsNothingToBeSeen)
{
    for (const QByteArray& sent : {QByteArray(), QByteArray("no picture"), QByteArray("\xff\xd8\xff\xd9")}) {
        device.see(sent);
        make(30);
        faults.clear();
        feed->start(u"/dev/video0"_s, box);
        ASSERT_TRUE(waitFor([&] { return !faults.empty(); }));
        EXPECT_EQ(faults[0].second, (CameraFault{CameraFault::Why::NoPicture, u"Bench camera"_s, {}, 0, {}}));
    }
    EXPECT_TRUE(views.empty());
}

TEST_F(FeedTest, GoesInTheMiddleAndGivesEverythingBack)
{
    make();
    feed->start(u"/dev/video0"_s, box);
    ASSERT_TRUE(waitFor([&] { return !views.empty(); }));
    feed.reset();
    EXPECT_TRUE(device.givenBack());
}

} // namespace
} // namespace strandbench::test
