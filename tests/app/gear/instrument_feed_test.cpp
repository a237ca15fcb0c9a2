// SPDX-License-Identifier: GPL-3.0-or-later
// The feed at a real terminal: what is wrong is told, and it comes back by itself.
#include "wired_feed.h"

#include "gear/instruments.h"

#include <QFile>

#include <sys/stat.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

TEST_F(WiredFeed, NothingIsSetUpNothingIsSaid)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    EXPECT_EQ(feed.view().is, Is::Off);
    EXPECT_FALSE(feed.isOn());
}

TEST_F(WiredFeed, AStandingWeightIsOfferedOnceItStoodForASecond)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n")); // may lack its beginning: not looked at
    EXPECT_FALSE(feed.view().live.has_value());
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n"));
    EXPECT_EQ(feed.view().is, Is::Unsteady);
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n"));
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n"));
    EXPECT_EQ(feed.view().is, Is::Unsteady) << "0.8 s only";
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n", 0));
    EXPECT_EQ(feed.view().is, Is::Steady);
    EXPECT_NEAR(grammes(feed), 151.2, 1e-9);
    EXPECT_EQ(feed.view().line, u"ST,GS,+  151.2 g"_s);
}

TEST_F(WiredFeed, AnOldReadingIsNotOffered)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    for (int i = 0; i < 6; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n"));
    EXPECT_EQ(feed.view().is, Is::Steady);
    m_clock.pass(3);
    EXPECT_EQ(feed.view().is, Is::Stale);
    EXPECT_FALSE(feed.view().steady.has_value());
    m_clock.pass(10);
    EXPECT_EQ(feed.view().is, Is::Stale);
}

TEST_F(WiredFeed, AScaleThatSaysNothingIsSilent)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    EXPECT_EQ(feed.view().is, Is::Opening);
    m_clock.pass(6);
    EXPECT_EQ(feed.view().is, Is::Silent);
}

TEST_F(WiredFeed, NoSuchPortIsToldAndItComesOnceItIsPluggedIn)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    feed.setUp(at(scaleLine));
    ASSERT_TRUE(wait([&] { return feed.view().is == Is::Failed; }));
    EXPECT_EQ(feed.view().port.why, SerialFault::Why::NotThere);
    ASSERT_TRUE(m_wire.plugIn());
    ASSERT_TRUE(wait([&] { return feed.isOpen(); }));
    EXPECT_NE(feed.view().is, Is::Failed);
}

TEST_F(WiredFeed, PulledOutIsToldAndWhatComesBackBeginsAnew)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    for (int i = 0; i < 6; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  151.2 g\r\n"));
    ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+  1", 0)); // torn by the plug
    m_wire.pullOut();
    ASSERT_TRUE(wait([&] { return feed.view().is == Is::Failed; }));
    EXPECT_FALSE(feed.view().steady.has_value());
    ASSERT_TRUE(wait([&] { return feed.view().port.why == SerialFault::Why::NotThere; })) << "after the first retry";
    ASSERT_TRUE(m_wire.plugIn());
    ASSERT_TRUE(wait([&] { return feed.isOpen(); }));
    ASSERT_NO_FATAL_FAILURE(say(feed, "51.2 g\r\n")); // the half of a line after it came back
    EXPECT_FALSE(feed.view().live.has_value());
    for (int i = 0; i < 4; ++i) {
        EXPECT_FALSE(feed.view().steady.has_value());
        ASSERT_NO_FATAL_FAILURE(say(feed, "ST,GS,+   58.4 g\r\n", 0.4));
    }
    EXPECT_NEAR(grammes(feed), 58.4, 1e-9);
}

TEST_F(WiredFeed, APortThatAnotherHasIsToldAsInUse)
{
    InstrumentFeed first(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(first));
    InstrumentFeed second(InstrumentKind::Climate, m_clock);
    second.setUp(at(u"{temperature:C} {humidity}"_s));
    ASSERT_TRUE(wait([&] { return second.view().is == Is::Failed; }));
    EXPECT_EQ(second.view().port.why, SerialFault::Why::InUse) << second.view().port.says.toStdString();
}

TEST_F(WiredFeed, WhatIsNoPortIsRefusedInTheSystemsWords)
{
    const QString file = m_wire.port() + u"_file"_s;
    QFile plain(file);
    ASSERT_TRUE(plain.open(QIODevice::WriteOnly));
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    InstrumentSetting setting = at(scaleLine);
    setting.port = file;
    feed.setUp(setting);
    ASSERT_TRUE(wait([&] { return feed.view().is == Is::Failed; }));
    EXPECT_FALSE(feed.view().port.says.isEmpty());
}

TEST_F(WiredFeed, ALineThatDoesNotFitIsShownAsReceived)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{weight:g}"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed,
                                "\r\nT=21.4\xb0"
                                "C\r\n",
                                0));
    EXPECT_EQ(feed.view().is, Is::NoFit);
    EXPECT_EQ(feed.view().line, u"T=21.4?C"_s) << "only printable ASCII";
    ASSERT_TRUE(feed.view().fault.has_value());
    EXPECT_EQ(feed.view().fault->field, u"line"_s);
}

TEST_F(WiredFeed, BytesOfAnotherSpeedAreGarbled)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed));
    for (int i = 0; i < 14; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray("\x80\x98\x06\xfe\x00\x1f", 6), 0.4));
    EXPECT_EQ(feed.view().is, Is::Garbled);
    EXPECT_TRUE(feed.view().line.isEmpty());
}

TEST_F(WiredFeed, APatternThatReadsNothingOfTheKindIsWrong)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{temperature:C}"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n21.4\r\n", 0));
    EXPECT_EQ(feed.view().is, Is::PatternWrong);
    ASSERT_TRUE(feed.view().fault.has_value());
    EXPECT_EQ(feed.view().fault->kind, FaultKind::Missing);
    EXPECT_FALSE(patternFor(InstrumentKind::Climate, u"{weight:g}"_s).has_value());
}

TEST_F(WiredFeed, EveryReadyPatternIsOneOfItsKind)
{
    for (const InstrumentKind kind : {InstrumentKind::Scale, InstrumentKind::Climate})
        for (const QString& each : readyPatterns(kind))
            EXPECT_TRUE(patternFor(kind, each).has_value()) << each.toStdString();
}

TEST_F(WiredFeed, AirIsSteadyOnceTemperatureAndHumidityAre)
{
    InstrumentFeed feed(InstrumentKind::Climate, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{temperature:C} {humidity}"_s));
    ASSERT_NO_FATAL_FAILURE(say(feed, "\r\n"));
    for (const char* humidity : {"40.0", "44.0", "48.0", "48.0", "48.0"}) {
        EXPECT_FALSE(feed.view().steady.has_value());
        ASSERT_NO_FATAL_FAILURE(say(feed, QByteArray("21.4 ") + humidity + "\r\n", 0.6));
    }
    const auto steady = feed.view().steady;
    ASSERT_TRUE(steady.has_value());
    EXPECT_NEAR(inKelvin(*steady->temperature), 273.15 + 21.4, 1e-9);
    EXPECT_NEAR(steady->humidity->percent(), 48, 1e-9);
}

TEST_F(WiredFeed, AnotherPatternBeginsAnewAtTheSamePort)
{
    InstrumentFeed feed(InstrumentKind::Scale, m_clock);
    ASSERT_NO_FATAL_FAILURE(connectScale(feed, u"{weight:oz}"_s));
    for (int i = 0; i < 6; ++i)
        ASSERT_NO_FATAL_FAILURE(say(feed, "2.00\r\n"));
    EXPECT_EQ(feed.view().is, Is::Steady);
    feed.setUp(at(u"{weight:g}"_s));
    EXPECT_TRUE(feed.isOpen());
    EXPECT_FALSE(feed.view().steady.has_value());
}

} // namespace
} // namespace strandbench::test
