// SPDX-License-Identifier: GPL-3.0-or-later
// A bench with a scale and a thermo-hygrometer at pseudo-terminals.
#pragma once

#include "walk/demo_jobs.h"

#include "app/gear/serial_wire.h"

#include <QCoreApplication>
#include <QDeadlineTimer>

#include <functional>

namespace strandbench::test {

struct InstrumentWires {
    static constexpr int longestWaitMs = 20000;
    SerialWire scale;
    SerialWire climate;

    /// The settings with both connected, their lines as these patterns.
    [[nodiscard]] Settings connected(Settings settings) const
    {
        settings.scale.port = scale.port();
        settings.scale.pattern = QStringLiteral("{steady:ST|US},{any},{weight} {unit}");
        settings.climate.port = climate.port();
        settings.climate.pattern = QStringLiteral("{temperature:C} {humidity}");
        return settings;
    }
    [[nodiscard]] Instruments::Look ports() const
    {
        return [this] {
            return std::vector<SerialPortFound>{{scale.port(), QStringLiteral("USB-Serial Controller")},
                                                {climate.port(), {}}};
        };
    }
    static bool wait(const std::function<bool()>& there)
    {
        const QDeadlineTimer deadline(longestWaitMs);
        while (!there() && !deadline.hasExpired())
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
        return there();
    }
    /// Says a line so often that it stands, as time goes on. False when it does not arrive.
    static bool say(ScriptedBench& bench, InstrumentFeed& feed, const SerialWire& wire, const QByteArray& line,
                    int times = 5)
    {
        if (!wait([&] { return feed.isOpen(); }))
            return false;
        for (int i = 0; i < times; ++i) {
            const qint64 before = feed.bytes();
            const QByteArray whole = (before == 0 ? "\r\n" : "") + line + "\r\n";
            if (!wire.send(whole) || !wait([&] { return feed.bytes() >= before + whole.size(); }))
                return false;
            bench.clock().advance(seconds(i + 1 < times ? 0.5 : 0.0));
        }
        bench.thumb().settle();
        return true;
    }
    bool weigh(ScriptedBench& bench, double grams, int times = 5)
    {
        const QByteArray line = "ST,GS,+" + QByteArray::number(grams, 'f', 2).rightJustified(8) + " g";
        return say(bench, bench.instruments().scale(), scale, line, times);
    }
    bool read(ScriptedBench& bench, const QByteArray& line, int times = 5)
    {
        return say(bench, bench.instruments().climate(), climate, line, times);
    }
};

} // namespace strandbench::test
