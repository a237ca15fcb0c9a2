// SPDX-License-Identifier: GPL-3.0-or-later
// Connecting scale and thermo-hygrometer with real taps; what comes in is shown live.
#include "instrument_bench.h"
#include "shown.h"

#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace strandbench::test {
namespace {

class InstrumentsSetUp : public ::testing::Test {
protected:
    void open(const Settings& settings = demoSettings())
    {
        ASSERT_TRUE(m_wires.scale.plugIn());
        ASSERT_TRUE(m_wires.climate.plugIn());
        ScriptedBench::Spec spec;
        spec.log = m_folder.filePath(u"bench.sqlite"_s);
        spec.start = workingMorning();
        spec.settings = settings;
        spec.ports = m_wires.ports();
        m_bench = std::make_unique<ScriptedBench>(spec);
        tap(u"set_up"_s);
        for (int i = 0; i < 6; ++i)
            tap(u"answer_way_on"_s);
    }
    void tap(const QString& control)
    {
        ASSERT_TRUE(m_bench->thumb().tap(control))
            << control.toStdString() << " on " << m_bench->window().screen()->objectName().toStdString();
    }
    [[nodiscard]] QString text(const QString& name) { return shown(m_bench->window(), name); }
    [[nodiscard]] QString screen() { return m_bench->window().screen()->objectName(); }

    QTemporaryDir m_folder;
    InstrumentWires m_wires;
    std::unique_ptr<ScriptedBench> m_bench;
};

TEST_F(InstrumentsSetUp, AScaleIsChosenFromThePortsFoundAndSaysItsWeightAtOnce)
{
    ASSERT_NO_FATAL_FAILURE(open());
    EXPECT_EQ(screen(), u"screen_set_up_instruments"_s);
    EXPECT_EQ(text(u"instrument_says"_s), u"No instrument is set up."_s);
    tap(u"instrument_port"_s);
    tap(u"port_0"_s);
    tap(u"instrument_pattern"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, 151.24, 2));
    EXPECT_TRUE(text(u"pattern_line"_s).remove(QChar(0x200b)).contains(u"ST,GS,+  151.24 g"_s));
    EXPECT_EQ(m_bench->thumb().find(u"pattern_0"_s)->accessibleDescription(), u"reads 151.24\u00a0g"_s);
    EXPECT_EQ(m_bench->thumb().find(u"pattern_3"_s)->accessibleDescription(), u"does not fit the line"_s);
    tap(u"pattern_0"_s);
    ASSERT_TRUE(m_wires.weigh(*m_bench, 151.24));
    EXPECT_EQ(text(u"instrument_says"_s), u"151.24\u00a0g, steady"_s);
    const SettingsFile file(m_folder.filePath(u"bench.ini"_s));
    const auto loaded = file.load();
    EXPECT_TRUE(loaded.odd.isEmpty());
    EXPECT_EQ(loaded.settings.scale.port, m_wires.scale.port());
    EXPECT_EQ(loaded.settings.scale.pattern, u"{steady:ST|US},{any},{weight} {unit}"_s) << "with its commas";
    EXPECT_EQ(loaded.settings.scale.baud, 9600);
    EXPECT_EQ(loaded.settings.scale.frame, u"8N1"_s);
}

TEST_F(InstrumentsSetUp, SpeedAndFrameAreKept)
{
    ASSERT_NO_FATAL_FAILURE(open(m_wires.connected(demoSettings())));
    tap(u"instrument_speed"_s);
    tap(u"speed_2400"_s);
    tap(u"instrument_speed"_s);
    tap(u"frame_7E1"_s);
    const auto loaded = SettingsFile(m_folder.filePath(u"bench.ini"_s)).load();
    EXPECT_EQ(loaded.settings.scale.baud, 2400);
    EXPECT_EQ(loaded.settings.scale.frame, u"7E1"_s);
    EXPECT_EQ(loaded.settings.climate.baud, 9600) << "the other one's stay";
}

TEST_F(InstrumentsSetUp, APatternIsWrittenByTheLargeKeys)
{
    ASSERT_NO_FATAL_FAILURE(open(m_wires.connected(demoSettings())));
    tap(u"page_after"_s);
    tap(u"instrument_pattern"_s);
    tap(u"pattern_write"_s);
    tap(u"letter_page"_s);
    tap(u"letter_page"_s);
    tap(u"letter_0"_s); // a brace without its other
    tap(u"answer_way_on"_s);
    EXPECT_FALSE(m_bench->window().screen()->troubleShown().isEmpty());
    EXPECT_EQ(m_bench->window().settings().climate.pattern, u"{temperature:C} {humidity}"_s);
    tap(u"letter_delete"_s);
    tap(u"letter_space"_s);
    tap(u"letter_6"_s); // a percent sign
    tap(u"answer_way_on"_s);
    EXPECT_EQ(m_bench->window().settings().climate.pattern, u"{temperature:C} {humidity} %"_s);
}

TEST_F(InstrumentsSetUp, APathIsWrittenByTheLargeKeysAndWhatIsNoneIsRefused)
{
    ASSERT_NO_FATAL_FAILURE(open());
    tap(u"instrument_port"_s);
    tap(u"port_write"_s);
    tap(u"letter_0"_s);
    tap(u"answer_way_on"_s);
    EXPECT_FALSE(m_bench->window().screen()->troubleShown().isEmpty());
    tap(u"letter_delete"_s);
    tap(u"letter_page"_s);
    tap(u"letter_page"_s);
    tap(u"letter_4"_s); // a slash
    tap(u"letter_page"_s);
    tap(u"letter_1"_s);
    tap(u"answer_way_on"_s);
    EXPECT_EQ(m_bench->window().settings().scale.port, u"/1"_s);
    EXPECT_TRUE(InstrumentWires::wait(
        [&] { return text(u"instrument_says"_s).remove(QChar(0x200b)) == u"Nothing is plugged in at /1."_s; }));
}

TEST_F(InstrumentsSetUp, PulledOutIsSaidAndTheNextPlugIsTakenUp)
{
    ASSERT_NO_FATAL_FAILURE(open(m_wires.connected(demoSettings())));
    ASSERT_TRUE(m_wires.weigh(*m_bench, 58.4));
    m_wires.scale.pullOut();
    ASSERT_TRUE(InstrumentWires::wait([&] {
        return text(u"instrument_says"_s).contains(u"pulled out"_s) ||
               text(u"instrument_says"_s).contains(u"Nothing is plugged"_s);
    }));
    ASSERT_TRUE(m_wires.scale.plugIn());
    ASSERT_TRUE(m_wires.weigh(*m_bench, 12.5));
    EXPECT_EQ(text(u"instrument_says"_s), u"12.50\u00a0g, steady"_s);
}

TEST(InstrumentSettings, AFileFromBeforeHasNoneAndOddOnesAreNamed)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"bench.ini"_s);
    EXPECT_EQ(SettingsFile(path).load().settings.scale, InstrumentSetting{});
    {
        QSettings file(path, QSettings::IniFormat);
        file.setValue(u"scale/speed"_s, 1234);
        file.setValue(u"climate/frame"_s, u"9X9"_s);
    }
    const auto loaded = SettingsFile(path).load();
    EXPECT_EQ(loaded.settings.scale.baud, 9600);
    EXPECT_EQ(loaded.settings.climate.frame, u"8N1"_s);
    EXPECT_EQ(loaded.odd.size(), 2);
}

} // namespace
} // namespace strandbench::test
