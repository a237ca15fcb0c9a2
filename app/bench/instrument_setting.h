// SPDX-License-Identifier: GPL-3.0-or-later
// How one serial instrument of the bench is connected, and how its lines are read.
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace strandbench {

struct InstrumentSetting {
    QString port;                          ///< "/dev/ttyUSB0"; empty: none is connected
    int baud = 9600;                       ///< bit/s, one of serialSpeeds()
    QString frame = QStringLiteral("8N1"); ///< data bits, parity and stop bits: one of serialFrames()
    QString pattern;                       ///< a LinePattern; empty: not chosen yet
    bool operator==(const InstrumentSetting&) const = default;
};

/// What the set-up offers. The first setting of a new instrument, 9600 bit/s and 8N1, is what most send by (common
/// practice, no source).
[[nodiscard]] const std::vector<int>& serialSpeeds();
[[nodiscard]] const QStringList& serialFrames();

} // namespace strandbench
