// SPDX-License-Identifier: GPL-3.0-or-later
// The instruments of a bench, and the ports where they may be plugged in.
#pragma once

#include "gear/instrument_feed.h"

#include <functional>

namespace strandbench {

/// A port that the machine has now.
struct SerialPortFound {
    QString path; ///< "/dev/ttyUSB0"
    QString says; ///< what the device says of itself; may be empty
    bool operator==(const SerialPortFound&) const = default;
};

/// As the system lists them, those that are plugged in before those that are built in.
[[nodiscard]] std::vector<SerialPortFound> systemSerialPorts();

class Instruments final {
public:
    using Look = std::function<std::vector<SerialPortFound>()>;
    /// clock: outlives them.
    explicit Instruments(const Clock& clock, Look look = systemSerialPorts);

    [[nodiscard]] InstrumentFeed& of(InstrumentKind kind)
    {
        return kind == InstrumentKind::Scale ? m_scale : m_climate;
    }
    [[nodiscard]] InstrumentFeed& scale() { return m_scale; }
    [[nodiscard]] InstrumentFeed& climate() { return m_climate; }
    /// The ports that are there now.
    [[nodiscard]] std::vector<SerialPortFound> ports() const { return m_look(); }

private:
    InstrumentFeed m_scale;
    InstrumentFeed m_climate;
    Look m_look;
};

/// Patterns that are ready to choose, for an instrument of this kind: general forms of a line, to be changed where the
/// instrument's own differs.
[[nodiscard]] const QStringList& readyPatterns(InstrumentKind kind);

} // namespace strandbench
