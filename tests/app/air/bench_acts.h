// SPDX-License-Identifier: GPL-3.0-or-later
// What a test does to a bench beside the screens of the air.
#pragma once

#include "walk/scripted_bench.h"

#include <QDeadlineTimer>

namespace strandbench::test {

/// Writes an act that no screen tells; true once it is on the disk.
inline bool submitted(ScriptedBench& bench, const QUuid& repair, const Payload& payload)
{
    const auto told = std::make_shared<std::optional<bool>>();
    bench.bench().submit(repair, QStringLiteral("R. Quist"), payload,
                         [told](const auto& failure) { *told = !failure; });
    const QDeadlineTimer deadline(20000);
    while (!*told && !deadline.hasExpired())
        bench.thumb().settle();
    return told->value_or(false);
}

/// An alarm stands in the ribbon's place until it is answered, and for half a second after no tap on the ribbon counts.
inline bool answeredAlarms(ScriptedBench& bench)
{
    while (bench.thumb().find(QStringLiteral("alarm_0"))) {
        bench.clock().advance(seconds(1));
        bench.window().tick();
        if (!bench.thumb().tap(QStringLiteral("alarm_0")))
            return false;
        const QDeadlineTimer rest(600);
        while (!rest.hasExpired())
            bench.thumb().settle();
    }
    return true;
}

} // namespace strandbench::test
