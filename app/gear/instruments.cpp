// SPDX-License-Identifier: GPL-3.0-or-later
#include "gear/instruments.h"

#include <QSerialPortInfo>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {

std::vector<SerialPortFound> systemSerialPorts()
{
    std::vector<SerialPortFound> found;
    for (const QSerialPortInfo& each : QSerialPortInfo::availablePorts())
        found.push_back({each.systemLocation(), each.description()});
    std::stable_sort(found.begin(), found.end(), [](const SerialPortFound& a, const SerialPortFound& b) {
        const auto builtIn = [](const SerialPortFound& port) { return port.path.contains("ttyS"_L1); };
        return !builtIn(a) && builtIn(b);
    });
    return found;
}

Instruments::Instruments(const Clock& clock, Look look)
    : m_scale(InstrumentKind::Scale, clock), m_climate(InstrumentKind::Climate, clock), m_look(std::move(look))
{}

const QStringList& readyPatterns(InstrumentKind kind)
{
    // Forms that plain-ASCII lines of scales and hygrometers commonly have (common practice, no source).
    static const QStringList scale{u"{steady:ST|US},{any},{weight} {unit}"_s, u"{steady:S|D} {weight} {unit}"_s,
                                   u"{weight} {unit}"_s, u"{weight:g}"_s};
    static const QStringList climate{u"{temperature:C} {humidity}"_s, u"T={temperature:C} H={humidity}"_s,
                                     u"{humidity}%,{temperature:C}C"_s, u"{temperature:F} {humidity}"_s};
    return kind == InstrumentKind::Scale ? scale : climate;
}

} // namespace strandbench
