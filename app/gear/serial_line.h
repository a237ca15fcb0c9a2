// SPDX-License-Identifier: GPL-3.0-or-later
// One serial port that is kept open: opened anew when it was pulled out or refused. Its calls may wait for the device,
// so it belongs away from the glass's own thread.
#pragma once

#include "bench/instrument_setting.h"

#include <QByteArray>
#include <QObject>
#include <QSerialPort>
#include <QTimer>

#include <atomic>

namespace strandbench {

/// Why a port gives nothing.
struct SerialFault {
    enum class Why {
        NotThere,   ///< no such port: not plugged in
        InUse,      ///< another program has it
        NotAllowed, ///< this account may not open it
        Unplugged,  ///< it was open and is gone
        Refused,    ///< the rest; `says` is the system's word
    } why = Why::Refused;
    QString says;
    bool operator==(const SerialFault&) const = default;
};

class SerialLine final : public QObject {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(SerialLine)
public:
    static constexpr int retryMs = 1000; ///< after a fault it is tried again
    /// untold: pieces that the glass has not taken yet; counted up here and down there.
    explicit SerialLine(std::atomic<int>& untold);

    /// Opens this port in place of the one before; an empty one only closes. Tried again until it opens. What is told
    /// from now on bears this number.
    void open(const InstrumentSetting& setting, int opening);

Q_SIGNALS:
    void opened(int opening);
    void failed(int opening, const strandbench::SerialFault& fault);
    /// after: something that came before these bytes was left out, since the glass could not take it.
    void came(int opening, const QByteArray& bytes, bool after);

private:
    void tryToOpen();
    void read();
    void lost(QSerialPort::SerialPortError error);
    [[nodiscard]] SerialFault faultOf(QSerialPort::SerialPortError error) const;

    std::atomic<int>& m_untold;
    InstrumentSetting m_setting;
    int m_opening = 0;
    QSerialPort m_port;
    QTimer m_retry;
    bool m_leftOut = false;
};

} // namespace strandbench
