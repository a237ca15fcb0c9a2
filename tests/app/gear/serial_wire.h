// SPDX-License-Identifier: GPL-3.0-or-later
// An instrument at the other end of a serial cable: a pseudo-terminal that says what a test wants said.
#pragma once

#include <QByteArray>
#include <QString>
#include <QTemporaryDir>

namespace strandbench::test {

class SerialWire {
public:
    /// Not plugged in yet.
    SerialWire() = default;
    ~SerialWire() { pullOut(); }
    SerialWire(const SerialWire&) = delete;
    SerialWire& operator=(const SerialWire&) = delete;

    /// Where the port is found while it is plugged in; always the same.
    [[nodiscard]] QString port() const { return m_folder.filePath(QStringLiteral("tty_instrument")); }
    /// False when the machine has no pseudo-terminal to give.
    [[nodiscard]] bool plugIn();
    /// The device is gone, as when a USB plug is pulled.
    void pullOut();
    /// False when it did not take all of them.
    bool send(const QByteArray& bytes) const;

private:
    QTemporaryDir m_folder;
    int m_master = -1;
};

} // namespace strandbench::test
