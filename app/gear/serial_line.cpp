// SPDX-License-Identifier: GPL-3.0-or-later
#include "gear/serial_line.h"

#include <QFileInfo>
#include <QSerialPortInfo>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int mostUntold = 64; ///< pieces; a port that shouts must not fill the memory of a glass that is busy

QSerialPort::Parity parityOf(QChar code)
{
    if (code == u'E')
        return QSerialPort::EvenParity;
    return code == u'O' ? QSerialPort::OddParity : QSerialPort::NoParity;
}

/// The port's place in the file system: a name as the system lists it, or a path as it was typed.
QString placeOf(const QString& port) { return port.startsWith(u'/') ? port : u"/dev/"_s + port; }

} // namespace

SerialLine::SerialLine(std::atomic<int>& untold) : m_untold(untold), m_port(this), m_retry(this)
{
    m_retry.setSingleShot(true);
    m_retry.setInterval(retryMs);
    connect(&m_retry, &QTimer::timeout, this, &SerialLine::tryToOpen);
    connect(&m_port, &QSerialPort::readyRead, this, &SerialLine::read);
    // Queued: a port must not be closed from within its own call.
    connect(&m_port, &QSerialPort::errorOccurred, this, &SerialLine::lost, Qt::QueuedConnection);
}

void SerialLine::open(const InstrumentSetting& setting, int opening)
{
    m_retry.stop();
    if (m_port.isOpen())
        m_port.close();
    m_setting = setting;
    m_opening = opening;
    m_leftOut = false;
    if (!setting.port.isEmpty())
        tryToOpen();
}

void SerialLine::tryToOpen()
{
    const QString& frame = m_setting.frame;
    m_port.setPortName(m_setting.port);
    m_port.setBaudRate(m_setting.baud);
    m_port.setDataBits(frame.startsWith(u'7') ? QSerialPort::Data7 : QSerialPort::Data8);
    m_port.setParity(parityOf(frame.size() > 1 ? frame.at(1) : u'N'));
    m_port.setStopBits(frame.endsWith(u'2') ? QSerialPort::TwoStop : QSerialPort::OneStop);
    m_port.setFlowControl(QSerialPort::NoFlowControl);
    if (m_port.open(QIODevice::ReadOnly))
        Q_EMIT opened(m_opening);
    // Where it does not open, errorOccurred() tells why.
}

void SerialLine::read()
{
    const QByteArray bytes = m_port.readAll();
    if (bytes.isEmpty())
        return;
    if (m_untold >= mostUntold) {
        m_leftOut = true;
        return;
    }
    ++m_untold;
    Q_EMIT came(m_opening, bytes, std::exchange(m_leftOut, false));
}

void SerialLine::lost(QSerialPort::SerialPortError error)
{
    // NoError comes from opening; the noise of a line is none of the port's faults. After open() of another port an
    // error of the one before may still be on its way.
    if (error == QSerialPort::NoError || m_setting.port.isEmpty() || m_retry.isActive() ||
        error == QSerialPort::TimeoutError || (m_port.isOpen() && m_port.error() == QSerialPort::NoError))
        return;
    const SerialFault fault = faultOf(error);
    if (m_port.isOpen())
        m_port.close();
    m_retry.start();
    Q_EMIT failed(m_opening, fault);
}

SerialFault SerialLine::faultOf(QSerialPort::SerialPortError error) const
{
    using Why = SerialFault::Why;
    const QFileInfo place(placeOf(m_setting.port));
    const QString says = m_port.errorString();
    if (m_port.isOpen())
        return {Why::Unplugged, says};
    if (error == QSerialPort::DeviceNotFoundError || !place.exists())
        return {Why::NotThere, says};
    if (error == QSerialPort::PermissionError)
        return {place.isReadable() ? Why::InUse : Why::NotAllowed, says};
    return {error == QSerialPort::OpenError ? Why::InUse : Why::Refused, says};
}

} // namespace strandbench
