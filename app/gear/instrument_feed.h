// SPDX-License-Identifier: GPL-3.0-or-later
// What a serial instrument of the bench says now, and whether it may be taken over: bytes become whole lines, lines are
// read by the shop's pattern, and only what stands still and is of now is steady.
#pragma once

#include "clock/clock.h"
#include "gear/serial_line.h"
#include "instrument/line_pattern.h"
#include "instrument/line_reader.h"
#include "instrument/steadiness.h"

#include <QThread>
#include <QTimer>

namespace strandbench {

enum class InstrumentKind { Scale, Climate };

/// The pattern of an instrument of this kind. Faults of LinePattern::of(); besides Missing, when it reads nothing that
/// the instrument is for.
[[nodiscard]] Checked<LinePattern> patternFor(InstrumentKind kind, const QString& text);

/// What an instrument says, for a screen.
struct InstrumentView {
    enum class Is {
        Off,          ///< none is set up
        PatternWrong, ///< `fault` says why
        Opening,
        Failed,   ///< `port` says why
        Silent,   ///< the port is open and nothing comes
        Garbled,  ///< something comes, and no whole plain line
        NoFit,    ///< the newest line does not fit the pattern; `fault` says why
        Unsteady, ///< a reading, but it does not stand still
        Steady,
        Stale, ///< readings came, and now none
    } is = Is::Off;
    SerialFault port;
    std::optional<Fault> fault;
    QString line; ///< the newest whole line, what is not printable ASCII shown as '?'; empty: none yet
    std::optional<LineReading> live;   ///< newest reading, not stale
    std::optional<LineReading> steady; ///< the same, when all of it may be taken over
    bool operator==(const InstrumentView&) const = default;
};

class InstrumentFeed final : public QObject {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(InstrumentFeed)
public:
    /// So far readings may be apart and still say the same: assumptions. A scale's last digit may change by a few
    /// hundredths of a gram in a draught.
    static constexpr double gramsApart = 0.05;
    static constexpr double kelvinApart = 0.3;
    static constexpr double percentApart = 2;
    /// After this with nothing at all the instrument is silent. An assumption: the slowest send each second or two.
    [[nodiscard]] static Duration silentAfter() { return seconds(5); }

    /// clock: outlives the feed.
    InstrumentFeed(InstrumentKind kind, const Clock& clock, QObject* parent = nullptr);
    /// Gives the port back.
    ~InstrumentFeed() override;

    [[nodiscard]] InstrumentKind kind() const { return m_kind; }
    [[nodiscard]] const InstrumentSetting& setting() const { return m_setting; }
    /// Goes by this from now on; the port is opened anew when it is another, or otherwise set.
    void setUp(const InstrumentSetting& setting);
    [[nodiscard]] InstrumentView view() const;
    /// True where an instrument is set up, whatever it says.
    [[nodiscard]] bool isOn() const { return !m_setting.port.isEmpty(); }
    [[nodiscard]] bool isOpen() const { return m_open; }
    /// How many bytes came since the port was opened.
    [[nodiscard]] qint64 bytes() const { return m_bytes; }

Q_SIGNALS:
    void changed(); ///< view() says something else

private:
    void take(const QByteArray& bytes, bool after);
    void takeLine(const QByteArray& line);
    void forget();
    void tell();
    [[nodiscard]] Duration now() const;
    [[nodiscard]] InstrumentView::Is stands() const;
    [[nodiscard]] std::optional<LineReading> steady() const;

    const InstrumentKind m_kind;
    const Clock& m_clock;
    InstrumentSetting m_setting;
    Checked<LinePattern> m_pattern;
    LineReader m_reader;
    Steadiness m_weight{gramsApart};
    Steadiness m_temperature{kelvinApart};
    Steadiness m_humidity{percentApart};
    int m_opening = 0; ///< the newest: what is still on its way of another port is nobody's
    bool m_open = false;
    qint64 m_bytes = 0;
    std::optional<SerialFault> m_port;
    std::optional<LineReading> m_newest; ///< that fitted; empty after one that did not
    std::optional<Fault> m_lineFault;
    QString m_line;
    Duration m_openedAt = seconds(0);
    std::optional<Duration> m_byteAt;
    std::optional<Duration> m_readAt;
    InstrumentView m_told;
    QTimer m_watch; ///< for what becomes stale without a word
    std::atomic<int> m_untold{0};
    SerialLine* m_serial;
    QThread m_thread;
};

} // namespace strandbench
