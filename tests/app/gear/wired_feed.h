// SPDX-License-Identifier: GPL-3.0-or-later
// A feed at the end of a pseudo-terminal, with a clock that is set: what was said has arrived before time goes on.
#pragma once

#include "core/roles/set_clock.h"
#include "gear/instrument_feed.h"
#include "serial_wire.h"

#include <QCoreApplication>
#include <QDeadlineTimer>

#include <gtest/gtest.h>

namespace strandbench::test {

using Is = InstrumentView::Is;

inline const QString scaleLine = QStringLiteral("{steady:ST|US},{any},{weight} {unit}");

class WiredFeed : public ::testing::Test {
protected:
    static constexpr int longestWaitMs = 20000;

    bool wait(const std::function<bool()>& there)
    {
        const QDeadlineTimer deadline(longestWaitMs);
        while (!there() && !deadline.hasExpired())
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        return there();
    }
    [[nodiscard]] InstrumentSetting at(const QString& pattern) const
    {
        InstrumentSetting setting;
        setting.port = m_wire.port();
        setting.pattern = pattern;
        return setting;
    }
    void connectScale(InstrumentFeed& feed, const QString& pattern = scaleLine)
    {
        ASSERT_TRUE(m_wire.plugIn());
        feed.setUp(at(pattern));
        ASSERT_TRUE(wait([&] { return feed.isOpen(); }));
    }
    /// Says it, waits until it is here, then lets time pass.
    void say(InstrumentFeed& feed, const QByteArray& bytes, double thenSeconds = 0.4)
    {
        const qint64 before = feed.bytes();
        ASSERT_TRUE(m_wire.send(bytes));
        ASSERT_TRUE(wait([&] { return feed.bytes() >= before + bytes.size(); })) << "not arrived";
        m_clock.pass(thenSeconds);
    }
    [[nodiscard]] static double grammes(const InstrumentFeed& feed)
    {
        const auto steady = feed.view().steady;
        return steady && steady->weight ? inGrams(*steady->weight) : -1e9;
    }

    SetClock m_clock;
    SerialWire m_wire;
};

} // namespace strandbench::test
