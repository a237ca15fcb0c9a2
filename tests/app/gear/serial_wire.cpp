// SPDX-License-Identifier: GPL-3.0-or-later
#include "serial_wire.h"

#include <QFile>

#include <array>

#include <fcntl.h>
#include <stdlib.h> // NOLINT(modernize-deprecated-headers): posix_openpt() is POSIX's, not C++'s
#include <termios.h>
#include <unistd.h>

namespace strandbench::test {

bool SerialWire::plugIn()
{
    pullOut();
    m_master = ::posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC);
    std::array<char, 128> name{};
    if (m_master == -1 || ::grantpt(m_master) != 0 || ::unlockpt(m_master) != 0 ||
        ::ptsname_r(m_master, name.data(), name.size()) != 0)
        return false;
    termios raw{};
    if (::tcgetattr(m_master, &raw) != 0)
        return false;
    ::cfmakeraw(&raw); // no echo of what is said before anybody listens
    return ::tcsetattr(m_master, TCSANOW, &raw) == 0 && QFile::link(QString::fromLocal8Bit(name.data()), port());
}

void SerialWire::pullOut()
{
    if (m_master == -1)
        return;
    ::close(m_master);
    m_master = -1;
    QFile::remove(port());
}

bool SerialWire::send(const QByteArray& bytes) const
{
    return ::write(m_master, bytes.constData(), static_cast<std::size_t>(bytes.size())) == bytes.size();
}

} // namespace strandbench::test
